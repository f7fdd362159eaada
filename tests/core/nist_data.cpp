// SPDX-License-Identifier: MPL-2.0
#include "nist_data.hpp"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <fstream>
#include <optional>
#include <sstream>
#include <stdexcept>

namespace shimwright {
namespace {

std::vector<std::string> words_in(const std::string& line) {
  std::istringstream rest(line);
  std::vector<std::string> words;
  for (std::string word; rest >> word;) words.push_back(word);
  return words;
}

std::optional<std::vector<double>> numbers_in(const std::vector<std::string>& words) {
  std::vector<double> numbers;
  for (const std::string& word : words) {
    const char* end = word.data() + word.size();
    const auto read = std::from_chars(word.data(), end, numbers.emplace_back());
    if (read.ec != std::errc() || read.ptr != end) return std::nullopt;
  }
  return numbers;
}

}  // namespace

NistData nist_data(const std::string& name) {
  std::ifstream file(std::string(NIST_DATA) + "/" + name + ".dat");
  NistData data;
  for (std::string line; std::getline(file, line);) {
    auto words = words_in(line);
    if (words.empty()) continue;
    const std::string first = words.front();
    if (first == "Data:") data.rows.clear();
    if (const auto row = numbers_in(words)) data.rows.push_back(*row);
    words.erase(words.begin());
    if (first == "Standard" && !words.empty()) words.erase(words.begin());
    const auto numbers = numbers_in(words);
    if (!numbers || numbers->empty()) continue;
    if (first.size() == 2 && first[0] == 'B' && numbers->size() == 2)
      data.certified.push_back({(*numbers)[0], (*numbers)[1]});
    if (first == "Standard") data.residual_sd = numbers->front();
    if (first == "R-Squared") data.r2 = numbers->front();
  }
  if (data.certified.empty() || data.rows.empty() || data.residual_sd == 0 || data.r2 == 0)
    throw std::runtime_error("no data of " + name);
  return data;
}

double digits_right(double value, double certified) {
  const double error = std::abs(value - certified) / std::abs(certified);
  return error == 0 ? 15 : std::min(15.0, -std::log10(error));
}

}  // namespace shimwright
