// SPDX-License-Identifier: MPL-2.0
#include "commands/make_book.hpp"

#include <com/sun/star/awt/XTopWindow.hpp>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/document/XUndoManagerSupplier.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>
#include <com/sun/star/util/XModifiable.hpp>

#include "book/book.hpp"
#include "book/office/sheet.hpp"
#include "book/places.hpp"

namespace shimwright::commands {
namespace {

namespace css = com::sun::star;
using book::as;
using book::At;
using book::Ref;
using Document = Ref<css::sheet::XSpreadsheetDocument>;

void fill(const Document& document, const BookRequest& request) {
  namespace place = book::engine_place;
  book::Sheet engine(document, book::sheet_name::engine);
  engine.text(place::unit, request.unit);
  const auto side = [&engine](Side which, const SideRequest& asked) {
    engine.entry(place::of(which, place::min_row), asked.min);
    engine.entry(place::of(which, place::max_row), asked.max);
    engine.text(place::of(which, place::series_row), asked.series);
  };
  side(Side::inlet, request.inlet);
  side(Side::exhaust, request.exhaust);
  engine.text(place::currency, request.currency);
  engine.text(place::opened, request.shims_changed);

  book::Sheet shims(document, book::sheet_name::shims);
  At row = book::shims_place::first_ladder;
  for (const LadderRequest& ladder : request.ladders) {
    shims.text(row, ladder.series);
    At at = row;
    for (const std::string* entry : {&ladder.from, &ladder.to, &ladder.step, &ladder.price})
      shims.entry(at = right_of(at), *entry);
    row = below(row);
  }
}

}  // namespace

Document make_book(const Ref<css::uno::XComponentContext>& context, const BookRequest& request) {
  const Document document =
      book::build_book(context, request.layout, request.title, book::For::this_office);
  try {
    fill(document, request);
    as<css::sheet::XCalculatable>(document)->calculateAll();
    // The book is a document of its own and made in one go: Undo in it begins with what its owner
    // does, so the steps of the making are forgotten.
    as<css::document::XUndoManagerSupplier>(document)->getUndoManager()->clear();
  } catch (...) {
    book::discard(document);
    throw;
  }
  return document;
}

void show(const Document& document) try {
  const auto frame = as<css::frame::XModel>(document)->getCurrentController()->getFrame();
  const auto window = frame->getContainerWindow();
  window->setVisible(true);
  as<css::awt::XTopWindow>(window)->toFront();
  window->setFocus();
  // It holds entries that were typed: whoever closes it is asked whether to keep them.
  as<css::util::XModifiable>(document)->setModified(true);
} catch (...) {
  book::discard(document);
  throw;
}

}  // namespace shimwright::commands
