// SPDX-License-Identifier: MPL-2.0
//
// Plan: what goes where, what to order, what is left over, to print and take to the bench.
#include "book/formula.hpp"
#include "book/head/head_spread.hpp"
#include "book/look/styles.hpp"
#include "book/sheets.hpp"
#include "book/workings.hpp"

namespace shimwright::book {
namespace {

using Map = WorkingsMap;

constexpr double row_mm = 5.2;
constexpr int first_column = 1;
constexpr int last_column = 10;     // of the table of valves
constexpr int order_column = 12;    // beside it, so that both are in sight at once
constexpr int surplus_column = 18;  // what is left over
constexpr int right_column = 20;
constexpr int summary_row = 3;
constexpr int head_row = plan_place::first_row - 1;
constexpr int first_row = plan_place::first_row;

class PlanMaker {
 public:
  PlanMaker(Sheet& sheet, const Places& places)
      : sheet_(sheet), map_(places.count()), count_(places.count()) {}

  void make() {
    // No wider than their numbers need, as the page is the smaller for it.
    const double widths[] = {2, 17, 14, 14, 20, 35, 14, 15, 19, 24, 17,
                             4, 16, 14, 12, 15, 17, 4,  16, 14, 12};
    for (int column = 0; column <= right_column; ++column)
      sheet_.column_width(column, widths[column]);
    sheet_.row_heights(0, last_row(), row_mm);
    sheet_.row_height(0, 11);
    sheet_.row_height(1, 6);
    sheet_.row_height(head_row - 1, 7);
    sheet_.row_height(head_row, 9);
    for (const int gap : {2, 5}) sheet_.row_height(gap, 3);
    sheet_.result(line(0), titled(sheet_.name()), style::title);
    make_banner(sheet_, line(1));
    summary();
    box();
    valves();
    lists();
    foot();
    set_paper();
    sheet_.protect();
  }

 private:
  int total_row() const { return first_row + count_; }
  int last_row() const { return total_row() + 3; }

  // One page; where its letters would come out smaller than 7 points, two with the heads on both.
  void set_paper() {
    const Area whole{{0, 0}, {right_column, last_row()}};
    const auto [width, height] = sheet_.size_mm(whole);
    constexpr double smallest_pt = 8.5;
    constexpr double readable_pt = 7;
    const bool one_page = scale_lying(width, height) * smallest_pt >= readable_pt;
    sheet_.print(whole, one_page ? style::landscape : style::landscape_long);
    if (!one_page) sheet_.repeat_rows(head_row - 1, head_row);
  }

  static Area line(int row) { return {{first_column, row}, {last_column, row}}; }

  void heading(const Area& area, std::string_view words) {
    sheet_.style(area, style::heading);
    sheet_.text(area.from, words);
  }

  // The figures one asks for first.
  void summary() {
    const auto of_action = [](std::string_view action) {
      return written("(actions=\"{action}\")", {{"action", action}});
    };
    const std::string left =
        written("{kept}*({x}<>\"\")",
                {{"kept", of_action("keep")}, {"x", in_workings(map_.all(Map::left_outside))}});
    struct Figure {
      const char* words;
      std::string valves;
      int column;
      int columns;
      bool outside;  // its valves stay outside their limits
    };
    constexpr int none_column = 5;
    const Figure figures[] = {{"keep", of_action("keep") + "-" + left, 1, 1, false},
                              {"move", of_action("move"), 2, 1, false},
                              {"spare", of_action("spare"), 3, 1, false},
                              {"buy", of_action("buy"), 4, 1, false},
                              {"none fits", of_action("none"), none_column, 1, true},
                              {"left outside", left, 6, 2, true},
                              {"to measure", of_action("unread"), 8, 1, false}};
    const std::string to_list = in_workings(map_.fact(Map::to_list));
    for (const auto& [words, valves, column, columns, outside] : figures) {
      figure(column, columns, words,
             written("=IFERROR(SUMPRODUCT({valves});\"\u2013\")", {{"valves", "0+" + valves}}),
             style::figure);
      const At value{column, summary_row + 1};
      std::vector<Grade> grades{
          {written("{x}=0", {{"x", relative(value)}}), std::string(style::faint)}};
      if (column == none_column) grades.push_back({to_list, std::string(style::remark_found)});
      if (outside)
        grades.push_back({written("ISNUMBER({x})", {{"x", relative(value)}}),
                          std::string(style::figure_outside)});
      sheet_.grade(block(value, columns, 1), grades);
    }
    sheet_.formula({none_column, summary_row},
                   "=IF(" + to_list + ";\"list shims first\";\"none fits\")");
    figure(9, 2, "to pay",
           written("=IF(plan_stands;IF(currency=\"\";SUM({x});FIXED(SUM({x});2;TRUE())&\" \"&"
                   "currency);\"\u2013\")",
                   {{"x", in_workings(map_.all(Map::cost))}}),
           style::figure_money);
  }

  void figure(int column, int columns, std::string_view words, std::string_view formula,
              std::string_view figure_style) {
    const At at{column, summary_row};
    sheet_.label(block(at, columns, 1), words, style::subtitle);
    sheet_.result(block(below(at), columns, 1), formula, figure_style);
    sheet_.row_height(summary_row + 1, 9);
  }

  void valves() {
    heading(line(head_row - 1), "");
    sheet_.formula({first_column, head_row - 1},
                   "=IF(OR(plan_stands;NOT(add_in_there));\"Valve by valve; lengths in \"&"
                   "IF(unit=\"inch\";\"inches\";\"mm\");"
                   "\"Mend the entries first: no plan can be trusted until then\")");
    const std::pair<const char*, std::string_view> heads[] = {
        {"valve", style::table_head_left},  {"gap", style::table_head},
        {"shim now", style::table_head},    {"do", style::table_head_centre},
        {"from", style::table_head_left},   {"fit", style::table_head},
        {"gap after", style::table_head},   {"inside limits by", style::table_head},
        {"then", style::table_head_centre}, {"cost", style::table_head}};
    int column = first_column;
    for (const auto& [words, head_style] : heads)
      sheet_.label(At{column++, head_row}, words, head_style);

    std::vector<std::vector<std::string>> rows;
    for (int i = 0; i < count_; ++i) rows.push_back(valve_row(i));
    sheet_.formulas({first_column, first_row}, rows);
    const std::string_view styles[] = {
        style::table_strong, style::table_length, style::table_length, style::table_strong_centre,
        style::table_text,   style::table_length, style::table_length, style::table_length,
        style::table_centre, style::table_money};
    column = first_column;
    for (const std::string_view column_style : styles)
      sheet_.style(block({column++, first_row}, 1, count_), column_style);
    grades();
    sheet_.style(line(total_row()), style::total_text);
    sheet_.merge(block({first_column, total_row()}, 3, 1));
    sheet_.formula({first_column, total_row()},
                   "=\"total\"&IF(currency=\"\";\"\";\", \"&currency)");
    sheet_.result(At{last_column, total_row()},
                  written("=IF(plan_stands;SUM({x});\"\u2013\")",
                          {{"x", block({last_column, first_row}, 1, count_)}}),
                  style::total_money);
  }

  std::vector<std::string> valve_row(int i) const {
    const auto cell = [&](Map::Valve column) { return in_workings(map_.at(i, column)); };
    const auto length = [&](Map::Valve column) {
      return written("=IF(ISNUMBER({x});{x}/mm_each;\"\")", {{"x", cell(column)}});
    };
    const auto where_changed = [&](const char* then) {
      return written(
          std::string(
              "=IFERROR(IF(AND(plan_stands;OR({do}=\"move\";{do}=\"spare\";{do}=\"buy\"));") +
              then + ";\"\");\"\")",
          {{"do", cell(Map::action)}, {"size", cell(Map::size)}, {"cost", cell(Map::cost)}});
    };
    return {"=" + cell(Map::name),
            length(Map::clearance),
            length(Map::shim),
            written("=IFERROR(IF(NOT(plan_stands);\"\";IF({left}<>\"\";\"stays \"&{left};"
                    "IF({x}=\"none\";IF({nothing};\"list shims\";\"none fits\");"
                    "IF({x}=\"unread\";\"measure\";{x}))));\"\")",
                    {{"nothing", in_workings(map_.fact(Map::nothing_listed))},
                     {"left", cell(Map::left_outside)},
                     {"x", cell(Map::told_action)}}),
            written("=IFERROR(IF(NOT(plan_stands);\"\";IF({x}=\"move\";MID({source};6;99);IF({x}="
                    "\"spare\";\"spares\";IF({x}=\"buy\";"
                    "\"order\";{source}))));\"\")",
                    {{"x", cell(Map::action)}, {"source", cell(Map::source)}}),
            where_changed("{size}/mm_each"),
            length(Map::told_after),
            written("=IF(ISNUMBER({x});IF({known}=\"again\";\"\";{x}/mm_each);\"\")",
                    {{"x", cell(Map::told_margin)}, {"known", cell(Map::then_known)}}),
            written("=IFERROR({x};\"\")", {{"x", cell(Map::then_told)}}),
            where_changed("IF({cost}=0;\"\";{cost})")};
  }

  void grades() {
    const Area lengths[] = {block({first_column + 1, first_row}, 2, count_),
                            block({first_column + 5, first_row}, 3, count_)};
    for (const Area& area : lengths)
      sheet_.grade(area, {{"unit=\"inch\"", std::string(style::in_inches)}});
    const At action{first_column + 3, first_row};
    sheet_.grade(block(action, 1, count_),
                 {{written("{x}=\"keep\"", {{"x", relative(action)}}), std::string(style::faint)}});
    std::vector<Grade> states;
    for (const State state : all_states)
      states.push_back(
          {written("'{sheet}'.{x}=\"{word}\"", {{"sheet", sheet_name::workings},
                                                {"x", "$" + relative(map_.at(0, Map::then_known))},
                                                {"word", word_for(state)}}),
           style::worn(style::Wear::told, state)});
    sheet_.grade(block({first_column + 8, first_row}, 1, count_), states);
  }

  void list(int column, std::string_view title, const std::vector<std::string>& heads,
            const std::vector<std::string_view>& styles, Area (Map::*source)(int) const) {
    const int width = static_cast<int>(heads.size());
    heading({{column, head_row - 1}, {column + width - 1, head_row - 1}}, title);
    if (width > 3)  // with prices
      sheet_.formula({column, head_row - 1},
                     written("=\"{title}\"&IF(currency=\"\";\"\";\"; sums in \"&currency)",
                             {{"title", title}}));
    std::vector<std::vector<std::string>> rows(static_cast<std::size_t>(count_));
    for (int i = 0; i < width; ++i) {
      const auto k = static_cast<std::size_t>(i);
      sheet_.label(At{column + i, head_row}, heads[k],
                   i == 0 ? style::table_head_left : style::table_head);
      sheet_.style(block({column + i, first_row}, 1, count_), styles[k]);
      const At first = (map_.*source)(i).from;
      const bool length = styles[k] == style::table_length;
      for (int row = 0; row < count_; ++row)
        rows[static_cast<std::size_t>(row)].push_back(written(
            length ? "=IFERROR(IF(ISNUMBER({x});{x}/mm_each;\"\");\"\")"
                   : "=IFERROR(IF({size};{x};{none});\"\")",
            {{"x", in_workings(below(first, row))},
             {"none", row == 0 && i == 0 ? "IF(plan_stands;\"nothing\";\"\u2013\")" : "\"\""},
             {"size", written("ISNUMBER({x})",
                              {{"x", in_workings(below((map_.*source)(1).from, row))}})}}));
    }
    sheet_.formulas({column, first_row}, rows);
    const At first{column + 1, first_row};
    for (int i = 0; i < width; ++i) {
      std::vector<Grade> grades{
          {written("$" + relative(first) + "=\"\"", {}), std::string(style::no_row)}};
      if (styles[static_cast<std::size_t>(i)] == style::table_length)
        grades.push_back({"unit=\"inch\"", std::string(style::in_inches)});
      sheet_.grade(block({column + i, first.row}, 1, count_), grades);
    }
  }

  void lists() {
    list(order_column, "To order", {"series", "size", "count", "price", "cost"},
         {style::table_text, style::table_length, style::table_count, style::table_money,
          style::table_money},
         &Map::order);
    list(surplus_column, "Left over", {"series", "size", "count"},
         {style::table_text, style::table_length, style::table_count}, &Map::surplus);
  }

  // Which valves stay outside their limits and what is amiss anywhere in the book, over the lists.
  void box() {
    const Area area{{order_column, 0}, {right_column, summary_row + 1}};
    make_trouble_box(sheet_, area, {.told = in_workings(map_.fact(Map::plan_box))});
  }

  void foot() {
    sheet_.label({{first_column, total_row() + 2}, {right_column, total_row() + 2}},
                 "The engine\u2019s own manual comes first. Never turn the crank while a valve is "
                 "without its shim. After fitting, turn it by hand through two full turns and "
                 "measure every gap again.",
                 style::note);
  }

  Sheet& sheet_;
  Map map_;
  int count_;
};

}  // namespace

void make_plan(Sheet& sheet, const Places& places) { PlanMaker(sheet, places).make(); }

}  // namespace shimwright::book
