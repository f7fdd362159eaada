// SPDX-License-Identifier: MPL-2.0
#include "commands/book_command.hpp"

#include <algorithm>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <ctime>
#include <list>
#include <utility>

#include "commands/reason.hpp"
#include "commands/rest.hpp"
#include "core/service/readings_off.hpp"

namespace shimwright::commands {

using book::as;

std::string time_now() {
  const std::time_t now = std::time(nullptr);
  std::tm local{};
  localtime_r(&now, &local);
  const auto two = [](int number) { return (number < 10 ? "0" : "") + std::to_string(number); };
  return std::to_string(local.tm_year + 1900) + "-" + two(local.tm_mon + 1) + "-" +
         two(local.tm_mday) + " " + two(local.tm_hour) + ":" + two(local.tm_min);
}

BookCommand::BookCommand(const Ref<css::uno::XComponentContext>& context,
                         const Ref<css::frame::XFrame>& frame, Say title)
    : over_{context, {}, Teller().say(title)} {
  if (!frame.is()) return;
  over_.window = frame->getContainerWindow();
  controller_ = frame->getController();
  if (controller_.is())
    document_ = ServiceBook::Document(controller_->getModel(), css::uno::UNO_QUERY);
}

void BookCommand::tell_trouble(const std::string& reason) const noexcept {
  tell(over_, Tone::trouble, say(Say::bench_nothing_done, {reason_in(reason)}));
}

bool BookCommand::begin() {
  book_ = ServiceBook::in(document_);
  // What a book gathers are formulas.
  if (book_ && bring_up_to_date(document_)) book_ = ServiceBook::in(document_);
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
  return true;
}

bool BookCommand::change(const std::vector<SheetRef>& sheets,
                         const std::function<void(UndoStep&)>& work) {
  UndoStep step(document_, over_.title);
  std::vector<SheetRef> all = sheets;
  for (const EntryWrite& one : readings_counted_)
    all.push_back(book_->place_of(one.kind, one.name, one.value).sheet);
  std::list<Lock> locks;
  for (const SheetRef& sheet : all)
    if (!locks.emplace_back(sheet).unlock()) {
      inform(say(Say::bench_locked,
                 {office::from_office(as<css::container::XNamed>(sheet)->getName())}));
      return false;
    }
  {
    const Rest rest(document_);
    write_all(step, std::exchange(readings_counted_, {}));
    work(step);
  }
  for (Lock& lock : locks) lock.relock();
  step.done();
  passing_ = step.passing();
  return true;
}

bool BookCommand::readings_count() {
  const std::string question = question_on_readings_off(service_, found_);
  if (question.empty()) return true;
  if (ask(over_, question, false) != Answer::yes) return false;
  readings_counted_ = readings_off_to_clear(service_);
  service_.readings_off = Entry();
  found_ = findings_in(service_);
  return true;
}

void BookCommand::write_readings_count() {
  if (!readings_counted_.empty()) change({}, [](UndoStep&) {});
}

void BookCommand::write_all(UndoStep& step, const std::vector<EntryWrite>& writes) const {
  for (const EntryWrite& one : writes)
    step.put(book_->place_of(one.kind, one.name, one.value), one.what);
}

void BookCommand::show(const SheetRef& sheet, book::At at) const {
  as<css::sheet::XSpreadsheetView>(controller_)->setActiveSheet(sheet);
  as<css::view::XSelectionSupplier>(controller_)
      ->select(css::uno::Any(sheet->getCellRangeByPosition(at.column, at.row, at.column, at.row)));
  if (passing_)
    lead_to(*passing_, {office::from_office(as<css::container::XNamed>(sheet)->getName()), at});
  // Off the button, so that the keys go into the cell.
  as<css::awt::XWindow>(controller_->getFrame()->getComponentWindow())->setFocus();
}

}  // namespace shimwright::commands
