// SPDX-License-Identifier: MPL-2.0
//
// Charts of the office's own, drawn from cells of the hidden sheet.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>

#include "book/gathered.hpp"
#include "book/office/sheet.hpp"

namespace shimwright::book {

// Over the chart's cells, whose sizes are to be set before; follows the numbers by itself.
void add_chart(const Ref<css::uno::XComponentContext>& context, Sheet& sheet,
               const BandChart& chart, const Gathered& gathered);

}  // namespace shimwright::book
