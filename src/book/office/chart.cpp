// SPDX-License-Identifier: MPL-2.0
#include "book/office/chart.hpp"

#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/chart/X3DDisplay.hpp>
#include <com/sun/star/chart/XAxisXSupplier.hpp>
#include <com/sun/star/chart/XAxisYSupplier.hpp>
#include <com/sun/star/chart/XChartDocument.hpp>
#include <com/sun/star/chart/XDiagram.hpp>
#include <com/sun/star/chart2/StackingDirection.hpp>
#include <com/sun/star/chart2/Symbol.hpp>
#include <com/sun/star/chart2/SymbolStyle.hpp>
#include <com/sun/star/chart2/XChartDocument.hpp>
#include <com/sun/star/chart2/XChartTypeContainer.hpp>
#include <com/sun/star/chart2/XCoordinateSystemContainer.hpp>
#include <com/sun/star/chart2/XDataSeriesContainer.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/XEmbeddedObjectSupplier.hpp>
#include <com/sun/star/drawing/FillStyle.hpp>
#include <com/sun/star/drawing/LineStyle.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/table/XTableCharts.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>

#include "book/look/style_names.hpp"
#include "book/places.hpp"

namespace shimwright::book {
namespace {

using Series = css::uno::Sequence<Ref<css::chart2::XDataSeries>>;

constexpr sal_Int32 band_series = 2;  // what lies below the band, and the band
constexpr float letters_pt = 9;
constexpr int upright_names_from = 24;  // rows; more names lie too close side by side

// With the headings above them, which name the series.
css::uno::Sequence<css::table::CellRangeAddress> ranges_of(const BandChart& chart,
                                                           const Gathered& gathered,
                                                           sal_Int16 workings) {
  const std::vector<Shows> pieces = chart.pieces();
  css::uno::Sequence<css::table::CellRangeAddress> ranges(static_cast<sal_Int32>(pieces.size()));
  sal_Int32 i = 0;
  for (const Shows& piece : pieces) {
    const At top = gathered.piece(piece);
    ranges.getArray()[i++] = {workings, top.column, top.row - 1, top.column,
                              top.row + chart.rows - 1};
  }
  return ranges;
}

// Number of the office's standard symbols.
sal_Int32 symbol_of(BandChart::Marks::Shape shape) {
  switch (shape) {
    case BandChart::Marks::Shape::down:
      return 2;
    case BandChart::Marks::Shape::up:
      return 3;
    case BandChart::Marks::Shape::round:
      break;
  }
  return 8;
}

void draw_band(const Series& series) {
  for (sal_Int32 i = 0; i < series.getLength(); ++i) {
    set(series[i], "BorderStyle", css::drawing::LineStyle_NONE);
    if (i == 0)
      set(series[i], "FillStyle", css::drawing::FillStyle_NONE);
    else
      set(series[i], "Color", style::band_colour);
  }
}

void draw_marks(const Series& series, const std::vector<BandChart::Marks>& marks) {
  for (sal_Int32 i = 0; i < series.getLength(); ++i) {
    const BandChart::Marks& own = marks[static_cast<std::size_t>(i)];
    css::chart2::Symbol symbol;
    symbol.Style = css::chart2::SymbolStyle_STANDARD;
    symbol.StandardSymbol = symbol_of(own.shape);
    symbol.Size = {hundredths(own.mm), hundredths(own.mm)};
    symbol.FillColor = symbol.BorderColor = own.colour;
    set(series[i], "StackingDirection", css::chart2::StackingDirection_NO_STACKING);
    set(series[i], "LineStyle", css::drawing::LineStyle_NONE);
    set(series[i], "Color", own.colour);
    set(series[i], "Symbol", symbol);
  }
}

// The first series are columns, the band; the rest become marks without lines.
void part_series(const Ref<css::uno::XComponentContext>& context,
                 const Ref<css::chart::XChartDocument>& document, const BandChart& chart) {
  const auto diagram = as<css::chart2::XChartDocument>(document)->getFirstDiagram();
  const auto types = as<css::chart2::XChartTypeContainer>(
      as<css::chart2::XCoordinateSystemContainer>(diagram)->getCoordinateSystems()[0]);
  const auto columns = as<css::chart2::XDataSeriesContainer>(types->getChartTypes()[0]);
  const Series all = columns->getDataSeries();
  const Series band(all.getConstArray(), band_series);
  const Series marks(all.getConstArray() + band_series, all.getLength() - band_series);
  draw_band(band);
  draw_marks(marks, chart.marks);
  columns->setDataSeries(band);
  const auto lines =
      as<css::chart2::XDataSeriesContainer>(context->getServiceManager()->createInstanceWithContext(
          "com.sun.star.chart2.LineChartType", context));
  lines->setDataSeries(marks);
  types->addChartType(as<css::chart2::XChartType>(lines));
}

void dress(const Ref<css::chart::XChartDocument>& document, const BandChart& chart) {
  const auto frame = document->getArea();
  set(frame, "LineStyle", css::drawing::LineStyle_NONE);
  set(frame, "FillStyle", css::drawing::FillStyle_NONE);
  const auto diagram = document->getDiagram();
  const auto wall = as<css::chart::X3DDisplay>(diagram)->getWall();
  set(wall, "LineStyle", css::drawing::LineStyle_NONE);
  set(wall, "FillStyle", css::drawing::FillStyle_NONE);
  const auto foot = as<css::chart::XAxisXSupplier>(diagram)->getXAxis();
  const auto side = as<css::chart::XAxisYSupplier>(diagram)->getYAxis();
  for (const auto& axis : {foot, side}) {
    set(axis, "CharHeight", letters_pt);
    set(axis, "LineColor", style::outline_colour);
  }
  if (chart.rows > upright_names_from) set(foot, "TextRotation", sal_Int32{9000});
  set(diagram, "HasYAxisTitle", true);
  const auto title = as<css::chart::XAxisYSupplier>(diagram)->getYAxisTitle();
  set(title, "String", to_office(chart.upright));
  set(title, "CharHeight", letters_pt);
  set(as<css::chart::XAxisYSupplier>(diagram)->getYMainGrid(), "LineColor", style::grid_colour);
}

}  // namespace

void add_chart(const Ref<css::uno::XComponentContext>& context, Sheet& sheet,
               const BandChart& chart, const Gathered& gathered) {
  const auto place = as<css::beans::XPropertySet>(sheet.range(chart.where));
  const auto corner = place->getPropertyValue("Position").get<css::awt::Point>();
  const auto size = place->getPropertyValue("Size").get<css::awt::Size>();
  const auto workings = as<css::sheet::XCellRangeAddressable>(
                            as<css::container::XNameAccess>(
                                as<css::sheet::XSpreadsheetDocument>(sheet.maker())->getSheets())
                                ->getByName(to_office(sheet_name::workings)))
                            ->getRangeAddress()
                            .Sheet;
  const auto charts = as<css::table::XTableChartsSupplier>(sheet.sheet())->getCharts();
  charts->addNewByName(to_office(chart.name), {corner.X, corner.Y, size.Width, size.Height},
                       ranges_of(chart, gathered, workings), true, true);
  const auto document = as<css::chart::XChartDocument>(
      as<css::document::XEmbeddedObjectSupplier>(
          as<css::container::XNameAccess>(charts)->getByName(to_office(chart.name)))
          ->getEmbeddedObject());
  set(document, "HasLegend", false);
  set(document, "HasMainTitle", false);
  set(document->getDiagram(), "Stacked", true);
  set(document->getDiagram(), "IncludeHiddenCells", true);
  part_series(context, document, chart);
  dress(document, chart);
}

}  // namespace shimwright::book
