// SPDX-License-Identifier: MPL-2.0
//
// Three whole services of one engine, years apart, played in the window by the book's own commands
// and partly by keys, with the file saved, closed and opened again between all stages. What the
// book keeps of them is compared with a reckoning of our own.
#include <com/sun/star/frame/XStorable.hpp>
#include <filesystem>
#include <map>

#include "../book/on_sheets.hpp"
#include "bench_desk.hpp"
#include "core/engine/presets.hpp"
#include "core/log/log_row.hpp"
#include "service_model.hpp"

namespace shimwright::tests {
namespace {

namespace arrivals = book::arrivals_place;
namespace recheck = book::recheck_place;
namespace log_place = book::log_place;
namespace shims = book::shims_place;

// Limits as fill_in() enters them; every shim by micrometer, some by their mark as well.
std::vector<PaperValve> twin_valves() {
  const auto exhaust = [](const char* name, PaperShim shim) {
    return PaperValve{name, 220, 280, std::move(shim)};
  };
  const auto inlet = [](const char* name, PaperShim shim) {
    return PaperValve{name, 160, 220, std::move(shim)};
  };
  return {exhaust("1 EX L", {2700, "270", "2.700"}), exhaust("1 EX R", {2650, "265", "2.650"}),
          inlet("1 IN L", {2800, "280", "2.800"}),   inlet("1 IN R", {3000, "", "3.000"}),
          exhaust("2 EX L", {2550, "", "2.550"}),    exhaust("2 EX R", {2700, "270", "2.700"}),
          inlet("2 IN L", {2720, "", "2.720"}),      inlet("2 IN R", {2680, "", "2.680"})};
}

class ThreeServices : public BenchAtTheDesk {
 protected:
  ThreeServices() : BenchAtTheDesk(twin()) {}

  static EngineLayout twin() {
    return std::ranges::find(presets(), std::string("parallel twin"), &Preset::name)->layout;
  }
  void SetUp() override {
    const Window window = ask();
    fill_in(window);
    window.choose("Kind", 0, "parallel twin");
    window.enter("Price each", 0, "4.20");
    document_ = make(window);
    screen_->focus(title_of(document_));
  }
  void TearDown() override {
    while (const auto window = window_titled(*office_, close_title)) {
      window->press(window->has_button("Cancel") ? "Cancel" : "OK");
      wait_for_turn();
    }
    BenchAtTheDesk::TearDown();
  }

  void number(std::string_view sheet, At at, int micrometres) const {
    cell(sheet, at)->setValue(micrometres / 1000.0);
  }
  // By the keys of the keyboard, as it is then displayed.
  void keys(std::string_view sheet, At at, const std::string& typed, std::string_view shown) const {
    screen_->focus(title_of(document_));
    go_to(*office_, document_, sheet, at);
    screen_->type(typed);
    screen_->press("Return");
    EXPECT_TRUE(comes_true([&] { return text_in(document_, sheet, at) == shown; }))
        << typed << " came to " << text_in(document_, sheet, at);
  }
  void gaps_found(const std::map<std::string, int>& gaps) {
    for (const auto& [valve, gap] : gaps) {
      paper_.at(valve).gap = gap;
      number(on_head, card(valve).value(book::card::gap), gap);
    }
  }
  At recheck_of(std::string_view valve, recheck::Column column) const {
    const auto all = paper_.valves();
    const auto found = std::ranges::find(all, valve, &PaperValve::name);
    return recheck::at(static_cast<int>(found - all.begin()), column);
  }
  void gaps_left(const std::map<std::string, int>& gaps) const {
    for (const auto& [valve, gap] : gaps) number(on_recheck, recheck_of(valve, recheck::gap), gap);
  }
  std::string arrival(int row, arrivals::Column column) const {
    return text_in(document_, on_arrivals, arrivals::at(row, column));
  }

  // Takes the steps to the bench, compares them with the moves expected, in whatever order, and
  // ticks them.
  void work(const std::vector<PaperMove>& moves) {
    ASSERT_TRUE(comes_to_the_bench());
    std::vector<std::string> steps;
    for (int row = 0; !in_row(row, FitMap::step).empty(); ++row)
      if (!in_row(row, FitMap::in).empty())
        steps.push_back(in_row(row, FitMap::valve) + " out " + in_row(row, FitMap::out) + " in " +
                        in_row(row, FitMap::in) + " from " + in_row(row, FitMap::from));
    EXPECT_THAT(steps, testing::UnorderedElementsAreArray(paper_.steps_of(moves)));
    reopen();
    for (int row = 0; !in_row(row, FitMap::step).empty(); ++row) tick(row);
    reopen();
  }

  Window closing(const PaperFacts& facts, const char* what) {
    const Window dialog = box(close_title);
    dialog.choose("What to do", 0, what);
    dialog.enter("Measured on", 0, facts.date);
    dialog.enter("Distance, km", 0, facts.distance);
    dialog.enter("Temperature, \u00b0C", 0, facts.temperature);
    dialog.enter("Measured by", 0, facts.who);
    dialog.enter("Note", 0, facts.note);
    return dialog;
  }
  void put_on_record(const Window& dialog) {
    ASSERT_TRUE(comes_true([&] { return dialog.can_press(close_button); }))
        << dialog.entry(dialog.labels().back());
    dialog.press(close_button);
    wait_for_turn();
    EXPECT_FALSE(window_titled(*office_, close_title)) << box(close_title).words();
  }

  std::vector<std::string> log() const {
    std::vector<std::string> rows;
    for (int row = 0; row < log_place::rows; ++row) {
      std::string line;
      bool blank = true;
      for (int column = 0; column < log_columns; ++column) {
        const std::string text = text_in(
            document_, on_log, {log_place::first.column + column, log_place::first.row + row});
        blank = blank && text.empty();
        line += (column == 0 ? "" : " | ") + text;
      }
      if (blank) break;
      rows.push_back(line);
    }
    return rows;
  }
  // What the book keeps, beside what the paper keeps.
  void compare_record() const { EXPECT_EQ(log(), paper_.log()); }
  void compare_after_close() {
    compare_record();
    for (const PaperValve& valve : paper_.valves()) {
      EXPECT_EQ(at_valve(valve.name, book::card::gap), "") << valve.name;
      EXPECT_EQ(at_valve(valve.name, book::card::mark), valve.shim.mark) << valve.name;
      EXPECT_EQ(at_valve(valve.name, book::card::micrometer), valve.shim.micrometer) << valve.name;
      EXPECT_EQ(text_in(document_, on_recheck, recheck_of(valve.name, recheck::gap)), "");
      EXPECT_EQ(text_in(document_, on_recheck, recheck_of(valve.name, recheck::left)), "");
    }
    std::map<int, PaperSpare> drawer;
    for (int row = 0; row < shims::spares; ++row) {
      const auto text = [&](int column) {
        return text_in(document_, on_shims,
                       {shims::first_spare.column + column, shims::first_spare.row + row});
      };
      if (text(1).empty() && text(0).empty() && text(2).empty() && text(3).empty()) continue;
      EXPECT_EQ(text(0), "A") << text(1);
      const int size = std::stoi(text(1)) * 1000 + std::stoi(text(1).substr(2));
      EXPECT_FALSE(drawer.contains(size)) << text(1) << " is listed twice";
      drawer[size] = {std::stoi(text(2)), text(3)};
    }
    EXPECT_EQ(drawer.size(), paper_.drawer().size());
    for (const auto& [size, spare] : paper_.drawer()) {
      EXPECT_EQ(drawer[size].count, spare.count) << size;
      EXPECT_EQ(drawer[size].note, spare.note) << size;
    }
    EXPECT_FALSE(is_taken());
    for (int row = 0; row < arrivals::rows(places.count()); ++row)
      for (const auto column : {arrivals::ordered, arrivals::arrived, arrivals::mark,
                                arrivals::micrometer, arrivals::verdict})
        EXPECT_EQ(arrival(row, column), "") << row;
    for (const auto sheet : {on_head, on_shims, on_arrivals, on_fit, on_recheck})
      EXPECT_TRUE(is_protected(sheet)) << sheet;
  }

  // Saves, closes and opens again, as over night. What stands in the book is the same.
  void reopen() {
    const auto before = everything_in(document_);
    const std::filesystem::path file =
        office_->profile().folder() / ("twin " + std::to_string(++times_saved_) + ".ods");
    Reference<css::frame::XStorable>(document_, UNO_QUERY_THROW)
        ->storeToURL(to_office(office::url_of(file)), {});
    close(document_);
    document_.clear();
    css::uno::Sequence<css::beans::PropertyValue> how(1);
    how.getArray()[0].Name = to_office("OnMainThread");
    how.getArray()[0].Value <<= true;
    office_->desktop()->loadComponentFromURL(to_office(office::url_of(file)), to_office("_blank"),
                                             0, how);
    document_ = new_document();
    screen_->focus(title_of(document_));
    EXPECT_THAT(everything_in(document_), testing::ContainerEq(before)) << "saved " << times_saved_;
  }

  void first_service();
  void second_service();
  void third_service();

  PaperService paper_{twin_valves()};
  int times_saved_ = 0;
};

// Four valves out of limits: two shims change places down the engine, one comes out of the drawer,
// two are bought, and both come wrong at first.
void ThreeServices::first_service() {
  for (const PaperValve& valve : paper_.valves()) {
    if (!valve.shim.mark.empty())
      cell(on_head, card(valve.name).value(book::card::mark))->setValue(std::stoi(valve.shim.mark));
    number(on_head, card(valve.name).value(book::card::micrometer), valve.shim.size);
  }
  gaps_found({{"1 EX L", 150},
              {"1 EX R", 250},
              {"1 IN R", 120},
              {"2 EX L", 320},
              {"2 EX R", 260},
              {"2 IN L", 240},
              {"2 IN R", 200}});
  paper_.at("1 IN L").gap = 100;
  keys(on_head, card("1 IN L").value(book::card::gap), "0.1", "0.100");
  keys(on_shims, shims::first_spare, "A", "A");
  keys(on_shims, right_of(shims::first_spare), "2.64", "2.640");
  keys(on_shims, right_of(shims::first_spare, 2), "1", "1");
  keys(on_shims, right_of(shims::first_spare, 3), "blue tin", "blue tin");
  paper_.drawer()[2640] = {1, "blue tin"};
  reopen();

  show_sheet(document_, on_plan);
  wait_for_turn();
  press_on(on_plan, order_title);
  EXPECT_THAT(box(order_title).words(), testing::HasSubstr("1 of 2.60"));
  answer(order_title, "OK");
  EXPECT_EQ(arrival(0, arrivals::ordered), "2.600");
  EXPECT_EQ(arrival(1, arrivals::ordered), "2.900");
  EXPECT_EQ(arrival(2, arrivals::ordered), "");
  reopen();

  keys(on_arrivals, arrivals::at(0, arrivals::micrometer), "2.655", "2.655");
  EXPECT_EQ(arrival(0, arrivals::verdict), "no use here: send back");
  keys(on_arrivals, arrivals::at(1, arrivals::arrived), "no", "no");
  EXPECT_EQ(arrival(1, arrivals::verdict), "not coming");
  reopen();
  dispatch(document_, book::command::order_placed);
  answer(order_title, "OK");
  EXPECT_EQ(arrival(2, arrivals::ordered), "2.600");
  EXPECT_EQ(arrival(3, arrivals::ordered), "2.900");
  EXPECT_EQ(arrival(4, arrivals::ordered), "");
  reopen();

  cell(on_arrivals, arrivals::at(2, arrivals::mark))->setValue(260);
  number(on_arrivals, arrivals::at(2, arrivals::micrometer), 2602);
  number(on_arrivals, arrivals::at(3, arrivals::micrometer), 2952);
  EXPECT_EQ(arrival(2, arrivals::verdict), "as ordered");
  EXPECT_EQ(arrival(3, arrivals::verdict), "will do for 1 IN R");
  screen_->picture(PICTURES "/three-services-arrivals.png");
  reopen();

  const std::vector<PaperMove> moves{{"1 EX L", "bought", {2602, "260", "2.602"}},
                                     {"1 IN L", "1 EX L"},
                                     {"1 IN R", "bought", {2952, "", "2.952"}},
                                     {"2 EX L", "spare", {2640}},
                                     {"2 IN L", "1 IN L"}};
  screen_->press("alt+l");
  screen_->press("t");
  work(moves);

  const std::map<std::string, int> left{
      {"1 EX L", 250}, {"1 EX R", 240}, {"1 IN L", 200}, {"1 IN R", 170}, {"2 EX L", 230}};
  gaps_left(left);
  keys(on_recheck, recheck_of("2 IN L", recheck::gap), "0.16", "0.160");
  EXPECT_EQ(text_in(document_, on_recheck, recheck_of("2 IN L", recheck::verdict)), "as predicted");
  screen_->picture(PICTURES "/three-services-recheck.png");
  reopen();

  const PaperFacts facts{1, 1, "2024-03-02", "12000", "18", "Ann", "first of the season"};
  show_sheet(document_, on_recheck);
  wait_for_turn();
  press_on(on_recheck, "Close this check\u2026");
  put_on_record(closing(facts, "Close this check"));
  auto again = left;
  again["2 IN L"] = 160;
  paper_.end_round(facts, moves, again);
  paper_.drawer()[2655] = {1, "bought and not used, 2024-03-02"};
  compare_after_close();
  reopen();
}

// No list of arrivals is kept; a shim that was in the drawer since the first service goes in, is
// not seated, and the valve gets its old one back in another round.
void ThreeServices::second_service() {
  gaps_found({{"1 EX L", 230},
              {"1 EX R", 220},
              {"1 IN L", 180},
              {"1 IN R", 140},
              {"2 EX L", 200},
              {"2 EX R", 240},
              {"2 IN L", 130},
              {"2 IN R", 170}});
  reopen();
  const std::vector<PaperMove> moves{{"1 IN R", "bought", {2900, "290", ""}},
                                     {"2 EX L", "bought", {2600, "260", ""}},
                                     {"2 IN L", "spare", {2720}}};
  show_sheet(document_, on_fit);
  wait_for_turn();
  press_on(on_fit, take_title);
  work(moves);

  const std::map<std::string, int> left{{"1 IN R", 190}, {"2 EX L", 240}, {"2 IN L", 270}};
  gaps_left(left);
  EXPECT_THAT(text_in(document_, on_recheck, recheck_of("2 IN L", recheck::verdict)),
              testing::StartsWith("off by 0.06"));
  reopen();
  PaperFacts facts{2, 1, "2025-03-08", "24500", "21", "Ben", ""};
  dispatch(document_, book::command::close_check);
  EXPECT_FALSE(closing(facts, "Close this check").can_press(close_button));
  put_on_record(closing(facts, "Another round of this check"));
  paper_.end_round(facts, moves, left);
  compare_record();
  EXPECT_EQ(at_valve("2 IN L", book::card::gap), "0.270");
  EXPECT_EQ(at_valve("1 EX R", book::card::gap), "0.220") << "as it was found";
  reopen();

  const std::vector<PaperMove> once_more{{"2 IN L", "spare", {2800}}};
  dispatch(document_, book::command::take_to_bench);
  EXPECT_THAT(box(take_title).words(), testing::HasSubstr("2 IN L (off by 0.06)"));
  answer(take_title, "Yes");  // measured again, and the same
  work(once_more);
  gaps_left({{"2 IN L", 190}});
  reopen();
  // By keys alone, over what the dialog has kept of the first round.
  facts = {2, 2, "2025-03-09", "24510", "20", "Ben", "second try"};
  screen_->press("alt+l");
  screen_->press("s");
  const Window dialog = box(close_title);
  screen_->focus(close_title);
  EXPECT_EQ(dialog.focused(), "What to do 0");
  EXPECT_EQ(dialog.entry("Distance, km"), "24500");
  EXPECT_EQ(dialog.entry("Temperature, \u00b0C"), "21");
  EXPECT_EQ(dialog.entry("Measured by"), "Ben");
  for (const std::string& entry :
       {facts.date, facts.distance, facts.who, facts.temperature, facts.note}) {
    screen_->press("Tab");
    screen_->press("ctrl+a");
    screen_->type(entry);
  }
  EXPECT_TRUE(comes_true([&] { return dialog.entry("Note") == facts.note; }));
  screen_->picture(PICTURES "/three-services-close.png");
  screen_->press("Return");
  EXPECT_TRUE(comes_true([] { return !window_titled(*office_, close_title); }));
  wait_for_turn();
  paper_.end_round(facts, once_more, {{"2 IN L", 190}});
  compare_after_close();
  reopen();
}

// Nothing is fitted: one valve is out of limits and stays so for a reason.
void ThreeServices::third_service() {
  gaps_found({{"1 EX L", 220},
              {"1 EX R", 230},
              {"1 IN L", 170},
              {"1 IN R", 180},
              {"2 EX L", 230},
              {"2 EX R", 225},
              {"2 IN L", 180},
              {"2 IN R", 155}});
  reopen();
  const PaperFacts facts{3, 1, "2026-03-20", "37000", "19", "Ann", "before the tour"};
  dispatch(document_, book::command::close_check);
  const Window refused = closing(facts, "Close this check");
  EXPECT_FALSE(refused.can_press(close_button));
  EXPECT_THAT(refused.entry(refused.labels().back()), testing::HasSubstr("2 IN R"));
  refused.press("Cancel");
  wait_for_turn();
  keys(on_recheck, recheck_of("2 IN R", recheck::left), "shim comes next week",
       "shim comes next week");
  reopen();
  dispatch(document_, book::command::close_check);
  put_on_record(closing(facts, "Close this check"));
  paper_.end_round(facts, {}, {}, {{"2 IN R", "shim comes next week"}});
  compare_after_close();
  screen_->picture(PICTURES "/three-services-log.png");
  reopen();
}

TEST_F(ThreeServices, are_on_record_row_by_row_as_reckoned_by_hand) {
  first_service();
  if (HasFatalFailure()) return;
  second_service();
  if (HasFatalFailure()) return;
  third_service();
  EXPECT_EQ(paper_.log().size(), 4U * 8U);
}

}  // namespace
}  // namespace shimwright::tests
