// SPDX-License-Identifier: MPL-2.0
//
// The power fails while a command writes or its book is saved: what is on the disk is the old book,
// byte for byte, or the new one, whole. Twenty times, at moments taken by chance.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/FormulaResult.hpp>
#include <com/sun/star/sheet/XCellRangesQuery.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <filesystem>
#include <fstream>
#include <functional>
#include <iostream>
#include <iterator>
#include <random>
#include <regex>
#include <thread>

#include "book/command_urls.hpp"
#include "book/fit_map.hpp"
#include "book/places.hpp"
#include "builder/builder.hpp"
#include "core/engine/presets.hpp"
#include "desk.hpp"
#include "screen.hpp"

namespace shimwright::tests {
namespace {

namespace fs = std::filesystem;
using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using office::to_office;
using Document = Reference<css::sheet::XSpreadsheetDocument>;
using Clock = std::chrono::steady_clock;

constexpr int checks_logged = 3;

EngineLayout twin() {
  return std::ranges::find(presets(), std::string("parallel twin"), &Preset::name)->layout;
}

// One valve is tight and gets a bought shim; three checks are in the log.
std::string entries() {
  std::string text =
      "[engine]\nunit = mm\nexhaust = 0.22 | 0.28 | 0.75 | A\ninlet = 0.16 | 0.22 | 0.75 | A\n"
      "[valves]\n";
  std::string log;
  for (const ValveId& valve : valves_of(twin())) {
    const std::string name = name_of(valve, twin());
    const std::string gap = valve.side == Side::inlet ? "0.19" : "0.25";
    text += name + " | " + (name == "1 EX L" ? "0.15" : gap) + " | 270 |\n";
    for (int check = 1; check <= checks_logged; ++check) {
      const std::string number = std::to_string(check);
      log += number + " | 1 | 202" + number + "-05-01 | " + number + "0000 | " + name + " | " +
             gap + std::to_string(9 - check) + " | good | 2.700 | 2.700 | " + gap +
             std::to_string(9 - check) + " | | | |\n";
    }
  }
  return text + "[rows of sizes]\nA | 2.20 | 3.20 | 0.05 | 4.20\n[log]\n" + log;
}

std::string bytes_of(const fs::path& file) {
  std::ifstream in(file, std::ios::binary);
  return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

Document open(const office::Office& office, const fs::path& file, bool hidden) {
  css::uno::Sequence<css::beans::PropertyValue> how(2);
  how.getArray()[0].Name = to_office("OnMainThread");
  how.getArray()[0].Value <<= true;
  how.getArray()[1].Name = to_office("Hidden");
  how.getArray()[1].Value <<= hidden;
  return Document(office.desktop()->loadComponentFromURL(to_office(office::url_of(file)),
                                                         to_office("_blank"), 0, how),
                  UNO_QUERY_THROW);
}

void save(const Document& document) {
  Reference<css::frame::XStorable>(document, UNO_QUERY_THROW)->store();
}

void save_as(const Document& document, const fs::path& file) {
  css::uno::Sequence<css::beans::PropertyValue> how(1);
  how.getArray()[0].Name = to_office("FilterName");
  how.getArray()[0].Value <<= to_office("calc8");
  Reference<css::frame::XStorable>(document, UNO_QUERY_THROW)
      ->storeToURL(to_office(office::url_of(file)), how);
}

void close(const Document& document) {
  Reference<css::util::XCloseable>(document, UNO_QUERY_THROW)->close(true);
}

Reference<css::table::XCell> cell(const Document& document, std::string_view sheet, book::At at) {
  return Reference<css::table::XCellRange>(document->getSheets()->getByName(to_office(sheet)),
                                           UNO_QUERY_THROW)
      ->getCellByPosition(at.column, at.row);
}

bool is_filled(const Document& document, std::string_view sheet, book::At at) {
  return !cell(document, sheet, at)->getFormula().isEmpty();
}

void wait_until(const std::function<bool()>& condition) {
  if (!comes_true(condition)) throw std::runtime_error("waited in vain");
}

Window box(const office::Office& office, const char* title) {
  std::optional<Window> found;
  wait_until([&] { return (found = window_titled(office, title)).has_value(); });
  return *found;
}

// Commands, as a person gives them; each returns when it has written.
void order(const office::Office& office, const Document& document) {
  run_command(document, book::command::order_placed);
  box(office, "Order placed").press("OK");
  wait_until([&] { return !window_titled(office, "Order placed"); });
}

void take(const office::Office&, const Document& document) {
  run_command(document, book::command::take_to_bench);
  wait_until([&] { return is_filled(document, book::sheet_name::fit, book::FitMap::taken); });
}

book::At next_in_log() {
  const int rows = checks_logged * static_cast<int>(valves_of(twin()).size());
  return book::below(book::log_place::first, rows);
}

void close_check(const office::Office& office, const Document& document) {
  run_command(document, book::command::close_check);
  const Window dialog = box(office, "Close this check");
  dialog.enter("Distance, km", 0, "40000");
  dialog.press("Put on record");
  wait_until([&] { return is_filled(document, book::sheet_name::log, next_in_log()); });
}

void draw(const office::Office&, const Document& document) {
  run_command(document, book::command::draw_drift);
  wait_until([&] {
    return Reference<css::table::XTableChartsSupplier>(
               document->getSheets()->getByName(to_office(book::sheet_name::drift)),
               UNO_QUERY_THROW)
               ->getCharts()
               ->getElementNames()
               .getLength() == cylinders_of(twin());
  });
}

// What is in a document, but for the time of day.
std::vector<std::string> contents(const Document& document) {
  static const std::regex minute("20[0-9]{2}-[0-9]{2}-[0-9]{2} [0-9]{2}:[0-9]{2}");
  std::vector<std::string> all = everything_in(document);
  for (std::string& one : all) one = std::regex_replace(one, minute, "now");
  return all;
}

int errors_in(const Document& document) {
  int errors = 0;
  for (const rtl::OUString& name : document->getSheets()->getElementNames())
    errors += Reference<css::sheet::XCellRangesQuery>(document->getSheets()->getByName(name),
                                                      UNO_QUERY_THROW)
                  ->queryFormulaCells(css::sheet::FormulaResult::ERROR)
                  ->getCount();
  return errors;
}

using Deed = void (*)(const office::Office&, const Document&);
struct Command {
  const char* name;
  const char* book;  // it is given in
  Deed deed;
};
constexpr Command commands[] = {{"Order placed", "measured.ods", order},
                                {"Take to the bench", "measured.ods", take},
                                {"Close this check", "rechecked.ods", close_check},
                                {"Draw the drift", "measured.ods", draw}};
constexpr int kills_of_each = 5;

class KilledCommand : public testing::Test {
 protected:
  void SetUp() override {
    office::Settings settings;
    settings.extension = PACKAGE;
    settings.sparing = true;
    looker_.emplace(settings);
    settings.display = screen_.display();  // a command's dialogs come up on a screen only
    office_.emplace(settings);
    make_books();
  }

  fs::path folder() const { return looker_->profile().folder(); }
  fs::path work() const { return office_->profile().folder() / "home" / "service.ods"; }

  void make_books() const {
    const Document built = builder::Builder(*looker_).build(twin(), "twin", entries());
    save_as(built, folder() / "measured.ods");
    close(built);
    const Document done = open(*looker_, folder() / "measured.ods", false);
    take(*looker_, done);
    const book::FitMap fit(static_cast<int>(valves_of(twin()).size()));
    for (int row = 0; is_filled(done, book::sheet_name::fit, fit.at(row, book::FitMap::step));
         ++row)
      Reference<css::text::XText>(
          cell(done, book::sheet_name::fit, fit.at(row, book::FitMap::done)), UNO_QUERY_THROW)
          ->setString(to_office("x"));
    namespace recheck = book::recheck_place;
    cell(done, book::sheet_name::recheck, recheck::at(0, recheck::gap))->setValue(0.25);
    save_as(done, folder() / "rechecked.ods");
    close(done);
  }

  Document open_at_work(const char* book) const {
    fs::copy_file(folder() / book, work(), fs::copy_options::overwrite_existing);
    return open(*office_, work(), false);
  }

  // The book as it is when nothing goes wrong, and how long that takes.
  struct Whole {
    std::vector<std::string> contents;
    Clock::duration time{};
  };
  Whole whole(const Command& command) const {
    const Document document = open_at_work(command.book);
    const auto begin = Clock::now();
    command.deed(*office_, document);
    save(document);
    const auto time = Clock::now() - begin;
    close(document);
    return {look([&](const Document& saved) {
              EXPECT_EQ(errors_in(saved), 0);
              return contents(saved);
            }),
            time};
  }

  // At a copy of the file, in an office that was never killed.
  std::vector<std::string> look(
      const std::function<std::vector<std::string>(const Document&)>& at) const {
    const fs::path copy = folder() / "copy.ods";
    fs::copy_file(work(), copy, fs::copy_options::overwrite_existing);
    const Document saved = open(*looker_, copy, true);
    auto seen = at(saved);
    close(saved);
    return seen;
  }

  // Gives the command and saves, unless the office is killed before.
  void killed(const Command& command, Clock::duration after) {
    const Document document = open_at_work(command.book);
    std::atomic<bool> is_killed = false;
    std::thread killer([&] {
      std::this_thread::sleep_for(after);
      is_killed = true;
      office_->kill();
    });
    std::string failure;
    try {
      command.deed(*office_, document);
      save(document);
    } catch (const css::uno::Exception& broken) {
      failure = is_killed ? "" : office::from_office(broken.Message);
    } catch (const std::exception& broken) {
      failure = is_killed ? "" : broken.what();
    }
    killer.join();
    EXPECT_EQ(failure, "") << "before it was killed";
  }

  Screen screen_;
  std::optional<office::Office> looker_;
  std::optional<office::Office> office_;  // the one that is killed
};

TEST_F(KilledCommand, leaves_the_old_file_or_the_whole_new_one) {
  std::random_device chance;
  const unsigned seed = chance();
  std::mt19937 random(seed);
  SCOPED_TRACE(seed);
  for (const Command& command : commands) {
    SCOPED_TRACE(command.name);
    const Whole expected = whole(command);
    const std::string old = bytes_of(folder() / command.book);
    int news = 0;
    for (int kill = 0; kill < kills_of_each; ++kill) {
      // One kill in each fifth of the time, and a little beyond its end.
      const double share = std::uniform_real_distribution<>(kill, kill + 1)(random) / kills_of_each;
      const auto after = std::chrono::duration_cast<Clock::duration>(1.1 * share * expected.time);
      SCOPED_TRACE(std::chrono::duration<double>(after).count());
      killed(command, after);
      if (bytes_of(work()) != old) {
        ++news;
        EXPECT_THAT(look([](const Document& saved) { return contents(saved); }),
                    testing::ContainerEq(expected.contents));
      }
      office_->restart();
    }
    std::cout << command.name << ": " << std::chrono::duration<double>(expected.time).count()
              << " s, new " << news << " of " << kills_of_each << "\n";
  }
}

TEST_F(KilledCommand, that_was_not_saved_leaves_the_file_as_it_was) {
  for (const Command& command : commands) {
    SCOPED_TRACE(command.name);
    command.deed(*office_, open_at_work(command.book));
    office_->kill();
    EXPECT_EQ(bytes_of(work()), bytes_of(folder() / command.book));
    if (&command != std::end(commands) - 1) office_->restart();
  }
}

}  // namespace
}  // namespace shimwright::tests
