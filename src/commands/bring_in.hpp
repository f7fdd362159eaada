// SPDX-License-Identifier: MPL-2.0
//
// The command `Bring in a log…`.
#pragma once

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include "book/office/uno.hpp"

namespace shimwright::commands {

// Takes what is selected in the front document, shows what it would come to, and writes the rows
// that its owner ticks below those in Log of the open service book: the front document, else the
// only other one. The owner's sheet is read only. What speaks against it is told in a message box,
// and nothing is thrown. One step of Undo.
void bring_in_log(const book::Ref<com::sun::star::uno::XComponentContext>& context,
                  const book::Ref<com::sun::star::frame::XFrame>& frame) noexcept;

}  // namespace shimwright::commands
