// SPDX-License-Identifier: MPL-2.0
//
// The sheets of a document in its window, as the person before it turns to them.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <string_view>

#include "book/area.hpp"
#include "book/office/uno.hpp"
#include "office/office.hpp"

namespace shimwright::tests {

void show_sheet(const book::Ref<com::sun::star::sheet::XSpreadsheetDocument>& document,
                std::string_view sheet);

// As the name box does it: a cell marked as well would hold Tab and Return fast.
void go_to(const office::Office& office,
           const book::Ref<com::sun::star::sheet::XSpreadsheetDocument>& document,
           std::string_view sheet, book::At at);

}  // namespace shimwright::tests
