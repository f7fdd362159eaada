// SPDX-License-Identifier: MPL-2.0
#include "commands/undo_step.hpp"

#include <com/sun/star/container/XNamed.hpp>
#include <com/sun/star/document/XUndoAction.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellRange.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/view/XSelectionSupplier.hpp>
#include <cppuhelper/implbase1.hxx>
#include <cppuhelper/weakref.hxx>
#include <optional>
#include <utility>

#include "commands/cell_changes.hpp"
#include "commands/rest.hpp"

namespace shimwright::commands {
namespace {

using book::as;
using book::to_office;

// The first cell of what is selected; none where that is no range of cells, as a chart is not.
std::optional<Standing> standing_in(const ServiceBook::Document& document) {
  const Ref<css::sheet::XSheetCellRange> range(
      as<css::frame::XModel>(document)->getCurrentSelection(), css::uno::UNO_QUERY);
  if (!range.is()) return std::nullopt;
  const auto address = as<css::sheet::XCellRangeAddressable>(range)->getRangeAddress();
  return Standing{
      office::from_office(as<css::container::XNamed>(range->getSpreadsheet())->getName()),
      {static_cast<int>(address.StartColumn), static_cast<int>(address.StartRow)}};
}

void stand(const Ref<css::frame::XModel>& model, const Standing& there) {
  const auto sheets = as<css::sheet::XSpreadsheetDocument>(model)->getSheets();
  const rtl::OUString name = to_office(there.sheet);
  const auto controller = model->getCurrentController();
  if (!controller.is() || !sheets->hasByName(name)) return;
  const Ref<css::sheet::XSpreadsheet> sheet(sheets->getByName(name), css::uno::UNO_QUERY_THROW);
  as<css::sheet::XSpreadsheetView>(controller)->setActiveSheet(sheet);
  as<css::view::XSelectionSupplier>(controller)
      ->select(css::uno::Any(sheet->getCellByPosition(there.at.column, there.at.row)));
}

}  // namespace

// What happens when Undo or Redo passes through the step.
struct UndoStep::Passing {
  css::uno::WeakReference<css::frame::XModel> document;
  rtl::OUString title;
  std::optional<Standing> before;
  std::optional<Standing> after;
  std::optional<Rest> rest;

  void begin() {
    const Ref<css::frame::XModel> model(document);
    if (!model.is() || rest) return;
    rest.emplace(model);
  }
  void end(const std::optional<Standing>& there) {
    rest.reset();
    const Ref<css::frame::XModel> model(document);
    if (model.is() && there) stand(model, *there);
  }
};

namespace {

// Of the step, in its order; Undo goes through it from its last to its first.
enum class Part { first, last };

class Action : public cppu::WeakImplHelper1<css::document::XUndoAction> {
 public:
  Action(std::shared_ptr<UndoStep::Passing> passing, Part part)
      : passing_(std::move(passing)), part_(part) {}

  rtl::OUString SAL_CALL getTitle() override { return passing_->title; }

  void SAL_CALL undo() override { pass(part_ == Part::last, passing_->before); }
  void SAL_CALL redo() override { pass(part_ == Part::first, passing_->after); }

 private:
  void pass(bool begins, const std::optional<Standing>& there) try {
    if (begins)
      passing_->begin();
    else
      passing_->end(there);
  } catch (const css::uno::Exception&) {
    // What is written is right without it.
  }

  std::shared_ptr<UndoStep::Passing> passing_;
  Part part_;
};

}  // namespace

UndoStep::UndoStep(const ServiceBook::Document& document, std::string_view title)
    : manager_(as<css::document::XUndoManagerSupplier>(document)->getUndoManager()),
      passing_(std::make_shared<Passing>()) {
  passing_->document = as<css::frame::XModel>(document);
  passing_->title = to_office(title);
  passing_->before = standing_in(document);
  manager_->enterUndoContext(passing_->title);
  manager_->addUndoAction(new Action(passing_, Part::first));
}

UndoStep::~UndoStep() {
  if (!open_) return;
  try {
    done();
    manager_->undo();
  } catch (const css::uno::Exception&) {
    // The document is gone.
  }
}

void UndoStep::put(const ServiceBook::Place& place, const Entry& what) { put_entry(place, what); }

void UndoStep::clear(const Ref<css::sheet::XSpreadsheet>& sheet, const book::Area& area) {
  clear_entries(sheet, area);
}

void UndoStep::fill(const ServiceBook::Place& first, const EntryTable& rows) {
  fill_entries(first, rows);
}

void UndoStep::done() {
  open_ = false;
  manager_->addUndoAction(new Action(passing_, Part::last));
  manager_->leaveUndoContext();
}

void lead_to(UndoStep::Passing& step, Standing there) { step.after = std::move(there); }

}  // namespace shimwright::commands
