// SPDX-License-Identifier: MPL-2.0
//
// How far a line can be trusted beyond its points. At x, a one-sided bound lies this far below or
// above the line:
//   t s sqrt(k + (x - mean x)^2 / Sxx),  k = 1 + 1/n for one more reading, 1/n for the line itself
// with Student's t (student_t.hpp) for n - 2 degrees of freedom (any textbook; checked on GUM H.3
// and on the examples of Graybill & Iyer, chapter 6). Where a bound meets a level is an inverse
// prediction: the equation is quadratic in x (E. C. Fieller 1954), and where the slope is uncertain
// the bound may never meet the level.
#pragma once

#include <optional>

#include "core/drift/line.hpp"

namespace shimwright {

enum class Scatter { of_a_reading, of_the_line };

struct Bound {
  enum class Side { below, above } side;
  double t = 0;  // at least 0; 0 is the line itself
  Scatter scatter = Scatter::of_a_reading;
};

// How far the bound lies from the line.
double distance_from_line(const Line& line, const Bound& bound, double x);

double bound_at(const Line& line, const Bound& bound, double x);

// The first x from `from` on at which a bound from below is at or under the level, or one from
// above at or over it: `from` itself where it is so there. None where it never is.
std::optional<double> first_meeting(const Line& line, const Bound& bound, double level,
                                    double from);

}  // namespace shimwright
