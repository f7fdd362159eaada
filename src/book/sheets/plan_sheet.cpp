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
#include "core/plan/other_ways.hpp"
#include "core/values/palette.hpp"

namespace shimwright::book {
namespace plan_sheet {
namespace {

constexpr int first_column = 1;
constexpr int last_column = 10;         // of the table of valves
constexpr int order_button_column = 7;  // of Order placed
constexpr int button_column = 9;        // of Take to the bench
constexpr int order_column = 12;        // beside it, so that both are in sight at once
constexpr int surplus_column = 18;      // what is left over
constexpr int right_column = 20;
constexpr double row_mm = 4.8;  // of single lines in letters of body size
constexpr int banner_row = 2;
constexpr int figures_row = 4;
constexpr int box_rows = 7;
constexpr int first_row = plan_place::first_row;
constexpr int head_row = first_row - 1;
constexpr int ways_rows = 2 + static_cast<int>(std::size(all_ways));  // with their headings
constexpr int picture_rows = 14;
constexpr std::string_view not_known = "\u2013";

// A column of a list: its piece in the View.
struct ListColumn {
  const char* piece;
  Say heading;
  std::string_view look;
};

class PlanDescription {
 public:
  explicit PlanDescription(const Places& places)
      : is_small_(places.count() <= 24), total_row_(first_row + places.count()) {
    for (const ValveId& valve : places.valves) valves_.push_back(name_of(valve, places.layout));
    for (int i = 1; i <= places.count(); ++i) numbers_.push_back(std::to_string(i));
  }

  SheetDescription made() && {
    sheet_.name = sheet_name::plan;
    // No wider than their words need, as the page is the smaller for it.
    sheet_.column_mm = {2, 17, 14, 14, 21, 49, 15, 15, 20, 26, 16,
                        4, 16, 14, 12, 15, 17, 4,  16, 14, 12};
    sheet_.row_mm = row_mm;
    sheet_.row_heights = {{box_rows, 3},       {head_row - 1, 7},   {head_row, 8.8},
                          {total_row_ + 1, 2}, {total_row_ + 2, 7}, {total_row_ + 3, 8.8}};
    ways_row_ = total_row_ + 2;
    picture_row_ = is_small_ ? ways_row_ : ways_row_ + ways_rows + 2;
    sheet_.last_row = picture_row_ + picture_rows + 1;
    sheet_.frozen_rows = first_row;
    sheet_.fields = {
        title_field("plan", lines(0, banner_row - 1)),
        banner_field({{first_column, banner_row}, {order_button_column - 1, figures_row - 1}})};
    sheet_.add("order placed",
               block({order_button_column, banner_row}, button_column - order_button_column, 2),
               style::label, Button{said(Say::order_placed), std::string(command::order_placed)});
    sheet_.add("take", block({button_column, banner_row}, last_column - button_column + 1, 2),
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
    ways();
    picture();
    const int caution_row = ways_row_ + ways_rows + 2;
    if (is_small_)
      sheet_.add("caution", {{first_column, caution_row}, {last_column, caution_row + 1}},
                 style::note, Fixed{said(Say::plan_caution)});
    else
      sheet_.add("caution", {{first_column, sheet_.last_row}, {right_column, sheet_.last_row}},
                 style::note, Fixed{said(Say::plan_caution)});
    set_paper();
    return std::move(sheet_);
  }

 private:
  static Area lines(int from, int to) { return {{first_column, from}, {last_column, to}}; }

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
    sheet_.add("to pay", block({9, figures_row + 1}, 2, 2), style::figure_money,
               Shows{"book", "to pay"});
  }

  void label(const std::string& name, At at, int columns, Content words) {
    sheet_.add(name + ".label", block(at, columns, 1), style::subtitle, std::move(words));
  }

  void figure(const std::string& piece, At at, int columns, Content words,
              std::vector<Wears> grades = {}) {
    label(piece, at, columns, std::move(words));
    grades.insert(grades.begin(), {{"book", piece}, {"0"}, std::string(style::faint)});
    sheet_.add(piece, block(below(at), columns, 2), style::figure, Shows{"book", piece},
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
    sheet_.add("plan heading", {{first_column, head_row - 1}, {last_column, head_row - 1}},
               style::heading, Shows{"book", "plan heading"});
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
    sheet_.add("total.label", {{first_column, total_row_}, {last_column - 1, total_row_}},
               style::total_text, Shows{"book", "total label"});
    sheet_.add("total", At{last_column, total_row_}, style::total_money, Shows{"book", "total"});
  }

  // Of as many rows as there are valves: no plan fits or frees more shims.
  void list(const std::string& name, int first, Content heading,
            const std::vector<ListColumn>& columns) {
    const auto width = static_cast<int>(columns.size());
    sheet_.add(name + " heading", block({first, head_row - 1}, width, 1), style::heading,
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

  // The same engine by other rules, a line each.
  void ways() {
    sheet_.add("ways heading", {{first_column, ways_row_}, {last_column, ways_row_}},
               style::heading, Fixed{said(Say::ways_heading)});
    const int note_row = ways_row_ + ways_rows;
    sheet_.add("ways note", {{first_column, note_row}, {last_column, note_row}}, style::note,
               Fixed{said(Say::ways_note)});
    Table table{.name = "ways", .first = {first_column, ways_row_ + 2}, .rows = {}};
    for (std::size_t i = 1; i <= std::size(all_ways); ++i) table.rows.push_back(std::to_string(i));
    const auto way = [](const char* piece, Say heading, std::string_view look,
                        std::string_view heading_look, int cells = 1) {
      return Column{.name = piece,
                    .heading = said(heading),
                    .style = std::string(look),
                    .content = Shows{"ways", piece},
                    .grades = {{{"ways", "as chosen"}, {"yes"}, std::string(style::faint)}},
                    .heading_style = std::string(heading_look),
                    .cells = cells};
    };
    table.columns = {way("name", Say::ways_way, style::table_text, style::table_head_left, 4),
                     way("outside", Say::ways_outside, style::table_count, style::table_head),
                     way("in doubt", Say::ways_in_doubt, style::table_count, style::table_head),
                     way("changed", Say::ways_changed, style::table_count, style::table_head),
                     way("bought", Say::ways_bought, style::table_count, style::table_head),
                     way("money", Say::ways_money, style::table_money, style::table_head),
                     way("aim", Say::ways_from_aim, style::table_length, style::table_head)};
    sheet_.tables.push_back(std::move(table));
  }

  void picture() {
    const int left = is_small_ ? order_column : first_column;
    sheet_.add("picture heading", {{left, picture_row_}, {right_column, picture_row_}},
               style::heading, Fixed{said(Say::picture_heading)});
    sheet_.add("picture note", {{left, picture_row_ + 1}, {right_column, picture_row_ + 1}},
               style::note, Fixed{said(Say::picture_note)});
    BandChart chart{
        .name = "gaps",
        .where = {{left, picture_row_ + 2}, {right_column, picture_row_ + picture_rows}},
        .bands = "bands",
        .table = "picture",
        .rows = static_cast<int>(valves_.size()),
        .names = "name",
        .least = "least",
        .room = "room",
        .marks = {},
        .upright = said(Say::picture_gap)};
    for (const auto& [when, mm] : {std::pair("before ", 1.5), {"after ", 2.8}})
      for (const State state : all_states)
        if (state != State::unread)
          chart.marks.push_back({.column = when + std::string(word_for(state)),
                                 .shape = shape_of(state),
                                 .colour = colour_of(state),
                                 .mm = mm});
    sheet_.charts.push_back(std::move(chart));
  }

  // That of its fill on Head; of good valves the border's, as the fill is too near the band's.
  static std::int32_t colour_of(State state) {
    const StateLook& look = look_of(state);
    const Rgb& own = state == State::good ? look.border : look.fill;
    return own.red << 16 | own.green << 8 | own.blue;
  }

  static BandChart::Marks::Shape shape_of(State state) {
    using enum BandChart::Marks::Shape;
    if (state == State::good) return round;
    return state == State::tight || state == State::tight_doubtful ? down : up;
  }

  // One page; of many valves the lists as wide as the paper, then the rest on a page of its own.
  void set_paper() {
    sheet_.printed = Area({0, 0}, {right_column, sheet_.last_row});
    sheet_.page_style = style::landscape;
    if (is_small_) return;
    const double width = std::accumulate(sheet_.column_mm.begin(), sheet_.column_mm.end(), 0.0);
    double lists = sheet_.row_mm * ways_row_;
    for (const auto& [row, mm] : sheet_.row_heights)
      if (row < ways_row_) lists += mm - sheet_.row_mm;
    constexpr double readable = 7 / 8.5;  // the smallest letters come out at 7 points
    const double on_one_page = scale_lying(width, lists);
    sheet_.page_style = style::landscape_parted;
    sheet_.page_scale = on_one_page < readable ? scale_lying(width, 0) : on_one_page;
    sheet_.page_breaks = {ways_row_};
    if (on_one_page < readable) sheet_.repeated_rows = {head_row - 1, head_row};
  }

  bool is_small_;  // there is room for the picture beside the other ways, all on one page
  int total_row_;
  int ways_row_ = 0;
  int picture_row_ = 0;
  std::vector<std::string> valves_;
  std::vector<std::string> numbers_;
  SheetDescription sheet_;
};

}  // namespace
}  // namespace plan_sheet

SheetDescription describe_plan(const Places& places) {
  return plan_sheet::PlanDescription(places).made();
}

}  // namespace shimwright::book
