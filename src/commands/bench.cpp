// SPDX-License-Identifier: MPL-2.0
#include "commands/bench.hpp"

#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <ctime>
#include <functional>
#include <vector>

#include "book/fit_map.hpp"
#include "book/places.hpp"
#include "commands/message.hpp"
#include "commands/reason.hpp"
#include "commands/service_book.hpp"
#include "core/service/bench_commands.hpp"

namespace shimwright::commands {
namespace {

using book::as;
using book::At;
using book::FitMap;
using book::to_office;

// Local time in figures that are read alike everywhere: `2026-11-26 17:40`.
std::string time_now() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  localtime_r(&now, &local);
  const auto two = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
  return std::to_string(local.tm_year + 1900) + "-" + two(local.tm_mon + 1) + "-" +
         two(local.tm_mday) + " " + two(local.tm_hour) + ":" + two(local.tm_min);
}

// A book and the window that it is seen in.
class BenchCommand {
 public:
  BenchCommand(const Ref<css::uno::XComponentContext>& context,
               const Ref<css::frame::XFrame>& frame, Say title)
      : over_{context, {}, Teller().say(title)} {
    if (!frame.is()) return;
    over_.window = frame->getContainerWindow();
    controller_ = frame->getController();
    if (controller_.is())
      document_ = ServiceBook::Document(controller_->getModel(), css::uno::UNO_QUERY);
  }

  void take() {
    if (!begin()) return;
    const std::vector<BenchRow> rows = rows_for_bench(service_, found_);
    if (rows.empty()) return inform(why_nothing_to_take(service_, found_));
    const FitMap map(static_cast<int>(service_.valves.size()));
    const auto steps = static_cast<int>(rows.size());
    if (steps > map.rows)
      return inform(say(Say::bench_too_long, {std::int64_t{steps}, std::int64_t{map.rows}}));
    if (ask_all(question_before_taking(service_, found_)) != Answer::yes) return;
    change([&] {
      empty_bench(map);
      for (int row = 0; row < steps; ++row)
        write_row(map, row, rows[static_cast<std::size_t>(row)]);
      write(book_->place_of("taken", "list", 0), time_now());
      print(FitMap::printed(steps));
    });
    show(map.at(0, FitMap::done));
  }

  void clear_all() {
    if (!begin()) return;
    if (service_.bench.empty()) return inform(say(Say::bench_empty));
    const BenchQuestion question = question_before_clearing(service_, found_);
    const Answer answer = ask_all(question);
    if (answer == Answer::cancel || (answer == Answer::no && !question.offers_shims)) return;
    const FitMap map(static_cast<int>(service_.valves.size()));
    std::vector<EntryWrite> shims;
    if (question.offers_shims && answer == Answer::yes) shims = shims_to_enter(service_, found_);
    change([&] {
      for (const EntryWrite& one : shims)
        write(book_->place_of(one.kind, one.name, one.value), one.what);
      empty_bench(map);
      print(FitMap::printed(0));
    });
    show(map.at(0, FitMap::done));
  }

  void inform(std::string_view words) const { tell(over_, Tone::information, words); }
  void tell_trouble(const std::string& reason) const noexcept {
    tell(over_, Tone::trouble, say(Say::bench_nothing_done, {reason_in(reason)}));
  }

 private:
  std::string say(Say what, std::initializer_list<Word> words = {}) const {
    return found_.teller.say(what, words);
  }

  // False where there is no book that could be changed; the person has been told.
  bool begin() {
    book_ = ServiceBook::in(document_);
    if (!book_) {
      inform(say(Say::bench_no_book));
      return false;
    }
    service_ = service_of(book_->entries());
    found_ = findings_in(service_);
    if (as<css::frame::XStorable>(document_)->isReadonly()) {
      inform(say(Say::bench_read_only));
      return false;
    }
    fit_ = book_->place_of("taken", "list", 0).sheet;
    return true;
  }

  // Yes at once where there is nothing to ask.
  Answer ask_all(const BenchQuestion& question) const {
    if (!question.caution.empty() && ask(over_, question.caution, false) != Answer::yes)
      return Answer::cancel;
    if (question.words.empty()) return Answer::yes;
    return ask(over_, question.words, question.offers_shims);
  }

  void change(const std::function<void()>& work) {
    UndoStep step(document_, over_.title);
    Lock lock(fit_);
    if (!lock.unlock())
      return inform(say(Say::bench_locked,
                        {office::from_office(as<css::container::XNamed>(fit_)->getName())}));
    work();
    lock.relock();
    step.done();
  }

  // Contents and heights of all rows; the looks stay.
  void empty_bench(const FitMap& map) {
    clear(fit_, {map.at(0, FitMap::kind), map.at(map.rows - 1, FitMap::done)});
    write({fit_, FitMap::taken}, Entry());
    height({map.at(0, FitMap::kind), map.at(map.rows - 1, FitMap::kind)}, book::bench_row_mm);
  }

  void write_row(const FitMap& map, int row, const BenchRow& from) {
    const auto put = [&](FitMap::Column column, const Entry& what) {
      write({fit_, map.at(row, column)}, what);
    };
    put(FitMap::kind, from.step.kind);
    put(FitMap::step, static_cast<double>(row + 1));
    put(FitMap::stop, from.step.stop);
    put(FitMap::valve, from.valve);
    put(FitMap::out, from.step.out);
    put(FitMap::in, from.step.in);
    put(FitMap::from, from.step.from);
    put(FitMap::note, from.note);
    const double mm = book::bench_row_height(from.note);
    if (mm > book::bench_row_mm) height(map.at(row, FitMap::kind), mm);
  }

  Ref<css::table::XCellRange> range(const book::Area& area) const {
    return fit_->getCellRangeByPosition(area.from.column, area.from.row, area.to.column,
                                        area.to.row);
  }

  void height(const book::Area& area, double mm) {
    book::set(as<css::table::XColumnRowRange>(range(area))->getRows(), "Height",
              book::hundredths(mm));
  }

  void print(const book::Area& area) {
    css::uno::Sequence<css::table::CellRangeAddress> areas(1);
    areas.getArray()[0] = as<css::sheet::XCellRangeAddressable>(range(area))->getRangeAddress();
    as<css::sheet::XPrintAreas>(fit_)->setPrintAreas(areas);
  }

  void show(At at) const {
    as<css::sheet::XSpreadsheetView>(controller_)->setActiveSheet(fit_);
    as<css::view::XSelectionSupplier>(controller_)->select(css::uno::Any(range(at)));
    // Off the button, so that the keys go into the cell.
    as<css::awt::XWindow>(controller_->getFrame()->getComponentWindow())->setFocus();
  }

  Over over_;
  Ref<css::frame::XController> controller_;
  ServiceBook::Document document_;
  std::optional<ServiceBook> book_;
  Ref<css::sheet::XSpreadsheet> fit_;
  Service service_;
  Findings found_;
};

void run(const Ref<css::uno::XComponentContext>& context, const Ref<css::frame::XFrame>& frame,
         Say title, void (BenchCommand::*work)()) noexcept try {
  BenchCommand command(context, frame, title);
  try {
    (command.*work)();
  } catch (const css::uno::Exception& failure) {
    command.tell_trouble(office::from_office(failure.Message));
  } catch (const std::exception& failure) {
    command.tell_trouble(failure.what());
  }
} catch (...) {
  // The window is gone: there is no one left to tell.
}

}  // namespace

void take_to_bench(const Ref<css::uno::XComponentContext>& context,
                   const Ref<css::frame::XFrame>& frame) noexcept {
  run(context, frame, Say::bench_take, &BenchCommand::take);
}

void clear_bench(const Ref<css::uno::XComponentContext>& context,
                 const Ref<css::frame::XFrame>& frame) noexcept {
  run(context, frame, Say::bench_clear, &BenchCommand::clear_all);
}

}  // namespace shimwright::commands
