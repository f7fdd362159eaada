// SPDX-License-Identifier: MPL-2.0
//
// The slopes of all pairs of points whose x differ, by rank: what a line through medians needs. Of
// 100 points there are 5 000 slopes, which are listed; of more points a rank is found by halving:
// how many slopes are at most b is the number of pairs that stand in the other order by y - b x
// than by x, which sorting by merging counts (D. Knuth, The Art of Computer Programming 3, 5.1.1:
// inversions). The halving runs over the floating-point numbers themselves, so it ends after 64
// steps at the exact slope, and equal slopes do no harm.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

#include "core/drift/line.hpp"

namespace shimwright {

class PairSlopes {
 public:
  // At most this many points are listed.
  static constexpr std::size_t most_listed = 100;

  // `most_listed` is for tests, which hold both ways against each other.
  explicit PairSlopes(std::span<const Point> points, std::size_t listed_up_to = most_listed);

  // How many pairs have a slope.
  std::int64_t count() const { return count_; }

  // The slopes of these ranks, from 1 for the least to count(); ranks ascend. To one unit in the
  // last place. Time grows with n^2 where they are listed, else with n log n: about 2 s for
  // 100 000 points.
  std::vector<double> of_ranks(std::span<const std::int64_t> ranks);

 private:
  // y - slope * x as the sum of two doubles, so that pairs are told apart to the last digit. Of
  // equal heights the further x comes first, which makes a pair of that very slope an inversion,
  // and a pair at one x none.
  struct Height {
    double high = 0;
    double low = 0;
    double x = 0;
    bool operator<(const Height& other) const {
      if (high != other.high) return high < other.high;
      if (low != other.low) return low < other.low;
      return x > other.x;
    }
  };

  static Height height_of(const Point& point, double slope);
  void list();
  std::int64_t count_up_to(double slope);
  void narrow(std::int64_t below, std::int64_t up_to, std::span<const std::int64_t> ranks,
              std::vector<double>& found);

  std::vector<Point> points_;  // by x, then y
  std::int64_t count_ = 0;
  std::vector<double> slopes_;  // ascending, where listed
  std::vector<Height> heights_;
  std::vector<Height> merged_;
};

}  // namespace shimwright
