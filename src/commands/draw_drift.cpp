// SPDX-License-Identifier: MPL-2.0
#include "commands/draw_drift.hpp"

#include <algorithm>

#include "book/drift_map.hpp"
#include "book/look/style_names.hpp"
#include "book/office/xy_chart.hpp"
#include "book/places.hpp"
#include "commands/book_command.hpp"
#include "commands/log_range.hpp"
#include "core/service/drift_chart.hpp"

namespace shimwright::commands {
namespace {

using book::Area;
using book::At;
using book::DriftMap;
using book::Sheet;
using book::to_office;
using book::XySeries;

constexpr std::string_view chart_names = "Drift ";
constexpr std::int32_t exhaust_colour = 0x1F3A57;
constexpr std::int32_t inlet_colour = 0xA85A1C;
constexpr std::int32_t exhaust_band = 0xDFE3E8;
constexpr std::int32_t inlet_band = 0xF1DFCB;
constexpr std::int32_t changed_colour = 0x6B7078;

bool has_drift(const ServiceBook& book) {
  const auto sheets = book.document()->getSheets();
  return sheets->hasByName(to_office(book::sheet_name::drift)) &&
         sheets->hasByName(to_office(book::sheet_name::workings));
}

// The exhaust's are pointed.
XySeries::Shape shape_of(const ChartSeries& series) {
  using enum XySeries::Shape;
  if (series.side == Side::exhaust) return series.place % 2 == 0 ? down : up;
  constexpr XySeries::Shape of_inlet[] = {round, square, diamond};
  return of_inlet[series.place % 3];
}

// How a series looks; the exhaust differs from the inlet by shape and dash as well as by colour.
XySeries look_of(const ChartSeries& series, double plot_mm) {
  using Kind = ChartSeries::Kind;
  using Shape = XySeries::Shape;
  const bool exhaust = series.side == Side::exhaust;
  XySeries look{.colour = exhaust ? exhaust_colour : inlet_colour};
  switch (series.kind) {
    case Kind::band:
      look.colour = exhaust ? exhaust_band : inlet_band;
      // A hair more than they are apart, so that no paper shows between them.
      look.line_mm = 1.15 * plot_mm / strokes_of_band;
      break;
    case Kind::changed:
      look.colour = changed_colour;
      look.shape = Shape::bar;
      look.shape_mm = 6;
      look.in_key = !series.points.empty();
      break;
    case Kind::line:
      look.line_mm = 0.35;
      look.dash = exhaust ? XySeries::Dash::solid : XySeries::Dash::dashed;
      break;
    case Kind::bound:
      look.line_mm = 0.3;
      look.dash = XySeries::Dash::dotted;
      break;
    case Kind::checks:
      look.shape = shape_of(series);
      look.shape_mm = 2.2;
      look.in_key = true;
      break;
  }
  return look;
}

class Drawing {
 public:
  Drawing(const Ref<css::uno::XComponentContext>& context, const ServiceBook& book, UndoStep& step)
      : context_(context),
        book_(book),
        step_(step),
        sheet_(book.document(), book::sheet_name::drift),
        data_(book.document(), book::sheet_name::workings) {}

  void draw(const DriftCharts& charts, const DriftMap& map, const std::string& mark) {
    book::remove_charts(sheet_);
    step_.clear(data_.sheet(),
                book::block(DriftMap::data, DriftMap::data_columns, DriftMap::data_rows));
    std::vector<XySeries> bands;
    const double plot_mm = book::plot_width_mm(sheet_.size_mm(map.chart(0)).width);
    for (const ChartSeries& band : charts.bands) bands.push_back(write(band, plot_mm));
    for (std::size_t i = 0; i < charts.charts.size(); ++i) {
      const DriftChart& one = charts.charts[i];
      book::XyChart chart{.name = std::string(chart_names) + std::to_string(i + 1),
                          .title = one.title,
                          .where = map.chart(static_cast<int>(i)),
                          .foot = {charts.foot.from, charts.foot.to, charts.foot.step},
                          .side = {charts.side.from, charts.side.to, charts.side.step}};
      for (const ChartSeries& series : one.series)
        if (!series.points.empty()) chart.series.push_back(write(series, plot_mm));
      chart.series.insert(chart.series.end(), bands.begin(), bands.end());
      book::add_chart(context_, sheet_, data_, chart);
    }
    step_.put(book_.place_of("drawn", "drift", 0), mark);
    // Until there are charts, their empty page stays off paper.
    print_down_to(sheet_.sheet(), map.last_row());
  }

 private:
  XySeries write(const ChartSeries& series, double plot_mm) {
    const At name = book::right_of(DriftMap::data, column_);
    step_.put({data_.sheet(), name}, series.name);
    At at = book::below(name);
    for (const auto& point : series.points) {
      if (point) {
        step_.put({data_.sheet(), at}, point->x);
        step_.put({data_.sheet(), book::right_of(at)}, point->y);
      }
      at = book::below(at);
    }
    column_ += 2;
    XySeries look = look_of(series, plot_mm);
    look.name = name;
    look.points = Area(book::below(name), {name.column + 1, std::max(at.row - 1, name.row + 1)});
    return look;
  }

  Ref<css::uno::XComponentContext> context_;
  const ServiceBook& book_;
  UndoStep& step_;
  Sheet sheet_;
  Sheet data_;
  int column_ = 0;
};

class DrawCommand : public BookCommand {
 public:
  DrawCommand(const Ref<css::uno::XComponentContext>& context, const Ref<css::frame::XFrame>& frame,
              Say title)
      : BookCommand(context, frame, title), context_(context) {}

  void draw() {
    if (!begin()) return;
    const auto sheets = sheets_of_drift(book());
    if (sheets.empty()) return inform(say(Say::drift_no_sheet));
    bool drawn = false;
    if (!change(sheets, [&](UndoStep& step) { drawn = draw_drift_in(context_, book(), step); }))
      return;
    if (!drawn) return inform(say(Say::drift_nothing_to_draw));
    show(sheets.front(), {DriftMap::valve, DriftMap::next_row});
  }

 private:
  Ref<css::uno::XComponentContext> context_;
};

}  // namespace

std::vector<Ref<css::sheet::XSpreadsheet>> sheets_of_drift(const ServiceBook& book) {
  if (!has_drift(book)) return {};
  return {Sheet(book.document(), book::sheet_name::drift).sheet(),
          Sheet(book.document(), book::sheet_name::workings).sheet()};
}

bool draw_drift_in(const Ref<css::uno::XComponentContext>& context, const ServiceBook& book,
                   UndoStep& step) {
  const auto log = LogRange::in(book.document());
  if (!log || !has_drift(book)) return false;
  const Service service = service_of(book.entries());
  const DriftFindings found = drift_findings_in(service, log->rows());
  const auto charts = drift_charts(service, found);
  if (!charts) return false;
  const DriftMap map{static_cast<int>(service.valves.size()),
                     static_cast<int>(charts->charts.size())};
  Drawing(context, book, step).draw(*charts, map, drawing_mark(found));
  return true;
}

void draw_drift(const Ref<css::uno::XComponentContext>& context,
                const Ref<css::frame::XFrame>& frame) noexcept {
  run_command(context, frame, Say::drift_draw, &DrawCommand::draw);
}

}  // namespace shimwright::commands
