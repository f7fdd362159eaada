// SPDX-License-Identifier: MPL-2.0
//
// Every text that the book says, by what it means. The texts themselves stand in one file a
// language; a text has blanks for what it is about, which are filled in order (teller.hpp).
#pragma once

namespace shimwright {

enum class Say {
  // Remarks on entries, any table.
  text_where_number_due,  // name of the field, the text
  error_in_entry,         // name of the field

  count  // of them all: keep it last
};

}  // namespace shimwright
