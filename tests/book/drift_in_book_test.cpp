// SPDX-License-Identifier: MPL-2.0
//
// The log and the drift in the real office: rows written and taken back, the table against the
// public functions on the same rows, the charts and Undo.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <chrono>
#include <cmath>
#include <com/sun/star/awt/XRequestCallback.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <cstdlib>
#include <filesystem>
#include <thread>

#include "../core/invented_log.hpp"
#include "book/command_urls.hpp"
#include "book/drift_map.hpp"
#include "commands/log_range.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

using book::as;
using book::DriftMap;
using book::to_office;
using commands::LogRange;

constexpr auto on_log = book::sheet_name::log;
constexpr auto on_drift = book::sheet_name::drift;
namespace place = book::log_place;

const std::vector<std::string>& names() {
  static const std::vector<std::string> all = [] {
    std::vector<std::string> made;
    for (const ValveId& valve : the_places().valves)
      made.push_back(name_of(valve, the_places().layout));
    return made;
  }();
  return all;
}

class DriftInBook : public testing::Test {
 protected:
  void SetUp() override {
    namespace engine = book::engine_place;
    for (const auto& [side, min, max] :
         {std::tuple(Side::exhaust, 0.20, 0.28), std::tuple(Side::inlet, 0.14, 0.22)}) {
      book.type(book::sheet_name::engine, engine::of(side, engine::min_row), min);
      book.type(book::sheet_name::engine, engine::of(side, engine::max_row), max);
    }
    book.type(book::sheet_name::engine, engine::interval, 24'000);
    book.type(book::sheet_name::engine, engine::name, "Quillfen Lapwing 1.4");
  }

  void append(const std::vector<LogRow>& rows) const {
    commands::UndoStep step(book.document(), "rows of a test");
    LogRange::in(book.document())->append(step, rows, Unit::mm);
    step.done();
  }

  css::table::CellRangeAddress named() const {
    const auto all = as<css::container::XNameAccess>(
        as<css::beans::XPropertySet>(book.document())->getPropertyValue("NamedRanges"));
    return as<css::sheet::XCellRangeAddressable>(
               as<css::sheet::XCellRangeReferrer>(all->getByName(to_office(place::range_name)))
                   ->getReferredCells())
        ->getRangeAddress();
  }

  Ref<css::document::XUndoManager> undo() const {
    return as<css::document::XUndoManagerSupplier>(book.document())->getUndoManager();
  }

  int charts() const {
    return as<css::container::XNameAccess>(
               as<css::table::XTableChartsSupplier>(book.sheet(on_drift))->getCharts())
        ->getElementNames()
        .getLength();
  }

  // The command comes later, on the office's main thread.
  void draw() const {
    css::util::URL url;
    url.Complete = to_office(book::command::draw_drift);
    url.Protocol = to_office("vnd.org.shimwright:");
    const auto frame = as<css::frame::XModel>(book.document())->getCurrentController()->getFrame();
    const auto command =
        as<css::frame::XDispatchProvider>(frame)->queryDispatch(url, to_office("_self"), 0);
    ASSERT_TRUE(command.is());
    command->dispatch(url, {});
    for (int i = 0; i < 200 && charts() < cylinders_of(the_places().layout); ++i)
      std::this_thread::sleep_for(std::chrono::milliseconds(50));
  }

  std::string in_table(int valve, DriftMap::Column column) const {
    return book.shown(on_drift, {column, DriftMap::first_row + valve});
  }
  bool says(std::string_view words) const { return book.tells(on_drift, words); }

  OpenBook book{the_office(), template_file()};
};

double number_in(std::string words) {
  for (const std::string_view mark : {"\u00a0", "tight at ", "loose at "})
    for (std::size_t at = 0; (at = words.find(mark, at)) != std::string::npos;)
      words.erase(at, mark.size());
  if (words.starts_with("\u2212")) words.replace(0, std::string("\u2212").size(), "-");
  return std::strtod(words.c_str(), nullptr);
}

TEST_F(DriftInBook, rows_go_below_the_last_one_and_come_back_as_they_were) {
  const auto rows = invented_log(names(), 2);
  append(rows);
  EXPECT_EQ(LogRange::in(book.document())->rows(), table_of(rows));
  EXPECT_EQ(book.shown(on_log, right_of(place::first, 2)), "2016-05-10");
  EXPECT_EQ(book.shown(on_log, right_of(place::first, 5)), "0.250");
  EXPECT_EQ(book.shown(on_log, {place::number_column, place::first.row}), "1");
  append(invented_log(names(), 1));
  EXPECT_EQ(LogRange::in(book.document())->rows().size(), 3 * names().size());
}

TEST_F(DriftInBook, the_log_grows_before_it_is_full_and_shrinks_by_undo) {
  const auto before = named();
  append(invented_log(names(), 9));
  const auto after = named();
  EXPECT_EQ(after.StartRow, place::first.row);
  EXPECT_GE(after.EndRow + 1 - after.StartRow, 9 * 16 + place::least_blank);
  EXPECT_EQ(book.number(on_log, {place::number_column, static_cast<int>(after.EndRow)}),
            after.EndRow - after.StartRow + 1);
  undo()->undo();
  EXPECT_TRUE(LogRange::in(book.document())->rows().empty());
  EXPECT_EQ(named().EndRow, before.EndRow);
}

// Valve by valve, so that each has its rows below each other.
TEST_F(DriftInBook, the_table_has_the_figures_of_the_public_functions) {
  constexpr int checks = 6;
  auto rows = invented_log(names(), checks);
  std::ranges::stable_sort(rows, {}, [](const LogRow& row) {
    return std::ranges::find(names(), row.valve) - names().begin();
  });
  append(rows);
  int compared = 0;
  for (int valve = 0; valve < the_places().count(); ++valve) {
    const auto column = [&](LogColumn of) {
      const At top = below(right_of(place::first, static_cast<int>(of)), valve * checks);
      return book::on(on_log, book::block(top, 1, checks));
    };
    const std::string history = column(LogColumn::distance) + ";" + column(LogColumn::gap_found) +
                                ";" + column(LogColumn::shim_found);
    EXPECT_NEAR(number_in(in_table(valve, DriftMap::rate)),
                book.value_of(on_drift, "=INDEX(CLEARANCE.DRIFT(" + history + ");1;1)"), 0.51e-5);
    const bool exhaust = the_places().valves[static_cast<std::size_t>(valve)].side == Side::exhaust;
    const std::string fitted =
        book::on(on_log, below(right_of(place::first, static_cast<int>(LogColumn::shim_fitted)),
                               (valve + 1) * checks - 1));
    const std::string due =
        "CLEARANCE.DUE(" + history + ";" + fitted + (exhaust ? ";0.2;0.28)" : ";0.14;0.22)");
    const std::string meets = in_table(valve, DriftMap::meets);
    if (!meets.starts_with("tight")) continue;
    if (book.text_of(on_drift, "=INDEX(" + due + ";1;3)") != "tight") continue;
    ++compared;
    EXPECT_NEAR(number_in(meets), book.value_of(on_drift, "=INDEX(" + due + ";1;1)"), 1) << valve;
  }
  EXPECT_GE(compared, 10);
}

// One valve, whose scatter is its own.
TEST_F(DriftInBook, the_cautious_distance_is_that_of_the_public_function) {
  std::vector<LogRow> rows;
  const double gaps[] = {0.26, 0.25, 0.24, 0.21};
  for (int i = 0; i < 4; ++i)
    rows.push_back({.check = i + 1,
                    .distance = 12'000.0 * i,
                    .valve = "1 EX L",
                    .gap_found = Length::of(gaps[i]),
                    .shim_found = 2.70_mm,
                    .shim_fitted = 2.64_mm});
  append(rows);
  const auto valve = static_cast<int>(std::ranges::find(names(), "1 EX L") - names().begin());
  EXPECT_EQ(number_in(in_table(valve, DriftMap::cautious)),
            std::floor(book.value_of(on_drift,
                                     "=INDEX(CLEARANCE.DUE({0;12000;24000;36000};{0.26;0.25;0.24;"
                                     "0.21};2.7;2.64;0.2;0.28);1;2)")));
}

TEST_F(DriftInBook, hangs_on_no_reading_of_the_check_that_is_under_way) {
  append(invented_log(names(), 3));
  for (const char* table : {"drift", "next check"}) {
    std::string formula;
    for (const auto& [at, text] : book.texts(book::sheet_name::workings))
      if (const std::string own = book.formula(book::sheet_name::workings, at);
          own.find(std::string("\"") + table + "\"") != std::string::npos)
        formula = own;
    EXPECT_THAT(formula, testing::HasSubstr("drift_entries")) << table;
  }
}

TEST_F(DriftInBook, is_calm_and_without_charts_while_the_log_is_empty) {
  EXPECT_TRUE(says("Nothing to show yet: the log is empty."));
  EXPECT_EQ(charts(), 0);
  EXPECT_EQ(in_table(0, DriftMap::words), "");
  EXPECT_TRUE(book.tells(book::sheet_name::read_me, "Next check: not known yet."));
}

TEST_F(DriftInBook, draws_a_chart_for_each_cylinder_as_one_step_of_undo) {
  append(invented_log(names(), 6));
  EXPECT_TRUE(says("For the charts press Draw the drift."));
  draw();
  EXPECT_EQ(charts(), 4);
  EXPECT_FALSE(says("press Draw the drift"));
  EXPECT_TRUE(as<css::util::XProtectable>(book.sheet(on_drift))->isProtected());
  const auto drawn = book.contents(book::sheet_name::workings);
  auto more = invented_log(names(), 7);
  more.erase(more.begin(), more.end() - the_places().count());
  append(more);
  EXPECT_TRUE(says("have changed since the charts were drawn"));
  undo()->undo();
  undo()->undo();
  EXPECT_EQ(charts(), 0);
  EXPECT_TRUE(says("For the charts press Draw the drift."));
  undo()->redo();
  EXPECT_EQ(charts(), 4);
  EXPECT_EQ(book.contents(book::sheet_name::workings), drawn);
  EXPECT_FALSE(says("press Draw the drift"));
}

TEST_F(DriftInBook, reads_the_same_without_the_add_in) {
  append(invented_log(names(), 6));
  draw();
  const std::filesystem::path file(PICTURES "/drift.ods");
  std::filesystem::create_directories(file.parent_path());
  book.save(file);
  const office::Office bare;
  OpenBook there(bare, file);
  for (int valve = 0; valve < the_places().count(); ++valve)
    for (const auto column :
         {DriftMap::course, DriftMap::rate, DriftMap::meets, DriftMap::cautious, DriftMap::words})
      EXPECT_EQ(there.shown(on_drift, {column, DriftMap::first_row + valve}),
                in_table(valve, column));
  EXPECT_EQ(LogRange::in(there.document())->rows(), LogRange::in(book.document())->rows());
}

}  // namespace
}  // namespace shimwright::tests
