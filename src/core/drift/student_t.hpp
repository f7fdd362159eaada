// SPDX-License-Identifier: MPL-2.0
//
// Student's t: by how many standard errors, estimated from few readings, chance alone goes astray
// (W. S. Gosset 1908; checked on NIST TN 1297, table B.1).
#pragma once

namespace shimwright {

// The value that t with so many degrees of freedom (at least 1) exceeds with the probability
// `tail`, above 0 and at most 0.5.
double student_t(double tail, double degrees);

}  // namespace shimwright
