// SPDX-License-Identifier: MPL-2.0
//
// The dialog that asks what the new service book is for. It checks as one types, tells in one
// sentence what is wrong or missing, and can only be accepted when nothing is.
#pragma once

#include <optional>

#include "commands/form.hpp"
#include "commands/request.hpp"

namespace shimwright::commands {

// `entries` are what the dialog opens with, and what stood in it when it was accepted; a dialog
// that is cancelled leaves them alone and gives nothing. One that is open already comes to the
// front, and nothing is given. Throws css::uno::Exception where the office cannot show it.
std::optional<BookRequest> ask_for_book(const Ref<css::uno::XComponentContext>& context,
                                        const Ref<css::awt::XWindow>& parent,
                                        NewBookEntries& entries);

}  // namespace shimwright::commands
