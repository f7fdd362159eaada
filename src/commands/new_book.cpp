// SPDX-License-Identifier: MPL-2.0
#include "commands/new_book.hpp"

#include <string>

#include "commands/make_book.hpp"
#include "commands/memory.hpp"
#include "commands/message.hpp"
#include "commands/new_book_dialog.hpp"
#include "commands/reason.hpp"

namespace shimwright::commands {
namespace {

constexpr std::string_view title = "New service book";

void run(const Ref<css::uno::XComponentContext>& context, const Ref<css::awt::XWindow>& over) {
  NewBookEntries entries = remembered_entries(context);
  const auto request = ask_for_book(context, over, entries);
  if (!request) return;
  // Before the book is made: should that fail, nothing has to be typed again.
  std::string not_kept;
  try {
    remember(context, entries);
  } catch (const css::uno::Exception& trouble) {
    not_kept = reason_in(office::from_office(trouble.Message));
  }
  show(make_book(context, *request));
  if (!not_kept.empty())
    tell({context, over, std::string(title)}, Tone::trouble,
         "The book is made, but its entries could not be kept for the next time: " + not_kept);
}

}  // namespace

void new_book(const Ref<css::uno::XComponentContext>& context,
              const Ref<css::frame::XFrame>& frame) noexcept {
  Ref<css::awt::XWindow> over;
  std::string trouble;
  try {
    if (frame.is()) over = frame->getContainerWindow();
    return run(context, over);
  } catch (const css::uno::Exception& failure) {
    trouble = office::from_office(failure.Message);
  } catch (const std::exception& failure) {
    trouble = failure.what();
  } catch (...) {
  }
  tell({context, over, std::string(title)}, Tone::trouble,
       "No book was made: " + reason_in(trouble));
}

}  // namespace shimwright::commands
