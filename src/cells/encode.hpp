// SPDX-License-Identifier: MPL-2.0
//
// From the core's answers to Calc's values. What is not given is void, #N/A, in a cell of its own.
// In a range it is empty text: a void there looks empty but counts as a number and is handed on as
// 0, so that a clearance nobody took would be read as one of 0. A text that comes in a mixed range
// never compares equal in Calc (but for the empty one), so a range of texts is a string[][].
#pragma once

#include <com/sun/star/uno/Any.hxx>
#include <initializer_list>
#include <string_view>
#include <vector>

#include "core/entries/entries.hpp"

namespace shimwright::cells {

com::sun::star::uno::Any single_result(const Entry& answer);
com::sun::star::uno::Any number_range(const EntryTable& answers);  // numbers, or texts to look at
com::sun::star::uno::Any text_range(const EntryTable& answers);

struct Column {
  std::string_view name;
  enum Kind { text, number } kind;
  bool in_whole = true;  // false: only to be had as a part; such columns come last
};

// The whole table, or the one column named by `part` (empty: the whole). One row of empty text
// where there is none. Throws BadInput for a name that is none of the columns'.
com::sun::star::uno::Any table_result(const std::vector<Column>& columns, EntryTable rows,
                                      std::string_view part);

}  // namespace shimwright::cells
