// SPDX-License-Identifier: MPL-2.0
#include "book/head/head_words.hpp"

#include <string_view>

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
  if (!bank.name.empty()) return bank.name + " bank";
  std::string words = bank.cylinders.size() == 1 ? "cylinder" : "cylinders";
  for (std::size_t i = 0; i < bank.cylinders.size(); ++i)
    words += (i == 0 ? " " : ", ") + std::to_string(bank.cylinders[i]);
  return words;
}

std::string seen_in_words(const EngineLayout& layout, bool banks_beside) {
  const Bank& far = layout.banks.front();
  std::string words = "Seen from above, ";
  if (layout.banks.size() == 1) {
    words += word_for(far.exhaust_above ? Side::exhaust : Side::inlet) + " side away from you";
    if (far.cylinders.size() > 1)
      words += ", cylinder " + std::to_string(far.cylinders.front()) + " at your left";
    return words + ".";
  }
  if (!banks_beside)
    return words + bank_in_words(layout, 0) + " away from you, " + bank_in_words(layout, 1) +
           " near you.";
  const std::size_t left = bank_at_left(layout);
  const auto told = [&layout](std::size_t bank) {
    return bank_in_words(layout, bank) + (bank == 0 ? ", away from you" : ", near you");
  };
  return words + "drawn at the left the " + told(left) + "; at the right the " + told(1 - left) +
         ".";
}

}  // namespace shimwright::book
