// SPDX-License-Identifier: MPL-2.0
#include "core/values/money.hpp"

#include <cmath>

#include "core/values/bad_input.hpp"
#include "core/values/bounds.hpp"
#include "core/values/text.hpp"

namespace shimwright {

Money Money::of(double amount) {
  if (!std::isfinite(amount)) throw BadInput("a price is not a finite number");
  if (amount < 0) throw BadInput("a price of " + text_of(amount) + " is negative");
  if (amount > largest_sum)
    throw BadInput("a price of " + text_of(amount) + " is more than a million");
  return Money(std::llround(amount * 1e3));
}

}  // namespace shimwright
