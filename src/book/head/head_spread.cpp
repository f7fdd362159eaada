// SPDX-License-Identifier: MPL-2.0
#include "book/head/head_spread.hpp"

#include <algorithm>

namespace shimwright::book {
namespace {

// A4 within its margins, less the footer.
constexpr double long_mm = 277;
constexpr double short_mm = 190;
constexpr double footer_mm = 8;

// The rows above the heads and the words about the crank below them, the latter about so.
constexpr double around_mm = 33.5 + 26;

constexpr double readable_pt = 4.4;
constexpr double readable = readable_pt / card::smallest_letter_pt;

double largest_scale(double width, double height) {
  return std::max(scale_lying(width, height), scale_upright(width, height));
}

}  // namespace

double scale_lying(double width, double height) {
  return std::min({1.0, long_mm / width, (short_mm - footer_mm) / height});
}

double scale_upright(double width, double height) {
  return std::min({1.0, short_mm / width, (long_mm - footer_mm) / height});
}

CylinderWidth::CylinderWidth(const EngineLayout& layout)
    : slots(std::max(layout.exhaust_valves, layout.inlet_valves)),
      halves((layout.exhaust_valves + layout.inlet_valves) % 2 != 0) {}

double CylinderWidth::mm() const {
  return slots * (card::wide_mm + card::sliver_mm) - card::sliver_mm;
}

HeadSpread spread_of(const EngineLayout& layout) {
  const std::size_t banks = layout.banks.size();
  std::size_t cylinders = 0;
  for (const Bank& bank : layout.banks) cylinders = std::max(cylinders, bank.cylinders.size());
  const double cylinder = CylinderWidth(layout).mm() + deck::between_cylinders_mm;
  const double high = deck::heading_mm + deck::high_mm + deck::below_mm;
  const auto wide = [&](std::size_t rows) {
    return deck::side_mm + 2 * deck::edge_mm +
           static_cast<double>((cylinders + rows - 1) / rows) * cylinder;
  };

  HeadSpread best;
  const auto offer = [&best](const HeadSpread& one) {
    if (best.scale < std::min(one.scale, readable) || (one.beside && one.scale > best.scale))
      best = one;
  };
  for (std::size_t rows = 1; rows <= cylinders; ++rows) {
    const double tall = around_mm + static_cast<double>(banks * rows) * high;
    offer({.rows = rows, .scale = largest_scale(wide(rows), tall)});
    if (rows == 1 && banks == 2)
      offer({.beside = true,
             .scale = largest_scale(2 * wide(1) + deck::beside_mm, around_mm + high)});
  }
  // Upright pages, as wide as the paper; each must be short enough for it then.
  for (std::size_t rows = 1; rows <= cylinders; ++rows) {
    if (banks * rows % 2 != 0) continue;
    const double page = around_mm + static_cast<double>(banks * rows / 2) * high;
    const double scale = scale_upright(wide(rows), 0);
    if (scale <= scale_upright(wide(rows), page))
      offer({.rows = rows, .two_pages = true, .scale = scale});
  }
  return best;
}

}  // namespace shimwright::book
