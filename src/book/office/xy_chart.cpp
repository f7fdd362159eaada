// SPDX-License-Identifier: MPL-2.0
#include "book/office/xy_chart.hpp"

#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/chart/ChartLegendPosition.hpp>
#include <com/sun/star/chart/MissingValueTreatment.hpp>
#include <com/sun/star/chart/X3DDisplay.hpp>
#include <com/sun/star/chart/XAxisXSupplier.hpp>
#include <com/sun/star/chart/XAxisYSupplier.hpp>
#include <com/sun/star/chart/XChartDocument.hpp>
#include <com/sun/star/chart/XDiagram.hpp>
#include <com/sun/star/chart/XDiagramPositioning.hpp>
#include <com/sun/star/chart2/Symbol.hpp>
#include <com/sun/star/chart2/SymbolStyle.hpp>
#include <com/sun/star/chart2/XChartDocument.hpp>
#include <com/sun/star/chart2/XChartTypeContainer.hpp>
#include <com/sun/star/chart2/XCoordinateSystemContainer.hpp>
#include <com/sun/star/chart2/XDataSeriesContainer.hpp>
#include <com/sun/star/chart2/data/LabeledDataSequence.hpp>
#include <com/sun/star/chart2/data/XDataSink.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/XEmbeddedObjectSupplier.hpp>
#include <com/sun/star/drawing/DashStyle.hpp>
#include <com/sun/star/drawing/FillStyle.hpp>
#include <com/sun/star/drawing/LineDash.hpp>
#include <com/sun/star/drawing/LineStyle.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/table/XTableCharts.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>

#include "book/look/style_names.hpp"

namespace shimwright::book {
namespace {

namespace chart2 = css::chart2;

constexpr float title_pt = 9;
constexpr float axis_letters_pt = 9;
constexpr std::int32_t ink = 0x23272E;
constexpr sal_Int32 two_decimals = 2;  // the office's own format of that number
constexpr double fine_step = 0.01;     // gaps at less are shown with more
// Around the axes: what stands there has room, and all charts are alike.
constexpr double left_mm = 11;
constexpr double right_mm = 4;
constexpr double top_mm = 9;
constexpr double bottom_mm = 21;  // the axis, and three rows of the key

// Number of the office's standard symbols.
sal_Int32 symbol_of(XySeries::Shape shape) {
  switch (shape) {
    case XySeries::Shape::square:
      return 0;
    case XySeries::Shape::diamond:
      return 1;
    case XySeries::Shape::down:
      return 2;
    case XySeries::Shape::up:
      return 3;
    case XySeries::Shape::bar:
      return 14;
    case XySeries::Shape::round:
    case XySeries::Shape::none:
      break;
  }
  return 8;
}

class XyMaker {
 public:
  XyMaker(const Ref<css::uno::XComponentContext>& context, const Sheet& sheet, const Sheet& data,
          const XyChart& chart)
      : context_(context), data_(data), chart_(chart) {
    const auto place = as<css::beans::XPropertySet>(sheet.range(chart.where));
    const auto corner = place->getPropertyValue("Position").get<css::awt::Point>();
    const auto size = place->getPropertyValue("Size").get<css::awt::Size>();
    css::uno::Sequence<css::table::CellRangeAddress> ranges(1);
    ranges.getArray()[0] =
        as<css::sheet::XCellRangeAddressable>(data.range(chart.series.front().points))
            ->getRangeAddress();
    const auto charts = as<css::table::XTableChartsSupplier>(sheet.sheet())->getCharts();
    size_ = size;
    const rtl::OUString name = to_office(chart.name);
    charts->addNewByName(name, {corner.X, corner.Y, size.Width, size.Height}, ranges, false, false);
    document_ =
        as<css::chart::XChartDocument>(as<css::document::XEmbeddedObjectSupplier>(
                                           as<css::container::XNameAccess>(charts)->getByName(name))
                                           ->getEmbeddedObject());
  }

  void make() {
    const auto maker = as<css::lang::XMultiServiceFactory>(document_);
    document_->setDiagram(
        as<css::chart::XDiagram>(maker->createInstance(to_office("com.sun.star.chart.XYDiagram"))));
    set(document_->getDiagram(), "IncludeHiddenCells", true);
    set(document_->getDiagram(), "MissingValueTreatment",
        css::chart::MissingValueTreatment::LEAVE_GAP);
    make_dashes(maker);
    const auto diagram = as<chart2::XChartDocument>(document_)->getFirstDiagram();
    const auto types = as<chart2::XChartTypeContainer>(
        as<chart2::XCoordinateSystemContainer>(diagram)->getCoordinateSystems()[0]);
    css::uno::Sequence<Ref<chart2::XDataSeries>> all(static_cast<sal_Int32>(chart_.series.size()));
    sal_Int32 i = 0;
    for (const XySeries& series : chart_.series) all.getArray()[i++] = series_of(series);
    as<chart2::XDataSeriesContainer>(types->getChartTypes()[0])->setDataSeries(all);
    dress();
  }

 private:
  Ref<chart2::data::XDataSequence> sequence(const Area& cells, std::string_view role) const {
    const auto made =
        as<chart2::XChartDocument>(document_)
            ->getDataProvider()
            ->createDataSequenceByRangeRepresentation(to_office(on(data_.name(), cells)));
    set(made, "Role", to_office(role));
    return made;
  }

  Ref<chart2::XDataSeries> series_of(const XySeries& series) const {
    const auto column = [&](int index) {
      return Area({series.points.from.column + index, series.points.from.row},
                  {series.points.from.column + index, series.points.to.row});
    };
    const auto xs = chart2::data::LabeledDataSequence::create(context_);
    xs->setValues(sequence(column(0), "values-x"));
    const auto ys = chart2::data::LabeledDataSequence::create(context_);
    ys->setValues(sequence(column(1), "values-y"));
    ys->setLabel(sequence(series.name, "label"));
    const auto made = context_->getServiceManager()->createInstanceWithContext(
        to_office("com.sun.star.chart2.DataSeries"), context_);
    css::uno::Sequence<Ref<chart2::data::XLabeledDataSequence>> both(2);
    both.getArray()[0] = as<chart2::data::XLabeledDataSequence>(xs);
    both.getArray()[1] = as<chart2::data::XLabeledDataSequence>(ys);
    as<chart2::data::XDataSink>(made)->setData(both);
    set(made, "Color", series.colour);
    set(made, "ShowLegendEntry", series.in_key);
    draw_line(made, series);
    draw_marks(made, series);
    return as<chart2::XDataSeries>(made);
  }

  static std::string_view name_of(XySeries::Dash dash) {
    return dash == XySeries::Dash::dashed ? "Shimwright dashed" : "Shimwright dotted";
  }

  static void make_dashes(const Ref<css::lang::XMultiServiceFactory>& maker) {
    const auto table = as<css::container::XNameContainer>(
        maker->createInstance(to_office("com.sun.star.drawing.DashTable")));
    const auto add = [&](XySeries::Dash dash, double length_mm, double gap_mm) {
      const css::drawing::LineDash made(css::drawing::DashStyle_RECT, 1, hundredths(length_mm), 0,
                                        0, hundredths(gap_mm));
      table->insertByName(to_office(name_of(dash)), css::uno::Any(made));
    };
    add(XySeries::Dash::dashed, 2, 1);
    add(XySeries::Dash::dotted, 0.5, 0.9);
  }

  static void draw_line(const Ref<css::uno::XInterface>& made, const XySeries& series) {
    if (series.line_mm <= 0) {
      set(made, "LineStyle", css::drawing::LineStyle_NONE);
      return;
    }
    set(made, "LineWidth", hundredths(series.line_mm));
    if (series.dash == XySeries::Dash::solid) {
      set(made, "LineStyle", css::drawing::LineStyle_SOLID);
    } else {
      set(made, "LineDashName", to_office(name_of(series.dash)));
      set(made, "LineStyle", css::drawing::LineStyle_DASH);
    }
  }

  static void draw_marks(const Ref<css::uno::XInterface>& made, const XySeries& series) {
    chart2::Symbol symbol;
    symbol.Style = series.shape == XySeries::Shape::none ? chart2::SymbolStyle_NONE
                                                         : chart2::SymbolStyle_STANDARD;
    symbol.StandardSymbol = symbol_of(series.shape);
    symbol.Size = {hundredths(series.shape_mm), hundredths(series.shape_mm)};
    symbol.BorderColor = symbol.FillColor = series.colour;
    set(made, "Symbol", symbol);
  }

  void dress() const {
    set(document_, "HasMainTitle", true);
    set(document_->getTitle(), "String", to_office(chart_.title));
    set(document_->getTitle(), "CharHeight", title_pt);
    set(document_->getTitle(), "CharColor", ink);
    const auto frame = document_->getArea();
    set(frame, "LineStyle", css::drawing::LineStyle_NONE);
    set(frame, "FillStyle", css::drawing::FillStyle_NONE);
    const auto diagram = document_->getDiagram();
    const auto wall = as<css::chart::X3DDisplay>(diagram)->getWall();
    set(wall, "LineStyle", css::drawing::LineStyle_NONE);
    set(wall, "FillStyle", css::drawing::FillStyle_NONE);
    set(document_, "HasLegend", true);
    const auto key = document_->getLegend();
    set(key, "Alignment", css::chart::ChartLegendPosition_BOTTOM);
    set(key, "CharHeight", axis_letters_pt);
    set(key, "LineStyle", css::drawing::LineStyle_NONE);
    set(key, "FillStyle", css::drawing::FillStyle_NONE);
    const auto foot = as<css::chart::XAxisXSupplier>(diagram);
    const auto side = as<css::chart::XAxisYSupplier>(diagram);
    axis(foot->getXAxis(), chart_.foot);
    axis(side->getYAxis(), chart_.side);
    if (chart_.side.step >= fine_step) {
      set(side->getYAxis(), "LinkNumberFormatToSource", false);
      set(side->getYAxis(), "NumberFormat", two_decimals);
    }
    set(diagram, "HasYAxisGrid", true);
    set(side->getYMainGrid(), "LineColor", style::grid_colour);
    as<css::chart::XDiagramPositioning>(diagram)->setDiagramPositionExcludingAxes(
        {hundredths(left_mm), hundredths(top_mm), size_.Width - hundredths(left_mm + right_mm),
         size_.Height - hundredths(top_mm + bottom_mm)});
  }

  static void axis(const Ref<css::beans::XPropertySet>& axis, const XyChart::Scale& scale) {
    set(axis, "CharHeight", axis_letters_pt);
    set(axis, "LineColor", style::outline_colour);
    set(axis, "Min", scale.from);
    set(axis, "Max", scale.to);
    set(axis, "StepMain", scale.step);
  }

  Ref<css::uno::XComponentContext> context_;
  const Sheet& data_;
  const XyChart& chart_;
  css::awt::Size size_;
  Ref<css::chart::XChartDocument> document_;
};

}  // namespace

void add_chart(const Ref<css::uno::XComponentContext>& context, const Sheet& sheet,
               const Sheet& data, const XyChart& chart) {
  XyMaker(context, sheet, data, chart).make();
}

double plot_width_mm(double chart_mm) { return chart_mm - left_mm - right_mm; }

void remove_charts(const Sheet& sheet) {
  const auto charts = as<css::table::XTableChartsSupplier>(sheet.sheet())->getCharts();
  for (const rtl::OUString& name : as<css::container::XNameAccess>(charts)->getElementNames())
    charts->removeByName(name);
}

}  // namespace shimwright::book
