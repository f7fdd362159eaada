// SPDX-License-Identifier: MPL-2.0
//
// The command `New service book…`.
#pragma once

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include "book/office/uno.hpp"

namespace shimwright::commands {

// Asks, builds, shows. `frame` is where the command was given; may be null. Nothing is thrown:
// trouble is told in a message box.
void new_book(const book::Ref<com::sun::star::uno::XComponentContext>& context,
              const book::Ref<com::sun::star::frame::XFrame>& frame) noexcept;

}  // namespace shimwright::commands
