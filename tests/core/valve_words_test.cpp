// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/valve_words.hpp"

#include <gtest/gtest.h>

#include "core/engine/layout.hpp"
#include "core/log/bring_in/heading_words.hpp"
#include "owner_log.hpp"

namespace shimwright {
namespace {

using Fits = std::vector<std::size_t>;

TEST(ValveWords, a_valve_is_known_by_any_of_its_names) {
  const BringInBook book = invented_log_book();
  const ValveNames names(book.valves);
  ASSERT_EQ(book.valves.front(), "1 EX L");
  for (const char* text : {"1 EX L", "1 ex l", "Ex1L", "1ExL", "1EXL", "exhaust 1 left", "L EX 1",
                           "Cyl. 1, exhaust, left", "cylinder 1 exh. LH", "1-EX-L", "E1 left",
                           "  1 EX L ", "valve 1 EX L", "No. 1 EX L", "1_ex_l", "exh left 1"})
    EXPECT_EQ(names.fitting(text), Fits{0}) << text;
  EXPECT_EQ(names.fitting("4 intake right"), Fits{15});
  EXPECT_EQ(names.fitting("in4r"), Fits{15});
  EXPECT_EQ(names.fitting("4INL"), Fits{14}) << "not short for inlet";
}

TEST(ValveWords, a_valve_is_known_in_other_languages) {
  const ValveNames names(invented_log_book().valves);
  for (const char* text : {"Auslass 1 links", "Zyl. 1 Ausla\u00df links",
                           "\u00c9chappement 1 gauche", "cylindre 1, echappement gauche",
                           "V\u00e1lvula 1 escape izquierda", "valvola 1 scarico sinistra"})
    EXPECT_EQ(names.fitting(text), Fits{0}) << text;
  for (const char* text :
       {"Einlass 4 rechts", "Einla\u00df 4R", "Admission 4 droite", "admisi\u00f3n 4 derecha",
        "ADMISI\u00d3N 4 derecha", "aspirazione 4 destra"})
    EXPECT_EQ(names.fitting(text), Fits{15}) << text;
}

TEST(ValveWords, what_says_too_little_may_be_several) {
  const ValveNames names(invented_log_book().valves);
  EXPECT_EQ(names.fitting("1 EX"), (Fits{0, 1}));
  EXPECT_EQ(names.fitting("1"), (Fits{0, 1, 2, 3}));
  EXPECT_EQ(names.fitting("EX L").size(), 4U);
}

TEST(ValveWords, another_word_or_number_is_no_valve) {
  const ValveNames names(invented_log_book().valves);
  for (const char* text : {"", "5 EX L", "total", "1 EX X", "1 EX L gap", "sum", "1 2 EX L",
                           "1 EX M", "99999999999999999999 EX L", "average"})
    EXPECT_EQ(names.fitting(text), Fits{}) << text;
}

TEST(ValveWords, every_valve_of_every_engine_has_a_name_of_its_own) {
  for (int exhaust = 1; exhaust <= 3; ++exhaust)
    for (int inlet = 1; inlet <= 3; ++inlet) {
      EngineLayout layout = inline_four();
      layout.exhaust_valves = exhaust;
      layout.inlet_valves = inlet;
      std::vector<std::string> all;
      for (const ValveId& valve : valves_of(layout)) all.push_back(name_of(valve, layout));
      const ValveNames names(all);
      for (std::size_t i = 0; i < all.size(); ++i) {
        EXPECT_EQ(names.fitting(all[i]), Fits{i}) << all[i];
        EXPECT_EQ(names.fitting(valve_words_in(all[i])), Fits{i}) << all[i];
      }
    }
}

struct Heading {
  const char* text;
  std::optional<LogColumn> what;
  std::optional<std::size_t> valve;
  ColumnUnit unit;
};

TEST(HeadingWords, say_what_the_column_holds) {
  const ValveNames names(invented_log_book().valves);
  using enum LogColumn;
  using enum ColumnUnit;
  for (const Heading& one : {
           Heading{"Date", date, {}, ColumnUnit::none},
           Heading{"Date measured", date, {}, ColumnUnit::none},
           Heading{"Odometer (miles)", distance, {}, miles},
           Heading{"km", distance, {}, km},
           Heading{"Engine hours", distance, {}, hours},
           Heading{"Valve", valve, {}, ColumnUnit::none},
           Heading{"Cyl", valve, {}, ColumnUnit::none},
           Heading{"Gap", gap_found, {}, ColumnUnit::none},
           Heading{"Clearance (in)", gap_found, {}, inch},
           Heading{"Gap in", gap_found, {}, inch},
           Heading{"gap left", gap_left, {}, ColumnUnit::none},
           Heading{"Clearance after [mm]", gap_left, {}, mm},
           Heading{"Old shim", shim_found, {}, ColumnUnit::none},
           Heading{"New shim, mark", shim_fitted, {}, mark},
           Heading{"shim fitted", shim_fitted, {}, ColumnUnit::none},
           Heading{"Temp. (\u00b0C)", temperature, {}, ColumnUnit::none},
           Heading{"Measured by", who, {}, ColumnUnit::none},
           Heading{"Remarks", note, {}, ColumnUnit::none},
           Heading{"Check no.", check, {}, ColumnUnit::none},
           Heading{"Gap predicted", predicted, {}, ColumnUnit::none},
           Heading{"1 EX L gap", gap_found, 0, ColumnUnit::none},
           Heading{"Shim 1 EX L (in)", shim_found, 0, inch},
           Heading{"4 IN R gap in", gap_found, 15, inch},
           Heading{"in4r shim left", shim_fitted, 15, ColumnUnit::none},
           Heading{"1 EX L", {}, 0, ColumnUnit::none},
           Heading{"Fuel", {}, {}, ColumnUnit::none},
           Heading{"", {}, {}, ColumnUnit::none},
       }) {
    const HeadingWords said = heading_words_in(one.text, names);
    EXPECT_EQ(said.what, one.what) << one.text;
    EXPECT_EQ(said.valve, one.valve) << one.text;
    EXPECT_EQ(said.unit, one.unit) << one.text;
  }
}

}  // namespace
}  // namespace shimwright
