// SPDX-License-Identifier: MPL-2.0
#include "core/service/words/teller.hpp"

#include <array>
#include <charconv>
#include <cmath>
#include <cstddef>
#include <stdexcept>
#include <utility>

#include "core/values/text.hpp"

namespace shimwright {
namespace {

constexpr std::size_t say_count = static_cast<std::size_t>(Say::count);

using Texts = std::array<std::string_view, say_count>;

Texts in_order(std::span<const Text> listed) {
  Texts texts;
  for (const Text& text : listed) texts[static_cast<std::size_t>(text.what)] = text.words;
  return texts;
}

const Texts& texts_in(Language language) {
  switch (language) {
    case Language::english:
      break;
  }
  static const Texts english = in_order(english_texts());
  return english;
}

double units_in(Length length, Unit unit) {
  return unit == Unit::inch ? length.mm() / 25.4 : length.mm();
}

constexpr int column_decimals(Unit unit) { return unit == Unit::inch ? 4 : 3; }

bool is_one(const Word& word) {
  if (const auto* count = std::get_if<std::int64_t>(&word)) return *count == 1;
  if (const auto* names = std::get_if<std::vector<std::string>>(&word)) return names->size() == 1;
  if (const auto* names = std::get_if<Names>(&word)) return names->size() == 1;
  return false;
}

}  // namespace

Language language_named(std::string_view) { return Language::english; }

std::string_view text_of(Say what, Language language, Terms terms) {
  constexpr std::string_view parting = "||";
  const std::string_view text = texts_in(language).at(static_cast<std::size_t>(what));
  const std::size_t end = text.find(parting);
  if (end == std::string_view::npos) return text;
  return terms == Terms::functions ? text.substr(0, end) : text.substr(end + parting.size());
}

std::string Teller::say(Say what, std::span<const Word> words) const {
  const std::string_view text = text_of(what, language_, terms_);
  std::string told;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] != '{') {
      told += text[i];
      continue;
    }
    const std::size_t end = text.find('}', i);
    const std::string_view blank = text.substr(i + 1, end - i - 1);
    std::size_t index = 0;
    const auto digits = std::from_chars(blank.data(), blank.data() + blank.size(), index);
    if (digits.ec != std::errc() || index >= words.size())
      throw std::logic_error("no word for a blank in: " + std::string(text));
    const std::string_view choice =
        blank.substr(static_cast<std::size_t>(digits.ptr - blank.data()));
    if (choice.starts_with('?')) {
      const std::size_t bar = choice.find('|');
      told += is_one(words[index]) ? choice.substr(1, bar - 1) : choice.substr(bar + 1);
    } else {
      told += filled(words[index]);
    }
    i = end;
  }
  return told;
}

std::string Teller::filled(const Word& word) const {
  struct Filler {
    const Teller& teller;
    std::string operator()(Length length) const { return teller.with_unit(length); }
    std::string operator()(Money money) const { return teller.sum(money); }
    std::string operator()(std::int64_t count) const { return std::to_string(count); }
    std::string operator()(double value) const { return teller.number(value); }
    std::string operator()(const std::string& text) const { return text; }
    std::string operator()(Say what) const { return teller.say(what); }
    std::string operator()(const std::vector<std::string>& names) const {
      return teller.listed(names);
    }
    std::string operator()(TypedLength typed) const {
      const double value = teller.unit_ == Unit::inch ? typed.mm / 25.4 : typed.mm;
      return teller.number(value) + " " + std::string(teller.unit_word());
    }
    std::string operator()(LengthToType to_type) const {
      const std::string told = teller.with_unit(to_type.length);
      return told.substr(0, told.rfind(' '));
    }
    std::string operator()(const Names& names) const {
      std::vector<std::string> told;
      for (const auto& name : names) {
        const auto* what = std::get_if<Say>(&name);
        told.push_back(what ? teller.say(*what) : std::get<std::string>(name));
      }
      return teller.listed(told);
    }
  };
  return std::visit(Filler{*this}, word);
}

std::string Teller::listed(std::span<const std::string> names) const {
  std::string list;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0 && i + 1 == names.size()) return say(Say::and_last, {list, names[i]});
    list += (i > 0 ? ", " : "") + names[i];
  }
  return list;
}

std::string Teller::fixed(Length length, int decimals) const {
  std::array<char, 48> digits;
  // Half a unit of the last place of a whole number of nanometres is never a matter of binary
  // fractions in mm: round there in whole numbers.
  double value = units_in(length, unit_);
  if (unit_ == Unit::mm && decimals < 6) {
    std::int64_t step = 1;
    for (int i = decimals; i < 6; ++i) step *= 10;
    const std::int64_t nm = length.nanometres();
    const std::int64_t rounded = (nm < 0 ? nm - step / 2 : nm + step / 2) / step;
    value = static_cast<double>(rounded * step) / 1e6;
  }
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), value + 0.0,
                                 std::chars_format::fixed, decimals);
  std::string text(digits.data(), end.ptr);
  if (text.find_first_not_of("-0.") == std::string::npos && text.starts_with('-')) text.erase(0, 1);
  if (const auto point = text.find('.'); point != std::string::npos)
    text.replace(point, 1, decimal_mark_);
  return text;
}

std::string Teller::column(Length length) const { return fixed(length, column_decimals(unit_)); }

std::string Teller::with_unit(Length length) const {
  int decimals = column_decimals(unit_);
  if (unit_ == Unit::mm) {
    // To the nanometre where it is as fine as that.
    decimals = 2;
    for (std::int64_t step = 10'000; decimals < 6 && length.nanometres() % step != 0; step /= 10)
      ++decimals;
  }
  return fixed(length, decimals) + " " + std::string(unit_word());
}

std::string Teller::span(Length from, Length to) const {
  int decimals = column_decimals(unit_);
  const auto ends_in_nought = [&](Length length) { return fixed(length, decimals).ends_with('0'); };
  if (unit_ == Unit::mm && ends_in_nought(from) && ends_in_nought(to)) --decimals;
  return fixed(from, decimals) + "\u2013" + fixed(to, decimals);
}

std::string Teller::short_of(Length length) const {
  return fixed(length, unit_ == Unit::inch ? 4 : 2);
}

std::string Teller::sum(Money money) const {
  std::array<char, 48> digits;
  const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), money.amount(),
                                 std::chars_format::fixed, 2);
  std::string text(digits.data(), end.ptr);
  text.replace(text.find('.'), 1, decimal_mark_);
  return text;
}

std::string Teller::number(double value) const {
  std::string text = text_of(value);
  if (const auto point = text.find('.'); point != std::string::npos)
    text.replace(point, 1, decimal_mark_);
  return text;
}

std::string_view Teller::unit_word() const { return unit_ == Unit::inch ? "in" : "mm"; }

}  // namespace shimwright
