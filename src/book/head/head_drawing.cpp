// SPDX-License-Identifier: MPL-2.0
#include "book/head/head_drawing.hpp"

#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/drawing/FillStyle.hpp>
#include <com/sun/star/drawing/XDrawPagesSupplier.hpp>
#include <com/sun/star/drawing/XShape.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>

#include "book/look/styles.hpp"

namespace shimwright::book {
namespace {

Ref<css::drawing::XDrawPage> page_of(const Sheet& sheet) {
  const auto pages = as<css::drawing::XDrawPagesSupplier>(sheet.maker())->getDrawPages();
  const auto area = as<css::sheet::XCellRangeAddressable>(sheet.sheet())->getRangeAddress();
  return as<css::drawing::XDrawPage>(pages->getByIndex(area.Sheet));
}

class Pen {
 public:
  explicit Pen(Sheet& sheet) : sheet_(sheet), page_(page_of(sheet)) {}

  css::awt::Point corner(const Area& area) const {
    return place(area, "Position").get<css::awt::Point>();
  }
  css::awt::Size extent(const Area& area) const {
    return place(area, "Size").get<css::awt::Size>();
  }

  Ref<css::drawing::XShape> draw(std::string_view kind, const css::awt::Point& at,
                                 const css::awt::Size& size) {
    const auto shape = as<css::drawing::XShape>(sheet_.maker()->createInstance(to_office(kind)));
    page_->add(shape);
    shape->setSize(size);
    shape->setPosition(at);
    return shape;
  }

 private:
  css::uno::Any place(const Area& area, std::string_view property) const {
    return as<css::beans::XPropertySet>(sheet_.range(area))->getPropertyValue(to_office(property));
  }

  Sheet& sheet_;
  Ref<css::drawing::XDrawPage> page_;
};

}  // namespace

void draw_heads(Sheet& sheet, const HeadMap& map) {
  Pen pen(sheet);
  for (const BankDeck& bank : map.banks) {
    const auto outline = pen.draw("com.sun.star.drawing.RectangleShape", pen.corner(bank.deck),
                                  pen.extent(bank.deck));
    set(outline, "FillStyle", css::drawing::FillStyle_NONE);
    set(outline, "LineColor", style::outline_colour);
    set(outline, "LineWidth", sal_Int32{80});
    // As round as the line is wide enough to cover the corners of the cells.
    set(outline, "CornerRadius", sal_Int32{100});
  }
}

}  // namespace shimwright::book
