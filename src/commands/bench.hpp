// SPDX-License-Identifier: MPL-2.0
//
// The commands `Take to the bench` and `Clear the bench`.
#pragma once

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include "book/office/uno.hpp"

namespace shimwright::commands {

// Writes the steps of the present plan into Fit as values. What speaks against it is told in a
// message box, ticks are asked about, and nothing is thrown. One step of Undo.
void take_to_bench(const book::Ref<com::sun::star::uno::XComponentContext>& context,
                   const book::Ref<com::sun::star::frame::XFrame>& frame) noexcept;

// Empties Fit after asking, and enters on Head which shims are in by the ticks, where that is
// wanted. One step of Undo.
void clear_bench(const book::Ref<com::sun::star::uno::XComponentContext>& context,
                 const book::Ref<com::sun::star::frame::XFrame>& frame) noexcept;

}  // namespace shimwright::commands
