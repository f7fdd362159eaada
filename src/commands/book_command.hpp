// SPDX-License-Identifier: MPL-2.0
//
// What every command on an open service book shares: it reads the book and what that comes to, says
// why it does nothing, and writes what it does as one step of Undo.
#pragma once

#include <com/sun/star/frame/XController.hpp>
#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "book/area.hpp"
#include "commands/message.hpp"
#include "commands/service_book.hpp"
#include "commands/undo_step.hpp"
#include "core/service/entry_write.hpp"
#include "core/service/findings.hpp"

namespace shimwright::commands {

// Local time in figures that are read alike everywhere: `2026-11-26 17:40`, of which the first ten
// letters are the day.
std::string time_now();

class BookCommand {
 public:
  // `title` stands above its boxes and in the list of Undo.
  BookCommand(const Ref<css::uno::XComponentContext>& context, const Ref<css::frame::XFrame>& frame,
              Say title);

  void inform(std::string_view words) const { tell(over_, Tone::information, words); }
  void tell_trouble(const std::string& reason) const noexcept;

 protected:
  using SheetRef = Ref<css::sheet::XSpreadsheet>;

  std::string say(Say what, std::initializer_list<Word> words = {}) const {
    return found_.teller.say(what, words);
  }

  // False where there is no book that could be changed; the person has been told.
  bool begin();

  const ServiceBook::Document& document() const { return document_; }
  const ServiceBook& book() const { return *book_; }
  const Service& service() const { return service_; }
  const Findings& found() const { return found_; }
  const Over& over() const { return over_; }

  // Its boxes come up over the window of that frame, in place of the book's own.
  void tell_over(const Ref<css::frame::XFrame>& frame) {
    over_.window = frame->getContainerWindow();
  }

  // Lifts the protection of these sheets for the work. Where a password keeps one, nothing is
  // changed and the person is told: false.
  bool change(const std::vector<SheetRef>& sheets, const std::function<void(UndoStep&)>& work);

  // True at once where there is nothing to ask.
  bool goes_on_by(const std::string& question) const {
    return question.empty() || ask(over_, question, false) == Answer::yes;
  }

  // Of readings that were off in the last round it asks whether they were measured again. True
  // where they were, or there are none: service() and found() count them from now on, and the next
  // change writes that.
  bool readings_count();
  // Writes it by itself, where no other change is to come.
  void write_readings_count();

  void write_all(UndoStep& step, const std::vector<EntryWrite>& writes) const;

  // Brings the sheet to the front with the cursor there, and so does Redo of the last change.
  void show(const SheetRef& sheet, book::At at) const;

 private:
  Over over_;
  Ref<css::frame::XController> controller_;
  ServiceBook::Document document_;
  std::optional<ServiceBook> book_;
  std::shared_ptr<UndoStep::Passing> passing_;  // of the last change
  Service service_;
  Findings found_;
  std::vector<EntryWrite> readings_counted_;  // for the next change
};

// Makes the command and runs it. Nothing is thrown: what goes wrong is told in a box.
template <class Command>
void run_command(const Ref<css::uno::XComponentContext>& context,
                 const Ref<css::frame::XFrame>& frame, Say title, void (Command::*work)()) noexcept
    try {
  Command command(context, frame, title);
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

}  // namespace shimwright::commands
