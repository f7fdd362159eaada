// SPDX-License-Identifier: MPL-2.0
//
// What a command writes into the cells of a book: cell by cell, so that the office's Undo takes it
// back; a cell that holds that already is passed over. Sheets must not be protected.
#pragma once

#include "commands/service_book.hpp"

namespace shimwright::commands {

// Nothing clears the cell.
void put_entry(const ServiceBook::Place& place, const Entry& what);
// Comments stay.
void clear_entries(const Ref<css::sheet::XSpreadsheet>& sheet, const book::Area& area);
// Rows, each from its first cell on.
void fill_entries(const ServiceBook::Place& first, const EntryTable& rows);

}  // namespace shimwright::commands
