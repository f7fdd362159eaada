// SPDX-License-Identifier: MPL-2.0
//
// The frame of a benchmark in an office: the package to install, an office of its own, and what
// goes wrong told.
#pragma once

#include <functional>

#include "office/office.hpp"

namespace shimwright::bench {

// `NAME package.oxt [quick]`. The work gives false where answers are not the same, which is a
// failure; so is anything thrown. What main returns.
int run_in_office(const char* name, int argc, char** argv,
                  const std::function<bool(const office::Office&, bool quick)>& work);

// Under which conditions the figures came to be.
void print_load();

}  // namespace shimwright::bench
