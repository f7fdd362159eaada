// SPDX-License-Identifier: MPL-2.0
//
// Plan: what goes where, what to order, what is left over, to print and take to the bench.
#include <numeric>
#include <utility>

#include "book/command_urls.hpp"
#include "book/head/head_spread.hpp"
#include "book/look/style_names.hpp"
#include "book/look/styles.hpp"
#include "book/places.hpp"
#include "book/sheets.hpp"

namespace shimwright::book {
namespace {

constexpr int first_column = 1;
constexpr int last_column = 10;     // of the table of valves
constexpr int button_column = 9;    // of Take to the bench
constexpr int order_column = 12;    // beside it, so that both are in sight at once
constexpr int surplus_column = 18;  // what is left over
constexpr int right_column = 20;
constexpr double row_mm = 4.8;  // of single lines in letters of body size
constexpr int banner_row = 2;
constexpr int figures_row = 4;
constexpr int box_rows = 7;
constexpr int first_row = plan_place::first_row;
constexpr int head_row = first_row - 1;
constexpr std::string_view not_known = "\u2013";

// A column of a list: its piece in the View.
struct ListColumn {
  const char* piece;
  Say heading;
  std::string_view look;
};

class PlanDescription {
 public:
  explicit PlanDescription(const Places& places) : total_row_(first_row + places.count()) {
    for (const ValveId& valve : places.valves) valves_.push_back(name_of(valve, places.layout));
    for (int i = 1; i <= places.count(); ++i) numbers_.push_back(std::to_string(i));
  }

  SheetDescription made() && {
    sheet_.name = sheet_name::plan;
    // No wider than their words need, as the page is the smaller for it.
    sheet_.column_mm = {2, 17, 14, 14, 21, 49, 15, 15, 18, 28, 16,
                        4, 16, 14, 12, 15, 17, 4,  16, 14, 12};
    sheet_.row_mm = row_mm;
    sheet_.row_heights = {{box_rows, 3}, {head_row - 1, 7}, {head_row, 8.8}, {total_row_ + 1, 2}};
    sheet_.last_row = total_row_ + 2;
    sheet_.frozen_rows = first_row;
    sheet_.fields = {
        title_field("plan", lines(0, banner_row - 1)),
        banner_field({{first_column, banner_row}, {button_column - 1, figures_row - 1}})};
    add("take", block({button_column, banner_row}, last_column - button_column + 1, 2),
        style::label, Button{said(Say::bench_take), std::string(command::take_to_bench)});
    add_box(sheet_, "plan", block({order_column, 0}, right_column - order_column + 1, box_rows));
    figures();
    valves();
    total();
    list("order", order_column, Shows{"book", "order heading"},
         {{"series", Say::shims_series, style::table_text},
          {"size", Say::shims_size, style::table_length},
          {"count", Say::plan_qty, style::table_count},
          {"price", Say::shims_price, style::table_money},
          {"cost", Say::plan_cost, style::table_money}});
    list("left over", surplus_column, Fixed{said(Say::plan_left_over)},
         {{"series", Say::shims_series, style::table_text},
          {"size", Say::shims_size, style::table_length},
          {"count", Say::plan_qty, style::table_count}});
    add("caution", {{first_column, sheet_.last_row}, {right_column, sheet_.last_row}}, style::note,
        Fixed{said(Say::plan_caution)});
    set_paper();
    return std::move(sheet_);
  }

 private:
  static Area lines(int from, int to) { return {{first_column, from}, {last_column, to}}; }

  void add(std::string name, const Area& where, std::string_view look, Content content,
           std::vector<Wears> grades = {}) {
    sheet_.fields.push_back({.name = std::move(name),
                             .where = where,
                             .style = std::string(look),
                             .content = std::move(content),
                             .grades = std::move(grades)});
  }

  // What one asks for first. Each valve is counted once.
  void figures() {
    constexpr int none_column = 5;
    figure("count keep", {1, figures_row}, 1, Fixed{said(Say::keep)});
    figure("count move", {2, figures_row}, 1, Fixed{said(Say::move)});
    figure("count spare", {3, figures_row}, 1, Fixed{said(Say::spare)});
    figure("count buy", {4, figures_row}, 1, Fixed{said(Say::buy)});
    figure(
        "count none", {none_column, figures_row}, 1, Shows{"book", "label none"},
        {{{"book", "to list"}, {"yes"}, std::string(style::remark_found)}, outside("count none")});
    figure("count outside", {6, figures_row}, 2, Fixed{said(Say::plan_outside)},
           {outside("count outside")});
    figure("count unread", {8, figures_row}, 1, Fixed{said(Say::plan_to_measure)});
    label("to pay", {9, figures_row}, 2, Fixed{said(Say::plan_to_pay)});
    add("to pay", block({9, figures_row + 1}, 2, 2), style::figure_money, Shows{"book", "to pay"});
  }

  void label(const std::string& name, At at, int columns, Content words) {
    add(name + ".label", block(at, columns, 1), style::subtitle, std::move(words));
  }

  void figure(const std::string& piece, At at, int columns, Content words,
              std::vector<Wears> grades = {}) {
    label(piece, at, columns, std::move(words));
    grades.insert(grades.begin(), {{"book", piece}, {"0"}, std::string(style::faint)});
    add(piece, block(below(at), columns, 2), style::figure, Shows{"book", piece},
        std::move(grades));
  }

  // Such valves stay outside their limits.
  static Wears outside(const std::string& piece) {
    return {.piece = {"book", piece},
            .words = {"", "0", std::string(not_known)},
            .style = std::string(style::figure_outside),
            .unless = true};
  }

  static Column column(const char* piece, Say heading, std::string_view look,
                       std::string_view heading_look, std::vector<Wears> grades = {}) {
    return {.name = piece,
            .heading = said(heading),
            .style = std::string(look),
            .content = Shows{"valves", piece},
            .grades = std::move(grades),
            .heading_style = std::string(heading_look)};
  }

  void valves() {
    add("plan heading", {{first_column, head_row - 1}, {last_column, head_row - 1}}, style::heading,
        Shows{"book", "plan heading"});
    std::vector<Wears> states;
    for (const State state : all_states)
      states.push_back({{"valves", "then state"},
                        {std::string(word_for(state))},
                        style::worn(style::Wear::told, state)});
    Column name = column("name", Say::plan_valve, style::table_strong, style::table_head_left);
    name.content = Fixed{"{0}"};
    sheet_.tables.push_back(
        {.name = "valves",
         .first = {first_column, first_row},
         .rows = valves_,
         .columns = {
             std::move(name), column("gap", Say::gap, style::table_length, style::table_head),
             column("shim", Say::plan_shim_now, style::table_length, style::table_head),
             column("do", Say::plan_action, style::table_strong_centre, style::table_head_centre,
                    {{{"valves", "kept"}, {"yes"}, std::string(style::faint)}}),
             column("from", Say::plan_from, style::table_text, style::table_head_left),
             column("fit", Say::plan_new_shim, style::table_length, style::table_head),
             column("after", Say::plan_gap_after, style::table_length, style::table_head),
             column("margin", Say::plan_margin, style::table_length, style::table_head),
             column("then", Say::plan_result, style::table_centre, style::table_head_centre,
                    std::move(states)),
             column("cost", Say::plan_cost, style::table_money, style::table_head)}});
  }

  void total() {
    add("total.label", {{first_column, total_row_}, {last_column - 1, total_row_}},
        style::total_text, Shows{"book", "total label"});
    add("total", At{last_column, total_row_}, style::total_money, Shows{"book", "total"});
  }

  // Of as many rows as there are valves: no plan fits or frees more shims.
  void list(const std::string& name, int first, Content heading,
            const std::vector<ListColumn>& columns) {
    const auto width = static_cast<int>(columns.size());
    add(name + " heading", block({first, head_row - 1}, width, 1), style::heading,
        std::move(heading));
    Table table{.name = name, .first = {first, first_row}, .rows = numbers_};
    for (const auto& [piece, words, look] : columns)
      table.columns.push_back(
          {.name = piece,
           .heading = said(words),
           .style = std::string(look),
           .content = Shows{name, piece},
           .grades = {{.piece = {name, "size"},
                       .style = std::string(style::no_row),
                       .unless = true}},
           .heading_style = std::string(look == style::table_text ? style::table_head_left
                                                                  : style::table_head)});
    sheet_.tables.push_back(std::move(table));
  }

  // One page; where its letters would come out smaller than 7 points, two with the heads on both.
  void set_paper() {
    sheet_.printed = Area({0, 0}, {right_column, sheet_.last_row});
    const double width = std::accumulate(sheet_.column_mm.begin(), sheet_.column_mm.end(), 0.0);
    double height = sheet_.row_mm * (sheet_.last_row + 1);
    for (const auto& [row, mm] : sheet_.row_heights) height += mm - sheet_.row_mm;
    constexpr double smallest_pt = 8.5;
    constexpr double readable_pt = 7;
    const bool one_page = scale_lying(width, height) * smallest_pt >= readable_pt;
    sheet_.page_style = one_page ? style::landscape : style::landscape_long;
    if (!one_page) sheet_.repeated_rows = {head_row - 1, head_row};
  }

  int total_row_;
  std::vector<std::string> valves_;
  std::vector<std::string> numbers_;
  SheetDescription sheet_;
};

}  // namespace

SheetDescription describe_plan(const Places& places) { return PlanDescription(places).made(); }

}  // namespace shimwright::book
