// SPDX-License-Identifier: MPL-2.0
//
// What decades of checks cost: a book of 48 valves whose log holds 40 checks of each, beside the
// same book with an empty log (to recalculate all of it, and to follow one new reading), and beside
// its copy of values only (to open it). Ratios in one run. The word `quick` runs each once.
//   bench_log package.oxt [quick]
#include <chrono>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/frame/XComponentLoader.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeReferrer.hpp>
#include <com/sun/star/sheet/XNamedRange.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <cstdio>
#include <filesystem>
#include <functional>
#include <thread>

#include "../core/invented_log.hpp"
#include "book/command_urls.hpp"
#include "book/drift_map.hpp"
#include "book/filling.hpp"
#include "book/office/sheet.hpp"
#include "book/places.hpp"
#include "builder/builder.hpp"
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

constexpr int checks = 40;
constexpr double most_times_to_recalculate = 2;
constexpr double most_times_to_open = 1.3;

class Rounds {
 public:
  Rounds(const office::Office& office, int rounds) : clock_(clock_of(office)), rounds_(rounds) {}

  // In ms of the office's processor time, the middle of several.
  double of(const std::function<void(int)>& prepare, const std::function<void()>& run) const {
    std::vector<double> times;
    for (int round = 0; round < rounds_; ++round) {
      prepare(round);
      const double start = read_ms(clock_);
      run();
      times.push_back(read_ms(clock_) - start);
    }
    return median(times);
  }

 private:
  clockid_t clock_;
  int rounds_;
};

void close(const Document& book) { as<css::util::XCloseable>(book)->close(true); }

css::uno::Any any_of(const Entry& entry) {
  if (const auto* number = std::get_if<double>(&entry)) return css::uno::Any(*number);
  if (const auto* text = std::get_if<std::string>(&entry)) return css::uno::Any(to_office(*text));
  return css::uno::Any(rtl::OUString());
}

void put_log(const Document& book, const std::vector<LogRow>& rows) {
  namespace place = book::log_place;
  const book::Sheet sheet(book, book::sheet_name::log);
  const EntryTable table = tests::table_of(rows);
  css::uno::Sequence<css::uno::Sequence<css::uno::Any>> cells(static_cast<sal_Int32>(table.size()));
  for (std::size_t i = 0; i < table.size(); ++i) {
    css::uno::Sequence<css::uno::Any> row(log_columns);
    for (std::size_t c = 0; c < table[i].size(); ++c) row.getArray()[c] = any_of(table[i][c]);
    cells.getArray()[i] = row;
  }
  const auto all = static_cast<int>(table.size());
  as<css::sheet::XCellRangeData>(sheet.range(book::block(place::first, log_columns, all)))
      ->setDataArray(cells);
  const auto names = as<css::container::XNameAccess>(
      as<css::beans::XPropertySet>(book)->getPropertyValue("NamedRanges"));
  as<css::sheet::XNamedRange>(names->getByName(to_office(place::range_name)))
      ->setContent(
          to_office(book::on(book::sheet_name::log,
                             book::block(place::first, log_columns, all + place::least_blank))));
}

class Book {
 public:
  Book(const Rounds& rounds, const Document& book, const book::Places& places)
      : rounds_(rounds),
        calculation_(as<css::sheet::XCalculatable>(book)),
        head_(book, book::sheet_name::head),
        gap_(places.head.cards.front().value(book::card::gap)) {}

  double recalculated() {
    calculation_->enableAutomaticCalculation(false);
    const double time =
        rounds_.of([this](int round) { read(round); }, [this] { calculation_->calculateAll(); });
    calculation_->enableAutomaticCalculation(true);
    return time;
  }

  double after_one_reading() {
    int count = 0;
    return rounds_.of([&count](int round) { count = round; },
                      [&] {
                        read(count);
                        calculation_->calculate();
                      });
  }

 private:
  void read(int round) { head_.number(gap_, round % 2 == 0 ? 0.09 : 0.12); }

  const Rounds& rounds_;
  book::Ref<css::sheet::XCalculatable> calculation_;
  book::Sheet head_;
  book::At gap_;
};

// The command Draw the drift, until the last chart is there, in ms on the wall.
double drawn(const Document& book, int cylinders) {
  css::util::URL url;
  url.Complete = to_office(book::command::draw_drift);
  const auto frame = as<css::frame::XModel>(book)->getCurrentController()->getFrame();
  const auto charts = as<css::container::XNameAccess>(
      as<css::table::XTableChartsSupplier>(book::Sheet(book, book::sheet_name::drift).sheet())
          ->getCharts());
  const double start = read_ms(CLOCK_MONOTONIC);
  as<css::frame::XDispatchProvider>(frame)
      ->queryDispatch(url, to_office("_self"), 0)
      ->dispatch(url, {});
  while (charts->getElementNames().getLength() < cylinders &&
         read_ms(CLOCK_MONOTONIC) - start < 60'000)
    std::this_thread::sleep_for(std::chrono::milliseconds(10));
  return read_ms(CLOCK_MONOTONIC) - start;
}

void save(const Document& book, const std::filesystem::path& file) {
  css::uno::Sequence<css::beans::PropertyValue> how(1);
  how.getArray()[0].Name = "FilterName";
  how.getArray()[0].Value <<= to_office("calc8");
  as<css::frame::XStorable>(book)->storeToURL(to_office(office::url_of(file)), how);
}

double opened(const office::Office& office, const Rounds& rounds,
              const std::filesystem::path& file) {
  Document book;
  css::uno::Sequence<css::beans::PropertyValue> how(1);
  how.getArray()[0].Name = "Hidden";
  how.getArray()[0].Value <<= true;
  const double time = rounds.of(
      [&](int) {
        if (book.is()) close(book);
      },
      [&] {
        book = as<css::sheet::XSpreadsheetDocument>(
            as<css::frame::XComponentLoader>(office.desktop())
                ->loadComponentFromURL(to_office(office::url_of(file)), to_office("_blank"), 0,
                                       how));
      });
  close(book);
  return time;
}

bool row(const char* what, double ours, double theirs, double most, bool judged) {
  const bool good = ours <= most * theirs;
  std::printf("  %-44s %9.1f %9.1f %7.2f  at most %.1f%s\n", what, ours, theirs, ours / theirs,
              most, good ? "" : "  TOO SLOW");
  return good || !judged;
}

bool compare(const office::Office& office, int rounds_due) {
  const Rounds rounds(office, rounds_due);
  const builder::Builder builder(office);
  const EngineLayout layout = layouts_of_48_valves().front();
  const book::Places places(layout);
  const Document book = builder.build(layout, layout.name);
  book::fill(book, layout, entries_for(layout));
  Book of(rounds, book, places);
  of.after_one_reading();
  const double all_empty = of.recalculated();
  const double one_empty = of.after_one_reading();
  const auto folder = std::filesystem::temp_directory_path() / "shimwright-bench-log";
  std::filesystem::create_directories(folder);
  const auto empty_file = folder / "empty.ods";
  save(book, empty_file);
  std::vector<std::string> names;
  for (const ValveId& valve : places.valves) names.push_back(name_of(valve, layout));
  put_log(book, tests::invented_log(names, checks));
  of.after_one_reading();
  const double all = of.recalculated();
  const double one = of.after_one_reading();

  const auto file = folder / "book.ods";
  const auto values = folder / "values.ods";
  save(book, file);
  const Document copy = values_copy(office, book);
  const std::string trouble = difference(book, copy);
  const std::size_t formulas = formulas_in(book);
  save(copy, values);
  close(copy);
  const std::string told = office::from_office(
      as<css::text::XText>(book::Sheet(book, book::sheet_name::drift)
                               .range(book::At{book::DriftMap::words, book::DriftMap::heading_row})
                               ->getCellByPosition(0, 0))
          ->getString());
  const double draw = drawn(book, cylinders_of(layout));
  close(book);
  const double open_empty = opened(office, rounds, empty_file);
  const double open = opened(office, rounds, file);
  const double open_values = opened(office, rounds, values);
  std::filesystem::remove_all(folder);

  std::printf("%s, %zu formulas, log: %s; %s\n", layout.name.c_str(), formulas, told.c_str(),
              trouble.empty() ? "both say the same" : ("NOT THE SAME in " + trouble).c_str());
  const bool judged = rounds_due > 1;
  bool good = trouble.empty() && told.starts_with("40 checks");
  good = row("recalculated, all; beside an empty log", all, all_empty, most_times_to_recalculate,
             judged) &&
         good;
  good =
      row("one reading; beside an empty log", one, one_empty, most_times_to_recalculate, judged) &&
      good;
  std::printf("  %-44s %9.1f\n", "charts drawn, on the wall", draw);
  std::printf("  %-44s %9.1f\n", "opened, with an empty log", open_empty);
  good = row("opened; beside its copy of values", open, open_values, most_times_to_open, judged) &&
         good;
  return good;
}

}  // namespace
}  // namespace shimwright::bench

int main(int argc, char** argv) {
  using namespace shimwright;
  return bench::run_in_office(
      "bench_log", argc, argv, [](const office::Office& office, bool quick) {
        std::printf("In ms of the office's processor time, middle of several runs.\n");
        return bench::compare(office, quick ? 1 : 11);
      });
}
