// SPDX-License-Identifier: MPL-2.0
//
// Head is a chart: the cards lie as the valves do.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/chart2/XChartDocument.hpp>
#include <com/sun/star/chart2/XChartTypeContainer.hpp>
#include <com/sun/star/chart2/XCoordinateSystemContainer.hpp>
#include <com/sun/star/chart2/XDataSeriesContainer.hpp>
#include <com/sun/star/chart2/data/XDataSource.hpp>
#include <com/sun/star/chart2/data/XNumericalDataSequence.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/document/XEmbeddedObjectSupplier.hpp>
#include <com/sun/star/drawing/FillStyle.hpp>
#include <com/sun/star/drawing/XDrawPagesSupplier.hpp>
#include <com/sun/star/drawing/XShape.hpp>
#include <com/sun/star/table/XTableChartsSupplier.hpp>

#include "core/engine/presets.hpp"
#include "core/values/verdict.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace card = book::card;
using book::as;

class Chart : public ::testing::Test {
 protected:
  css::awt::Point corner(At at) const {
    return as<css::beans::XPropertySet>(demo.cell(book::sheet_name::head, at))
        ->getPropertyValue("Position")
        .get<css::awt::Point>();
  }
  const std::vector<book::Card>& cards() const { return the_places().head.cards; }

  OpenBook demo{the_office(), demo_file()};
};

TEST_F(Chart, has_a_card_for_each_valve_with_its_name_on_top) {
  ASSERT_EQ(cards().size(), the_places().valves.size());
  for (std::size_t i = 0; i < cards().size(); ++i)
    EXPECT_EQ(demo.shown(book::sheet_name::head, cards()[i].at(card::name)),
              name_of(the_places().valves[i], the_places().layout));
}

TEST_F(Chart, has_exhaust_above_inlet) {
  for (const book::Card& exhaust : cards()) {
    if (exhaust.valve.side != Side::exhaust) continue;
    for (const book::Card& inlet : cards())
      if (inlet.valve.side == Side::inlet) {
        EXPECT_LT(corner(exhaust.at(card::then)).Y, corner(inlet.at(card::name)).Y);
      }
  }
}

TEST_F(Chart, has_the_cylinders_and_their_valves_from_left_to_right) {
  for (const book::Card& a : cards()) {
    for (const book::Card& b : cards()) {
      if (a.valve.side != b.valve.side) continue;
      const bool before =
          std::pair(a.valve.cylinder, a.valve.place) < std::pair(b.valve.cylinder, b.valve.place);
      if (before) {
        EXPECT_LT(corner(a.value(card::gap)).X, corner(b.at(card::gap)).X);
        EXPECT_EQ(corner(a.at(card::name)).Y, corner(b.at(card::name)).Y);
      }
    }
  }
}

TEST_F(Chart, names_each_cylinder_between_its_valves) {
  const book::BankDeck& deck = the_places().head.banks.front();
  ASSERT_EQ(deck.strips.size(), 4);
  for (const book::CylinderStrip& strip : deck.strips) {
    EXPECT_EQ(demo.shown(book::sheet_name::head, strip.area.from),
              "cylinder " + std::to_string(strip.cylinder));
    for (const book::Card& one : cards()) {
      if (one.valve.cylinder != strip.cylinder) continue;
      EXPECT_GE(one.corner.column, strip.area.from.column);
      EXPECT_LE(one.value(card::name).column, strip.area.to.column);
    }
  }
}

// In .xlsx what is drawn lies over the cells: the frame of a head may hide none of its cards.
TEST_F(Chart, has_a_frame_that_hides_no_card_in_an_xlsx_opened_again) {
  const auto file = the_office().profile().folder() / "chart.xlsx";
  demo.save(file, xlsx);
  const OpenBook again(the_office(), file);
  const auto pages = as<css::drawing::XDrawPagesSupplier>(again.document())->getDrawPages();
  const auto names = again.document()->getSheets()->getElementNames();
  const auto head = std::ranges::find(names, book::to_office(book::sheet_name::head));
  const auto shapes = as<css::container::XIndexAccess>(
      pages->getByIndex(static_cast<sal_Int32>(head - names.begin())));
  ASSERT_EQ(shapes->getCount(), std::ssize(the_places().head.banks));
  const auto frame = as<css::drawing::XShape>(shapes->getByIndex(0));
  EXPECT_EQ(as<css::beans::XPropertySet>(frame)
                ->getPropertyValue("FillStyle")
                .get<css::drawing::FillStyle>(),
            css::drawing::FillStyle_NONE);
  constexpr int line = 100;  // hundredths of mm, and what rounding takes
  const auto at = frame->getPosition();
  const auto size = frame->getSize();
  for (const book::Card& one : cards()) {
    const auto cell = [&again](At where, const char* property) {
      return as<css::beans::XPropertySet>(again.cell(book::sheet_name::head, where))
          ->getPropertyValue(rtl::OUString::createFromAscii(property));
    };
    const auto first = cell(one.at(card::name), "Position").get<css::awt::Point>();
    const auto last = cell(one.value(card::then), "Position").get<css::awt::Point>();
    const auto extent = cell(one.value(card::then), "Size").get<css::awt::Size>();
    EXPECT_GT(first.X, at.X + line);
    EXPECT_GT(first.Y, at.Y + line);
    EXPECT_LT(last.X + extent.Width, at.X + size.Width - line);
    EXPECT_LT(last.Y + extent.Height, at.Y + size.Height - line);
  }
}

// A state's word, sign and count at their full size, on the narrowest head too.
TEST(Key, has_the_width_of_a_card_for_each_state) {
  for (const Preset& preset : presets()) {
    const book::HeadMap head = book::head_map(preset.layout);
    for (std::size_t place = 0; place < all_states.size(); ++place) {
      const Area area = head.head_cell(place, head.legend_row());
      double width = 0;
      for (int column = area.from.column; column <= area.to.column; ++column)
        width += head.column_mm[static_cast<std::size_t>(column)];
      EXPECT_NEAR(width, book::card::wide_mm, 0.001) << preset.name;
    }
  }
}

TEST(Picture, on_plan_draws_the_bands_and_marks_of_every_state_before_and_after) {
  OpenBook demo{the_office(), demo_file()};
  const auto charts =
      as<css::table::XTableChartsSupplier>(demo.sheet(book::sheet_name::plan))->getCharts();
  const auto embedded = as<css::document::XEmbeddedObjectSupplier>(
      as<css::container::XNameAccess>(charts)->getByName("gaps"));
  const auto diagram =
      as<css::chart2::XChartDocument>(embedded->getEmbeddedObject())->getFirstDiagram();
  const auto types =
      as<css::chart2::XChartTypeContainer>(
          as<css::chart2::XCoordinateSystemContainer>(diagram)->getCoordinateSystems()[0])
          ->getChartTypes();
  ASSERT_EQ(types.getLength(), 2);
  const auto series = [&types](sal_Int32 type) {
    return as<css::chart2::XDataSeriesContainer>(types[type])->getDataSeries();
  };
  EXPECT_EQ(series(0).getLength(), 2);
  ASSERT_EQ(series(1).getLength(), 10);
  // Every gap of the demo stands among them: as many numbers as readings, before and after.
  std::size_t marks = 0;
  for (const auto& each : series(1)) {
    const auto numbers = as<css::chart2::data::XNumericalDataSequence>(
        as<css::chart2::data::XDataSource>(each)->getDataSequences()[0]->getValues());
    for (const double number : numbers->getNumericalData()) marks += std::isnan(number) ? 0 : 1;
  }
  EXPECT_EQ(marks, 2 * (the_places().valves.size() - 1));
}

}  // namespace
}  // namespace shimwright::tests
