// SPDX-License-Identifier: MPL-2.0
#include "book/office/views.hpp"

#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/view/XFormLayerAccess.hpp>
#include <string>

#include "book/office/sheet.hpp"

namespace shimwright::book {
namespace {

// The text by which Calc keeps how a document was last looked at, from getViewData(): zoom, page
// zoom and mode; the sheet shown; then for each sheet the cursor, how it is split across and down
// (0: not, 2: frozen), where, the pane with the cursor (2: bottom left), and the first columns and
// rows of the panes, left, right, top, bottom.
std::string view_data(std::span<const SheetView> views) {
  std::string data = "100/60/0;0";
  for (const SheetView& view : views) {
    const std::string frozen = std::to_string(view.frozen_rows);
    data += ';' + std::to_string(view.cursor.column) + '/' + std::to_string(view.cursor.row) +
            "/0/" + (view.frozen_rows > 0 ? "2" : "0") + "/0/" + frozen + "/2/0/0/0/" + frozen;
  }
  return data;
}

}  // namespace

void set_views(const Ref<css::sheet::XSpreadsheetDocument>& book,
               std::span<const SheetView> views) {
  const auto controller = as<css::frame::XModel>(book)->getCurrentController();
  const auto view = as<css::sheet::XSpreadsheetView>(controller);
  // In design mode a click on a button would select it.
  as<css::view::XFormLayerAccess>(controller)->setFormDesignMode(false);
  set(book, "ApplyFormDesignMode", false);
  for (const SheetView& each : views) {
    view->setActiveSheet(Sheet(book, each.sheet).sheet());
    set(view, "ShowGrid", false);
    set(view, "HasColumnRowHeaders", false);
  }
  // XViewFreezable freezes where the rows stand in the window, so a hidden one, or one that is not
  // laid out yet, freezes nothing.
  controller->restoreViewData(css::uno::Any(to_office(view_data(views))));
}

void show(const Ref<css::sheet::XSpreadsheetDocument>& book) {
  as<css::frame::XModel>(book)
      ->getCurrentController()
      ->getFrame()
      ->getContainerWindow()
      ->setVisible(true);
}

}  // namespace shimwright::book
