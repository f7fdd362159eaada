// SPDX-License-Identifier: MPL-2.0
#include "book/look/styles.hpp"

#include <com/sun/star/lang/Locale.hpp>
#include <com/sun/star/util/CellProtection.hpp>

#include "book/look/style_maker.hpp"

namespace shimwright::book::style {
namespace {

namespace upright_at = css::table::CellVertJustify2;

constexpr std::string_view font = "Liberation Sans";

void make_text_styles(Maker& m) {
  // Of no language: the spelling of names of valves, marks and trade terms is nothing to check.
  const css::lang::Locale no_language(to_office("zxx"), {}, {});
  m.make(page, "",
         {{"CharFontName", Any(to_office(font))},
          {"CharLocale", Any(no_language)},
          size(10),
          text_colour(ink),
          fill(paper),
          upright(upright_at::CENTER)});
  m.make(far_edge, page, {});
  m.make(title, page, {size(20), bold(), text_colour(accent), shrinking()});
  m.make(subtitle, page, {size(9), text_colour(quiet_ink)});
  m.make(aside, subtitle, {right(), padding(2), shrinking()});
  m.make(banner, subtitle, {size(8.5), wrapped(), upright(upright_at::TOP)});
  m.make(banner_line, subtitle, {size(8.5), shrinking()});
  m.make(heading, page, {size(11), bold(), text_colour(accent), {"BottomBorder", line(accent, 1)}});
  m.make(heading_tally, heading, {right()});
  m.make(label, page, {});
  m.make(text, page, {wrapped()});
  m.make(note, page, {size(9), text_colour(quiet_ink), wrapped()});
  m.make(list, note, {left(), indent(1), upright(upright_at::TOP)});
  m.make(number, page, {size(13), bold(), text_colour(accent), centre()});
  m.make(link, page, {bold(), text_colour(accent)});
  css::util::CellProtection off_paper;
  off_paper.IsLocked = true;
  off_paper.IsPrintHidden = true;
  m.make(next_sheet, link, {{"CellProtection", Any(off_paper)}});
  m.make(next_sheet_right, next_sheet, {right()});
  m.make(caution, text, {fill(well), left(), indent(3), {"LeftBorder", line(accent, 3)}});
  m.make(fact, page, {bold()});
  m.make(bar, page,
         {fill(well),
          {"TopBorder", line(hairline, 0.75)},
          {"BottomBorder", line(hairline, 0.75)},
          {"LeftBorder", line(hairline, 0.75)},
          {"RightBorder", line(hairline, 0.75)}});
  m.make(tally, page, {right(), bold()});
  m.make(answer, page, {left(), bold()});
  m.make(figure, page, {size(20), bold(), text_colour(accent), left()});
  m.make(figure_money, figure, {m.format(money_format), shrinking()});
  m.make(remark_box, page, {left(), indent(2), shrinking()});
  m.make(remark_told, "", {fill(remark_paper), text_colour(ink), {"LeftBorder", line(accent, 3)}});
  m.make(remark_loud, "", {fill(accent), text_colour(well)});
  m.make(trouble_found, "", {fill(accent), text_colour(well), bold()});
  m.make(figure_outside, "",
         {fill(accent),
          text_colour(well),
          bold(),
          indent(1),
          {"LeftBorder", line(paper, 2)},
          {"RightBorder", line(paper, 5)}});
  m.make(remark_found, "",
         {fill(remark_paper),
          text_colour(accent),
          bold(),
          indent(1),
          {"LeftBorder", line(accent, 3)}});
}

void make_entry_styles(Maker& m) {
  const css::util::CellProtection open;
  m.make(entry, page,
         {fill(well),
          {"CellProtection", Any(open)},
          {"TopBorder", line(well_shade, 1)},
          {"LeftBorder", line(well_shade, 1)},
          {"BottomBorder", line(well_light, 0.75)},
          {"RightBorder", line(well_light, 0.75)}});
  m.make(entry_text, entry, {left(), indent(1), shrinking()});
  m.make(entry_choice, entry, {centre()});
  m.make(entry_words, entry, {centre(), m.format("@")});
  m.make(entry_length, entry, {right(), padding(1.3), m.format(length_format)});
  m.make(entry_note, entry, {size(8.5), left(), indent(1), m.format("@"), wrapped()});
  m.make(entry_mark, entry, {right(), padding(1.3), shrinking()});
  m.make(entry_count, entry, {right(), padding(1.3), m.format(count_format)});
  m.make(entry_money, entry, {right(), padding(1.3), m.format(money_format)});
  m.make(entry_factor, entry, {right(), padding(1.3), m.format("0.00")});
}

void make_table_styles(Maker& m) {
  m.make(table_head, page,
         {size(9),
          bold(),
          text_colour(accent),
          right(),
          padding(1.3),
          wrapped(),
          upright(upright_at::BOTTOM),
          {"BottomBorder", line(accent, 1)}});
  m.make(table_head_left, table_head, {left(), indent(1)});
  m.make(table_head_centre, table_head, {centre()});
  m.make(table_text, page,
         {left(), indent(1), {"BottomBorder", line(hairline, 0.75)}, shrinking()});
  m.make(table_strong, table_text, {bold()});
  m.make(table_centre, table_text, {centre()});
  m.make(table_strong_centre, table_strong, {centre()});
  m.make(table_length, table_text, {right(), padding(1.3), m.format(length_format)});
  m.make(table_verdict, page,
         {size(8.5), left(), indent(1), {"BottomBorder", line(hairline, 0.75)}, wrapped()});
  m.make(table_count, table_text, {right(), padding(1.3), m.format(count_format)});
  m.make(table_money, table_text, {right(), padding(1.3), m.format(money_format)});
  m.make(table_tally, note, {left(), indent(1.5)});
  m.make(row_number, note, {centre()});
  m.make(total_text, page,
         {bold(), left(), indent(1), {"TopBorder", line(accent, 1)}, shrinking()});
  m.make(total_money, total_text, {right(), padding(1.3), m.format(money_format)});
  const std::pair<std::string_view, Any> unlocked{"CellProtection",
                                                  Any(css::util::CellProtection())};
  // Words stand clear of the numbers before them.
  m.make(log_head_left, table_head_left, {indent(3)});
  m.make(log_text, table_text, {unlocked, indent(3)});
  m.make(log_strong, log_text, {bold()});
  m.make(log_centre, log_text, {centre(), indent(1)});
  m.make(log_date, log_centre, {m.format("YYYY-MM-DD")});
  m.make(log_number, log_text, {right(), indent(1), padding(1.3)});
  m.make(log_length, log_number, {m.format(length_format)});
  m.make(no_row, "", {{"BottomBorder", line(paper, 0.75)}});

  const std::pair<std::string_view, Any> below_row{"BottomBorder", line(hairline, 0.75)};
  m.make(bench_kind, page, {text_colour(paper), shrinking()});
  m.make(bench_text, page, {left(), indent(1), shrinking()});
  m.make(bench_strong, bench_text, {bold()});
  m.make(bench_centre, bench_text, {centre()});
  m.make(bench_size, bench_centre, {m.format(length_format)});
  m.make(bench_note, bench_text, {size(9), padding(1.5), {"ShrinkToFit", Any(false)}, wrapped()});
  m.make(
      bench_tick, page,
      {{"CellProtection", Any(css::util::CellProtection())}, centre(), m.format("@"), shrinking()});
  m.make(fit_row, "", {below_row});
  m.make(fit_row_inches, "", {below_row, m.format(inch_format)});
  m.make(fit_tick, "",
         {fill(well),
          {"TopBorder", line(well_shade, 1)},
          {"LeftBorder", line(well_shade, 1)},
          {"BottomBorder", line(well_light, 0.75)},
          {"RightBorder", line(well_light, 0.75)}});
  const std::pair<std::string_view, Any> plain{"CharWeight", Any(css::awt::FontWeight::NORMAL)};
  m.make(fit_turn, "", {fill(accent), text_colour(well), bold()});
  m.make(fit_done, "", {fill(done_paper), text_colour(quiet_ink), plain, below_row});
  m.make(fit_done_inches, "",
         {fill(done_paper), text_colour(quiet_ink), plain, below_row, m.format(inch_format)});
  m.make(fit_borrow, "",
         {fill(well), bold(), {"TopBorder", line(accent, 2)}, {"BottomBorder", line(accent, 2)}});
  m.make(fit_stand_in, "", {bold(), text_colour(accent), below_row});

  m.make(working, page, {size(8), text_colour(quiet_ink)});
  m.make(working_head, working, {bold(), {"BottomBorder", line(hairline, 0.75)}});
  m.make(in_inches, "", {m.format(inch_format)});
  m.make(faint, "", {text_colour(quiet_ink), {"CharWeight", Any(css::awt::FontWeight::NORMAL)}});
}

void make_measure_styles(Maker& m) {
  const std::pair<std::string_view, Any> below_row{"BottomBorder", line(hairline, 0.75)};
  m.make(measure_come, page, {size(11), bold(), text_colour(accent), left(), shrinking()});
  m.make(measure_stop, page, {size(18), bold(), text_colour(accent), centre(), below_row});
  m.make(measure_valve, page, {size(11), bold(), left(), indent(1), below_row, shrinking()});
  m.make(measure_known, page,
         {size(10.5), text_colour(quiet_ink), centre(), below_row, shrinking()});
  m.make(measure_row, page, {below_row});
  const std::pair<std::string_view, Any> first_row{"TopBorder", line(accent, 1.75)};
  const Looks boxed{{"TopBorder", line(well_shade, 0.75)},
                    {"LeftBorder", line(well_shade, 0.75)},
                    {"BottomBorder", line(well_shade, 0.75)},
                    {"RightBorder", line(well_shade, 0.75)}};
  Looks boxed_first = boxed;
  boxed_first.front() = first_row;
  m.make(measure_blank, page, {{"BottomBorder", line(well_shade, 0.75)}});
  Looks field_looks = boxed;
  for (const auto& look :
       {size(8.5), text_colour(quiet_ink), left(), indent(1), upright(upright_at::TOP)})
    field_looks.push_back(look);
  m.make(measure_field, page, field_looks);
  m.make(measure_box, "", boxed);
  m.make(measure_box_first, "", boxed_first);
  m.make(measure_first, "", {first_row, below_row});
}

}  // namespace

void make_styles(const Ref<css::sheet::XSpreadsheetDocument>& book) {
  Maker maker(book);
  make_text_styles(maker);
  make_entry_styles(maker);
  make_table_styles(maker);
  make_measure_styles(maker);
  make_card_styles(maker);
  make_page_styles(book);
}

}  // namespace shimwright::book::style
