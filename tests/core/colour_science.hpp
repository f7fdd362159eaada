// SPDX-License-Identifier: MPL-2.0
//
// How far apart two colours look, to whom, and on which paper. For the palette's test only.
//
// Formulas: sRGB and its transfer curve, IEC 61966-2-1; CIE XYZ to L*a*b* under D65, CIE 15;
// CIEDE2000 after Sharma, Wu & Dalal 2005 (Color Research & Application 30:21-30); colour vision
// deficiency after Machado, Oliveira & Fernandes 2009 (IEEE TVCG 15:1291-1298), full severity,
// applied to linear RGB; contrast ratio after WCAG 2, success criterion 1.4.3.
#pragma once

#include <array>
#include <string_view>

#include "core/values/palette.hpp"

namespace shimwright {

struct LinearRgb {
  double red = 0;
  double green = 0;
  double blue = 0;
};

struct Lab {
  double lightness = 0;
  double a = 0;
  double b = 0;
};

enum class Sight { normal, protanopia, deuteranopia, tritanopia, grey_print };

inline constexpr std::array all_sights{Sight::normal, Sight::protanopia, Sight::deuteranopia,
                                       Sight::tritanopia, Sight::grey_print};

std::string_view word_for(Sight sight);

LinearRgb linear(Rgb colour);

// The nearest 8-bit colour; what lies outside the gamut is brought to its edge.
Rgb encoded(const LinearRgb& colour);

// What a reader of this sight sees; in grey print, the neutral grey of the same luminance. Not
// rounded to 8 bits, but brought inside the gamut as a screen would.
LinearRgb seen(const LinearRgb& colour, Sight sight);

Lab lab(const LinearRgb& colour);

// CIEDE2000 with kL = kC = kH = 1.
double difference(const Lab& first, const Lab& second);

// As seen by that reader.
double difference(Rgb first, Rgb second, Sight sight);

// 1 to 21.
double contrast(Rgb first, Rgb second);

}  // namespace shimwright
