// SPDX-License-Identifier: MPL-2.0
//
// Draw the drift: a chart for each cylinder on Drift, from values that it writes on the hidden
// sheet. The charts stand still until it is given again; Drift says when the log has changed since.
#pragma once

#include <com/sun/star/frame/XFrame.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>

#include "commands/service_book.hpp"
#include "commands/undo_step.hpp"

namespace shimwright::commands {

void draw_drift(const book::Ref<com::sun::star::uno::XComponentContext>& context,
                const book::Ref<com::sun::star::frame::XFrame>& frame) noexcept;

// The sheets whose protection is to be lifted for the drawing; none where the book has no Drift.
std::vector<Ref<css::sheet::XSpreadsheet>> sheets_of_drift(const ServiceBook& book);

// For commands that write into the log: the drawing from the log as it stands now, within the
// caller's UndoStep and with those sheets unlocked. Where there is nothing to draw, or no Drift, it
// does nothing: false.
bool draw_drift_in(const Ref<css::uno::XComponentContext>& context, const ServiceBook& book,
                   UndoStep& step);

}  // namespace shimwright::commands
