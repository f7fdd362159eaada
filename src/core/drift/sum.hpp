// SPDX-License-Identifier: MPL-2.0
//
// A sum that keeps what rounding would drop, so that many small terms beside a large one count
// (A. Neumaier, Z. Angew. Math. Mech. 54, 1974, pp. 39-51).
#pragma once

#include <cmath>

namespace shimwright {

class Sum {
 public:
  void add(double term) {
    const double next = total_ + term;
    dropped_ +=
        std::abs(total_) >= std::abs(term) ? (total_ - next) + term : (term - next) + total_;
    total_ = next;
  }

  double value() const { return total_ + dropped_; }

 private:
  double total_ = 0;
  double dropped_ = 0;
};

}  // namespace shimwright
