// SPDX-License-Identifier: MPL-2.0
//
// The one way in which core refuses: a sentence for the person who typed the value, telling what
// is wrong and where. An answer that merely does not exist (no reading yet, nothing fits) is not
// bad input: it is an empty std::optional.
#pragma once

#include <stdexcept>

namespace shimwright {

struct BadInput : std::invalid_argument {
  using std::invalid_argument::invalid_argument;
};

}  // namespace shimwright
