// SPDX-License-Identifier: MPL-2.0
#include "core/drift/student_t.hpp"

// Boost.Math writes the sentences of its exceptions by a stream, which follows the process's
// locale. What it would refuse never comes to it, so it need not throw. No other source may include
// Boost.Math with other settings.
#define BOOST_MATH_DOMAIN_ERROR_POLICY ignore_error
#define BOOST_MATH_POLE_ERROR_POLICY ignore_error
#define BOOST_MATH_OVERFLOW_ERROR_POLICY ignore_error
#define BOOST_MATH_EVALUATION_ERROR_POLICY ignore_error
#define BOOST_MATH_ROUNDING_ERROR_POLICY ignore_error
#define BOOST_MATH_INDETERMINATE_RESULT_ERROR_POLICY ignore_error
#define BOOST_MATH_PROMOTE_DOUBLE_POLICY false
#include <boost/math/distributions/students_t.hpp>

namespace shimwright {

double student_t(double tail, double degrees) {
  using boost::math::complement;
  return boost::math::quantile(complement(boost::math::students_t(degrees), tail));
}

}  // namespace shimwright
