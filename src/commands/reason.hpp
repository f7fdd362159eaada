// SPDX-License-Identifier: MPL-2.0
//
// Why the office could not do a thing, for a person to read: its own words name the line of its
// source where it gave up, and often nothing else.
#pragma once

#include <string>
#include <string_view>

namespace shimwright::commands {

// `message` without that line, as the end of a sentence after a colon.
std::string reason_in(std::string_view message);

}  // namespace shimwright::commands
