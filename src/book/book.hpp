// SPDX-License-Identifier: MPL-2.0
//
// The service book of one engine: a new spreadsheet document with a sheet for each part of the
// job. Needs the add-in in the office where it is built, so that formulas find their functions.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <string_view>
#include <vector>

#include "book/description.hpp"
#include "book/office/uno.hpp"
#include "book/places.hpp"
#include "core/engine/layout.hpp"

namespace shimwright::book {

// Whether the book's fixed words may name this office's own decimal mark.
enum class For { any_office, this_office };

// A new, hidden document with the whole book for this layout, nothing entered yet, calculated and
// unmodified. `title` is what lists of templates show. Throws css::uno::Exception where the office
// fails.
Ref<css::sheet::XSpreadsheetDocument> build_book(const Ref<css::uno::XComponentContext>& context,
                                                 const EngineLayout& layout, std::string_view title,
                                                 For whom = For::any_office);

// The sheets of the book that are described, left to right.
std::vector<SheetDescription> descriptions(const Places& places);

// Closes a book that could not be finished; hidden, it would keep the office from ending.
void discard(const Ref<css::sheet::XSpreadsheetDocument>& book) noexcept;

}  // namespace shimwright::book
