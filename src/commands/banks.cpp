// SPDX-License-Identifier: MPL-2.0
#include "commands/banks.hpp"

#include <algorithm>
#include <charconv>
#include <string>

#include "core/crank/cylinders.hpp"
#include "core/engine/presets.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/text.hpp"

namespace shimwright::commands {
namespace {

constexpr std::size_t longest_name = 12;  // finds room beside the bank

std::vector<std::string_view> parted(std::string_view text) {
  std::vector<std::string_view> parts;
  for (;;) {
    const std::size_t end = text.find('/');
    parts.push_back(trimmed(text.substr(0, end)));
    if (end == std::string_view::npos) return parts;
    text.remove_prefix(end + 1);
  }
}

Bank bank_in(std::string_view text) {
  Bank bank;
  const std::size_t first = std::min(text.find_first_of(all_figures), text.size());
  bank.name = trimmed(text.substr(0, first));
  if (bank.name.size() > longest_name)
    throw BadInput("a bank's name is a short word, such as left: " +
                   shimwright::in_quotes(bank.name) + " is too long");
  // It stands in the book's formulas, where a quotation mark would end the text.
  if (bank.name.find('"') != std::string::npos)
    throw BadInput(
        "a bank's name is a plain word, such as left: leave the quotation mark (\") out");
  const char* at = text.data() + first;
  const char* const end = text.data() + text.size();
  while (at != end) {
    int cylinder = 0;
    const auto [after, error] = std::from_chars(at, end, cylinder);
    if (error != std::errc{})
      throw BadInput("a bank is its cylinders' numbers with hyphens between, such as 1-3: " +
                     shimwright::in_quotes(text) + " is none");
    bank.cylinders.push_back(cylinder);
    at = std::find_if_not(after, end, [](char c) { return c == '-' || c == ',' || c == ' '; });
  }
  if (bank.cylinders.empty())
    throw BadInput("the bank " + shimwright::in_quotes(text) + " has no cylinders in it");
  return bank;
}

std::string count_of_banks(Arrangement arrangement) {
  if (arrangement == Arrangement::in_line)
    return "an engine in line has one bank of cylinders, without a stroke (/)";
  return "a " + word_for(arrangement) +
         " engine has two banks, with a stroke between: right 2-4 / left 1-3";
}

void check_each_once(const std::vector<Bank>& banks, int cylinders) {
  std::vector<int> named;
  for (const Bank& bank : banks)
    named.insert(named.end(), bank.cylinders.begin(), bank.cylinders.end());
  check_each_named_once("the banks", Grammar::plural, named, cylinders);
}

}  // namespace

std::vector<Bank> banks_in(std::string_view text, Arrangement arrangement, int cylinders) {
  const bool in_line = arrangement == Arrangement::in_line;
  if (!in_line && cylinders % 2 != 0)
    throw BadInput("a " + word_for(arrangement) +
                   " engine has as many cylinders in one bank as in the other: " +
                   std::to_string(cylinders) + " do not come out even");
  if (trimmed(text).empty()) return usual_banks(arrangement, cylinders);
  const auto parts = parted(text);
  if (parts.size() != (in_line ? 1U : 2U)) throw BadInput(count_of_banks(arrangement));
  std::vector<Bank> banks;
  for (const std::string_view part : parts) banks.push_back(bank_in(part));
  check_each_once(banks, cylinders);
  if (!in_line && banks[0].cylinders.size() != banks[1].cylinders.size())
    throw BadInput("one bank has " + std::to_string(banks[0].cylinders.size()) +
                   " cylinders and the other " + std::to_string(banks[1].cylinders.size()) +
                   ": a " + word_for(arrangement) + " engine has as many in each");
  if (!in_line) banks[1].exhaust_above = false;
  return banks;
}

}  // namespace shimwright::commands
