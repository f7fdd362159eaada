// SPDX-License-Identifier: MPL-2.0
//
// The command `Measuring sheet`.
#pragma once

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include "book/office/uno.hpp"

namespace shimwright::commands {

// Shows the sheet Measure and opens the office's print dialog for it alone. Changes nothing. What
// speaks against it is told in a message box, and nothing is thrown.
void measuring_sheet(const book::Ref<com::sun::star::uno::XComponentContext>& context,
                     const book::Ref<com::sun::star::frame::XFrame>& frame) noexcept;

}  // namespace shimwright::commands
