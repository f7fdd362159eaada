// SPDX-License-Identifier: MPL-2.0
//
// The command `Order placed`.
#pragma once

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include "book/office/uno.hpp"

namespace shimwright::commands {

// Writes the order of the present plan into Arrivals as values, a row a shim, below what stands
// there, and says what it wrote. What was ordered before and has not arrived is asked about; what
// speaks against it is told in a message box, and nothing is thrown. One step of Undo.
void order_placed(const book::Ref<com::sun::star::uno::XComponentContext>& context,
                  const book::Ref<com::sun::star::frame::XFrame>& frame) noexcept;

}  // namespace shimwright::commands
