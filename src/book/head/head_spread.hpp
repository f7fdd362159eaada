// SPDX-License-Identifier: MPL-2.0
//
// How the heads are spread over the Head sheet, so that the chart comes out as large as it can on
// A4: two banks one over the other, as they lie, or side by side; a long bank parted into rows, and
// where its letters would still be too small to read, on two pages. And the sizes, in mm, of what
// the chart is made of. Pure arithmetic: no office is needed.
#pragma once

#include <cstddef>

#include "core/engine/layout.hpp"

namespace shimwright::book {

// The rows of a card, from its top.
namespace card {
enum Row {
  name,
  banner,
  limits,
  gap,
  mark,
  micrometer,
  shim_is,
  exception,
  action,
  from,
  after,
  then
};
inline constexpr int rows = then + 1;
inline constexpr double value_mm = 14;
// Between cards. The office draws the button of a choice over the next column, no wider than that.
inline constexpr double sliver_mm = 4.5;
inline constexpr double label_mm = value_mm + sliver_mm;
inline constexpr double wide_mm = label_mm + value_mm;
inline constexpr double row_mm = 4.7;
inline constexpr double banner_mm = 7.5;
inline constexpr double action_mm = 6.5;
inline constexpr double high_mm = (rows - 2) * row_mm + banner_mm + action_mm;
inline constexpr double smallest_letter_pt = 8.5;
}  // namespace card

namespace deck {
inline constexpr double side_mm = 6;    // the side's name, upright
inline constexpr double edge_mm = 4.5;  // room for that button too
inline constexpr double between_cylinders_mm = 6.5;
inline constexpr double rim_mm = 2;  // above and below a row of cards
inline constexpr double strip_mm = 8;
inline constexpr double heading_mm = 7;       // the bank's name
inline constexpr double no_heading_mm = 2.5;  // where it has none
inline constexpr double below_mm = 1;
inline constexpr double beside_mm = 8;  // between two heads side by side
inline constexpr double high_mm = 2 * card::high_mm + 4 * rim_mm + strip_mm;
}  // namespace deck

// What the cards of a cylinder need: room for `slots` beside each other. Where an odd number more
// lie on one side, those of the other stand half a card further in.
struct CylinderWidth {
  int slots = 1;
  bool halves = false;
  explicit CylinderWidth(const EngineLayout& layout);
  double mm() const;
};

struct HeadSpread {
  bool beside = false;     // two banks side by side
  std::size_t rows = 1;    // of each bank
  bool two_pages = false;  // half of the rows on each
  double scale = 0;        // on paper, 1 at most: the office does not enlarge
};

// How much smaller a chart of this size comes out on A4, lying or upright, whichever is larger.
double scale_lying(double width_mm, double height_mm);
double scale_upright(double width_mm, double height_mm);

// Banks lie one over the other unless they come out larger side by side; few rows and one page
// come first, as long as the letters can be read.
HeadSpread spread_of(const EngineLayout& layout);

}  // namespace shimwright::book
