// SPDX-License-Identifier: MPL-2.0
#include "core/log/log_row.hpp"

#include "core/service/entered.hpp"

namespace shimwright {
namespace {

Entry number_in(std::int64_t number) {
  return number == 0 ? Entry() : Entry(static_cast<double>(number));
}
Entry number_in(const std::optional<double>& number) { return number ? Entry(*number) : Entry(); }
Entry length_in(const std::optional<Length>& length, Unit unit) {
  return length ? Entry(in_unit(*length, unit)) : Entry();
}
Entry text_in(const std::string& text) { return text.empty() ? Entry() : Entry(text); }

}  // namespace

std::vector<Entry> cells_of(const LogRow& row, Unit unit) {
  return {number_in(row.check),
          number_in(row.round),
          number_in(row.date),
          number_in(row.distance),
          text_in(row.valve),
          length_in(row.gap_found, unit),
          text_in(row.state),
          length_in(row.shim_found, unit),
          length_in(row.shim_fitted, unit),
          length_in(row.gap_left, unit),
          length_in(row.predicted, unit),
          number_in(row.temperature),
          text_in(row.who),
          text_in(row.note)};
}

}  // namespace shimwright
