// SPDX-License-Identifier: MPL-2.0
//
// What is made from the list of functions.
#pragma once

#include <string>

#include "cells/describe/functions.hpp"

namespace shimwright::cells {

// CalcAddIns.xcu: the names and the function wizard's texts.
std::string configuration_of(const FunctionList& list);

// The help page of the functions (XHP).
std::string help_of(const FunctionList& list);

// The table in the README (Markdown), without its markers.
std::string table_of(const FunctionList& list);

}  // namespace shimwright::cells
