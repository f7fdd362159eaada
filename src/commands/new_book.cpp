// SPDX-License-Identifier: MPL-2.0
#include "commands/new_book.hpp"

#include <com/sun/star/awt/MessageBoxButtons.hpp>
#include <com/sun/star/awt/MessageBoxType.hpp>
#include <com/sun/star/awt/XMessageBox.hpp>
#include <com/sun/star/awt/XMessageBoxFactory.hpp>
#include <com/sun/star/lang/XComponent.hpp>
#include <string>

#include "commands/make_book.hpp"
#include "commands/memory.hpp"
#include "commands/new_book_dialog.hpp"
#include "commands/reason.hpp"

namespace shimwright::commands {
namespace {

using book::as;
using book::to_office;

void tell(const Ref<css::uno::XComponentContext>& context, const Ref<css::awt::XWindow>& over,
          const std::string& sentence) noexcept {
  try {
    const auto boxes =
        as<css::awt::XMessageBoxFactory>(context->getServiceManager()->createInstanceWithContext(
            to_office("com.sun.star.awt.Toolkit"), context));
    const auto box = boxes->createMessageBox(Ref<css::awt::XWindowPeer>(over, css::uno::UNO_QUERY),
                                             css::awt::MessageBoxType_ERRORBOX,
                                             css::awt::MessageBoxButtons::BUTTONS_OK,
                                             to_office("New service book"), to_office(sentence));
    box->execute();
    as<css::lang::XComponent>(box)->dispose();
  } catch (...) {
    // Where not even a box can be shown there is no one left to tell.
  }
}

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
    tell(context, over,
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
  tell(context, over, "No book was made: " + reason_in(trouble));
}

}  // namespace shimwright::commands
