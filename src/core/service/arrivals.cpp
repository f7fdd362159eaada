// SPDX-License-Identifier: MPL-2.0
#include "core/service/arrivals.hpp"

#include <algorithm>
#include <map>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/service/bench.hpp"
#include "core/service/entered.hpp"
#include "core/service/readings_off.hpp"
#include "core/service/rules.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/mark.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

std::optional<Length> thickness_in(const Entry& entry, Unit unit) {
  const auto length = length_entered(entry, unit);
  return length && *length > Length() ? length : std::nullopt;
}

std::optional<Length> size_in_hand(const Service::ArrivalEntries& row,
                                   const ArrivalFindings& shim) {
  if (!not_given(row.micrometer)) return shim.measured;
  if (!not_given(row.mark)) return shim.marked;
  return shim.ordered;
}

Money price_in(const Entry& entry) try {
  return Money::of(number_entered(entry).value_or(0));
} catch (const BadInput&) {
  return {};
}

// Series are compared in any case.
using SeriesAndSize = std::pair<std::string, Length>;
SeriesAndSize class_of(const std::string& series, Length size) {
  return {lower_case(series), size};
}

// The rows of each size, those that have arrived first.
std::map<SeriesAndSize, std::vector<std::size_t>> rows_by_size(const Findings& found) {
  std::map<SeriesAndSize, std::vector<std::size_t>> rows;
  for (const ArrivalState state : {ArrivalState::arrived, ArrivalState::on_order})
    for (std::size_t i = 0; i < found.arrivals.size(); ++i) {
      const ArrivalFindings& shim = found.arrivals[i];
      if (shim.state == state && shim.size) rows[class_of(shim.series, *shim.size)].push_back(i);
    }
  return rows;
}

std::optional<Side> side_of(const std::string& valve, const Service& service) {
  const auto known = std::ranges::find(service.valves, valve, &Service::ValveEntries::name);
  return known == service.valves.end() ? std::nullopt : std::optional(known->side);
}

// The list has it by its mark or as ordered, since it was measured later only. Far apart from that,
// it is another shim.
bool was_that_shim(const ArrivalFindings& row, const FittedShim& shim, const Service& service,
                   const Findings& found) {
  const auto side = side_of(shim.valve, service);
  if (row.state != ArrivalState::arrived || !row.size ||
      !same_word(row.series, found.of(*side).series))
    return false;
  const Length listed = Length::of(shim.size, found.teller.unit());
  return (row.marked == listed || row.ordered == listed) &&
         !are_far_apart(listed, row.size, found.allowed);
}

// A shim that no valve gets is not wanted. Without a plan, or while a reading is off, it may yet
// be.
bool is_settled(const Findings& found) { return found.plan && !is_any_reading_off(found); }

// How many spares of each size there are, those of Arrivals included.
std::map<SeriesAndSize, std::int64_t> spares_by_size(const Findings& found) {
  std::map<SeriesAndSize, std::int64_t> spares;
  for (const Stock& stock : found.question.stock)
    if (stock.kind == Stock::Kind::spare)
      spares[class_of(stock.series, stock.size)] += stock.count.value_or(1);
  return spares;
}

}  // namespace

ArrivalState arrival_state(const Service::ArrivalEntries& row) {
  const bool is_said = !not_given(row.arrived);
  if (is_said && same_word(word_in(row.arrived), "no")) return ArrivalState::not_coming;
  if (is_said || !not_given(row.mark) || !not_given(row.micrometer)) return ArrivalState::arrived;
  return not_given(row.ordered) ? ArrivalState::none : ArrivalState::on_order;
}

ArrivalFindings arrival_in(const Service& service, const Service::ArrivalEntries& row,
                           const std::string& one_series) {
  const Unit unit = unit_of(service);
  ArrivalFindings shim{.state = arrival_state(row),
                       .series = not_given(row.series) ? one_series : word_in(row.series),
                       .ordered = thickness_in(row.ordered, unit),
                       .marked = size_marked(service, row.mark),
                       .measured = thickness_in(row.micrometer, unit),
                       .size = {},
                       .price = price_in(row.price),
                       .valve = {}};
  if (shim.state == ArrivalState::on_order) shim.size = shim.ordered;
  if (shim.state == ArrivalState::arrived) shim.size = size_in_hand(row, shim);
  return shim;
}

void give_arrivals_to_valves(Findings& found) {
  const auto rows = rows_by_size(found);
  auto in_drawer = spares_by_size(found);
  for (const auto& [size, those] : rows) in_drawer[size] -= static_cast<std::int64_t>(those.size());
  std::map<SeriesAndSize, std::size_t> given;
  for (std::size_t i = 0; i < found.valve_plans.size(); ++i) {
    ValvePlan& plan = found.valve_plans[i];
    if (plan.action != Action::spare || !plan.size) continue;
    const SeriesAndSize size = class_of(found.question.valves[i].series, *plan.size);
    if (in_drawer[size]-- > 0) continue;
    const auto those = rows.find(size);
    std::size_t& next = given[size];
    if (those == rows.end() || next == those->second.size()) continue;
    plan.arrival = those->second[next++];
    found.arrivals[*plan.arrival].valve = i;
  }
}

void leave_out_what_has_not_come(FittingQuestion& question, const Findings& found) {
  for (const ArrivalFindings& shim : found.arrivals) {
    if (shim.state != ArrivalState::on_order || !shim.size || shim.valve) continue;
    const auto spare = std::ranges::find_if(question.spares, [&shim](const auto& one) {
      return one.count > 0 && one.size == *shim.size && same_word(one.series, shim.series);
    });
    if (spare != question.spares.end()) --spare->count;
  }
  std::erase_if(question.spares, [](const auto& spare) { return spare.count == 0; });
}

ArrivalVerdict arrival_verdict(const ArrivalFindings& shim, const Findings& found) {
  using enum ArrivalVerdict;
  switch (shim.state) {
    case ArrivalState::none:
      return none;
    case ArrivalState::not_coming:
      return not_coming;
    case ArrivalState::on_order:
      return shim.valve || !is_settled(found) ? on_order : not_needed;
    case ArrivalState::arrived:
      break;
  }
  if (!shim.size) return unmeasured;
  if (!shim.valve) return is_settled(found) ? send_back : unsettled;
  const bool is_as_ordered = shim.ordered && abs(*shim.size - *shim.ordered) <= found.allowed;
  return is_as_ordered ? as_ordered : will_do;
}

bool differs_from_its_mark(const ArrivalFindings& shim, Length allowed) {
  if (shim.state != ArrivalState::arrived) return false;
  return differs_from_mark(trust_in(shim.marked, shim.measured, allowed));
}

bool is_anything_ordered(const Findings& found) {
  return std::ranges::any_of(
      found.arrivals, [](const ArrivalFindings& shim) { return shim.state != ArrivalState::none; });
}

std::vector<std::string> arrivals_with(ArrivalVerdict verdict, const Service& service,
                                       const Findings& found) {
  std::vector<std::string> rows;
  for (std::size_t i = 0; i < found.arrivals.size(); ++i)
    if (arrival_verdict(found.arrivals[i], found) == verdict)
      rows.push_back(std::to_string(service.arrivals[i].row));
  return rows;
}

Money money_to_send_back(const Findings& found) {
  Money sum;
  for (const ArrivalFindings& shim : found.arrivals)
    if (arrival_verdict(shim, found) == ArrivalVerdict::send_back) sum += shim.price;
  return sum;
}

std::vector<std::string> arrivals_to_measure(const Service& service, const Findings& found) {
  std::vector<std::string> rows;
  for (std::size_t i = 0; i < found.arrivals.size(); ++i) {
    const ArrivalFindings& shim = found.arrivals[i];
    if (shim.state == ArrivalState::arrived && shim.valve && !shim.measured)
      rows.push_back(std::to_string(service.arrivals[i].row));
  }
  return rows;
}

std::vector<MissingShim> shims_not_in_hand(const Findings& found) {
  std::vector<MissingShim> missing;
  if (!is_anything_ordered(found)) return missing;
  for (std::size_t i = 0; i < found.valve_plans.size(); ++i) {
    const ValvePlan& plan = found.valve_plans[i];
    const bool on_order =
        plan.arrival && found.arrivals[*plan.arrival].state == ArrivalState::on_order;
    if (plan.size && (on_order || plan.action == Action::buy))
      missing.push_back({i, *plan.size, on_order});
  }
  return missing;
}

std::vector<FittedArrival> arrivals_fitted(const Service& service, const Findings& found) {
  std::vector<FittedArrival> fitted;
  const auto is_taken = [&fitted](std::size_t row) {
    return std::ranges::find(fitted, row, &FittedArrival::row) != fitted.end();
  };
  const auto rows = rows_by_size(found);
  const auto row_of = [&](const SeriesAndSize& size) -> std::optional<std::size_t> {
    const auto those = rows.find(size);
    if (those == rows.end()) return std::nullopt;
    const auto row = std::ranges::find_if_not(those->second, is_taken);
    return row == those->second.end() ? std::nullopt : std::optional(*row);
  };
  std::vector<FittedShim> known_otherwise;
  for (const FittedShim& shim : shims_fitted(service)) {
    const auto side = side_of(shim.valve, service);
    if (!side || shim.from != found.teller.say(Say::bought)) continue;
    const Length size = Length::of(shim.size, found.teller.unit());
    if (const auto row = row_of(class_of(found.of(*side).series, size)))
      fitted.push_back({shim.valve, *row});
    else
      known_otherwise.push_back(shim);
  }
  for (const FittedShim& shim : known_otherwise)
    for (std::size_t row = 0; row < found.arrivals.size(); ++row)
      if (!is_taken(row) && was_that_shim(found.arrivals[row], shim, service, found)) {
        fitted.push_back({shim.valve, row});
        break;
      }
  return fitted;
}

}  // namespace shimwright
