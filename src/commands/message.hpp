// SPDX-License-Identifier: MPL-2.0
//
// Message boxes: one that tells, one that asks.
#pragma once

#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <string>
#include <string_view>

#include "book/office/uno.hpp"

namespace shimwright::commands {

enum class Tone { information, trouble };

// Where to show a box: over that window, which may be null, and under that title.
struct Over {
  book::Ref<com::sun::star::uno::XComponentContext> context;
  book::Ref<com::sun::star::awt::XWindow> window;
  std::string title;
};

void tell(const Over& over, Tone tone, std::string_view words) noexcept;

enum class Answer { yes, no, cancel };

// `offers_cancel`: three buttons, else yes and no. Enter and Escape never mean yes. Throws
// css::uno::Exception where no box can be shown.
Answer ask(const Over& over, std::string_view question, bool offers_cancel);

}  // namespace shimwright::commands
