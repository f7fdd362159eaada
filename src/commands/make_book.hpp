// SPDX-License-Identifier: MPL-2.0
//
// The book that was asked for: built, with the entries of the request in its cells.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include "book/office/uno.hpp"
#include "commands/request.hpp"

namespace shimwright::commands {

// A new, hidden document with nothing to undo. Throws css::uno::Exception where the office fails;
// nothing is left behind then.
book::Ref<com::sun::star::sheet::XSpreadsheetDocument> make_book(
    const book::Ref<com::sun::star::uno::XComponentContext>& context, const BookRequest& request);

// Brings the hidden document's window up; the document then counts as changed. Throws
// css::uno::Exception where it cannot be shown; it is closed then.
void show(const book::Ref<com::sun::star::sheet::XSpreadsheetDocument>& book);

}  // namespace shimwright::commands
