// SPDX-License-Identifier: MPL-2.0
//
// What the service book asks: its entries worked out, one table of the View as one text, and
// pieces of such texts. A book asks for a handful of tables with the same entries and for thousands
// of pieces of these, so the last View and the last texts are kept, for each thread. Handing the
// entries over takes longer than working them out, so the book asks for the table `entries` first,
// which is all of them as one text, and for the others with that.
#pragma once

#include <rtl/ustring.hxx>
#include <string_view>

#include "core/entries/entries.hpp"

namespace shimwright::cells {

// Throws BadInput for a table that the View has not. `log` counts for the tables told of it, which
// are told of entries as cells only (view_drift.hpp).
rtl::OUString book_tells(const EntryTable& entries, std::string_view table,
                         const EntryTable& log = {});
rtl::OUString book_tells(const rtl::OUString& entries, std::string_view table);

// Empty where the text has no such column or row. Both texts are known again by their buffers,
// without being read.
rtl::OUString book_shows(const rtl::OUString& answer, const rtl::OUString& column, double row);

}  // namespace shimwright::cells
