// SPDX-License-Identifier: MPL-2.0
#include <algorithm>
#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/awt/XControlModel.hpp>
#include <com/sun/star/drawing/XControlShape.hpp>
#include <com/sun/star/drawing/XDrawPage.hpp>
#include <com/sun/star/drawing/XDrawPagesSupplier.hpp>
#include <com/sun/star/form/FormButtonType.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <cstdint>

#include "book/office/sheet.hpp"

namespace shimwright::book {

void Sheet::button(const Area& area, std::string_view words, std::string_view url, bool at_left) {
  // In hundredths of a millimetre.
  constexpr std::int32_t room = 100;  // above and below
  constexpr std::int32_t beside = 200;
  constexpr std::int32_t widest = 4000;
  const auto model = as<css::awt::XControlModel>(
      maker_->createInstance("com.sun.star.form.component.CommandButton"));
  set(model, "Name", to_office(words));
  set(model, "Label", to_office(words));
  set(model, "ButtonType", css::form::FormButtonType_URL);
  set(model, "TargetURL", to_office(url));
  set(model, "Printable", false);
  const auto shape =
      as<css::drawing::XControlShape>(maker_->createInstance("com.sun.star.drawing.ControlShape"));
  shape->setControl(model);
  const auto place = as<css::beans::XPropertySet>(range(area));
  const auto cells = place->getPropertyValue("Size").get<css::awt::Size>();
  const auto corner = place->getPropertyValue("Position").get<css::awt::Point>();
  const std::int32_t width = std::min(cells.Width - beside, widest);
  shape->setSize({width, cells.Height - 2 * room});
  shape->setPosition(
      {at_left ? corner.X + beside : corner.X + cells.Width - width, corner.Y + room});
  const auto pages = as<css::drawing::XDrawPagesSupplier>(maker_)->getDrawPages();
  const auto own = as<css::sheet::XCellRangeAddressable>(sheet_)->getRangeAddress();
  as<css::drawing::XDrawPage>(pages->getByIndex(own.Sheet))->add(as<css::drawing::XShape>(shape));
}

}  // namespace shimwright::book
