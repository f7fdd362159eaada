// SPDX-License-Identifier: MPL-2.0
#include "book/head/head_words.hpp"

#include <cstdint>
#include <string_view>
#include <vector>

#include "book/description.hpp"
#include "core/values/text.hpp"

namespace shimwright::book {

std::size_t bank_at_left(const EngineLayout& layout) {
  const auto called = [&layout](std::size_t bank, std::string_view name) {
    return lower_case(layout.banks[bank].name) == name;
  };
  return called(0, "right") || called(1, "left") ? 1 : 0;
}

std::string bank_in_words(const EngineLayout& layout, std::size_t index) {
  if (layout.banks.size() == 1) return {};
  const Bank& bank = layout.banks[index];
  if (!bank.name.empty()) return said(Say::head_bank, {bank.name});
  std::vector<std::string> cylinders;
  for (const int cylinder : bank.cylinders) cylinders.push_back(std::to_string(cylinder));
  return said(Say::head_cylinders, {cylinders});
}

std::string seen_in_words(const EngineLayout& layout, bool banks_beside) {
  const Bank& far = layout.banks.front();
  if (layout.banks.size() == 1) {
    const Say side = far.exhaust_above ? Say::exhaust : Say::inlet;
    if (far.cylinders.size() == 1) return said(Say::head_seen, {side});
    return said(Say::head_seen_from_left, {side, std::int64_t{far.cylinders.front()}});
  }
  if (!banks_beside)
    return said(Say::head_seen_banks, {bank_in_words(layout, 0), bank_in_words(layout, 1)});
  const std::size_t left = bank_at_left(layout);
  return said(left == 0 ? Say::head_seen_far_at_left : Say::head_seen_near_at_left,
              {bank_in_words(layout, left), bank_in_words(layout, 1 - left)});
}

}  // namespace shimwright::book
