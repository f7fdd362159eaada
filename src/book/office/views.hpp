// SPDX-License-Identifier: MPL-2.0
//
// How a sheet meets its reader: where the cursor stands, and which rows at the top stay in sight
// when the rest is scrolled.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <span>
#include <string_view>

#include "book/office/uno.hpp"
#include "book/places.hpp"

namespace shimwright::book {

struct SheetView {
  std::string_view sheet;
  At cursor;
  int frozen_rows;  // 0: none
};

// Gridlines and the sheet's own headers off, every sheet scrolled to its top, the first one shown.
// `views` are in the order of the sheets. The window may still be hidden.
void set_views(const Ref<css::sheet::XSpreadsheetDocument>& book, std::span<const SheetView> views);

// Brings its window up. Of a hidden document the office does not save how it is looked at.
void show(const Ref<css::sheet::XSpreadsheetDocument>& book);

}  // namespace shimwright::book
