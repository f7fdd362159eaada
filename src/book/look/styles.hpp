// SPDX-License-Identifier: MPL-2.0
//
// How the book looks: every cell wears a named style, all derived from one, so that a person who
// wants another font or a larger hand changes it in one place. The colours of the six states come
// from the palette and from nowhere else.
#pragma once

#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>

#include "book/look/style_names.hpp"
#include "book/office/uno.hpp"

namespace shimwright::book::style {

// How much smaller the pages of that style come out, 0 to 1: the office does not keep to breaks
// where it is to find the scale itself.
void scale_pages(const Ref<css::lang::XMultiServiceFactory>& book, std::string_view page_style,
                 double scale);

// Makes every style above in a new book.
void make_styles(const Ref<css::sheet::XSpreadsheetDocument>& book);

}  // namespace shimwright::book::style
