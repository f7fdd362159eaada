// SPDX-License-Identifier: MPL-2.0
//
// How long something takes. Processor time where it can be had, so that what else the machine does
// counts little.
#pragma once

#include <time.h>

#include <algorithm>
#include <functional>
#include <stdexcept>
#include <vector>

namespace shimwright::bench {

inline double read_ms(clockid_t clock) {
  timespec time{};
  if (clock_gettime(clock, &time) != 0) throw std::runtime_error("a clock cannot be read");
  return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

inline double median(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

// The middle of several runs in processor time of this thread, in ms: as many as fit half a second,
// at least one and at most 101.
inline double timed(const std::function<void()>& run) {
  std::vector<double> times;
  double spent = 0;
  do {
    const double start = read_ms(CLOCK_THREAD_CPUTIME_ID);
    run();
    times.push_back(read_ms(CLOCK_THREAD_CPUTIME_ID) - start);
    spent += times.back();
  } while (spent < 500 && times.size() < 101);
  return median(times);
}

}  // namespace shimwright::bench
