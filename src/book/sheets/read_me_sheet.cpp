// SPDX-License-Identifier: MPL-2.0
//
// Read me first: what the book is for, what must never be done, the steps, and how far one is.
#include <utility>

#include "book/look/style_names.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {
namespace read_me_sheet {
namespace {

constexpr int last_column = 4;
constexpr int remarks_listed = 40;

constexpr Say cautions[] = {Say::caution_manual, Say::caution_cold,  Say::caution_by_hand,
                            Say::caution_shim,   Say::caution_clean, Say::caution_after};

struct Step {
  std::string_view sheet;
  Say words;
};

constexpr Step steps[] = {
    {sheet_name::engine, Say::step_engine}, {sheet_name::head, Say::step_gaps},
    {sheet_name::head, Say::step_shims},    {sheet_name::shims, Say::step_spares},
    {sheet_name::plan, Say::step_plan},     {sheet_name::arrivals, Say::step_order},
    {sheet_name::fit, Say::step_fit},       {sheet_name::recheck, Say::step_recheck},
    {sheet_name::recheck, Say::step_close},
};

class ReadMeDescription {
 public:
  explicit ReadMeDescription(const Places& places) : places_(places) {}

  SheetDescription made() && {
    sheet_.name = sheet_name::read_me;
    sheet_.column_mm = {3, 12, 30, 128, 34};
    sheet_.page_style = style::portrait;
    height(14);
    sheet_.fields.push_back(title_field("read me", line(row_++)));
    height(11);
    sheet_.add("purpose", line(row_++), style::text, Fixed{said(Say::read_me_purpose)});
    height(5.5);
    sheet_.fields.push_back(banner_field(line(row_++)));
    write_stage();
    write_cautions();
    write_steps();
    write_stops();
    write_progress();
    write_result();
    sheet_.printed = Area({0, 0}, {last_column, row_});
    list_remarks();
    sheet_.last_row = row_;
    return std::move(sheet_);
  }

 private:
  static Area line(int row) { return {{1, row}, {last_column, row}}; }

  void height(double mm) { sheet_.row_heights.emplace_back(row_, mm); }

  void heading(const std::string& name, Say words) {
    height(2.8);
    ++row_;
    for (Field& field : heading_fields(name + ".heading", line(row_), said(words)))
      sheet_.fields.push_back(std::move(field));
    height(7);
    ++row_;
  }

  // What one looks for on coming back to the book.
  void write_stage() {
    const auto told = [this](std::string piece, Say label, std::string_view look, double mm) {
      sheet_.add(piece + ".label", {{1, row_}, {2, row_}}, style::label, Fixed{said(label)});
      sheet_.add(piece, {{3, row_}, {last_column, row_}}, look, Shows{"book", piece});
      height(mm);
      ++row_;
    };
    told("stage", Say::stage_label, style::answer, 6.5);
    told("next step", Say::stage_next, style::text, 12.5);  // three lines
  }

  void write_cautions() {
    heading("cautions", Say::read_me_before);
    for (const Say words : cautions) {
      sheet_.add("caution." + std::to_string(row_), line(row_), style::caution, Fixed{said(words)});
      height(6.7);
      ++row_;
    }
  }

  void write_steps() {
    heading("steps", Say::read_me_steps);
    int number = 0;
    for (const Step& step : steps) {
      const std::string name = "step." + std::to_string(++number);
      const std::string words = said(step.words);
      sheet_.add(name + ".number", At{1, row_}, style::number, Fixed{std::to_string(number)});
      sheet_.add(name + ".sheet", At{2, row_}, style::link, Link{std::string(step.sheet)});
      sheet_.add(name, {{3, row_}, {last_column, row_}}, style::text, Fixed{words});
      constexpr std::size_t one_line = 90;  // letters
      constexpr std::size_t two_lines = 180;
      constexpr std::size_t three_lines = 270;
      height(words.size() <= one_line      ? 7.5
             : words.size() <= two_lines   ? 10.5
             : words.size() <= three_lines ? 14.5
                                           : 18);
      ++row_;
    }
  }

  void write_stops() {
    heading("stops", Say::read_me_stops);
    sheet_.add("stops", line(row_), style::text, Shows{"book", "stops"});
    constexpr double line_mm = 4.4;
    constexpr int letters = 110;
    height(2 + line_mm * lines_of_stops(places_.layout, letters));
    ++row_;
    sheet_.add("tdc", line(row_), style::text, Fixed{said(Say::read_me_tdc)});
    height(6);
    ++row_;
  }

  // The piece of that name as words, and the piece `... share` as a bar.
  void bar(const std::string& piece, Say words) {
    sheet_.add(piece + ".label", {{1, row_}, {2, row_}}, style::label, Fixed{said(words)});
    sheet_.add(piece + ".bar", At{3, row_}, style::bar, Progress{{"book", piece + " share"}});
    sheet_.add(piece, At{4, row_}, style::tally, Shows{"book", piece});
    height(5);
    ++row_;
    height(2.5);
    ++row_;
  }

  void write_progress() {
    heading("progress", Say::read_me_progress);
    height(2.5);
    ++row_;
    bar("gaps measured", Say::read_me_gaps);
    bar("shims known", Say::read_me_shims);
    bar("steps done", Say::read_me_done);
  }

  void figure(const std::string& piece, Content label, std::vector<Wears> grades = {}) {
    sheet_.add(piece + ".label", {{1, row_}, {2, row_}}, style::label, std::move(label));
    sheet_.add(piece, At{3, row_}, style::answer, Shows{"book", piece}, std::move(grades));
    height(7);
    ++row_;
  }

  static Wears more_than_none(const std::string& piece, std::string_view look) {
    return {.piece = {"book", piece},
            .words = {"", "0", "\u2013"},
            .style = std::string(look),
            .unless = true};
  }

  // Apart from the progress: a valve left outside its limits is none.
  void write_result() {
    heading("result", Say::read_me_result);
    figure("remarks count", Fixed{said(Say::read_me_remarks)},
           {more_than_none("remarks count", style::remark_found)});
    // While no shims are listed nobody knows yet whether one fits.
    figure("outside count", Shows{"book", "outside label"},
           {{{"book", "to list"}, {"yes"}, std::string(style::remark_found)},
            more_than_none("outside count", style::trouble_found)});
    figure("change count", Shows{"book", "change label"});
    figure("buy count", Shows{"book", "buy label"});
    height(9.5);
    sheet_.add("next check", line(row_++), style::text, Shows{"next check", "line"});
  }

  // All that the boxes may have no room for, below what goes on paper.
  void list_remarks() {
    row_ += 2;
    sheet_.add("remarks heading", line(row_), style::heading, Shows{"book", "remarks heading"});
    Table remarks{.name = "remarks", .first = {1, ++row_}, .row_mm = 9};
    for (int i = 1; i <= remarks_listed; ++i) remarks.rows.push_back(std::to_string(i));
    remarks.columns = {{.name = "words",
                        .style = std::string(style::text),
                        .content = Shows{"remarks", "words"},
                        .cells = last_column}};
    row_ += remarks_listed;
    sheet_.tables.push_back(std::move(remarks));
  }

  const Places& places_;
  SheetDescription sheet_;
  int row_ = 0;
};

}  // namespace
}  // namespace read_me_sheet

SheetDescription describe_read_me(const Places& places) {
  return read_me_sheet::ReadMeDescription(places).made();
}

}  // namespace shimwright::book
