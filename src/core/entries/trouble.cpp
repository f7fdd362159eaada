// SPDX-License-Identifier: MPL-2.0
#include "core/entries/trouble.hpp"

#include <array>
#include <cstdint>
#include <string_view>
#include <utility>

#include "core/values/text.hpp"

namespace shimwright {
namespace {

std::string valve_called(const std::string& name, const Teller& teller) {
  const std::string noun = teller.say(Say::valve_named, {std::string()});
  // A name such as `Valve 2` says already what it names.
  if (lower_case(name).starts_with(lower_case(trimmed(noun)))) return shortened(name);
  return teller.say(Say::valve_named, {shortened(name)});
}

std::string rule_called(const std::string& name, const Teller& teller) {
  static constexpr std::array<std::pair<std::string_view, Say>, 5> known{
      {{"touch good", Say::rule_touch_good},
       {"doubt", Say::rule_doubt},
       {"work", Say::rule_work},
       {"first", Say::rule_first},
       {"nearest", Say::rule_nearest}}};
  for (const auto& [word, what] : known)
    if (name == word) return teller.say(what);
  return teller.say(Say::rule_named, {shortened(name)});
}

std::string called(const About& about, const Teller& teller) {
  switch (about.kind) {
    case About::Kind::nothing:
      return {};
    case About::Kind::valve:
      return valve_called(about.name, teller);
    case About::Kind::spare:
      return teller.say(Say::spare_of, {about.size});
    case About::Kind::sale:
      return teller.say(Say::sale_of, {about.size});
    case About::Kind::shim:
      return teller.say(Say::shim_of, {about.size});
    case About::Kind::rule:
      return rule_called(about.name, teller);
  }
  return {};
}

}  // namespace

Trouble trouble_with_table(std::string_view table, Say what, std::vector<Word> words) {
  Trouble trouble;
  trouble.table = table;
  trouble.grave = true;
  trouble.what = what;
  trouble.words = std::move(words);
  return trouble;
}

std::string sentence(const Trouble& trouble, const Teller& teller) {
  const std::string words = teller.say(trouble.what, trouble.words);
  const std::string subject = called(trouble.about, teller);
  if (trouble.left_out)
    return subject.empty() ? teller.say(Say::row_left_out, {words})
                           : teller.say(Say::left_out, {subject, words});
  return subject.empty() ? words : teller.say(Say::told_of, {subject, words});
}

std::string in_words(const Trouble& trouble, const Teller& teller) {
  const std::string words = sentence(trouble, teller);
  const auto row = static_cast<std::int64_t>(trouble.row);
  if (row == 0) return teller.say(Say::told_of, {trouble.table, words});
  if (trouble.column.empty()) return teller.say(Say::told_of_row, {trouble.table, row, words});
  return teller.say(Say::told_of_cell, {trouble.table, row, trouble.column, words});
}

}  // namespace shimwright
