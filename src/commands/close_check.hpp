// SPDX-License-Identifier: MPL-2.0
//
// The command `Close this check`.
#pragma once

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include "book/office/uno.hpp"

namespace shimwright::commands {

// Asks for date, distance and the like, shows what closing the check will do or why it cannot be
// closed yet, and puts it on record: a row a valve in Log, the shims that are in on Head, the
// drawer brought up to date, Fit, Arrivals and Recheck cleared; or begins another round of it. One
// step of Undo. What speaks against it is told in a message box, and nothing is thrown.
void close_check(const book::Ref<com::sun::star::uno::XComponentContext>& context,
                 const book::Ref<com::sun::star::frame::XFrame>& frame) noexcept;

}  // namespace shimwright::commands
