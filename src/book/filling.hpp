// SPDX-License-Identifier: MPL-2.0
//
// A book filled in from the text of a file: the same entries, in the same cells, that a person
// would type. For the demo book and for tests.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <string_view>

#include "book/office/uno.hpp"
#include "core/engine/layout.hpp"

namespace shimwright::book {

// It has sections `[engine]` (key = value), `[valves]`, `[spares]`, `[rows of sizes]`,
// `[single sizes]` and `[log]` (fields parted by `|`); `#` begins a comment. Throws BadInput with
// the line for what it cannot place, such as a valve the layout does not have.
void fill(const Ref<css::sheet::XSpreadsheetDocument>& book, const EngineLayout& layout,
          std::string_view entries);

}  // namespace shimwright::book
