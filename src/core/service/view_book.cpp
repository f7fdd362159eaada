// SPDX-License-Identifier: MPL-2.0
//
// What the book shows once: titles, the figures one asks for first, how far one is.
#include <algorithm>
#include <cmath>

#include "core/entries/entry_row.hpp"
#include "core/service/bench.hpp"
#include "core/service/entered.hpp"
#include "core/service/recheck.hpp"
#include "core/service/rules.hpp"
#include "core/service/shim_moves.hpp"
#include "core/service/stage_words.hpp"
#include "core/service/view_parts.hpp"
#include "core/service/words/crank_words.hpp"
#include "core/values/palette.hpp"

namespace shimwright {
namespace {

class BookShower {
 public:
  BookShower(const Service& service, const Findings& found) : service_(service), found_(found) {}

  ShownTable show() {
    show_titles();
    show_engine();
    show_legend();
    show_plan();
    show_progress();
    show_arrivals_heading();
    show_fit();
    show_recheck();
    return std::move(table_);
  }

 private:
  const Teller& teller() const { return found_.teller; }
  std::string tell(Say what, std::initializer_list<Word> words = {}) const {
    return teller().say(what, words);
  }
  void put(std::string_view column, std::string text) { table_.put(column) = std::move(text); }
  bool inches() const { return teller().unit() == Unit::inch; }
  Say unit_long() const { return inches() ? Say::inches : Say::mm; }
  std::string currency() const {
    return not_given(service_.currency) ? std::string() : word_in(service_.currency);
  }
  static Word count(std::size_t number) { return static_cast<std::int64_t>(number); }

  void show_titles() {
    const std::string engine = not_given(service_.engine) ? "" : word_in(service_.engine);
    put("title read me", engine.empty() ? tell(Say::valve_service) : engine);
    for (const auto& [column, sheet] : sheet_titles)
      put(column, engine.empty() ? tell(sheet) : tell(Say::title_of_sheet, {engine, sheet}));
    put("unit", std::string(teller().unit_word()));
    put("lengths in", tell(Say::lengths_in, {unit_long()}));
    put("sizes in", tell(Say::sizes_in, {unit_long()}));
  }

  void show_engine() {
    for (const Side side : {Side::exhaust, Side::inlet}) {
      const auto& aim = found_.of(side).aim;
      put("aim " + word_for(side), aim ? teller().column(*aim) : std::string("\u2013"));
    }
    put("doubt hint", found_.doubt_given ? std::string()
                                         : tell(Say::doubt_hint, {inches() ? Say::usual_doubt_inch
                                                                           : Say::usual_doubt_mm}));
    put("allowed note", tell(Say::allowed_note, {default_allowed_difference}));
    put("marks note", tell(inches() ? Say::marks_note_inch : Say::marks_note_mm));
    put("stops", stops());
    put("camshafts out", yes_if(found_.camshafts_out));
  }

  std::string stops() const {
    if (const Told* trouble = found_.crank_trouble()) return in_words(*trouble, teller());
    if (found_.stops.empty()) return {};
    std::string words;
    for (std::size_t i = 0; i < found_.stops.size(); ++i)
      words += stop_in_words(*found_.firing, found_.stops, i, teller()) + "\n";
    words += tell(Say::manual_first);
    if (found_.usual_timing) words += " " + tell(Say::usual_timing);
    return words;
  }

  // How many valves are in each state; it is the key to the colours too.
  void show_legend() {
    for (const State state : all_states) {
      const auto valves = static_cast<std::size_t>(std::ranges::count_if(
          found_.valves, [state](const ValveFindings& valve) { return valve.now == state; }));
      put("legend " + std::string(word_for(state)),
          tell(Say::state_counted,
               {std::string(look_of(state).sign), say_of(state), count(valves)}));
    }
  }

  template <class Condition>
  std::size_t valves_where(Condition condition) const {
    return static_cast<std::size_t>(std::ranges::count_if(found_.valve_plans, condition));
  }
  std::size_t valves_with(Action action) const {
    return valves_where(
        [action](const ValvePlan& plan) { return plan.action == action && !plan.left_outside; });
  }
  // Those that get the nearest shim are counted by what is done, and here as well.
  std::size_t left_outside() const {
    return valves_where(
        [](const ValvePlan& plan) { return plan.left_outside || plan.fitted_outside; });
  }

  // Shims of Arrivals that a valve gets.
  std::size_t ordered() const {
    return valves_where([](const ValvePlan& plan) { return plan.arrival.has_value(); });
  }
  std::int64_t to_order() const {
    std::int64_t shims = 0;
    for (const Purchase& purchase : found_.plan->order) shims += purchase.count;
    return shims;
  }
  // After the work, by the new gap where there is one.
  std::size_t outside_now() const {
    const auto valves = recheck_in(service_, found_);
    return static_cast<std::size_t>(std::ranges::count_if(valves, &ValveRecheck::outside));
  }

  void show_plan() {
    const bool stands = found_.plan.has_value();
    const auto figure = [&](std::size_t number) {
      return stands ? std::to_string(number) : std::string("\u2013");
    };
    const std::pair<const char*, Action> figures[] = {{"count keep", Action::keep},
                                                      {"count move", Action::move},
                                                      {"count none", Action::none},
                                                      {"count unread", Action::unread}};
    for (const auto& [column, action] : figures) put(column, figure(valves_with(action)));
    // What is on Arrivals is bought, though it is in the plan as a spare.
    put("count spare", figure(valves_with(Action::spare) - ordered()));
    put("count buy", figure(valves_with(Action::buy) + ordered()));
    put("count outside", figure(left_outside()));
    const bool to_list = shims_are_to_be_listed(found_);
    put("to list", yes_if(to_list));
    put("label none", tell(to_list ? Say::list_shims_first : Say::none_fits));
    Money pay;
    for (const ValvePlan& plan : found_.valve_plans) pay += plan.cost;
    put("to pay", stands ? sum_in_currency(pay, service_, teller()) : std::string("\u2013"));
    put("total", stands ? teller().sum(pay) : std::string("\u2013"));
    put("total label", currency().empty() ? tell(Say::total) : tell(Say::total_in, {currency()}));
    put("plan heading",
        stands ? tell(Say::plan_heading, {unit_long()}) : tell(Say::plan_heading_mend));
    put("order heading",
        currency().empty() ? tell(Say::order_heading) : tell(Say::order_heading_in, {currency()}));
  }

  void progress(std::string_view column, std::size_t done, std::size_t all) {
    put(column, all == 0 ? std::string("\u2013") : tell(Say::done_of, {count(done), count(all)}));
    put(std::string(column) + " share",
        teller().number(
            all == 0 ? 0
                     : std::round(1000.0 * static_cast<double>(done) / static_cast<double>(all)) /
                           1000));
  }

  void show_progress() {
    const std::size_t all = found_.valves.size();
    const auto valves = [this](auto condition) {
      return static_cast<std::size_t>(std::ranges::count_if(found_.valves, condition));
    };
    progress("gaps measured", valves([](const auto& valve) { return valve.gap.has_value(); }), all);
    // A shim that stays in its valve whatever its size is not waited for.
    const std::size_t unseen = valves_where([](const ValvePlan& plan) { return plan.unseen; });
    progress("shims known", valves([](const auto& valve) { return valve.shim.has_value(); }),
             all - unseen);
    const bool on_bench = !service_.bench.empty();
    progress("steps done", ticked_steps(service_),
             on_bench       ? service_.bench.size()
             : found_.steps ? found_.steps->steps.size()
                            : 0);
    put("remarks count", std::to_string(found_.remarks.size()));
    put("remarks heading",
        tell(show_remarks(service_, found_).rows.empty() ? Say::no_remarks : Say::all_remarks));
    const bool to_list = shims_are_to_be_listed(found_);
    put("outside label", tell(to_list ? Say::valves_that_want : Say::valves_left_outside));
    const bool done = is_bench_done(service_);
    const std::size_t none = valves_with(Action::none);
    put("outside count", done          ? std::to_string(outside_now())
                         : found_.plan ? std::to_string(none + (to_list ? 0 : left_outside()))
                                       : std::string("\u2013"));
    put("change label", tell(done ? Say::shims_changed : Say::shims_to_change));
    put("buy label", tell(done ? Say::shims_bought : Say::shims_to_buy));
    const std::size_t changed =
        valves_where([](const ValvePlan& plan) { return changes_shim(plan.action); });
    put("change count", found_.plan ? std::to_string(changed) : std::string("\u2013"));
    put("buy count", done ? std::to_string(shim_moves(service_, found_).bought_fitted.size())
                     : found_.plan ? std::to_string(to_order())
                                   : std::string("\u2013"));
  }

  void show_arrivals_heading() {
    put("arrivals heading", tell(Say::arrivals_heading, {unit_long()}));
    const auto rows_where = [this](auto condition) {
      return static_cast<std::size_t>(std::ranges::count_if(found_.arrivals, condition));
    };
    const auto has_come = [](const auto& shim) { return shim.state == ArrivalState::arrived; };
    const std::size_t arrived =
        rows_where([&](const auto& shim) { return has_come(shim) && shim.ordered; });
    const std::size_t unordered =
        rows_where([&](const auto& shim) { return has_come(shim) && !shim.ordered; });
    const std::size_t all =
        arrived + rows_where([](const auto& shim) { return shim.state == ArrivalState::on_order; });
    const std::size_t not_coming = rows_where(
        [](const auto& shim) { return shim.state == ArrivalState::not_coming && shim.ordered; });
    std::string tally;
    const auto add = [&](std::string words) {
      tally = tally.empty() ? std::move(words) : tell(Say::arrivals_tallies, {tally, words});
    };
    if (all > 0) add(tell(Say::arrivals_tally, {count(arrived), count(all)}));
    if (not_coming > 0) add(tell(Say::arrivals_not_coming, {count(not_coming)}));
    if (unordered > 0) add(tell(Say::arrivals_unordered, {count(unordered)}));
    put("arrivals tally", tally);
  }

  void show_fit() {
    const bool camshafts_out = is_bench_for_camshafts_out(service_, found_);
    // Of books in which it is no fixed text yet.
    put("fit caution", tell(camshafts_out ? Say::caution_camshafts : Say::caution_crank));
    put("fit heading",
        tell(camshafts_out ? Say::fit_heading_camshafts : Say::fit_heading, {unit_long()}));
    std::string tally;
    if (!service_.bench.empty()) {
      tally = tell(Say::bench_done_count,
                   {count(ticked_steps(service_)), count(service_.bench.size())});
      if (!service_.bench_taken.empty())
        tally = tell(Say::bench_taken, {service_.bench_taken}) + ": " + tally;
    }
    put("fit tally", tally);
    put("bench done", yes_if(is_bench_done(service_)));
  }

  void show_recheck() {
    put("stage", stage_in_words(service_, found_));
    put("next step", next_step_in_words(service_, found_));
    put("recheck heading", tell(Say::recheck_heading, {unit_long()}));
    const auto valves = recheck_in(service_, found_);
    const auto measured = static_cast<std::size_t>(std::ranges::count_if(
        valves, [](const auto& valve) { return valve.gap_left.has_value(); }));
    std::string tally = round_in_words(service_, teller());
    if (is_bench_done(service_) || measured > 0) {
      const std::string words = tell(Say::recheck_tally, {count(measured), count(valves.size())});
      tally = tally.empty() ? words : tell(Say::led_by, {tally, words});
    }
    put("recheck tally", tally);
    const Length doubt = doubt_of_reading(service_, found_);
    const Length both = to_thousandths(doubt_of_both(doubt));
    put("recheck note", found_.doubt_given ? tell(Say::recheck_note, {both, doubt})
                                           : tell(Say::recheck_no_doubt, {doubt, both}));
  }

  // As much as a sentence tells of it.
  static Length to_thousandths(Length length) {
    constexpr std::int64_t step = 1000;
    return Length::nanometres((length.nanometres() + step / 2) / step * step);
  }

  const Service& service_;
  const Findings& found_;
  ShownTable table_;
};

}  // namespace

std::string sum_in_currency(Money money, const Service& service, const Teller& teller) {
  const std::string sum = teller.sum(money);
  return not_given(service.currency) ? sum : sum + " " + word_in(service.currency);
}

ShownTable show_book(const Service& service, const Findings& found) {
  return BookShower(service, found).show();
}

}  // namespace shimwright
