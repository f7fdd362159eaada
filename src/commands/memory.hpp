// SPDX-License-Identifier: MPL-2.0
//
// What was entered last, kept in the user's configuration (schema NewBook.xcs of the package).
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>

#include "book/office/uno.hpp"
#include "commands/entries.hpp"

namespace shimwright::commands {

// Where nothing is remembered, or it cannot be read, first_entries().
NewBookEntries remembered_entries(const book::Ref<com::sun::star::uno::XComponentContext>& context);

// Throws css::uno::Exception where the configuration cannot be written.
void remember(const book::Ref<com::sun::star::uno::XComponentContext>& context,
              const NewBookEntries& entries);

}  // namespace shimwright::commands
