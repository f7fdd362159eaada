// SPDX-License-Identifier: MPL-2.0
//
// Paper: A4, one sheet of the book on one page, with a quiet footer that says which.
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/sheet/XHeaderFooterContent.hpp>
#include <com/sun/star/style/XStyle.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/text/XTextContent.hpp>
#include <com/sun/star/text/XTextCursor.hpp>
#include <com/sun/star/text/XTextRange.hpp>

#include "book/look/style_maker.hpp"
#include "book/look/styles.hpp"

namespace shimwright::book::style {
namespace {

constexpr std::string_view date = "com.sun.star.text.TextField.DateTime";

void write(const Ref<css::lang::XMultiServiceFactory>& maker, const Ref<css::text::XText>& text,
           std::string_view words, std::string_view field) {
  const auto cursor = text->createTextCursor();
  set(cursor, "CharHeight", 9.0f);
  set(cursor, "CharColor", quiet_ink);
  const auto end = as<css::text::XTextRange>(cursor);
  text->insertString(end, to_office(words), false);
  if (field.empty()) return;
  const auto made = maker->createInstance(to_office(field));
  if (field == date) set(made, "IsDate", true);
  text->insertTextContent(end, as<css::text::XTextContent>(made), false);
}

Ref<css::container::XNameContainer> page_styles(const Ref<css::uno::XInterface>& book) {
  return as<css::container::XNameContainer>(
      as<css::style::XStyleFamiliesSupplier>(book)->getStyleFamilies()->getByName("PageStyles"));
}

void make_page(const Ref<css::sheet::XSpreadsheetDocument>& book, std::string_view name,
               bool landscape, sal_Int16 pages_high = 1) {
  const auto maker = as<css::lang::XMultiServiceFactory>(book);
  const auto page = as<css::style::XStyle>(maker->createInstance("com.sun.star.style.PageStyle"));
  page_styles(book)->insertByName(to_office(name), css::uno::Any(page));
  set(page, "IsLandscape", landscape);
  set(page, "Width", hundredths(landscape ? 297 : 210));
  set(page, "Height", hundredths(landscape ? 210 : 297));
  for (const auto margin : {"LeftMargin", "RightMargin", "TopMargin", "BottomMargin"})
    set(page, margin, hundredths(10));
  set(page, "CenterHorizontally", true);
  set(page, "ScaleToPagesX", sal_Int16{1});
  set(page, "ScaleToPagesY", pages_high);
  set(page, "HeaderIsOn", false);
  set(page, "FooterIsOn", true);
  set(page, "FooterHeight", hundredths(6));
  set(page, "FooterBodyDistance", hundredths(2));

  const auto footer = as<css::sheet::XHeaderFooterContent>(
      as<css::beans::XPropertySet>(page)->getPropertyValue("RightPageFooterContent"));
  write(maker, footer->getLeftText(), "", "com.sun.star.text.TextField.SheetName");
  write(maker, footer->getCenterText(), "", "com.sun.star.text.TextField.FileName");
  write(maker, footer->getRightText(), "printed ", date);
  set(page, "RightPageFooterContent", footer);
}

}  // namespace

void scale_pages(const Ref<css::lang::XMultiServiceFactory>& book, std::string_view page_style,
                 double scale) {
  const auto page =
      as<css::beans::XPropertySet>(page_styles(book)->getByName(to_office(page_style)));
  for (const auto pages : {"ScaleToPagesX", "ScaleToPagesY"}) set(page, pages, sal_Int16{0});
  set(page, "PageScale", static_cast<sal_Int16>(100 * scale));
}

void make_page_styles(const Ref<css::sheet::XSpreadsheetDocument>& book) {
  make_page(book, portrait, false);
  make_page(book, landscape, true);
  make_page(book, landscape_long, true, 0);
  make_page(book, landscape_parted, true, 2);
  make_page(book, portrait_long, false, 2);
  make_page(book, portrait_parted, false, 2);
  make_page(book, portrait_charts, false, 0);
}

}  // namespace shimwright::book::style
