// SPDX-License-Identifier: MPL-2.0
//
// The dialog of the command `Close this check`.
#pragma once

#include <optional>
#include <string>

#include "commands/message.hpp"
#include "core/service/closing.hpp"

namespace shimwright::commands {

// Shown until the person accepts or cancels (none). It can be accepted only where nothing speaks
// against it; what is to be asked besides is shown, and still to be asked. Where the dialog is open
// already, that comes to the front, and the answer is none. Throws css::uno::Exception where it
// cannot be shown.
std::optional<ClosingEntries> ask_to_close(const Over& over, const Service& service,
                                           const Findings& found, const EntryTable& log,
                                           const std::string& today);

}  // namespace shimwright::commands
