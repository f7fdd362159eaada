// SPDX-License-Identifier: MPL-2.0
#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/awt/XControlModel.hpp>
#include <com/sun/star/drawing/XControlShape.hpp>
#include <com/sun/star/drawing/XDrawPage.hpp>
#include <com/sun/star/drawing/XDrawPagesSupplier.hpp>
#include <com/sun/star/form/FormButtonType.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>

#include "book/office/sheet.hpp"

namespace shimwright::book {

void Sheet::button(const Area& area, std::string_view words, std::string_view url) {
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
  shape->setSize(place->getPropertyValue("Size").get<css::awt::Size>());
  shape->setPosition(place->getPropertyValue("Position").get<css::awt::Point>());
  const auto pages = as<css::drawing::XDrawPagesSupplier>(maker_)->getDrawPages();
  const auto own = as<css::sheet::XCellRangeAddressable>(sheet_)->getRangeAddress();
  as<css::drawing::XDrawPage>(pages->getByIndex(own.Sheet))->add(as<css::drawing::XShape>(shape));
}

}  // namespace shimwright::book
