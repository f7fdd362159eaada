// SPDX-License-Identifier: MPL-2.0
//
// What Head says apart from its cards: the key, the stops of the crank, and the box; and that every
// sheet's box says which other sheet the plan waits for.
#include <gtest/gtest.h>

#include <iterator>
#include <utility>
#include <vector>

#include "core/service/steps_findings.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

TEST(HeadKey, counts_the_valves_in_each_state) {
  ServiceEntries book;
  book.limits(0.16, 0.22).setting("doubt", 0.01);
  book.gap("1 EX L", 0.10).gap("1 EX R", 0.12).gap("1 IN L", 0.155);
  book.gap("1 IN R", 0.19).gap("2 EX L", 0.215).gap("2 EX R", 0.30);
  const View view = book.view();
  EXPECT_EQ(view["book"].at("legend unread"), "\u25cb unread 10");
  EXPECT_EQ(view["book"].at("legend tight"), "\u25bc tight 2");
  EXPECT_EQ(view["book"].at("legend tight?"), "\u25bd tight? 1");
  EXPECT_EQ(view["book"].at("legend good"), "\u25cf good 1");
  EXPECT_EQ(view["book"].at("legend loose?"), "\u25b3 loose? 1");
  EXPECT_EQ(view["book"].at("legend loose"), "\u25b2 loose 1");
}

// An open valve is a lifted one.
TEST(HeadStops, say_measure_here_and_call_no_valve_open) {
  const View view = ServiceEntries().view();
  const std::string& stops = view["book"].at("stops");
  EXPECT_TRUE(stops.starts_with("Stop 1: turn the crank forwards to")) << stops;
  EXPECT_TRUE(tells(stops, "; measure here: cylinder 1: ")) << stops;
  EXPECT_TRUE(tells(stops, "\nThe manual\u2019s procedure comes first."));
  for (const std::string_view words : {"open", "firing dead centre"})
    EXPECT_FALSE(tells(stops, words)) << stops;
}

TEST(HeadStops, say_whether_they_rest_on_usual_timing) {
  constexpr std::string_view usual = "These stops assume usual valve timing";
  ServiceEntries book;
  EXPECT_TRUE(tells(book.view()["book"].at("stops"), usual));
  for (const char* side : {"exhaust", "inlet"})
    book.set("side", side, 4, 40.0).set("side", side, 5, 40.0);
  EXPECT_FALSE(tells(book.view()["book"].at("stops"), usual));
}

// A V-twin at 45 degrees on one pin: at cylinder 1's TDC cylinder 2's exhaust valve is just past
// its closing, at its own it is far from its lobe.
Service v_twin_service() {
  return service_of({{"setting", "firing", "1 at 0, 2 at 315"},
                     {"setting", "margin", 10.0},
                     {"valve", "1 EX", "", "", "", "", 1.0, "exhaust"},
                     {"valve", "1 IN", "", "", "", "", 1.0, "inlet"},
                     {"valve", "2 EX", "", "", "", "", 2.0, "exhaust"},
                     {"valve", "2 IN", "", "", "", "", 2.0, "inlet"}});
}

const View& v_twin() {
  static const View view = view_of(v_twin_service());
  return view;
}

TEST(Fitting, is_asked_with_the_stop_first_at_which_the_valve_is_clear_of_its_lobe_by_most) {
  const Service service = v_twin_service();
  std::vector<std::pair<std::size_t, int>> open;
  for (const OpenAt& at : valves_at_stops(service, findings_in(service).stops))
    open.emplace_back(at.valve, at.stop);
  EXPECT_EQ(open, (std::vector<std::pair<std::size_t, int>>{
                      {0, 1}, {1, 1}, {1, 2}, {2, 2}, {2, 1}, {3, 2}}));
}

TEST(HeadStops, name_each_valve_where_it_is_clear_of_its_lobe_by_most) {
  const std::string& stops = v_twin()["book"].at("stops");
  EXPECT_TRUE(tells(stops, "measure here: cylinder 1: inlet and exhaust.\n")) << stops;
  EXPECT_TRUE(tells(stops, "measure here: cylinder 2: inlet and exhaust.\n")) << stops;
}

TEST(Cards, tell_the_stop_at_which_the_valve_is_clear_of_its_lobe_by_most) {
  const char* const labels[] = {"gap, stop 1", "gap, stop 1", "gap, stop 2", "gap, stop 2"};
  for (std::size_t valve = 1; valve <= std::size(labels); ++valve)
    EXPECT_EQ(v_twin()["cards"].at("gap label", valve), labels[valve - 1]);
}

TEST(HeadStops, follow_from_a_margin_of_up_to_half_a_turn) {
  const auto stops = [](double margin) {
    ServiceEntries book;
    book.setting("margin", margin);
    return book.view()["stops"].rows.size();
  };
  EXPECT_GT(stops(180.0), 2U);
  EXPECT_EQ(stops(180.5), 2U) << "beyond, the usual one is taken, and Engine says so";
}

TEST(HeadStops, say_what_is_wrong_with_the_firing_order) {
  ServiceEntries book;
  book.setting("firing", "1-3-3-2");
  EXPECT_EQ(book.view()["book"].at("stops"),
            "Firing order: name each cylinder once, such as 1-3-4-2; or give the degrees at which "
            "each fires, from 0 to below 720, such as 1 at 0, 2 at 270.");
}

TEST(Titles, name_the_engine_once_it_has_a_name) {
  ServiceEntries book;
  EXPECT_EQ(book.view()["book"].at("title head"), "Head");
  book.setting("engine", "Quillfen 1.4");
  EXPECT_EQ(book.view()["book"].at("title head"), "Quillfen 1.4 \u00b7 Head");
}

TEST(HeadBox, is_calm_where_all_is_well_and_says_where_to_begin_in_an_empty_book) {
  const View empty = ServiceEntries().view();
  EXPECT_EQ(box_of(empty, "head"), "Begin on Engine: the limits are not entered yet.");
  EXPECT_EQ(box_of(empty, "engine"), "Begin here: enter the smallest and the largest gap allowed.");
  EXPECT_EQ(empty["boxes"].at("mood head"), "calm");
  EXPECT_EQ(box_of(ServiceEntries().limits(0.16, 0.22).view(), "head"),
            "Entries checked: no faults found.");
}

// Every card says that entries are to be corrected, so its sheet says where. A row of shims that
// cannot be is left out, and the plan waits for nothing there.
TEST(Boxes, name_the_sheet_that_the_plan_waits_for) {
  const auto faulty = [](std::string_view sheet) {
    ServiceEntries book;
    book.limits(0.16, 0.22).gap("1 IN L", 0.2).micrometer("1 IN L", 2.7).spare(1, "A", 2.6);
    if (sheet == "Engine") book.setting("doubt", -0.1);
    if (sheet == "Head") book.gap("1 EX L", -0.1);
    if (sheet == "Shims") book.spare(1, "A", 275.0);
    return book.view();
  };
  for (const std::string_view fault : {"", "Engine", "Head", "Shims"}) {
    const View view = faulty(fault);
    for (const std::string_view sheet : {"engine", "head", "shims"})
      for (const std::string_view other : {"Engine", "Head", "Shims"}) {
        const bool own = std::string_view(sheet).substr(1) == other.substr(1);
        EXPECT_EQ(tells(box_of(view, sheet), std::string(other) + " has entries to be corrected"),
                  other == fault && !own && other != "Shims")
            << sheet << " and a fault on " << fault;
      }
  }
}

TEST(Boxes, speak_in_inches_where_the_book_does) {
  ServiceEntries book;
  book.setting("unit", "inch").limits(0.012, 0.008).gap("1 EX L", -0.1);
  book.spare(1, "A", 10.8).spare(2, "31 mm", 0.1);
  const View view = book.view();
  EXPECT_TRUE(tells(box_of(view, "engine"), "0.0120 in")) << box_of(view, "engine");
  EXPECT_TRUE(tells(box_of(view, "engine"), "0.0080 in")) << box_of(view, "engine");
  EXPECT_TRUE(tells(box_of(view, "head"), "Valve 1 EX L: the gap, -0.1 in, is negative"))
      << box_of(view, "head");
  const std::string shims = box_of(view, "shims");
  EXPECT_TRUE(tells(shims, "Row 1: left out: 10.8 in is no shim size")) << shims;
  // What a person typed stays as it is.
  EXPECT_TRUE(tells(shims, "\"31 mm\"")) << shims;
}

// A limit that is wrong is wrong for each valve: told once, and Shims' own faults too.
TEST(Boxes, of_shims_tell_their_own_faults_though_every_limit_is_wrong) {
  ServiceEntries book;
  for (const char* side : {"exhaust", "inlet"})
    book.set("side", side, 0, "wide").set("side", side, 1, "wide");
  for (const std::string& valve : book.valves()) book.gap(valve, 0.2);
  for (const int row : {1, 2, 3, 4}) book.spare(row, "A", 275.0);
  const std::string shims = box_of(book.view(), "shims");
  for (const int row : {1, 2, 3, 4})
    EXPECT_TRUE(tells(shims, "Row " + std::to_string(row) + ": ")) << shims;
  EXPECT_TRUE(tells(shims, "275 mm")) << shims;
  EXPECT_TRUE(tells(box_of(book.view(), "plan"), "Shims, Row 1: ")) << box_of(book.view(), "plan");
}

// Two inlet valves at two stops, nowhere clear together by that margin, each of which wants the
// other's shim, and none to stand in.
TEST(StepsInInches, say_in_inches_what_to_borrow) {
  ServiceEntries book;
  book.setting("unit", "inch").limits(0.006, 0.010).setting("margin", 60.0);
  book.gap("1 IN L", 0.016).micrometer("1 IN L", 0.100);
  book.gap("4 IN L", 0.0).micrometer("4 IN L", 0.108);
  const View view = book.view();
  EXPECT_EQ(view["steps"].at("note"),
            "No stand-in is there: borrow or buy a shim no thicker than 0.1080 in, series A. Until "
            "then 1 IN L and 4 IN L keep their shims.");
  EXPECT_EQ(view["book"].at("fit heading"), "Valve by valve, cams in place; sizes in inches");
  // Before anything is ordered, too.
  EXPECT_TRUE(tells(box_of(view, "plan"), "borrow or buy a shim no thicker than 0.1080 in"))
      << box_of(view, "plan");
}

TEST(StepsInInches, have_no_length_in_mm) {
  ServiceEntries book;
  book.setting("unit", "inch").limits(0.006, 0.010);
  int row = 0;
  for (const std::string& valve : book.valves()) {
    ++row;
    book.gap(valve, row % 2 == 0 ? 0.014 : 0.003).micrometer(valve, 0.100 + 0.001 * row);
    book.spare(row, "A", 0.095 + 0.001 * row);
  }
  const View view = book.view();
  int notes = 0;
  for (std::size_t i = 1; i <= view["steps"].rows.size(); ++i) {
    const std::string& note = view["steps"].at("note", i);
    notes += note.empty() ? 0 : 1;
    EXPECT_FALSE(tells(note, " mm")) << note;
  }
  EXPECT_GT(notes, 4);
}

TEST(EmptyService, has_a_dash_or_a_word_where_an_answer_will_stand) {
  const View view = ServiceEntries().view();
  EXPECT_EQ(view["book"].at("aim exhaust"), "\u2013");
  EXPECT_EQ(view["order"].at("series"), "nothing");
  EXPECT_EQ(box_of(view, "plan"), "Begin on Engine: the limits are not entered yet.");
}

}  // namespace
}  // namespace shimwright::tests
