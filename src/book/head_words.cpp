// SPDX-License-Identifier: MPL-2.0
#include "book/head_words.hpp"

namespace shimwright::book {

std::string bank_in_words(const Layout& layout, std::size_t index) {
  if (layout.banks.size() == 1) return {};
  const Bank& bank = layout.banks[index];
  if (!bank.name.empty()) return bank.name + " bank";
  std::string words = bank.cylinders.size() == 1 ? "cylinder" : "cylinders";
  for (std::size_t i = 0; i < bank.cylinders.size(); ++i)
    words += (i == 0 ? " " : ", ") + std::to_string(bank.cylinders[i]);
  return words;
}

std::string seen_in_words(const Layout& layout, bool banks_beside) {
  const Bank& far = layout.banks.front();
  std::string words = "Seen from above, ";
  if (layout.banks.size() == 1) {
    words += word_for(far.exhaust_above ? Side::exhaust : Side::inlet) + " side away from you";
    if (far.cylinders.size() > 1)
      words += ", cylinder " + std::to_string(far.cylinders.front()) + " at your left";
    return words + ".";
  }
  words += bank_in_words(layout, 0) + " away from you, " + bank_in_words(layout, 1) + " near you";
  if (banks_beside) words += "; shown side by side";
  return words + ".";
}

}  // namespace shimwright::book
