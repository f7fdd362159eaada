// SPDX-License-Identifier: MPL-2.0
//
// A chart of the office's own of points and lines over two numbers, from cells that hold values.
#pragma once

#include <com/sun/star/uno/XComponentContext.hpp>
#include <cstdint>
#include <string>
#include <vector>

#include "book/office/sheet.hpp"

namespace shimwright::book {

struct XySeries {
  enum class Shape { none, square, diamond, down, up, round, bar };
  enum class Dash { solid, dashed, dotted };

  Area points = At{};  // two columns: across and up; a blank row parts a line
  At name = {};        // the cell that holds it, for the key
  std::int32_t colour = 0;
  double line_mm = 0;  // 0: none
  Dash dash = Dash::solid;
  Shape shape = Shape::none;
  double shape_mm = 0;
  bool in_key = false;
};

struct XyChart {
  std::string name = {};
  std::string title = {};
  Area where = At{};
  struct Scale {
    double from = 0;
    double to = 0;
    double step = 0;
  };
  Scale foot = {};
  Scale side = {};
  std::vector<XySeries> series = {};  // the office draws the first over all others
};

// Over the cells of `sheet`, from those of `data`.
void add_chart(const Ref<css::uno::XComponentContext>& context, const Sheet& sheet,
               const Sheet& data, const XyChart& chart);

// How wide the space between the axes' ends is in a chart so wide.
double plot_width_mm(double chart_mm);

// Takes every chart off the sheet; one that Undo and Redo brought back has lost its name.
void remove_charts(const Sheet& sheet);

}  // namespace shimwright::book
