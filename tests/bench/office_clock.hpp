// SPDX-License-Identifier: MPL-2.0
#pragma once

#include <time.h>

#include "office/office.hpp"

namespace shimwright::bench {

// The clock of the processor time that this office has used. Throws std::runtime_error where its
// process is not found.
clockid_t clock_of(const office::Office& office);

}  // namespace shimwright::bench
