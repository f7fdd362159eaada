// SPDX-License-Identifier: MPL-2.0
//
// Makes a sheet's cells, checks, formats and print areas from its description. The only place that
// writes formulas of the book: each shows one piece of an answer, or copies one entry.
#pragma once

#include <string>

#include "book/description.hpp"
#include "book/gathered.hpp"
#include "book/office/sheet.hpp"

namespace shimwright::book {

// The sheet is to be there and empty. Protects nothing: what is drawn on it comes first.
void lay_out(Sheet& sheet, const SheetDescription& description, const Gathered& gathered,
             std::string_view number = {});

// The last touch, once all is laid out and drawn; save hiding, which the views would undo.
void finish(Sheet& sheet, const SheetDescription& description);

// The formula or words of a cell; empty where nothing stands there. For tests too.
std::string formula_of(const Content& content);

// The check as the office takes it; bounds by plain references only.
EntryCheck entry_check(const Takes& entry, const Gathered& gathered, std::string_view number = {});

}  // namespace shimwright::book
