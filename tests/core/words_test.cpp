// SPDX-License-Identifier: MPL-2.0
//
// The catalogue against the sources that use it: no text is missing, listed twice, unused, or short
// of a word for one of its blanks.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <cctype>
#include <cstddef>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <map>
#include <optional>
#include <set>
#include <stdexcept>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/service/words/teller.hpp"

namespace shimwright {
namespace {

constexpr std::array all_languages{Language::english};

std::string read(const std::filesystem::path& path) {
  std::ifstream file(path);
  return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

bool in_a_name(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_'; }

std::string without_comments(const std::string& source) {
  std::string code;
  for (std::size_t i = 0; i < source.size(); ++i) {
    if (source.compare(i, 2, "//") == 0) i = std::min(source.find('\n', i), source.size() - 1);
    code += source[i];
  }
  return code;
}

// The names of enum class Say in its order, without its last.
std::vector<std::string> meanings() {
  const std::string code =
      without_comments(read(std::filesystem::path(SOURCES) / "core/service/words/say.hpp"));
  constexpr std::string_view head = "enum class Say {";
  const std::size_t begin = code.find(head) + head.size();
  std::vector<std::string> names;
  std::string name;
  for (const char c : code.substr(begin, code.find('}', begin) - begin)) {
    if (in_a_name(c)) name += c;
    if (c == ',') names.push_back(std::exchange(name, {}));
  }
  if (name != "count") throw std::runtime_error("count is not the last of Say");
  return names;
}

// Where a source says a text: which, and how many words stand beside it, if they do.
struct Use {
  std::string name;
  std::optional<std::size_t> words;
  std::string file;
};

// Of `, {a, f(b, c)}`: 2. None where no list follows, or one of members of a class (`{&A::b}`).
std::optional<std::size_t> words_listed(std::string_view code) {
  const auto skip_blanks = [&code] {
    while (!code.empty() && std::isspace(static_cast<unsigned char>(code.front())) != 0)
      code.remove_prefix(1);
  };
  skip_blanks();
  if (!code.starts_with(',')) return std::nullopt;
  code.remove_prefix(1);
  skip_blanks();
  if (!code.starts_with('{') || code.starts_with("{&")) return std::nullopt;
  std::size_t words = 1;
  int depth = 0;
  for (const char c : code) {
    if (c == '{' || c == '(' || c == '[') ++depth;
    if (c == '}' || c == ')' || c == ']') --depth;
    if (c == ',' && depth == 1) ++words;
    if (depth == 0) break;
  }
  return words;
}

std::vector<Use> uses() {
  std::vector<Use> found;
  for (const auto& entry : std::filesystem::recursive_directory_iterator(SOURCES)) {
    const std::string extension = entry.path().extension().string();
    if (extension != ".cpp" && extension != ".hpp") continue;
    const std::string name = entry.path().filename().string();
    if (name == "say.hpp" || name == "english.cpp") continue;  // the catalogue itself
    const std::string code = without_comments(read(entry.path()));
    // A description of a sheet lists other things beside a meaning.
    const bool lists_words = entry.path().string().find("/src/book/") == std::string::npos;
    constexpr std::string_view mark = "Say::";
    for (std::size_t at = code.find(mark); at != std::string::npos; at = code.find(mark, at)) {
      at += mark.size();
      std::size_t end = at;
      while (end < code.size() && in_a_name(code[end])) ++end;
      found.push_back(
          {code.substr(at, end - at),
           lists_words ? words_listed(std::string_view(code).substr(end)) : std::nullopt, name});
    }
  }
  return found;
}

// How many words a text asks for; none where a blank is not closed or has no number.
std::optional<std::size_t> words_asked_for(std::string_view text) {
  std::size_t most = 0;
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (text[i] == '}') return std::nullopt;
    if (text[i] != '{') continue;
    const std::size_t end = text.find('}', i);
    if (end == std::string_view::npos) return std::nullopt;
    const std::string_view blank = text.substr(i + 1, end - i - 1);
    if (blank.empty() || blank.front() < '0' || blank.front() > '9') return std::nullopt;
    if (blank.size() > 1 && (blank[1] != '?' || std::ranges::count(blank, '|') != 1))
      return std::nullopt;
    most = std::max(most, static_cast<std::size_t>(blank.front() - '0') + 1);
    i = end;
  }
  return most;
}

TEST(Words, every_meaning_has_a_text_in_every_language) {
  const std::vector<std::string> names = meanings();
  ASSERT_EQ(names.size(), static_cast<std::size_t>(Say::count));
  for (const Language language : all_languages)
    for (const Terms terms : {Terms::functions, Terms::book})
      for (std::size_t i = 0; i < names.size(); ++i)
        EXPECT_NE(text_of(static_cast<Say>(i), language, terms), "") << names[i];
}

TEST(Words, no_text_is_listed_twice) {
  std::set<Say> listed;
  for (const Text& text : english_texts())
    EXPECT_TRUE(listed.insert(text.what).second)
        << meanings().at(static_cast<std::size_t>(text.what));
}

TEST(Words, every_text_is_used) {
  std::set<std::string> used;
  for (const Use& use : uses()) used.insert(use.name);
  for (const std::string& name : meanings()) EXPECT_TRUE(used.contains(name)) << name;
}

TEST(Words, the_texts_of_functions_and_book_have_the_same_blanks_and_each_is_whole) {
  const std::vector<std::string> names = meanings();
  for (const Language language : all_languages)
    for (std::size_t i = 0; i < names.size(); ++i) {
      const auto asked_for = [&](Terms terms) {
        return words_asked_for(text_of(static_cast<Say>(i), language, terms));
      };
      EXPECT_TRUE(asked_for(Terms::functions).has_value()) << names[i];
      EXPECT_EQ(asked_for(Terms::functions), asked_for(Terms::book)) << names[i];
    }
}

// As far as the words stand beside the meaning; those handed on in a variable are not seen here.
TEST(Words, every_blank_gets_a_word_and_no_word_is_lost) {
  const std::vector<std::string> names = meanings();
  std::map<std::string, std::size_t> asked_for;
  for (std::size_t i = 0; i < names.size(); ++i)
    asked_for[names[i]] =
        words_asked_for(text_of(static_cast<Say>(i), Language::english, Terms::functions))
            .value_or(0);
  std::size_t compared = 0;
  for (const Use& use : uses()) {
    if (!use.words) continue;
    ++compared;
    EXPECT_EQ(*use.words, asked_for.at(use.name)) << use.name << " in " << use.file;
  }
  EXPECT_GT(compared, 30U);
}

TEST(Words, what_is_missing_or_unused_would_be_found) {
  EXPECT_EQ(words_asked_for("{0}, {1?a|b}"), 2U);
  EXPECT_EQ(words_asked_for("no blank"), 0U);
  EXPECT_EQ(words_asked_for("{0"), std::nullopt);
  EXPECT_EQ(words_asked_for("0}"), std::nullopt);
  EXPECT_EQ(words_asked_for("{}"), std::nullopt);
  EXPECT_EQ(words_asked_for("{0?one}"), std::nullopt);
  EXPECT_EQ(words_listed(", {a, f(b, c)});"), 2U);
  EXPECT_EQ(words_listed(",\n  {a});"), 1U);
  EXPECT_EQ(words_listed(");"), std::nullopt);
  EXPECT_EQ(words_listed(" : other, {a}"), std::nullopt);
  EXPECT_EQ(words_listed(", {&A::b, &A::c})"), std::nullopt);
}

}  // namespace
}  // namespace shimwright
