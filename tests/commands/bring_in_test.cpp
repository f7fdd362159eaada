// SPDX-License-Identifier: MPL-2.0
//
// Bring in a log at the desk: an owner's sheet in another document or in the book's own, the
// dialog, what Log then holds, and Undo.
#include <chrono>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XController.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <com/sun/star/util/XNumberFormats.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <variant>

#include "../book/on_sheets.hpp"
#include "bench_desk.hpp"
#include "core/engine/layout.hpp"
#include "core/log/log_row.hpp"

namespace shimwright::tests {
namespace {

namespace in_log = book::log_place;

constexpr const char* bring_in_title = "Bring in a log";
constexpr const char* bring_button = "Bring in";

// A formula begins with =.
using Cell = std::variant<std::monostate, double, const char*>;
using Rows = std::vector<std::vector<Cell>>;

class OldLog : public BenchAtTheDesk {
 protected:
  void SetUp() override {
    BenchAtTheDesk::SetUp();
    owner_ = open_sheet(*office_);
  }
  void TearDown() override {
    while (const auto box = window_titled(*office_, bring_in_title)) {
      box->press(box->has_button("Cancel") ? "Cancel" : "OK");
      wait_for_turn();
    }
    owner_.clear();
    BenchAtTheDesk::TearDown();
  }

  static Reference<css::sheet::XSpreadsheet> first_sheet(const Document& document) {
    const Reference<css::container::XIndexAccess> sheets(document->getSheets(), UNO_QUERY_THROW);
    return Reference<css::sheet::XSpreadsheet>(sheets->getByIndex(0), UNO_QUERY_THROW);
  }

  static Reference<css::table::XCellRange> put(const Reference<css::sheet::XSpreadsheet>& sheet,
                                               const Rows& rows) {
    std::size_t width = 0;
    for (const auto& row : rows) width = std::max(width, row.size());
    const auto range = sheet->getCellRangeByPosition(0, 0, static_cast<sal_Int32>(width) - 1,
                                                     static_cast<sal_Int32>(rows.size()) - 1);
    css::uno::Sequence<css::uno::Sequence<css::uno::Any>> all(static_cast<sal_Int32>(rows.size()));
    std::vector<std::pair<std::size_t, std::size_t>> formulas;
    for (std::size_t r = 0; r < rows.size(); ++r) {
      css::uno::Sequence<css::uno::Any> row(static_cast<sal_Int32>(width));
      // A blank: nothing at all would be written as #N/A.
      std::fill_n(row.getArray(), width, css::uno::Any(rtl::OUString()));
      for (std::size_t c = 0; c < rows[r].size(); ++c) {
        css::uno::Any& cell = row.getArray()[c];
        if (const auto* number = std::get_if<double>(&rows[r][c])) cell <<= *number;
        if (const auto* text = std::get_if<const char*>(&rows[r][c])) {
          if (**text == '=')
            formulas.emplace_back(r, c);
          else
            cell <<= to_office(*text);
        }
      }
      all.getArray()[r] = row;
    }
    Reference<css::sheet::XCellRangeData>(range, UNO_QUERY_THROW)->setDataArray(all);
    for (const auto& [r, c] : formulas)
      sheet->getCellByPosition(static_cast<sal_Int32>(c), static_cast<sal_Int32>(r))
          ->setFormula(to_office(std::get<const char*>(rows[r][c])));
    return range;
  }

  static void show_as_date(const Document& document, const Reference<css::uno::XInterface>& range) {
    const auto formats =
        Reference<css::util::XNumberFormatsSupplier>(document, UNO_QUERY_THROW)->getNumberFormats();
    const css::lang::Locale english("en", "US", "");
    sal_Int32 key = formats->queryKey(to_office("YYYY-MM-DD"), english, false);
    if (key < 0) key = formats->addNew(to_office("YYYY-MM-DD"), english);
    Reference<css::beans::XPropertySet>(range, UNO_QUERY_THROW)
        ->setPropertyValue(to_office("NumberFormat"), css::uno::Any(key));
  }

  static void select(const Document& document, const Reference<css::uno::XInterface>& range) {
    Reference<css::view::XSelectionSupplier>(
        Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getCurrentController(),
        UNO_QUERY_THROW)
        ->select(css::uno::Any(range));
  }

  Window ask_for(const Rows& rows) {
    select(owner_, put(first_sheet(owner_), rows));
    dispatch(owner_, book::command::bring_in_log);
    return opened();
  }
  Window opened() {
    const Window window = box(bring_in_title);
    if (!window.has_button(bring_button))
      throw std::runtime_error("in place of the dialog: " + window.words());
    return window;
  }

  void take_all(const Window& window) {
    window.press(bring_button);
    wait_for_turn();
    EXPECT_TRUE(comes_true([&] {
      const auto box = window_titled(*office_, bring_in_title);
      return box && !box->has_button(bring_button);
    }));
    done_ = box(bring_in_title).words();
    answer(bring_in_title, "OK");
  }

  std::string logged(int row, LogColumn column) const {
    return text_in(document_, on_log,
                   right_of(below(in_log::first, row), static_cast<int>(column)));
  }
  double logged_number(int row, LogColumn column) const {
    return cell(on_log, right_of(below(in_log::first, row), static_cast<int>(column)))->getValue();
  }
  std::vector<std::string> whole_log(int rows = 40) const {
    return contents(on_log, book::block(in_log::first, log_columns, rows));
  }
  static std::string status(const Window& window) { return window.labels().back(); }
  // The label before the list of columns, or of rows.
  static std::string label_with(const Window& window, std::string_view words) {
    for (const std::string& label : window.labels())
      if (label.find(words) != std::string::npos) return label;
    throw std::runtime_error("no label with " + std::string(words));
  }

  Document owner_;
  std::string done_;
};

const Rows one_row_a_valve{
    {"When", "Odometer", "Valve", "Gap", "Shim", "New shim", "Remarks"},
    {"4.5.2019", "12 500", "ex1l", "0,15", 270.0, "=2.6+0.05", "measured cold"},
    {"4.5.2019", "12 500", "1 EX R", 0.24, 265.0, {}, {}},
    {"4.5.2019", "12 500", "exhaust 2", 0.24, 265.0, {}, {}},
    {43987.0, "24.500 km", "1 EX L", 0.23, 2.65, {}, {}},
    {43987.0, "24.500 km", "1 IN L", "ok", 2.50, {}, {}},
    {"Average", {}, {}, "=AVERAGE(D2:D5)", {}, {}, {}},
};

TEST_F(OldLog, of_one_row_a_valve_comes_in_from_another_document_and_goes_by_undo) {
  show_as_date(owner_, first_sheet(owner_)->getCellRangeByPosition(0, 4, 0, 5));
  const Window window = ask_for(one_row_a_valve);
  EXPECT_EQ(status(window),
            "3 rows go into Log, of 2 checks. 3 make no sense and cannot be taken.\nDates such as "
            "4/5 can be read either way here: look whether they are right.");
  EXPECT_THAT(window.labels_cut(), testing::IsEmpty());
  screen_->picture(PICTURES "/bring-in.png");
  const auto before = whole_log();
  take_all(window);
  EXPECT_EQ(done_, "Brought into Log: 3 rows of 2 checks. Undo takes them back in one step.");
  screen_->picture(PICTURES "/bring-in-done.png");
  EXPECT_EQ(logged(0, LogColumn::check), "1");
  EXPECT_EQ(logged_number(0, LogColumn::date), 43589);
  EXPECT_EQ(logged_number(0, LogColumn::distance), 12500);
  EXPECT_EQ(logged(0, LogColumn::valve), "1 EX L");
  EXPECT_EQ(logged_number(0, LogColumn::gap_found), 0.15);
  EXPECT_EQ(logged_number(0, LogColumn::shim_found), 2.7);
  EXPECT_EQ(logged_number(0, LogColumn::shim_fitted), 2.65);
  EXPECT_EQ(logged(0, LogColumn::note), "measured cold");
  EXPECT_EQ(logged(1, LogColumn::valve), "1 EX R");
  EXPECT_EQ(logged(2, LogColumn::check), "2");
  EXPECT_EQ(logged_number(2, LogColumn::date), 43987);
  EXPECT_EQ(logged_number(2, LogColumn::distance), 24500);
  EXPECT_EQ(logged(3, LogColumn::valve), "");
  Reference<css::document::XUndoManagerSupplier>(document_, UNO_QUERY_THROW)
      ->getUndoManager()
      ->undo();
  EXPECT_EQ(whole_log(), before) << "one step";
}

TEST_F(OldLog, of_one_row_a_check_gives_a_row_for_each_valve_and_stays_as_it_is) {
  const Rows rows{{"Date", "km", "1 EX L", {}, "1 EX R", {}},
                  {{}, {}, "gap", "shim", "gap", "shim"},
                  {"2019-05-04", 12500.0, 0.15, "=2.6+0.1", 0.24, 2.65},
                  {"2020-06-05", 24500.0, 0.14, 2.7, {}, {}}};
  const Window window = ask_for(rows);
  EXPECT_EQ(window.entry("Rows"), "one row a check, valves side by side");
  EXPECT_EQ(window.entry("Heading"), "first two rows");
  EXPECT_EQ(status(window), "3 rows go into Log, of 2 checks.");
  screen_->picture(PICTURES "/bring-in-checks.png");
  take_all(window);
  EXPECT_EQ(logged(0, LogColumn::valve), "1 EX L");
  EXPECT_EQ(logged_number(0, LogColumn::shim_found), 2.7);
  EXPECT_EQ(logged(1, LogColumn::valve), "1 EX R");
  EXPECT_EQ(logged(2, LogColumn::check), "2");
  EXPECT_EQ(office::from_office(first_sheet(owner_)->getCellByPosition(3, 2)->getFormula()),
            "=2.6+0.1");
}

TEST_F(OldLog, can_be_put_right_in_the_dialog) {
  const Window window = ask_for({{"Day", "Valve", "Reading", "Fuel"},
                                 {"04/05/2019", "1 EX L", 6.0, "95"},
                                 {"05/05/2019", "1 EX R", 7.0, "95"}});
  const std::string columns = label_with(window, "your heading");
  EXPECT_THAT(window.entry(columns), testing::HasSubstr("Fuel")) << "what is left out comes first";
  EXPECT_EQ(window.entry("holds"), "left out");
  window.select_line(columns, 2);
  wait_for_turn();
  EXPECT_EQ(window.entry("holds"), "gap found");
  EXPECT_EQ(window.entry("in"), "0.01 mm");
  window.choose("in", 0, "0.001 inch");
  wait_for_turn();
  EXPECT_THAT(window.entry(columns), testing::HasSubstr("gap found, 0.001 inch"));
  window.choose("Dates", 0, "month first: 4/5 is 5 April");
  wait_for_turn();
  EXPECT_EQ(window.entry("Dates"), "month first: 4/5 is 5 April");
  take_all(window);
  EXPECT_EQ(logged_number(0, LogColumn::date), 43560) << "5 April";
  EXPECT_NEAR(logged_number(0, LogColumn::gap_found), 0.1524, 1e-12);
}

TEST_F(OldLog, rows_have_ticks_that_a_button_sets_and_takes_away) {
  const Window window = ask_for(one_row_a_valve);
  window.press("Tick none");
  wait_for_turn();
  EXPECT_THAT(status(window), testing::StartsWith("No row goes into Log."));
  EXPECT_FALSE(window.can_press(bring_button));
  window.press("Tick all");
  wait_for_turn();
  EXPECT_THAT(status(window), testing::StartsWith("3 rows go into Log"));
  window.select_line(label_with(window, "your row"), 1);
  wait_for_turn();
  window.press("Tick or untick");
  wait_for_turn();
  EXPECT_THAT(status(window), testing::StartsWith("2 rows go into Log"));
  EXPECT_THAT(window.entry(label_with(window, "your row")), testing::StartsWith("\u2610 row 3"));
  take_all(window);
  EXPECT_EQ(logged(1, LogColumn::valve), "1 EX L") << "1 EX R was left out";
}

TEST_F(OldLog, rows_have_ticks_that_keys_and_a_double_click_set_and_take_away) {
  const Window window = ask_for(one_row_a_valve);
  const std::string rows = label_with(window, "your row");
  const auto comes_to = [&](const char* words) {
    return comes_true([&] { return status(window).starts_with(words); }, std::chrono::seconds(5));
  };
  screen_->focus(bring_in_title);
  window.select_line(rows, 1);
  window.focus(rows);
  wait_for_turn();
  screen_->press("space");
  EXPECT_TRUE(comes_to("2 rows go into Log")) << "the space bar";
  screen_->press("alt+t");
  EXPECT_TRUE(comes_to("3 rows go into Log")) << "the button's letter";
  const css::awt::Point corner = window.corner(rows);
  screen_->double_click(corner.X + 60, corner.Y + 8);
  EXPECT_TRUE(comes_to("2 rows go into Log")) << "a double click";
  screen_->picture(PICTURES "/bring-in-ticks.png");
}

TEST_F(OldLog, with_a_gap_ten_times_too_large_asks_for_it_and_takes_it_by_hand_only) {
  const Window window = ask_for({{"When", "Valve", "Gap", "Shim"},
                                 {"4.5.2019", "1 EX L", 0.15, 2.70},
                                 {"4.5.2019", "1 EX R", 0.14, 2.70},
                                 {"4.5.2019", "1 IN L", 2.4, 2.70},
                                 {"4.5.2019", "1 IN R", 0.16, 2.70}});
  EXPECT_THAT(
      status(window),
      testing::StartsWith("3 rows go into Log, of 1 check. 1 row has a gap that can hardly be "
                          "right: look at it, and tick what is right."));
  EXPECT_THAT(window.labels_cut(), testing::IsEmpty());
  screen_->picture(PICTURES "/bring-in-slip.png");
  take_all(window);
  EXPECT_EQ(logged(2, LogColumn::valve), "1 IN R");
  EXPECT_EQ(logged(3, LogColumn::valve), "");
}

TEST_F(OldLog, what_is_in_log_already_is_left_out) {
  take_all(ask_for(one_row_a_valve));
  const Window window = ask_for(one_row_a_valve);
  EXPECT_THAT(status(window), testing::StartsWith("No row goes into Log."));
  EXPECT_THAT(status(window), testing::HasSubstr("3 are in Log already."));
  EXPECT_FALSE(window.can_press(bring_button));
  screen_->picture(PICTURES "/bring-in-again.png");
}

TEST_F(OldLog, older_than_the_log_gets_the_next_numbers_and_is_told_so) {
  take_all(ask_for(one_row_a_valve));
  const Window window =
      ask_for({{"Datum", "km-Stand", "Ventil", "Spiel", "Shim", "Shim neu", "Bemerkungen"},
               {"3.5.2017", "2 500", "1 EX L", 0.20, 2.70, {}, "Nocken matt"},
               {"3.4.2016", "1 500", "1 EX L", 0.22, 2.70, {}, {}},
               {{}, {}, {}, {}, {}, {}, {}},
               {{}, {}, {}, {}, {}, {}, {}},
               {{}, {}, {}, {}, {}, {}, {}},
               {{}, {}, {}, {}, {}, {}, {}}});
  EXPECT_THAT(status(window), testing::HasSubstr("Some checks are older than those in Log"));
  EXPECT_THAT(window.labels_cut(), testing::IsEmpty());
  screen_->picture(PICTURES "/bring-in-older.png");
}

TEST_F(OldLog, may_stand_on_a_sheet_of_the_book_but_not_be_the_books_own) {
  const auto sheets = document_->getSheets();
  sheets->insertNewByName(to_office("mine"), 0);
  const auto range = put(first_sheet(document_), one_row_a_valve);
  show_sheet(document_, "mine");
  select(document_, range->getCellByPosition(2, 2));
  dispatch(document_, book::command::bring_in_log);
  const Window window = opened();
  EXPECT_THAT(status(window), testing::StartsWith("3 rows go into Log")) << "the block around it";
  take_all(window);
  EXPECT_EQ(logged(2, LogColumn::check), "2");
  show_sheet(document_, on_log);
  dispatch(document_, book::command::bring_in_log);
  EXPECT_THAT(box(bring_in_title).words(),
              testing::StartsWith("What is selected is this book's own sheet."));
  answer(bring_in_title, "OK");
}

TEST_F(OldLog, needs_a_selection_and_one_book) {
  dispatch(owner_, book::command::bring_in_log);
  EXPECT_THAT(box(bring_in_title).words(),
              testing::StartsWith("Open the sheet that holds your old log, select its rows"));
  answer(bring_in_title, "OK");
  close(document_);
  document_.clear();
  dispatch(owner_, book::command::bring_in_log);
  EXPECT_THAT(box(bring_in_title).words(), testing::StartsWith("No service book is open"));
  answer(bring_in_title, "OK");
}

// Data > Calculate > AutoCalculate, in either document.
TEST_F(OldLog, comes_in_without_autocalculate_by_fresh_figures_and_leaves_that_off) {
  for (const Document& document : {document_, owner_})
    Reference<css::sheet::XCalculatable>(document, UNO_QUERY_THROW)
        ->enableAutomaticCalculation(false);
  const Rows rows{{"Date", "km", "Valve", "Gap"}, {"2019-05-04", "12500", "1 EX L", "=0.1+E2"}};
  const auto range = put(first_sheet(owner_), rows);
  first_sheet(owner_)->getCellByPosition(4, 1)->setValue(0.05);
  select(owner_, range);
  dispatch(owner_, book::command::bring_in_log);
  take_all(opened());
  EXPECT_NEAR(logged_number(0, LogColumn::gap_found), 0.15, 1e-12);
  for (const Document& document : {document_, owner_})
    EXPECT_FALSE(Reference<css::sheet::XCalculatable>(document, UNO_QUERY_THROW)
                     ->isAutomaticCalculationEnabled());
}

TEST_F(OldLog, of_five_thousand_rows_comes_in) {
  Rows rows{{"Date", "Odometer", "Valve", "Gap", "Shim"}};
  std::vector<std::string> names;
  for (const book::Card& card : places.head.cards)
    names.push_back(name_of(card.valve, places.layout));
  while (rows.size() < 5000)
    for (const std::string& name : names) {
      const double check = static_cast<double>((rows.size() - 1) / names.size());
      rows.push_back({36000.0 + 20 * check, 500.0 * check, name.c_str(), 0.2, 2.7});
    }
  const auto range = put(first_sheet(owner_), rows);
  select(owner_, range);
  dispatch(owner_, book::command::bring_in_log);
  const Window window = opened();
  window.choose("Dates", 0, "month first: 4/5 is 5 April");
  wait_for_turn();
  window.press(bring_button);
  EXPECT_TRUE(comes_true([&] {
    const auto box = window_titled(*office_, bring_in_title);
    return box && !box->has_button(bring_button);
  }));
  answer(bring_in_title, "OK");
  EXPECT_EQ(logged(static_cast<int>(rows.size()) - 2, LogColumn::valve), names.back());
}

class OldLogUnderAComma : public OldLog {
 protected:
  static void SetUpTestSuite() {
    office::Settings settings;
    settings.locale = "de-DE";
    settings.process_locale = "de_DE.UTF-8";
    start(settings);
  }
};

TEST_F(OldLogUnderAComma, is_read_alike) {
  const Window window = ask_for(one_row_a_valve);
  EXPECT_THAT(status(window), testing::StartsWith("3 rows go into Log, of 2 checks."));
  screen_->picture(PICTURES "/bring-in-comma.png");
  take_all(window);
  EXPECT_EQ(logged_number(0, LogColumn::gap_found), 0.15);
  EXPECT_EQ(logged_number(0, LogColumn::shim_fitted), 2.65);
  EXPECT_EQ(logged_number(2, LogColumn::distance), 24500);
  EXPECT_EQ(logged_number(2, LogColumn::shim_found), 2.65);
}

}  // namespace
}  // namespace shimwright::tests
