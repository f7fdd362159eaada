// SPDX-License-Identifier: MPL-2.0
//
// The dialog that shows what an old log comes to: which column holds what, and which rows go into
// Log. Every change is read at once.
#pragma once

#include <string_view>

#include "commands/form.hpp"
#include "core/log/bring_in/bring_in.hpp"

namespace shimwright::commands {

// False where it is cancelled, or one is open already, which then comes to the front. `from` says
// what is brought in from where. Throws css::uno::Exception where the office cannot show it.
bool ask_what_to_bring_in(const Ref<css::uno::XComponentContext>& context,
                          const Ref<css::awt::XWindow>& parent, BringIn& log, const Teller& teller,
                          std::string_view from);

}  // namespace shimwright::commands
