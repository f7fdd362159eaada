// SPDX-License-Identifier: MPL-2.0
#include "bench_entries.hpp"

#include "core/service/bench_commands.hpp"

namespace shimwright::tests {

int take_to_bench(ServiceEntries& book) {
  const Service service = book.service();
  const auto rows = rows_for_bench(service, findings_in(service));
  int number = 0;
  for (const BenchRow& row : rows) {
    const std::string n = std::to_string(++number);
    book.set("bench", n, 0, row.step.kind).set("bench", n, 1, row.step.stop);
    book.set("bench", n, 2, row.valve).set("bench", n, 3, row.step.out);
    book.set("bench", n, 4, row.step.in).set("bench", n, 5, row.step.from);
    book.set("bench", n, 6, Entry());
  }
  book.set("taken", "list", 0, "2026-11-26 17:40");
  return number;
}

void tick_steps(ServiceEntries& book, int steps) {
  for (int i = 1; i <= steps; ++i) book.set("bench", std::to_string(i), 6, "x");
}

void fit_all(ServiceEntries& book) { tick_steps(book, take_to_bench(book)); }

}  // namespace shimwright::tests
