// SPDX-License-Identifier: MPL-2.0
//
// NIST's Statistical Reference Datasets for linear regression, as in the files under data/.
#pragma once

#include <string>
#include <vector>

namespace shimwright {

struct NistData {
  struct Parameter {
    double estimate = 0;
    double standard_deviation = 0;
  };

  std::vector<Parameter> certified;  // B0, B1 and so on, as far as the model has them
  double residual_sd = 0;
  double r2 = 0;
  std::vector<std::vector<double>> rows;  // y, then x
};

// `Norris`, and so on. Throws std::runtime_error where the file is missing or says nothing.
NistData nist_data(const std::string& name);

// How many digits of the certified value are right (B. D. McCullough, The American Statistician 52,
// 1998: the log relative error); 15 where all are.
double digits_right(double value, double certified);

}  // namespace shimwright
