// SPDX-License-Identifier: MPL-2.0
#include "commands/message.hpp"

#include <com/sun/star/awt/MessageBoxButtons.hpp>
#include <com/sun/star/awt/MessageBoxResults.hpp>
#include <com/sun/star/awt/MessageBoxType.hpp>
#include <com/sun/star/awt/XMessageBox.hpp>
#include <com/sun/star/awt/XMessageBoxFactory.hpp>
#include <com/sun/star/lang/XComponent.hpp>

namespace shimwright::commands {
namespace {

namespace css = com::sun::star;
namespace buttons = css::awt::MessageBoxButtons;
using book::as;
using book::Ref;
using book::to_office;

sal_Int16 run(const Over& over, css::awt::MessageBoxType type, sal_Int32 choice,
              std::string_view words) {
  const auto boxes =
      as<css::awt::XMessageBoxFactory>(over.context->getServiceManager()->createInstanceWithContext(
          to_office("com.sun.star.awt.Toolkit"), over.context));
  const auto box =
      boxes->createMessageBox(Ref<css::awt::XWindowPeer>(over.window, css::uno::UNO_QUERY), type,
                              choice, to_office(over.title), to_office(words));
  const sal_Int16 result = box->execute();
  as<css::lang::XComponent>(box)->dispose();
  return result;
}

}  // namespace

void tell(const Over& over, Tone tone, std::string_view words) noexcept {
  try {
    run(over,
        tone == Tone::trouble ? css::awt::MessageBoxType_ERRORBOX
                              : css::awt::MessageBoxType_INFOBOX,
        buttons::BUTTONS_OK, words);
  } catch (...) {
    // Where not even a box can be shown there is no one left to tell.
  }
}

Answer ask(const Over& over, std::string_view question, bool offers_cancel) {
  const sal_Int32 choice = offers_cancel
                               ? buttons::BUTTONS_YES_NO_CANCEL + buttons::DEFAULT_BUTTON_CANCEL
                               : buttons::BUTTONS_YES_NO + buttons::DEFAULT_BUTTON_NO;
  const sal_Int16 result = run(over, css::awt::MessageBoxType_QUERYBOX, choice, question);
  if (result == css::awt::MessageBoxResults::YES) return Answer::yes;
  if (result == css::awt::MessageBoxResults::NO) return Answer::no;
  return Answer::cancel;
}

}  // namespace shimwright::commands
