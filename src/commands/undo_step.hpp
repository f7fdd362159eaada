// SPDX-License-Identifier: MPL-2.0
//
// What a command does to a book, as one step of Undo. While Undo or Redo passes through the step
// the book rests; then the cursor stands where a person looks for it.
#pragma once

#include <com/sun/star/document/XUndoManager.hpp>
#include <memory>
#include <string>

#include "book/area.hpp"
#include "commands/service_book.hpp"

namespace shimwright::commands {

// A cell by its sheet's name, as sheets may come and go.
struct Standing {
  std::string sheet;
  book::At at;
};

// All that is written while it lives is one step of Undo; without done() it is taken back.
class UndoStep {
 public:
  // Undo brings the cursor back to where it stands now.
  UndoStep(const ServiceBook::Document& document, std::string_view title);
  UndoStep(const UndoStep&) = delete;
  UndoStep& operator=(const UndoStep&) = delete;
  ~UndoStep();

  // As put_entry() and so on have them.
  void put(const ServiceBook::Place& place, const Entry& what);
  void clear(const Ref<css::sheet::XSpreadsheet>& sheet, const book::Area& area);
  void fill(const ServiceBook::Place& first, const EntryTable& rows);

  void done();

  struct Passing;
  // For lead_to(), also when the step is done.
  std::shared_ptr<Passing> passing() const { return passing_; }

 private:
  Ref<css::document::XUndoManager> manager_;
  std::shared_ptr<Passing> passing_;
  bool open_ = true;
};

// Where Redo of the step brings the cursor.
void lead_to(UndoStep::Passing& step, Standing there);

}  // namespace shimwright::commands
