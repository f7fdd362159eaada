// SPDX-License-Identifier: MPL-2.0
//
// How long the office takes over a book of 48 valves, filled: to build it, to recalculate all of
// it, and to follow one new reading; beside the same book with its values only, whose time is what
// the office itself takes, formulas apart. Prints a table. The word `quick` runs the first once,
// for the answers.
//   bench_book package.oxt [quick]
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <cstdio>
#include <functional>
#include <string>
#include <vector>

#include "book/book.hpp"
#include "book/filling.hpp"
#include "book/gathered.hpp"
#include "book/office/sheet.hpp"
#include "book/places.hpp"
#include "builder/builder.hpp"
#include "core/service/shown_table.hpp"
#include "invented_book.hpp"
#include "office/office.hpp"
#include "office/text.hpp"
#include "office_bench.hpp"
#include "office_clock.hpp"
#include "timing.hpp"
#include "values_copy.hpp"

namespace shimwright::bench {
namespace {

namespace css = com::sun::star;
using book::as;
using book::to_office;

struct Time {
  double passed = 0;     // ms on the wall
  double processor = 0;  // ms of the office's and, while it builds, this process's time
};

class Stopwatch {
 public:
  explicit Stopwatch(const office::Office& office) : clock_(clock_of(office)) {}

  Time of(const std::function<void()>& run) const {
    const double start = read_ms(CLOCK_MONOTONIC);
    const double busy = read_ms(clock_) + read_ms(CLOCK_PROCESS_CPUTIME_ID);
    run();
    return {read_ms(CLOCK_MONOTONIC) - start,
            read_ms(clock_) + read_ms(CLOCK_PROCESS_CPUTIME_ID) - busy};
  }

  // Of several rounds, each after `prepare`, which is not timed.
  Time middle(int rounds, const std::function<void(int)>& prepare,
              const std::function<void()>& run) const {
    std::vector<double> passed;
    std::vector<double> processor;
    for (int round = 0; round < rounds; ++round) {
      prepare(round);
      const Time time = of(run);
      passed.push_back(time.passed);
      processor.push_back(time.processor);
    }
    return {median(passed), median(processor)};
  }

 private:
  clockid_t clock_;  // the office's
};

// Times a filled book, or its copy; each round begins with another reading of one gap, so that no
// answer is at hand from the round before. Leaves the reading as it was.
class Recalculation {
 public:
  Recalculation(const Stopwatch& watch, const Document& book, const book::Places& places)
      : watch_(watch),
        calculation_(as<css::sheet::XCalculatable>(book)),
        head_(book, book::sheet_name::head),
        gap_(places.head.cards.front().value(book::card::gap)) {}

  Time of_all(int rounds) {
    calculation_->enableAutomaticCalculation(false);
    const Time time = watch_.middle(
        2 * rounds, [this](int round) { read(round); }, [this] { calculation_->calculateAll(); });
    calculation_->enableAutomaticCalculation(true);
    return time;
  }

  // The reading itself, and all that hangs on it.
  Time of_one_reading(int rounds) {
    int count = 0;
    return watch_.middle(
        2 * rounds, [&count](int round) { count = round; },
        [&] {
          read(count);
          calculation_->calculate();
        });
  }

  void read(int round) { head_.number(gap_, round % 2 == 0 ? 0.09 : 0.12); }

 private:
  const Stopwatch& watch_;
  book::Ref<css::sheet::XCalculatable> calculation_;
  book::Sheet head_;
  book::At gap_;
};

std::size_t steps_in(const Document& book, const book::Places& places) {
  const book::Sheet workings(book, book::sheet_name::workings);
  const book::At steps = book::Gathered(book::descriptions(places)).tells("steps");
  const auto cell = as<css::text::XText>(workings.range(steps)->getCellByPosition(0, 0));
  return table_in(office::from_office(cell->getString())).rows.size();
}

void close(const Document& book) { as<css::util::XCloseable>(book)->close(true); }

void row(const char* what, const Time& ours, const Time* theirs) {
  std::printf("  %-28s %9.1f %9.1f", what, ours.passed, ours.processor);
  if (theirs != nullptr)
    std::printf(" %12.1f %9.1f %7.1f", theirs->passed, theirs->processor,
                ours.passed / theirs->passed);
  std::printf("\n");
}

// False where book and copy do not say the same.
bool compare(const office::Office& office, std::size_t index, int rounds) {
  const Stopwatch watch(office);
  const builder::Builder builder(office);
  const EngineLayout layout = layouts_of_48_valves().at(index);
  const book::Places places(layout);
  Document book;
  const Time built = watch.middle(
      rounds,
      [&](int round) {
        if (round > 0) close(book);
      },
      [&] { book = builder.build(layout, layout.name); });
  book::fill(book, layout, entries_for(layout));
  Recalculation of_book(watch, book, places);
  of_book.of_one_reading(1);
  const Document copy = values_copy(office, book);
  Recalculation of_copy(watch, copy, places);
  std::string trouble = difference(book, copy);
  const Time all = of_book.of_all(rounds);
  const Time copy_all = of_copy.of_all(rounds);
  if (trouble.empty()) trouble = difference(book, copy);
  const Time one = of_book.of_one_reading(rounds);
  const Time copy_one = of_copy.of_one_reading(rounds);
  if (trouble.empty()) trouble = difference(book, copy);

  const std::size_t steps = steps_in(book, places);
  if (trouble.empty() && steps < 24) trouble = "the number of steps: there is too little work";

  std::printf("%s: %zu formulas, %zu steps of fitting, %s\n", layout.name.c_str(),
              formulas_in(book), steps,
              trouble.empty() ? "both say the same" : ("NOT THE SAME in " + trouble).c_str());
  row("built", built, nullptr);
  row("recalculated, all", all, &copy_all);
  row("recalculated, one reading", one, &copy_one);
  std::fflush(stdout);
  const bool same = trouble.empty() && formulas_in(copy) == 0;
  close(copy);
  close(book);
  return same;
}

}  // namespace
}  // namespace shimwright::bench

int main(int argc, char** argv) {
  using namespace shimwright;
  return bench::run_in_office(
      "bench_book", argc, argv, [](const office::Office& office, bool quick) {
        bench::print_load();
        std::printf("  %-28s %9s %9s %12s %9s %7s\n", "", "book", "processor", "values only",
                    "processor", "times");
        bool same = true;
        const std::size_t layouts = quick ? 1 : bench::layouts_of_48_valves().size();
        for (std::size_t i = 0; i < layouts; ++i)
          same = bench::compare(office, i, quick ? 1 : 15) && same;
        return same;
      });
}
