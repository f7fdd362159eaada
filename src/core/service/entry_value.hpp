// SPDX-License-Identifier: MPL-2.0
//
// Which value of its row an entry is (service.hpp): of a side, a valve, a spare, a row of sizes, a
// size on sale by itself, a shim of Arrivals, a new gap, a step on the bench.
#pragma once

#include <string_view>

namespace shimwright {
namespace entry_value {
enum Side { min, max, bias, series, opens, closes };
enum Valve { gap, mark, micrometer, exception, cylinder, side };
enum Spare { spare_series, spare_size, spare_count };
enum Sizes { sizes_series, from, to, step, sizes_price };
enum Single { single_series, single_size, single_count, single_price };
enum Arrival {
  arrival_series,
  arrival_ordered,
  arrival_price,
  arrival_when,
  arrival_arrived,
  arrival_mark,
  arrival_micrometer,
  values_of_arrival
};
enum Recheck { recheck_gap, recheck_left };
enum Bench { bench_kind, bench_stop, bench_valve, bench_out, bench_in, bench_from, bench_done };
}  // namespace entry_value

// The kind of row of the protocol that holds an entry, and which of its values it is there. A gap
// is entered as a value of its valve, and stands in a row of its own, below all others.
struct EntryRowValue {
  std::string_view kind;
  int value = 0;
};
inline constexpr std::string_view kind_of_gaps = "gap";
constexpr EntryRowValue held_as(std::string_view kind, int value) {
  if (kind == "valve" && value == entry_value::gap) return {kind_of_gaps, 0};
  return {kind, value};
}

}  // namespace shimwright
