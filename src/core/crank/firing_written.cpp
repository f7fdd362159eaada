// SPDX-License-Identifier: MPL-2.0
#include "core/crank/firing_written.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/values/bad_input.hpp"
#include "core/values/length.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

constexpr std::string_view spaces = " \t";

// Signs that mean `at`, and those that mean nothing here, each as one that does.
std::string with_plain_signs(std::string_view text) {
  static constexpr std::array<std::pair<std::string_view, std::string_view>, 8> signs = {
      {{"at", ":"},
       {"=", ":"},
       {"@", ":"},
       {"\u00b0", " "},  // degree sign
       {"\u00ba", " "},  // the ordinal sign that keyboards offer beside it
       {"\u00a0", " "},  // no-break space
       {"deg", " "},
       {";", " "}}};
  std::string plain;
  while (!text.empty()) {
    std::string_view replaced = text.substr(0, 1);
    std::string_view by = replaced;
    for (const auto& [sign, meaning] : signs)
      if (text.starts_with(sign)) {
        replaced = sign;
        by = meaning;
      }
    plain += by;
    text.remove_prefix(replaced.size());
  }
  return plain;
}

class Reader {
 public:
  Reader(std::string_view text, std::string_view as_typed) : rest_(text), as_typed_(as_typed) {}

  std::vector<FiringRow> rows() {
    std::vector<FiringRow> rows;
    for (skip(", \t"); !rest_.empty(); skip(", \t")) {
      const double cylinder = number();
      skip(spaces);
      if (!rest_.starts_with(':')) refuse();
      rest_.remove_prefix(1);
      skip(spaces);
      rows.push_back({cylinder, number()});
    }
    return rows;
  }

 private:
  void skip(std::string_view signs) {
    rest_.remove_prefix(std::min(rest_.find_first_not_of(signs), rest_.size()));
  }

  double number() {
    // A comma that no figure follows ends the number: it parts the cylinders.
    std::size_t end = std::min(rest_.find_first_not_of("+-0123456789.,"), rest_.size());
    while (end > 0 && rest_[end - 1] == ',') --end;
    const std::optional<double> value = number_written(rest_.substr(0, end));
    if (!value) refuse();
    rest_.remove_prefix(end);
    return *value;
  }

  [[noreturn]] void refuse() const {
    throw BadInput("the firing angles " + in_quotes(trimmed(as_typed_)) +
                   " are not cylinders and their degrees, such as 1 at 0, 2 at 270");
  }

  std::string_view rest_;
  std::string_view as_typed_;
};

}  // namespace

Firing firing_written(std::string_view text, std::optional<int> cylinders) {
  const std::string plain = with_plain_signs(lower_case(text));
  if (plain.find(':') == std::string::npos) return Firing::in_order(text, cylinders);
  const std::vector<FiringRow> rows = Reader(plain, text).rows();
  return Firing::at_angles(rows, cylinders);
}

}  // namespace shimwright
