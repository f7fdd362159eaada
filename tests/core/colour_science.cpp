// SPDX-License-Identifier: MPL-2.0
#include "colour_science.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace shimwright {
namespace {

constexpr double degrees(double value) { return value * std::numbers::pi / 180; }

double decoded(std::uint8_t channel) {
  const double value = channel / 255.0;
  return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

std::uint8_t encoded(double channel) {
  const double value = std::clamp(channel, 0.0, 1.0);
  const double curved =
      value <= 0.0031308 ? value * 12.92 : 1.055 * std::pow(value, 1 / 2.4) - 0.055;
  return static_cast<std::uint8_t>(std::lround(255 * curved));
}

double luminance(const LinearRgb& colour) {
  return 0.2126 * colour.red + 0.7152 * colour.green + 0.0722 * colour.blue;
}

using ColourMatrix = std::array<std::array<double, 3>, 3>;

LinearRgb applied(const ColourMatrix& m, const LinearRgb& c) {
  const auto row = [&](std::size_t i) {
    return std::clamp(m[i][0] * c.red + m[i][1] * c.green + m[i][2] * c.blue, 0.0, 1.0);
  };
  return {row(0), row(1), row(2)};
}

// Machado, Oliveira & Fernandes 2009, severity 1.0: read in public programs that quote them and
// agree to every figure, not in the paper itself.
constexpr ColourMatrix protanopia{{{0.152286, 1.052583, -0.204868},
                                   {0.114503, 0.786281, 0.099216},
                                   {-0.003882, -0.048116, 1.051998}}};
constexpr ColourMatrix deuteranopia{{{0.367322, 0.860646, -0.227968},
                                     {0.280085, 0.672501, 0.047413},
                                     {-0.011820, 0.042940, 0.968881}}};
constexpr ColourMatrix tritanopia{{{1.255528, -0.076749, -0.178779},
                                   {-0.078411, 0.930809, 0.147602},
                                   {0.004733, 0.691367, 0.303900}}};

// In degrees, 0 to 360; a neutral has hue 0.
double hue_of(double a, double b) {
  if (a == 0 && b == 0) return 0;
  const double hue = std::atan2(b, a) * 180 / std::numbers::pi;
  return hue < 0 ? hue + 360 : hue;
}

}  // namespace

std::string_view word_for(Sight sight) {
  switch (sight) {
    case Sight::normal:
      return "normal";
    case Sight::protanopia:
      return "protanopia";
    case Sight::deuteranopia:
      return "deuteranopia";
    case Sight::tritanopia:
      return "tritanopia";
    case Sight::grey_print:
      return "grey print";
  }
  return "";
}

LinearRgb linear(Rgb colour) {
  return {decoded(colour.red), decoded(colour.green), decoded(colour.blue)};
}

Rgb encoded(const LinearRgb& colour) {
  return {encoded(colour.red), encoded(colour.green), encoded(colour.blue)};
}

LinearRgb seen(const LinearRgb& colour, Sight sight) {
  switch (sight) {
    case Sight::normal:
      break;
    case Sight::protanopia:
      return applied(protanopia, colour);
    case Sight::deuteranopia:
      return applied(deuteranopia, colour);
    case Sight::tritanopia:
      return applied(tritanopia, colour);
    case Sight::grey_print:
      return {luminance(colour), luminance(colour), luminance(colour)};
  }
  return colour;
}

Lab lab(const LinearRgb& c) {
  const auto curve = [](double t) {
    constexpr double knee = 6.0 / 29;
    return t > knee * knee * knee ? std::cbrt(t) : t / (3 * knee * knee) + 4.0 / 29;
  };
  // Over the white's own sums, so that R = G = B is neutral to the last digit.
  const double x = (0.4124 * c.red + 0.3576 * c.green + 0.1805 * c.blue) / 0.9505;
  const double y = luminance(c);
  const double z = (0.0193 * c.red + 0.1192 * c.green + 0.9505 * c.blue) / 1.0890;
  return {116 * curve(y) - 16, 500 * (curve(x) - curve(y)), 200 * (curve(y) - curve(z))};
}

// Names and equation numbers as in Sharma, Wu & Dalal 2005.
double difference(const Lab& first, const Lab& second) {
  const double seventh_25 = std::pow(25.0, 7);
  const double c_mean = (std::hypot(first.a, first.b) + std::hypot(second.a, second.b)) / 2;
  const double c7 = std::pow(c_mean, 7);
  const double g = 0.5 * (1 - std::sqrt(c7 / (c7 + seventh_25)));  // (4)
  const double a1 = (1 + g) * first.a;                             // (5)
  const double a2 = (1 + g) * second.a;
  const double c1 = std::hypot(a1, first.b);  // (6)
  const double c2 = std::hypot(a2, second.b);
  const double h1 = hue_of(a1, first.b);  // (7)
  const double h2 = hue_of(a2, second.b);
  const bool neutral = c1 * c2 == 0;

  const double delta_l = second.lightness - first.lightness;  // (8)
  const double delta_c = c2 - c1;                             // (9)
  double delta_h = neutral ? 0 : h2 - h1;                     // (10)
  if (delta_h > 180) delta_h -= 360;
  if (delta_h < -180) delta_h += 360;
  const double delta_big_h = 2 * std::sqrt(c1 * c2) * std::sin(degrees(delta_h / 2));  // (11)

  const double l_mean = (first.lightness + second.lightness) / 2;  // (12)
  const double c_dash = (c1 + c2) / 2;                             // (13)
  double h_mean = h1 + h2;                                         // (14)
  if (!neutral) {
    if (std::abs(h1 - h2) > 180) h_mean += h_mean < 360 ? 360 : -360;
    h_mean /= 2;
  }

  const double t = 1 - 0.17 * std::cos(degrees(h_mean - 30)) +  // (15)
                   0.24 * std::cos(degrees(2 * h_mean)) + 0.32 * std::cos(degrees(3 * h_mean + 6)) -
                   0.20 * std::cos(degrees(4 * h_mean - 63));
  const double delta_theta = 30 * std::exp(-std::pow((h_mean - 275) / 25, 2));  // (16)
  const double c_dash7 = std::pow(c_dash, 7);
  const double r_c = 2 * std::sqrt(c_dash7 / (c_dash7 + seventh_25));  // (17)
  const double off_middle = (l_mean - 50) * (l_mean - 50);
  const double s_l = 1 + 0.015 * off_middle / std::sqrt(20 + off_middle);  // (18)
  const double s_c = 1 + 0.045 * c_dash;                                   // (19)
  const double s_h = 1 + 0.015 * c_dash * t;                               // (20)
  const double r_t = -std::sin(degrees(2 * delta_theta)) * r_c;            // (21)

  const double l = delta_l / s_l;
  const double c = delta_c / s_c;
  const double h = delta_big_h / s_h;
  return std::sqrt(l * l + c * c + h * h + r_t * c * h);  // (22)
}

double difference(Rgb first, Rgb second, Sight sight) {
  return difference(lab(seen(linear(first), sight)), lab(seen(linear(second), sight)));
}

double contrast(Rgb first, Rgb second) {
  const double one = luminance(linear(first));
  const double other = luminance(linear(second));
  return (std::max(one, other) + 0.05) / (std::min(one, other) + 0.05);
}

}  // namespace shimwright
