// SPDX-License-Identifier: MPL-2.0
//
// A service made up from a seed: readings, drawer, sizes on sale, now and then an order of which
// some has come.
#pragma once

#include <cstdint>
#include <random>
#include <string>

#include "closing_book.hpp"
#include "core/service/bench.hpp"
#include "core/service/findings.hpp"
#include "core/service/order_command.hpp"

namespace shimwright::tests {

class MadeUpService {
 public:
  explicit MadeUpService(std::uint64_t seed) : random_(seed) {
    if (chance(0.3)) book.setting("unit", "inch");
    if (chance(0.3)) book.setting("camshafts out", "yes");
    if (chance(0.3)) book.set("side", "inlet", 3, "B");
    is_inch_ = book.entry("setting", "unit", 0) == Entry("inch");
    book.limits(size(0.15), size(0.25));
    for (const std::string& valve : book.valves()) {
      if (chance(0.1)) continue;
      book.gap(valve, size(0.01 * whole(5, 35)));
      book.micrometer(valve, size(2.30 + 0.05 * whole(0, 12) + (chance(0.3) ? 0.003 : 0)));
      if (chance(0.2)) book.micrometer(valve, Entry()).mark(valve, 5.0 * whole(46, 58));
    }
    book.drawer_rows(40);
    for (int row = 1; row <= whole(0, 12); ++row) {
      book.spare(row, one_series(), size(2.20 + 0.05 * whole(0, 16)));
      book.set("spare", std::to_string(row), 2, chance(0.5) ? Entry(1.0 * whole(1, 3)) : Entry());
    }
    if (chance(0.8)) book.sizes(1, "A", size(2.10), size(3.10), size(0.05), 5);
    if (chance(0.8)) book.sizes(2, "B", size(2.10), size(3.10), size(0.05), 5);
    for (int row = 1; row <= 20; ++row) book.arrival(row, Entry(), Entry());
    if (chance(0.5)) order();
  }

  // In any order of ticks where `done` is not 1, up to a step of the list.
  void work(double done) {
    const auto steps = book.service().bench.size();
    for (std::size_t i = 1; i <= steps; ++i)
      if (static_cast<double>(i) <= done * static_cast<double>(steps))
        book.tick(static_cast<int>(i), chance(0.5) ? Entry("x") : Entry(46352.0));
  }

  bool chance(double share) { return std::uniform_real_distribution<>(0, 1)(random_) < share; }
  int whole(int from, int to) { return std::uniform_int_distribution<>(from, to)(random_); }

  ClosingBook book;

 private:
  double size(double mm) const { return is_inch_ ? mm / 25.4 : mm; }
  std::string one_series() { return chance(0.7) ? "A" : "B"; }

  // Some of it comes, now and then in another size, and now and then a shim nobody ordered.
  void order() {
    const Service now = book.service();
    book.write(order_to_write(now, findings_in(now), "2026-11-20"));
    for (int row = 1; row <= 20; ++row) {
      const std::string name = std::to_string(row);
      if (book.entry("arrival", name, 1) == Entry() && !chance(0.1)) continue;
      if (chance(0.8)) book.set("arrival", name, 4, chance(0.1) ? "no" : "x");
      if (chance(0.5)) book.set("arrival", name, 6, size(2.10 + 0.05 * whole(0, 20)));
      if (book.entry("arrival", name, 1) == Entry() && book.entry("arrival", name, 6) == Entry())
        book.set("arrival", name, 4, Entry());
    }
  }

  std::mt19937_64 random_;
  bool is_inch_ = false;
};

}  // namespace shimwright::tests
