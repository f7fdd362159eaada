// SPDX-License-Identifier: MPL-2.0
//
// Close this check at the desk: a whole check, another round of it, what is refused and what is
// asked, with Undo, and the log after saving.
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XNamedRanges.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <filesystem>

#include "../book/on_sheets.hpp"
#include "bench_desk.hpp"
#include "core/log/log_row.hpp"

namespace shimwright::tests {
namespace {

namespace recheck = book::recheck_place;
namespace log_place = book::log_place;

constexpr const char* what_to_do = "What to do";
constexpr const char* doubted = "Do not order or fit a shim yet by the reading of 1 EX L";

class CloseAtTheDesk : public BenchAtTheDesk {
 protected:
  void SetUp() override {
    BenchAtTheDesk::SetUp();
    for (const book::Card& one : places.head.cards)
      read(name_of(one.valve, places.layout), one.valve.side == Side::inlet ? 0.19 : 0.25, 2.7);
  }
  void TearDown() override {
    while (const auto window = window_titled(*office_, close_title)) {
      for (const char* button : {"Cancel", "No", "OK"})
        if (window->has_button(button)) {
          window->press(button);
          break;
        }
      wait_for_turn();
    }
    BenchAtTheDesk::TearDown();
  }

  std::string sheet_in_sight() const {
    const Reference<css::sheet::XSpreadsheetView> view(
        Reference<css::frame::XModel>(document_, UNO_QUERY_THROW)->getCurrentController(),
        UNO_QUERY_THROW);
    return office::from_office(
        Reference<css::container::XNamed>(view->getActiveSheet(), UNO_QUERY_THROW)->getName());
  }
  int row_of(std::string_view valve) const {
    for (std::size_t i = 0; i < places.valves.size(); ++i)
      if (name_of(places.valves[i], places.layout) == valve) return static_cast<int>(i);
    throw std::runtime_error("no such valve");
  }
  void recheck_reads(std::string_view valve, double gap) {
    cell(on_recheck, recheck::at(row_of(valve), recheck::gap))->setValue(gap);
  }
  // 1 EX L is tight and gets a bought shim, which is 2.60 by its mark.
  void do_the_work(double new_gap) {
    cell(on_head, card("1 EX L").value(book::card::gap))->setValue(0.15);
    dispatch(document_, book::command::take_to_bench);
    ASSERT_TRUE(comes_to_the_bench());
    for (int row = 0; !in_row(row, FitMap::step).empty(); ++row) tick(row);
    recheck_reads("1 EX L", new_gap);
  }

  Window ask_to_close() {
    dispatch(document_, book::command::close_check);
    return box(close_title);
  }
  // What it will do, or why not yet.
  static std::string told(const Window& dialog) {
    const auto labels = dialog.labels();
    return labels.back() + "\n" + dialog.entry(labels.back());
  }
  void close(const Window& dialog) {
    ASSERT_TRUE(dialog.can_press(close_button)) << told(dialog);
    dialog.press(close_button);
    wait_for_turn();
  }

  // In any cell at the top of the sheet.
  bool says(std::string_view sheet, std::string_view words) const {
    constexpr int rows = 12;
    constexpr int columns = 60;
    for (const auto& row : Reference<css::sheet::XCellRangeData>(
                               range(sheet, book::block({0, 0}, columns, rows)), UNO_QUERY_THROW)
                               ->getDataArray())
      for (const css::uno::Any& one : row) {
        rtl::OUString text;
        if ((one >>= text) && office::from_office(text).find(words) != std::string::npos)
          return true;
      }
    return false;
  }
  // Plan and Head say that 1 EX L was not as predicted; the file keeps that.
  void show_off_reading() {
    for (const auto sheet : {on_head, on_plan}) {
      EXPECT_TRUE(says(sheet, doubted)) << sheet;
      show_sheet(document_, sheet);
      wait_for_turn();
      screen_->picture(std::string(PICTURES "/off-") + std::string(sheet) + ".png");
    }
    const At action = card("1 EX L").line(book::card::action).from;
    EXPECT_EQ(text_in(document_, on_head, action), "measure first");
    const std::filesystem::path file = office_->profile().folder() / "off.ods";
    Reference<css::frame::XStorable>(document_, UNO_QUERY_THROW)
        ->storeToURL(to_office(office::url_of(file)), {});
    css::uno::Sequence<css::beans::PropertyValue> how(1);
    how.getArray()[0].Name = to_office("Hidden");
    how.getArray()[0].Value <<= true;
    const Document reopened(office_->desktop()->loadComponentFromURL(
                                to_office(office::url_of(file)), to_office("_blank"), 0, how),
                            UNO_QUERY_THROW);
    EXPECT_EQ(text_in(reopened, on_recheck, recheck::readings_off),
              text_in(document_, on_recheck, recheck::readings_off));
    EXPECT_EQ(text_in(reopened, on_head, action), "measure first");
    NewBook::close(reopened);
  }

  std::string logged(int row, LogColumn column) const {
    return text_in(
        document_, on_log,
        {log_place::first.column + static_cast<int>(column), log_place::first.row + row});
  }
  // What every cell of the sheets that change holds.
  std::vector<std::string> all_entries() const {
    std::vector<std::string> all;
    for (const auto sheet : {on_head, on_shims, on_arrivals, on_fit, on_recheck, on_log})
      for (const auto& row :
           Reference<css::sheet::XCellRangeFormula>(
               Reference<css::table::XCellRange>(
                   document_->getSheets()->getByName(to_office(sheet)), UNO_QUERY_THROW)
                   ->getCellRangeByPosition(0, 0, 60, 80),
               UNO_QUERY_THROW)
               ->getFormulaArray())
        for (const rtl::OUString& one : row) all.push_back(office::from_office(one));
    return all;
  }
  std::vector<std::string> rows_of_log(const Document& document) const {
    std::vector<std::string> all;
    for (int row = 0; row < 40; ++row)
      for (int column = 0; column < log_columns; ++column)
        all.push_back(text_in(document, on_log,
                              {log_place::first.column + column, log_place::first.row + row}));
    return all;
  }
};

// Undone and done again, the cursor is where one looks.
TEST_F(CloseAtTheDesk, puts_a_whole_check_on_record_and_gives_it_back_by_undo) {
  do_the_work(0.25);
  show_sheet(document_, on_recheck);
  wait_for_turn();
  press_on(on_recheck, "Close this check\u2026");
  const Window dialog = box(close_title);
  dialog.enter("Distance, km", 0, "48 250");
  dialog.enter("Temperature, \u00b0C", 0, "20");
  dialog.enter("Measured by", 0, "Ann");
  dialog.enter("Note", 0, "cold engine");
  EXPECT_THAT(told(dialog),
              testing::AllOf(testing::HasSubstr("Log gets 16 rows: check 1, round 1"),
                             testing::HasSubstr("Into the drawer: 2.700 out of 1 EX L"),
                             testing::Not(testing::HasSubstr("Think of this"))));
  EXPECT_EQ(dialog.labels_cut(), std::vector<std::string>());
  screen_->picture(PICTURES "/close-check.png");
  const auto before = all_entries();
  close(dialog);
  ASSERT_TRUE(comes_true([this] { return !logged(15, LogColumn::valve).empty(); }));
  EXPECT_EQ(logged(16, LogColumn::valve), "");
  const int row = row_of("1 EX L");
  EXPECT_EQ(logged(row, LogColumn::check), "1");
  EXPECT_EQ(logged(row, LogColumn::date).size(), 10U) << logged(row, LogColumn::date);
  EXPECT_EQ(logged(row, LogColumn::date).substr(0, 2), "20") << "shown as a day";
  EXPECT_EQ(logged(row, LogColumn::distance), "48250");
  EXPECT_EQ(logged(row, LogColumn::valve), "1 EX L");
  EXPECT_EQ(logged(row, LogColumn::gap_found), "0.150");
  EXPECT_EQ(logged(row, LogColumn::state), "tight");
  EXPECT_EQ(logged(row, LogColumn::shim_found), "2.700");
  EXPECT_EQ(logged(row, LogColumn::shim_fitted), "2.600");
  EXPECT_EQ(logged(row, LogColumn::gap_left), "0.250");
  EXPECT_EQ(logged(row, LogColumn::who), "Ann");
  EXPECT_EQ(logged(row, LogColumn::note), "cold engine");
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "");
  EXPECT_EQ(at_valve("1 EX L", book::card::mark), "260");
  EXPECT_EQ(at_valve("2 EX L", book::card::gap), "");
  EXPECT_EQ(at_valve("2 EX L", book::card::micrometer), "2.700");
  EXPECT_EQ(text_in(document_, on_shims, right_of(book::shims_place::first_spare)), "2.700");
  EXPECT_FALSE(is_taken());
  for (const auto sheet : {on_head, on_shims, on_fit, on_recheck}) EXPECT_TRUE(is_protected(sheet));
  screen_->picture(PICTURES "/close-log.png");
  const auto after = all_entries();
  screen_->focus(title_of(document_));
  screen_->press("ctrl+z");
  EXPECT_TRUE(comes_true([&] { return all_entries() == before; })) << "one step";
  EXPECT_EQ(logged(0, LogColumn::valve), "");
  EXPECT_EQ(cell(on_log, log_place::first)->getType(), css::table::CellContentType_EMPTY);
  EXPECT_EQ(cell(on_fit, FitMap::taken)->getType(), css::table::CellContentType_TEXT);
  EXPECT_EQ(sheet_in_sight(), on_recheck) << "where the person stood";
  screen_->press("ctrl+y");
  EXPECT_TRUE(comes_true([&] { return all_entries() == after; }));
  EXPECT_NE(logged(0, LogColumn::valve), "");
  EXPECT_EQ(cell(on_fit, FitMap::taken)->getType(), css::table::CellContentType_EMPTY);
  EXPECT_EQ(sheet_in_sight(), on_log) << "as after the command";
}

// Data > Calculate > AutoCalculate.
TEST_F(CloseAtTheDesk, without_autocalculate_goes_by_what_is_entered_and_leaves_that_off) {
  const Reference<css::sheet::XCalculatable> calculation(document_, UNO_QUERY_THROW);
  calculation->enableAutomaticCalculation(false);
  cell(on_head, card("1 EX L").value(book::card::gap))->setValue(0.15);
  dispatch(document_, book::command::order_placed);
  EXPECT_THAT(box(order_title).words(), testing::HasSubstr("1 of 2."));
  answer(order_title, "OK");
  EXPECT_FALSE(calculation->isAutomaticCalculationEnabled());
  cell(on_arrivals, book::arrivals_place::at(0, book::arrivals_place::micrometer))->setValue(2.6);
  dispatch(document_, book::command::take_to_bench);
  ASSERT_TRUE(comes_to_the_bench()) << "the shim has come";
  EXPECT_FALSE(calculation->isAutomaticCalculationEnabled());
  for (int row = 0; !in_row(row, FitMap::step).empty(); ++row) tick(row);
  recheck_reads("1 EX L", 0.25);
  const Window dialog = ask_to_close();
  dialog.enter("Distance, km", 0, "48250");
  EXPECT_TRUE(comes_true([&] { return dialog.can_press(close_button); })) << told(dialog);
  close(dialog);
  ASSERT_TRUE(comes_true([this] { return !logged(15, LogColumn::valve).empty(); }));
  EXPECT_EQ(logged(row_of("1 EX L"), LogColumn::gap_found), "0.150");
  EXPECT_EQ(logged(row_of("1 EX L"), LogColumn::shim_fitted), "2.600");
  EXPECT_EQ(logged(row_of("1 EX L"), LogColumn::gap_left), "0.250");
  EXPECT_FALSE(calculation->isAutomaticCalculationEnabled());
  const auto undo =
      Reference<css::document::XUndoManagerSupplier>(document_, UNO_QUERY_THROW)->getUndoManager();
  undo->undo();
  EXPECT_EQ(logged(0, LogColumn::valve), "");
  EXPECT_FALSE(calculation->isAutomaticCalculationEnabled());
}

TEST_F(CloseAtTheDesk, begins_another_round_of_a_valve_that_is_off_and_closes_that) {
  do_the_work(0.33);
  Window dialog = ask_to_close();
  EXPECT_FALSE(dialog.can_press(close_button));
  EXPECT_THAT(told(dialog), testing::AllOf(testing::StartsWith("Not yet:"),
                                           testing::HasSubstr("Not as predicted: 1 EX L."),
                                           testing::HasSubstr("Choose another round")));
  screen_->picture(PICTURES "/close-not-yet.png");
  dialog.choose(what_to_do, 0, "Another round of this check");
  dialog.enter("Distance, km", 0, "48250");
  dialog.enter("Temperature, \u00b0C", 0, "20");
  dialog.enter("Measured by", 0, "Ann");
  EXPECT_TRUE(comes_true([&] { return dialog.can_press(close_button); })) << told(dialog);
  EXPECT_THAT(told(dialog), testing::Not(testing::HasSubstr("Next check"))) << "it does not end";
  close(dialog);
  ASSERT_TRUE(comes_true([this] { return !logged(15, LogColumn::valve).empty(); }));
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "0.330");
  EXPECT_EQ(at_valve("1 EX L", book::card::mark), "260");
  EXPECT_EQ(at_valve("2 EX L", book::card::gap), "0.250") << "nothing touched it";
  EXPECT_EQ(text_in(document_, on_recheck, recheck::round), "2");
  EXPECT_FALSE(is_taken());
  show_off_reading();
  dispatch(document_, book::command::order_placed);
  EXPECT_THAT(box(order_title).words(), testing::HasSubstr("1 EX L (off by 0.08)"));
  answer(order_title, "No");
  dispatch(document_, book::command::take_to_bench);
  EXPECT_THAT(box(take_title).words(), testing::HasSubstr("1 EX L (off by 0.08)"));
  answer(take_title, "No");
  EXPECT_FALSE(is_taken());
  EXPECT_TRUE(says(on_plan, doubted)) << "nobody measured it again";
  dispatch(document_, book::command::take_to_bench);
  answer(take_title, "Yes");
  ASSERT_TRUE(comes_to_the_bench());
  EXPECT_FALSE(says(on_plan, doubted)) << "it was measured again, and reads the same";
  EXPECT_TRUE(is_protected(on_recheck));
  for (int row = 0; !in_row(row, FitMap::step).empty(); ++row) tick(row);
  const std::string in = in_row(1, FitMap::in);
  recheck_reads("1 EX L", 0.33 + 2.6 - cell(on_fit, fit.at(1, FitMap::in))->getValue());
  dialog = ask_to_close();
  EXPECT_EQ(dialog.entry("Distance, km"), "48250") << "as in the first round";
  EXPECT_EQ(dialog.entry("Temperature, \u00b0C"), "20");
  EXPECT_EQ(dialog.entry("Measured by"), "Ann");
  EXPECT_EQ(dialog.entry("Note"), "");
  EXPECT_THAT(told(dialog), testing::HasSubstr("Next check: not known yet"));
  screen_->picture(PICTURES "/close-second-round.png");
  close(dialog);
  ASSERT_TRUE(comes_true([this] { return !logged(31, LogColumn::valve).empty(); }));
  EXPECT_EQ(logged(31, LogColumn::who), "Ann");
  const int row = 16 + row_of("1 EX L");
  EXPECT_EQ(logged(row, LogColumn::check), "1");
  EXPECT_EQ(logged(row, LogColumn::round), "2");
  EXPECT_EQ(logged(row, LogColumn::gap_found), "0.330");
  EXPECT_EQ(logged(row, LogColumn::shim_found), "2.600");
  EXPECT_EQ(logged(row, LogColumn::shim_fitted), in);
  EXPECT_EQ(logged(row_of("1 EX L"), LogColumn::gap_left), "0.330") << "the first round stands";
  EXPECT_EQ(text_in(document_, on_recheck, recheck::round), "");
}

TEST_F(CloseAtTheDesk, closes_a_check_in_which_nothing_was_changed_below_what_was_typed_by_hand) {
  const At by_hand = below(log_place::first, 3);
  cell(on_log, right_of(by_hand, static_cast<int>(LogColumn::check)))->setValue(7);
  cell(on_log, right_of(by_hand, static_cast<int>(LogColumn::distance)))->setValue(60000);
  const Window dialog = ask_to_close();
  dialog.enter("Distance, km", 0, "48250");
  EXPECT_THAT(told(dialog),
              testing::AllOf(testing::HasSubstr("No shim was changed."),
                             testing::HasSubstr("48250 km is less than the 60000 km")));
  close(dialog);
  EXPECT_THAT(box(close_title).words(),
              testing::AllOf(testing::HasSubstr("Was the instrument"),
                             testing::HasSubstr("Write it all the same?")));
  answer(close_title, "No");
  EXPECT_EQ(logged(4, LogColumn::valve), "");
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "0.250");
  const Window again = ask_to_close();
  again.enter("Distance, km", 0, "60000");
  close(again);
  ASSERT_TRUE(comes_true([this] { return !logged(19, LogColumn::valve).empty(); }));
  EXPECT_EQ(logged(3, LogColumn::distance), "60000");
  EXPECT_EQ(logged(3, LogColumn::valve), "");
  EXPECT_EQ(logged(4, LogColumn::check), "8");
  EXPECT_EQ(at_valve("1 EX L", book::card::gap), "");
  const std::filesystem::path file = std::filesystem::path(PICTURES) / "closed.ods";
  Reference<css::frame::XStorable>(document_, UNO_QUERY_THROW)
      ->storeToURL(to_office(office::url_of(file)), {});
  css::uno::Sequence<css::beans::PropertyValue> hidden(1);
  hidden.getArray()[0].Name = to_office("Hidden");
  hidden.getArray()[0].Value <<= true;
  const Document reloaded(office_->desktop()->loadComponentFromURL(to_office(office::url_of(file)),
                                                                   to_office("_blank"), 0, hidden),
                          UNO_QUERY_THROW);
  EXPECT_EQ(rows_of_log(reloaded), rows_of_log(document_));
  NewBook::close(reloaded);
  css::uno::Sequence<css::beans::PropertyValue> read_only(2);
  read_only.getArray()[0].Name = to_office("ReadOnly");
  read_only.getArray()[0].Value <<= true;
  read_only.getArray()[1].Name = to_office("OnMainThread");
  read_only.getArray()[1].Value <<= true;
  const Document locked(office_->desktop()->loadComponentFromURL(to_office(office::url_of(file)),
                                                                 to_office("_blank"), 0, read_only),
                        UNO_QUERY_THROW);
  dispatch(locked, book::command::close_check);
  EXPECT_THAT(box(close_title).words(), testing::HasSubstr("open for reading only"));
  answer(close_title, "OK");
  NewBook::close(locked);
}

TEST_F(CloseAtTheDesk, changes_nothing_where_a_password_keeps_a_sheet) {
  const Reference<css::util::XProtectable> shut(
      document_->getSheets()->getByName(to_office(on_head)), UNO_QUERY_THROW);
  shut->unprotect({});
  shut->protect(to_office("secret"));
  const auto before = all_entries();
  const Window dialog = ask_to_close();
  dialog.enter("Distance, km", 0, "48250");
  close(dialog);
  EXPECT_THAT(box(close_title).words(), testing::HasSubstr("Head"));
  answer(close_title, "OK");
  EXPECT_EQ(all_entries(), before);
}

TEST_F(CloseAtTheDesk, is_left_by_cancel_without_a_trace) {
  const auto before = all_entries();
  const Window dialog = ask_to_close();
  EXPECT_EQ(dialog.entry(what_to_do), "Close this check");
  EXPECT_EQ(dialog.entry("Measured on").size(), 10U) << "today";
  dialog.enter("Measured on", 0, "soon");
  EXPECT_TRUE(comes_true([&] { return !dialog.can_press(close_button); }));
  EXPECT_THAT(told(dialog), testing::HasSubstr("\"soon\" is no day"));
  dialog.press("Cancel");
  wait_for_turn();
  EXPECT_EQ(all_entries(), before);
}

// 1 EX L has closed up by 0.01 a check, and nobody has measured a drift of the others.
TEST_F(CloseAtTheDesk, says_when_the_next_check_is_due_and_how_a_longer_run_is_had) {
  for (int check = 1; check <= 3; ++check) {
    const auto in_log = [&](LogColumn column) {
      return cell(on_log, right_of(below(log_place::first, check - 1), static_cast<int>(column)));
    };
    in_log(LogColumn::check)->setValue(check);
    in_log(LogColumn::date)->setValue(44000 + 400 * check);
    in_log(LogColumn::distance)->setValue(12000 * check);
    Reference<css::text::XText>(in_log(LogColumn::valve), UNO_QUERY_THROW)
        ->setString(to_office("1 EX L"));
    for (const LogColumn gap : {LogColumn::gap_found, LogColumn::gap_left})
      in_log(gap)->setValue(0.29 - 0.01 * check);
    for (const LogColumn shim : {LogColumn::shim_found, LogColumn::shim_fitted})
      in_log(shim)->setValue(2.7);
  }
  cell(on_head, card("1 EX L").value(book::card::gap))->setValue(0.24);
  cell(book::sheet_name::engine, book::engine_place::interval)->setValue(24000);
  const Window dialog = ask_to_close();
  EXPECT_THAT(told(dialog), testing::HasSubstr("Next check: "));
  dialog.enter("Distance, km", 0, "48000");
  EXPECT_TRUE(comes_true([&] {
    return told(dialog).find("1 EX L may be at its smallest gap from") != std::string::npos;
  })) << told(dialog);
  EXPECT_THAT(told(dialog),
              testing::AllOf(testing::HasSubstr("If that is too soon, do not close the check yet. "
                                                "For a longer run 1 EX L wants a thinner shim"),
                             testing::HasSubstr("Choose aim for Put first there as well")));
  screen_->picture(PICTURES "/close-next-check.png");
}

TEST_F(CloseAtTheDesk, says_that_an_earlier_book_has_no_log) {
  Reference<css::beans::XPropertySet> properties(document_, UNO_QUERY_THROW);
  Reference<css::sheet::XNamedRanges>(properties->getPropertyValue(to_office("NamedRanges")),
                                      UNO_QUERY_THROW)
      ->removeByName(to_office(log_place::range_name));
  dispatch(document_, book::command::close_check);
  EXPECT_THAT(box(close_title).words(), testing::HasSubstr("This book has no Log"));
}

TEST_F(CloseAtTheDesk, comes_by_the_menu) {
  screen_->press("alt+l");
  screen_->press("s");
  EXPECT_TRUE(box(close_title).has_button(close_button));
}

}  // namespace
}  // namespace shimwright::tests
