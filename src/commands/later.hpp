// SPDX-License-Identifier: MPL-2.0
//
// Work for the office's main thread, once it comes round to it.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>
#include <functional>

#include "book/uno.hpp"

namespace shimwright::commands {

// Throws css::uno::Exception where the office cannot take it. What `work` throws is lost: nothing
// may pass through the office's event loop.
void later(const book::Ref<com::sun::star::uno::XComponentContext>& context,
           std::function<void()> work);

}  // namespace shimwright::commands
