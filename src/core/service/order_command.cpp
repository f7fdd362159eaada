// SPDX-License-Identifier: MPL-2.0
#include "core/service/order_command.hpp"

#include <algorithm>
#include <cstdint>

#include "core/service/arrivals.hpp"
#include "core/service/entered.hpp"
#include "core/service/entry_value.hpp"

namespace shimwright {
namespace {

bool is_blank_row(const Service::ArrivalEntries& row) {
  for (const Entry* entry :
       {&row.series, &row.ordered, &row.price, &row.when, &row.arrived, &row.mark, &row.micrometer})
    if (!not_given(*entry) || has_failed(*entry)) return false;
  return true;
}

std::int64_t shims_in_order(const Findings& found) {
  std::int64_t count = 0;
  if (found.plan)
    for (const Purchase& bought : found.plan->order) count += bought.count;
  return count;
}

// What was ordered and has not arrived, needed or not.
std::vector<std::string> not_arrived(const Service& service, const Findings& found) {
  std::vector<std::string> shims;
  for (std::size_t i = 0; i < found.arrivals.size(); ++i) {
    const ArrivalFindings& shim = found.arrivals[i];
    if (shim.state == ArrivalState::on_order && shim.size)
      shims.push_back(
          found.teller.say(Say::order_row, {*shim.size, std::int64_t{service.arrivals[i].row}}));
  }
  return shims;
}

Word order_listed(const Findings& found) {
  std::vector<std::string> sizes;
  for (const Purchase& bought : found.plan->order)
    sizes.push_back(found.teller.say(Say::order_size, {bought.count, bought.size}));
  return sizes;
}

}  // namespace

std::string why_no_order(const Service& service, const Findings& found) {
  const Teller& teller = found.teller;
  if (service.arrivals.empty()) return teller.say(Say::order_no_sheet);
  if (!found.plan) return teller.say(Say::order_no_plan);
  const std::int64_t due = shims_in_order(found);
  if (due == 0) {
    const auto waiting = not_arrived(service, found);
    return waiting.empty() ? teller.say(Say::order_nothing)
                           : teller.say(Say::order_nothing_more, {waiting});
  }
  const std::int64_t room = std::ranges::count_if(service.arrivals, is_blank_row);
  return due > room ? teller.say(Say::order_no_room, {room, due}) : std::string();
}

std::string question_before_ordering(const Service& service, const Findings& found) {
  const auto waiting = not_arrived(service, found);
  if (waiting.empty() || !found.plan) return {};
  return found.teller.say(Say::order_again, {waiting, order_listed(found)});
}

std::vector<EntryWrite> order_to_write(const Service& service, const Findings& found,
                                       std::string_view today) {
  std::vector<EntryWrite> writes;
  if (!why_no_order(service, found).empty()) return writes;
  auto row = service.arrivals.begin();
  for (const Purchase& bought : found.plan->order)
    for (std::int64_t i = 0; i < bought.count; ++i, ++row) {
      row = std::find_if(row, service.arrivals.end(), is_blank_row);
      const auto put = [&](int value, Entry what) {
        writes.push_back({"arrival", std::to_string(row->row), value, std::move(what)});
      };
      put(entry_value::arrival_series, bought.series);
      put(entry_value::arrival_ordered, in_unit(bought.size, found.teller.unit()));
      put(entry_value::arrival_price,
          bought.price > Money() ? Entry(bought.price.amount()) : Entry());
      put(entry_value::arrival_when, std::string(today));
    }
  return writes;
}

std::string order_in_words(const Findings& found) {
  return found.teller.say(Say::order_written, {order_listed(found), shims_in_order(found)});
}

}  // namespace shimwright
