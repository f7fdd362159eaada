// SPDX-License-Identifier: MPL-2.0
//
// How long CLEARANCE.DRIFT takes over a log of 100 000 rows, beside Calc's own LINEST on the same
// cells, in one run and in turns. Prints a table; `quick` runs each once on 1 000 rows, for the
// answers.
//   bench_drift package.oxt [quick]
#include <cmath>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/sheet/XArrayFormulaRange.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <cstdio>
#include <string>
#include <string_view>
#include <vector>

#include "book/office/uno.hpp"
#include "office/office.hpp"
#include "office_bench.hpp"
#include "office_clock.hpp"
#include "timing.hpp"

namespace shimwright::bench {
namespace {

namespace css = com::sun::star;
using book::as;
using book::Ref;
using book::to_office;
using Row = css::uno::Sequence<css::uno::Any>;
using Rows = css::uno::Sequence<Row>;

// Distance, gap and shim of so many checks from A1 down, on a sheet of a document of its own.
class Log {
 public:
  Log(const office::Office& office, int rows) {
    css::uno::Sequence<css::beans::PropertyValue> hidden(1);
    hidden.getArray()[0].Name = "Hidden";
    hidden.getArray()[0].Value <<= true;
    document_ =
        office.desktop()->loadComponentFromURL("private:factory/scalc", "_blank", 0, hidden);
    const auto book = as<css::sheet::XSpreadsheetDocument>(document_);
    sheet_ = as<css::sheet::XSpreadsheet>(
        as<css::container::XIndexAccess>(book->getSheets())->getByIndex(0));
    as<css::sheet::XCalculatable>(document_)->enableAutomaticCalculation(false);
    Rows cells(rows);
    Row* row = cells.getArray();
    for (int i = 0; i < rows; ++i) {
      Row three(3);
      three.getArray()[0] <<= 1e5 + 12.5 * i;
      three.getArray()[1] <<= 0.2 - 1e-6 * i + 0.001 * (i * 7 % 11);
      three.getArray()[2] <<= i % 2 == 0 ? 2.7 : 2.68;
      *row++ = three;
    }
    as<css::sheet::XCellRangeData>(sheet_->getCellRangeByPosition(0, 0, 2, rows - 1))
        ->setDataArray(cells);
  }

  ~Log() {
    try {
      as<css::util::XCloseable>(document_)->close(true);
    } catch (const css::uno::Exception&) {
      // the office ends anyway
    }
  }

  void put(std::string_view formula) { answer()->setArrayFormula(to_office(formula)); }
  void clear() { answer()->setArrayFormula(rtl::OUString()); }
  void recalculate() { as<css::sheet::XCalculatable>(document_)->calculateAll(); }

  // The first of the answer: a slope.
  double slope() const { return sheet_->getCellByPosition(4, 0)->getValue(); }

 private:
  Ref<css::sheet::XArrayFormulaRange> answer() const {
    return as<css::sheet::XArrayFormulaRange>(sheet_->getCellRangeByPosition(4, 0, 9, 4));
  }

  Ref<css::lang::XComponent> document_;
  Ref<css::sheet::XSpreadsheet> sheet_;
};

struct Candidate {
  std::string formula;
  double unit;  // of its slope, by a LINEST's
  int same_as;  // whose slope it should have
  std::vector<double> passed = {};
  std::vector<double> processor = {};
  double slope = 0;
};

bool compare(const office::Office& office, int rows, int rounds) {
  const std::string last = std::to_string(rows);
  const std::string a = "A1:A" + last;
  const std::string b = "B1:B" + last;
  const std::string c = "C1:C" + last;
  std::vector<Candidate> candidates{
      {"=LINEST(" + b + ";" + a + ";1;1)", 1, 0},
      {"=LINEST(" + b + "+" + c + ";" + a + ";1;1)", 1, 1},
      {"=CLEARANCE.DRIFT(" + a + ";" + b + ";2.7)", 1000, 0},
      {"=CLEARANCE.DRIFT(" + a + ";" + b + ";" + c + ")", 1000, 1},
      {"=CLEARANCE.DUE(" + a + ";" + b + ";" + c + ";2.7;0.1;0.2)", 0, 1}};
  Log log(office, rows);
  const clockid_t clock = clock_of(office);
  for (int round = 0; round <= rounds; ++round)
    for (Candidate& candidate : candidates) {
      log.put(candidate.formula);
      const double start = read_ms(CLOCK_MONOTONIC);
      const double busy = read_ms(clock);
      log.recalculate();
      if (round > 0) {  // the first is to warm up
        candidate.passed.push_back(read_ms(CLOCK_MONOTONIC) - start);
        candidate.processor.push_back(read_ms(clock) - busy);
      }
      candidate.slope = log.slope();
      log.clear();
    }
  bool same = true;
  std::printf("  %-52s %9s %9s %10s %10s\n", "", "passed", "processor", "by first", "by second");
  for (const Candidate& candidate : candidates) {
    const double processor = median(candidate.processor);
    std::printf("  %-52s %9.1f %9.1f %10.2f %10.2f\n", candidate.formula.c_str(),
                median(candidate.passed), processor, processor / median(candidates[0].processor),
                processor / median(candidates[1].processor));
    const double wanted =
        candidate.unit * candidates[static_cast<std::size_t>(candidate.same_as)].slope;
    if (candidate.unit > 0 && !(std::abs(candidate.slope - wanted) <= 1e-6 * std::abs(wanted))) {
      std::printf("NOT THE SAME: %.12g, not %.12g\n", candidate.slope, wanted);
      same = false;
    }
  }
  return same;
}

}  // namespace
}  // namespace shimwright::bench

int main(int argc, char** argv) {
  using namespace shimwright;
  return bench::run_in_office(
      "bench_drift", argc, argv, [](const office::Office& office, bool quick) {
        bench::print_load();
        return bench::compare(office, quick ? 1'000 : 100'000, quick ? 1 : 25);
      });
}
