// SPDX-License-Identifier: MPL-2.0
#include "book/look/style_maker.hpp"

#include <com/sun/star/style/XStyle.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/BorderLine2.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>

namespace shimwright::book::style {

Any line(sal_Int32 of_colour, double points) {
  const auto width = static_cast<sal_Int16>(points * 2540 / 72 + 0.5);
  css::table::BorderLine2 made;
  made.Color = of_colour;
  made.OuterLineWidth = width;
  made.LineWidth = static_cast<sal_uInt32>(width);
  return Any(made);
}

Any colour(const Rgb& rgb) {
  return Any(sal_Int32{rgb.red * 0x10000 + rgb.green * 0x100 + rgb.blue});
}

Maker::Maker(const Ref<css::sheet::XSpreadsheetDocument>& book)
    : maker_(as<css::lang::XMultiServiceFactory>(book)),
      styles_(as<css::container::XNameContainer>(
          as<css::style::XStyleFamiliesSupplier>(book)->getStyleFamilies()->getByName(
              "CellStyles"))),
      formats_(as<css::util::XNumberFormatsSupplier>(book)->getNumberFormats()) {}

void Maker::make(std::string_view name, std::string_view parent, const Looks& looks) {
  const auto made = as<css::style::XStyle>(maker_->createInstance("com.sun.star.style.CellStyle"));
  styles_->insertByName(to_office(name), Any(made));
  if (!parent.empty()) made->setParentStyle(to_office(parent));
  const auto properties = as<css::beans::XPropertySet>(made);
  for (const auto& [property, value] : looks)
    properties->setPropertyValue(to_office(property), value);
}

std::pair<std::string_view, Any> Maker::format(std::string_view code) {
  const css::lang::Locale english("en", "US", "");
  const css::lang::Locale readers;
  return {"NumberFormat", Any(formats_->addNewConverted(to_office(code), english, readers))};
}

}  // namespace shimwright::book::style
