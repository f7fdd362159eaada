// SPDX-License-Identifier: MPL-2.0
//
// The entries of a book as one text, from which they can be read again. A book gathers thousands of
// cells and asks for a dozen tables of them: the office hands over one text in no time, but all
// those cells in half a millisecond, each time it is asked.
#pragma once

#include <string>
#include <string_view>

#include "core/entries/entries.hpp"

namespace shimwright {

// Blanks at the end of a row are left out; characters of Unicode's private use in a text, too.
// As long as the entries are, with no limit: tens of bytes for each that is filled in.
std::string as_text(const EntryTable& entries);

// The reverse; of any other text it makes what it can.
EntryTable entries_in(std::string_view text);

}  // namespace shimwright
