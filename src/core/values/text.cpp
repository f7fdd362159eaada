// SPDX-License-Identifier: MPL-2.0
#include "core/values/text.hpp"

#include <algorithm>
#include <array>
#include <charconv>

namespace shimwright {
namespace {

using namespace std::string_view_literals;

constexpr std::string_view no_break_space = "\u00a0";

}  // namespace

std::string_view trimmed(std::string_view text) {
  constexpr std::string_view blanks = " \t\r\n";
  for (;;) {
    if (!text.empty() && blanks.find(text.front()) != std::string_view::npos)
      text.remove_prefix(1);
    else if (!text.empty() && blanks.find(text.back()) != std::string_view::npos)
      text.remove_suffix(1);
    else if (text.starts_with(no_break_space))
      text.remove_prefix(no_break_space.size());
    else if (text.ends_with(no_break_space))
      text.remove_suffix(no_break_space.size());
    else
      return text;
  }
}

std::string lower_case(std::string_view text) {
  std::string lower(text);
  std::ranges::transform(lower, lower.begin(), [](char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  });
  return lower;
}

// In UTF-8 the letters from U+00C0 to U+00FF are the byte C3 and one from 80 to BF; the accents
// that may follow a letter, U+0300 to U+036F, are two bytes from CC 80 to CD AF.
std::string plain_letters(std::string_view text) {
  constexpr std::string_view latin =
      "aaaaaaaceeeeiiii"
      "dnooooo\0ouuuuy\0s"
      "aaaaaaaceeeeiiii"
      "dnooooo\0ouuuuy\0y"sv;
  constexpr unsigned char first_latin = 0x80;
  std::string plain;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const auto byte = static_cast<unsigned char>(text[i]);
    const auto next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0U;
    const bool is_accent = (byte == 0xCC && next >= 0x80) || (byte == 0xCD && next <= 0xAF);
    if (byte == 0xC3 && next >= first_latin && next <= 0xBF && latin[next - first_latin] != '\0') {
      plain += latin[next - first_latin];
      if (next == 0x9F) plain += 's';  // sharp s
      ++i;
    } else if (is_accent) {
      ++i;
    } else {
      plain += text[i];
    }
  }
  return lower_case(plain);
}

bool same_word(std::string_view a, std::string_view b) {
  return lower_case(trimmed(a)) == lower_case(trimmed(b));
}

std::string_view taken_off(std::string_view& text, std::string_view mark) {
  const std::size_t end = text.find(mark);
  const std::string_view head = text.substr(0, end);
  text.remove_prefix(end == std::string_view::npos ? text.size() : end + mark.size());
  return head;
}

std::string text_of(double number) {
  // Not through a stream: its decimal mark would follow the program's locale.
  std::array<char, 32> text;
  const double no_minus_zero = number + 0.0;
  const auto written = std::to_chars(text.data(), text.data() + text.size(), no_minus_zero,
                                     std::chars_format::general, 12);
  return std::string(text.data(), written.ptr);
}

std::string shortened(std::string_view text) {
  constexpr std::size_t longest = 60;
  if (text.size() <= longest) return std::string(text);
  std::size_t end = longest;  // not through the middle of a UTF-8 character
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
  return std::string(text.substr(0, end)) + "\u2026";
}

std::string in_quotes(std::string_view text) { return '"' + shortened(text) + '"'; }

std::string listed(std::span<const std::string> names) {
  std::string list;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) list += i + 1 == names.size() ? " and " : ", ";
    list += names[i];
  }
  return list;
}

std::vector<std::string> broken_into_lines(std::string_view text, std::size_t letters) {
  const auto letters_of = [](std::string_view some) {
    return static_cast<std::size_t>(std::ranges::count_if(
        some, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
  };
  std::vector<std::string> lines;
  while (!text.empty()) {
    const std::size_t end = std::min(text.find(' '), text.size());
    const std::string_view word = text.substr(0, end);
    if (!lines.empty() && letters_of(lines.back()) + 1 + letters_of(word) <= letters)
      lines.back() += " " + std::string(word);
    else
      lines.emplace_back(word);
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return lines;
}

}  // namespace shimwright
