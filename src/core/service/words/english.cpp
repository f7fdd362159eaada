// SPDX-License-Identifier: MPL-2.0
#include <array>

#include "core/service/words/teller.hpp"

namespace shimwright {
namespace {

constexpr std::array texts{
    // Remarks on entries, any table.
    Text{Say::text_where_number_due, "{0}: {1} is text where a number is due: not counted"},
    Text{Say::error_in_entry, "{0} holds an error: mend or clear that cell"},
};

}  // namespace

std::span<const Text> english_texts() { return texts; }

}  // namespace shimwright
