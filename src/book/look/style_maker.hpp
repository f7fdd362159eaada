// SPDX-License-Identifier: MPL-2.0
//
// The ink and paper of the book, and the pen that writes styles into a document. Helper of the
// files that make the styles.
#pragma once

#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/table/CellHoriJustify.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>
#include <com/sun/star/util/XNumberFormats.hpp>
#include <string_view>
#include <utility>
#include <vector>

#include "book/office/uno.hpp"
#include "core/values/palette.hpp"

namespace shimwright::book::style {

using css::uno::Any;

// White paper, as the printer's, so that no ground ends amid a page; dark ink, and one accent, a
// graphite blue, of which what a person fills in has a breath.
inline constexpr sal_Int32 paper = 0xFFFFFF;
inline constexpr sal_Int32 card_paper = 0xFFFFFF;
inline constexpr sal_Int32 well = 0xF0F4F9;
inline constexpr sal_Int32 deck_metal = 0xE3E2DD;
inline constexpr sal_Int32 deck_groove = 0xD3D3CF;
inline constexpr sal_Int32 ink = 0x23272E;
inline constexpr sal_Int32 quiet_ink = 0x4B4F56;
inline constexpr sal_Int32 accent = 0x27425F;
inline constexpr sal_Int32 hairline = 0xD6D2C7;
inline constexpr sal_Int32 done_paper = 0xE9E6DD;  // what is behind one
inline constexpr sal_Int32 remark_paper = 0xD3DEEA;
inline constexpr sal_Int32 well_shade = 0x6F7B89;
inline constexpr sal_Int32 well_light = 0xB4BCC6;

inline constexpr std::string_view length_format = "0.000";
inline constexpr std::string_view inch_format = "0.0000";
inline constexpr std::string_view money_format = "0.00";
inline constexpr std::string_view count_format = "0";

using Looks = std::vector<std::pair<std::string_view, Any>>;

Any line(sal_Int32 colour, double points);
Any colour(const Rgb& rgb);

inline std::pair<std::string_view, Any> size(float points) { return {"CharHeight", Any(points)}; }
inline std::pair<std::string_view, Any> bold() {
  return {"CharWeight", Any(css::awt::FontWeight::BOLD)};
}
inline std::pair<std::string_view, Any> text_colour(sal_Int32 colour) {
  return {"CharColor", Any(colour)};
}
inline std::pair<std::string_view, Any> fill(sal_Int32 colour) {
  return {"CellBackColor", Any(colour)};
}
inline std::pair<std::string_view, Any> side(css::table::CellHoriJustify where) {
  return {"HoriJustify", Any(where)};
}
inline std::pair<std::string_view, Any> left() { return side(css::table::CellHoriJustify_LEFT); }
inline std::pair<std::string_view, Any> centre() {
  return side(css::table::CellHoriJustify_CENTER);
}
inline std::pair<std::string_view, Any> right() { return side(css::table::CellHoriJustify_RIGHT); }
// From the left edge.
inline std::pair<std::string_view, Any> indent(double mm) {
  return {"ParaIndent", Any(static_cast<sal_Int16>(mm * 100))};
}
// From the right edge: an indent is not kept there where the next cell is blank.
inline std::pair<std::string_view, Any> padding(double mm) {
  return {"ParaRightMargin", Any(static_cast<sal_Int32>(mm * 100))};
}
inline std::pair<std::string_view, Any> upright(sal_Int32 where) {
  return {"VertJustify", Any(where)};
}
inline std::pair<std::string_view, Any> wrapped() { return {"IsTextWrapped", Any(true)}; }
// Rather small than cut off.
inline std::pair<std::string_view, Any> shrinking() { return {"ShrinkToFit", Any(true)}; }

class Maker {
 public:
  explicit Maker(const Ref<css::sheet::XSpreadsheetDocument>& book);

  // Without a parent it says only what it lists, and leaves the rest to the cell it is laid over.
  void make(std::string_view name, std::string_view parent, const Looks& looks);

  // A format written in the English way, shown in the way of whoever reads the book.
  std::pair<std::string_view, Any> format(std::string_view code);

 private:
  Ref<css::lang::XMultiServiceFactory> maker_;
  Ref<css::container::XNameContainer> styles_;
  Ref<css::util::XNumberFormats> formats_;
};

void make_card_styles(Maker& maker);
void make_page_styles(const Ref<css::sheet::XSpreadsheetDocument>& book);

}  // namespace shimwright::book::style
