// SPDX-License-Identifier: MPL-2.0
#include "core/service/entered.hpp"

#include "core/entries/entry_row.hpp"
#include "core/service/service.hpp"
#include "core/values/bad_input.hpp"

namespace shimwright {
namespace {

constexpr double mm_each(Unit unit) { return unit == Unit::inch ? 25.4 : 1; }

}  // namespace

bool has_failed(const Entry& entry) {
  const auto* text = std::get_if<std::string>(&entry);
  return text && *text == failed_entry;
}

bool not_given(const Entry& entry) { return is_blank(entry) || has_failed(entry); }

std::optional<Length> length_entered(const Entry& entry, Unit unit) try {
  if (not_given(entry)) return std::nullopt;
  if (const auto* number = std::get_if<double>(&entry)) return Length::of(*number, unit);
  return length_written(word_in(entry), unit);
} catch (const BadInput&) {
  return std::nullopt;
}

Entry in_mm(const Entry& entry, Unit unit) {
  if (not_given(entry)) return {};
  if (const auto length = length_entered(entry, unit)) return length->mm();
  if (const auto* number = std::get_if<double>(&entry)) return *number * mm_each(unit);
  return entry;
}

bool is_length_as_text(const Entry& entry, Unit unit) {
  return std::holds_alternative<std::string>(entry) && length_entered(entry, unit);
}

double in_unit(Length length, Unit unit) { return length.mm() / mm_each(unit); }

std::optional<double> number_entered(const Entry& entry) {
  const auto* number = std::get_if<double>(&entry);
  return number ? std::optional(*number) : std::nullopt;
}

}  // namespace shimwright
