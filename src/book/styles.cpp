// SPDX-License-Identifier: MPL-2.0
#include "book/styles.hpp"

#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/style/XStyle.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <com/sun/star/table/BorderLine2.hpp>
#include <com/sun/star/table/CellHoriJustify.hpp>
#include <com/sun/star/table/CellVertJustify2.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/XNumberFormatTypes.hpp>
#include <com/sun/star/util/XNumberFormats.hpp>
#include <com/sun/star/util/XNumberFormatsSupplier.hpp>
#include <initializer_list>
#include <utility>

#include "core/palette.hpp"

namespace shimwright::book::style {
namespace {

using css::uno::Any;

// Paper and ink; the one accent is a graphite blue.
constexpr sal_Int32 paper = 0xFAF8F2;
constexpr sal_Int32 card_paper = 0xFDFCF9;
constexpr sal_Int32 well = 0xFFFFFF;
constexpr sal_Int32 deck_metal = 0xE3E2DD;
constexpr sal_Int32 deck_groove = 0xD3D3CF;
constexpr sal_Int32 ink = 0x23272E;
constexpr sal_Int32 quiet_ink = 0x5F6267;
constexpr sal_Int32 accent = 0x27425F;
constexpr sal_Int32 hairline = 0xD6D2C7;
constexpr sal_Int32 well_shade = 0x6F7B89;
constexpr sal_Int32 well_light = 0xB4BCC6;

constexpr std::string_view font = "Liberation Sans";

sal_Int32 number_of(const Rgb& colour) {
  return colour.red * 0x10000 + colour.green * 0x100 + colour.blue;
}

Any line(sal_Int32 colour, double points) {
  const auto width = static_cast<sal_Int16>(points * 2540 / 72 + 0.5);
  css::table::BorderLine2 made;
  made.Color = colour;
  made.OuterLineWidth = width;
  made.LineWidth = static_cast<sal_uInt32>(width);
  return Any(made);
}

Any leftwards() { return Any(css::table::CellHoriJustify_LEFT); }
Any centred() { return Any(css::table::CellHoriJustify_CENTER); }
Any rightwards() { return Any(css::table::CellHoriJustify_RIGHT); }
Any at_top() { return Any(sal_Int32{css::table::CellVertJustify2::TOP}); }
Any in_the_middle() { return Any(sal_Int32{css::table::CellVertJustify2::CENTER}); }

Any size(float points) { return Any(points); }
Any bold() { return Any(css::awt::FontWeight::BOLD); }

using Looks = std::initializer_list<std::pair<std::string_view, Any>>;

class Maker {
 public:
  explicit Maker(const Ref<css::sheet::XSpreadsheetDocument>& book)
      : maker_(as<css::lang::XMultiServiceFactory>(book)),
        styles_(as<css::container::XNameContainer>(
            as<css::style::XStyleFamiliesSupplier>(book)->getStyleFamilies()->getByName(
                "CellStyles"))),
        formats_(as<css::util::XNumberFormatsSupplier>(book)->getNumberFormats()) {}

  // Without a parent it says only what it lists, and leaves the rest to the cell it is laid over.
  void make(std::string_view name, std::string_view parent, const Looks& looks) {
    const auto made =
        as<css::style::XStyle>(maker_->createInstance("com.sun.star.style.CellStyle"));
    styles_->insertByName(to_office(name), Any(made));
    if (!parent.empty()) made->setParentStyle(to_office(parent));
    for (const auto& [property, value] : looks)
      as<css::beans::XPropertySet>(made)->setPropertyValue(to_office(property), value);
  }

  // A format written in the English way, shown in the way of whoever reads the book.
  Any format(std::string_view code) {
    const css::lang::Locale english("en", "US", "");
    const css::lang::Locale readers;
    const auto key = formats_->addNewConverted(to_office(code), english, readers);
    return Any(key);
  }

 private:
  Ref<css::lang::XMultiServiceFactory> maker_;
  Ref<css::container::XNameContainer> styles_;
  Ref<css::util::XNumberFormats> formats_;
};

constexpr std::string_view length_format = "0.000";
constexpr std::string_view inch_format = "0.0000";
constexpr std::string_view money_format = "0.00";

void make_text_styles(Maker& m) {
  m.make(page, "",
         {{"CharFontName", Any(to_office(font))},
          {"CharHeight", size(10)},
          {"CharColor", Any(ink)},
          {"CellBackColor", Any(paper)},
          {"VertJustify", in_the_middle()}});
  m.make(title, page,
         {{"CharHeight", size(20)}, {"CharWeight", bold()}, {"CharColor", Any(accent)}});
  m.make(subtitle, page, {{"CharHeight", size(9)}, {"CharColor", Any(quiet_ink)}});
  m.make(aside, subtitle, {{"HoriJustify", rightwards()}});
  m.make(banner, subtitle, {{"IsTextWrapped", Any(true)}, {"VertJustify", at_top()}});
  m.make(heading, page,
         {{"CharHeight", size(11)},
          {"CharWeight", bold()},
          {"CharColor", Any(accent)},
          {"BottomBorder", line(accent, 1)}});
  m.make(label, page, {{"ParaIndent", Any(sal_Int16{0})}});
  m.make(text, page, {{"IsTextWrapped", Any(true)}});
  m.make(note, page,
         {{"CharHeight", size(9)}, {"CharColor", Any(quiet_ink)}, {"IsTextWrapped", Any(true)}});
  m.make(number, page,
         {{"CharHeight", size(13)},
          {"CharWeight", bold()},
          {"CharColor", Any(accent)},
          {"HoriJustify", centred()}});
  m.make(link, page, {{"CharWeight", bold()}, {"CharColor", Any(accent)}});
  m.make(caution, text,
         {{"CellBackColor", Any(well)},
          {"LeftBorder", line(accent, 3)},
          {"ParaIndent", Any(sal_Int16{250})}});
  m.make(fact, page, {{"CharWeight", bold()}});
  m.make(bar, page, {{"CharColor", Any(accent)}, {"CharHeight", size(11)}});
  m.make(tally, page, {{"HoriJustify", rightwards()}, {"CharWeight", bold()}});
  m.make(figure, page,
         {{"CharHeight", size(20)},
          {"CharWeight", bold()},
          {"CharColor", Any(accent)},
          {"HoriJustify", leftwards()}});
  m.make(figure_money, figure, {{"NumberFormat", m.format(money_format)}});
  m.make(trouble_box, note, {{"VertJustify", in_the_middle()}});
  m.make(trouble_found, "",
         {{"CellBackColor", Any(accent)}, {"CharColor", Any(well)}, {"CharWeight", bold()}});
}

void make_entry_styles(Maker& m) {
  css::util::CellProtection open;
  m.make(entry, page,
         {{"CellBackColor", Any(well)},
          {"CellProtection", Any(open)},
          {"TopBorder", line(well_shade, 1)},
          {"LeftBorder", line(well_shade, 1)},
          {"BottomBorder", line(well_light, 0.75)},
          {"RightBorder", line(well_light, 0.75)}});
  m.make(entry_text, entry, {{"HoriJustify", leftwards()}, {"ParaIndent", Any(sal_Int16{100})}});
  m.make(entry_choice, entry, {{"HoriJustify", centred()}});
  m.make(entry_length, entry,
         {{"HoriJustify", rightwards()}, {"NumberFormat", m.format(length_format)}});
  m.make(entry_count, entry, {{"HoriJustify", rightwards()}, {"NumberFormat", m.format("0")}});
  m.make(entry_money, entry,
         {{"HoriJustify", rightwards()}, {"NumberFormat", m.format(money_format)}});
  m.make(entry_factor, entry, {{"HoriJustify", rightwards()}, {"NumberFormat", m.format("0.00")}});
}

void make_table_styles(Maker& m) {
  m.make(table_head, page,
         {{"CharHeight", size(9)},
          {"CharWeight", bold()},
          {"CharColor", Any(accent)},
          {"HoriJustify", rightwards()},
          {"IsTextWrapped", Any(true)},
          {"VertJustify", Any(sal_Int32{css::table::CellVertJustify2::BOTTOM})},
          {"BottomBorder", line(accent, 1)}});
  m.make(table_head_left, table_head, {{"HoriJustify", leftwards()}});
  m.make(table_text, page, {{"BottomBorder", line(hairline, 0.75)}, {"ShrinkToFit", Any(true)}});
  m.make(table_strong, table_text, {{"CharWeight", bold()}});
  m.make(table_centre, table_text, {{"HoriJustify", centred()}});
  m.make(table_head_centre, table_head, {{"HoriJustify", centred()}});
  m.make(table_strong_centre, table_strong, {{"HoriJustify", centred()}});
  m.make(table_tally, note, {{"ParaIndent", Any(sal_Int16{150})}});
  m.make(row_number, note, {{"HoriJustify", centred()}});
  m.make(table_length, table_text,
         {{"HoriJustify", rightwards()}, {"NumberFormat", m.format(length_format)}});
  m.make(table_count, table_text, {{"HoriJustify", rightwards()}, {"NumberFormat", m.format("0")}});
  m.make(table_money, table_text,
         {{"HoriJustify", rightwards()}, {"NumberFormat", m.format(money_format)}});
  m.make(total_text, page, {{"CharWeight", bold()}, {"TopBorder", line(accent, 1)}});
  m.make(total_count, total_text, {{"HoriJustify", rightwards()}, {"NumberFormat", m.format("0")}});
  m.make(total_money, total_text,
         {{"HoriJustify", rightwards()}, {"NumberFormat", m.format(money_format)}});
  m.make(working, page, {{"CharHeight", size(8)}, {"CharColor", Any(quiet_ink)}});
  m.make(working_head, working, {{"CharWeight", bold()}, {"BottomBorder", line(hairline, 0.75)}});
  m.make(hushed, "", {{"CharColor", Any(paper)}});
  m.make(faint, "",
         {{"CharColor", Any(quiet_ink)}, {"CharWeight", Any(css::awt::FontWeight::NORMAL)}});
  m.make(in_inches, "", {{"NumberFormat", m.format(inch_format)}});
}

void make_card_styles(Maker& m) {
  m.make(deck, page, {{"CellBackColor", Any(deck_metal)}});
  m.make(deck_side, deck,
         {{"CharHeight", size(9)},
          {"CharWeight", bold()},
          {"CharColor", Any(quiet_ink)},
          {"CellBackColor", Any(paper)},
          {"HoriJustify", centred()},
          {"RotateAngle", Any(sal_Int32{9000})}});
  m.make(deck_strip, deck,
         {{"CharHeight", size(10)},
          {"CharWeight", bold()},
          {"CharColor", Any(accent)},
          {"CellBackColor", Any(deck_groove)},
          {"HoriJustify", centred()}});
  m.make(card_name, page,
         {{"CharWeight", bold()}, {"CellBackColor", Any(card_paper)}, {"HoriJustify", centred()}});
  m.make(card_banner, card_name, {{"CharHeight", size(14)}, {"ShrinkToFit", Any(true)}});
  m.make(card_label, page,
         {{"CharHeight", size(8)},
          {"CharColor", Any(quiet_ink)},
          {"CellBackColor", Any(card_paper)},
          {"ParaIndent", Any(sal_Int16{80})}});
  m.make(card_text, card_label,
         {{"CharHeight", size(9)},
          {"CharColor", Any(ink)},
          {"HoriJustify", rightwards()},
          {"ShrinkToFit", Any(true)}});
  m.make(card_length, card_text, {{"NumberFormat", m.format(length_format)}});
  m.make(card_entry_length, entry_length, {{"ShrinkToFit", Any(true)}, {"CharWeight", bold()}});
  m.make(card_entry_mark, entry, {{"HoriJustify", rightwards()}, {"ShrinkToFit", Any(true)}});
  m.make(card_entry_choice, entry_choice, {{"CharHeight", size(9)}});
  m.make(card_do, card_name, {{"CharHeight", size(11)}, {"ShrinkToFit", Any(true)}});
  m.make(card_foot, card_name, {{"CharHeight", size(9)}, {"ShrinkToFit", Any(true)}});
}

void make_state_styles(Maker& m) {
  for (const State state : all_states) {
    const StateLook& look = look_of(state);
    const Any fill(number_of(look.fill));
    const Any letters(number_of(look.text));
    m.make(legend(state), page,
           {{"CellBackColor", fill},
            {"CharColor", letters},
            {"CharWeight", bold()},
            {"HoriJustify", centred()},
            {"ShrinkToFit", Any(true)}});
    const bool unread = state == State::unread;
    const Any frame = line(number_of(look.border), unread ? 0.75 : 2);
    m.make(worn(Wear::told, state), "", {{"CellBackColor", fill}, {"CharColor", letters}});
    m.make(worn(Wear::crown, state), "",
           {{"CellBackColor", fill},
            {"CharColor", letters},
            {"TopBorder", frame},
            {"LeftBorder", frame},
            {"RightBorder", frame}});
    m.make(worn(Wear::banner, state), "",
           {{"CellBackColor", fill},
            {"CharColor", letters},
            {"LeftBorder", frame},
            {"RightBorder", frame}});
    m.make(worn(Wear::left, state), "", {{"LeftBorder", frame}});
    m.make(worn(Wear::right, state), "", {{"RightBorder", frame}});
    m.make(worn(Wear::right_inches, state), "",
           {{"RightBorder", frame}, {"NumberFormat", m.format(inch_format)}});
    m.make(worn(Wear::sides, state), "", {{"LeftBorder", frame}, {"RightBorder", frame}});
    m.make(worn(Wear::foot, state), "",
           {{"CellBackColor", fill},
            {"CharColor", letters},
            {"LeftBorder", frame},
            {"RightBorder", frame},
            {"BottomBorder", frame}});
  }
}

}  // namespace

std::string worn(Wear wear, State state) {
  const auto part = [wear]() -> std::string {
    switch (wear) {
      case Wear::crown:
        return "crown";
      case Wear::banner:
        return "banner";
      case Wear::left:
        return "left";
      case Wear::right:
        return "right";
      case Wear::right_inches:
        return "right in inches";
      case Wear::sides:
        return "sides";
      case Wear::foot:
        return "foot";
      case Wear::told:
        return "told";
    }
    return {};
  };
  return "State " + std::string(word_for(state)) + " " + part();
}

std::string legend(State state) { return "Legend " + std::string(word_for(state)); }

void make_styles(const Ref<css::sheet::XSpreadsheetDocument>& book) {
  Maker maker(book);
  make_text_styles(maker);
  make_entry_styles(maker);
  make_table_styles(maker);
  make_card_styles(maker);
  make_state_styles(maker);
  make_page_styles(book);
}

}  // namespace shimwright::book::style
