// SPDX-License-Identifier: MPL-2.0
//
// The dialogs' files and their texts, as they are packed.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <fstream>
#include <iterator>
#include <map>
#include <regex>
#include <set>
#include <string>
#include <vector>

#include "commands/entries.hpp"

namespace shimwright::commands {
namespace {

std::string file(const std::string& name) {
  std::ifstream in(DIALOGS "/" + name);
  return std::string(std::istreambuf_iterator<char>(in), {});
}

// What stands in the first group of every match.
std::vector<std::string> all_of(const std::string& text, const std::string& pattern) {
  const std::regex wanted(pattern);
  std::vector<std::string> found;
  for (std::sregex_iterator i(text.begin(), text.end(), wanted), end; i != end; ++i)
    found.push_back((*i)[1]);
  return found;
}

constexpr const char* dialogs[] = {"NewBook", "BringIn"};

std::map<std::string, std::string> texts(const std::string& dialog) {
  std::map<std::string, std::string> read;
  std::ifstream in(DIALOGS "/" + dialog + "_en_US.properties");
  for (std::string line; std::getline(in, line);) {
    const std::size_t mark = line.find('=');
    if (line.empty() || line.front() == '#' || mark == std::string::npos) continue;
    read[line.substr(0, mark)] = line.substr(mark + 1);
  }
  return read;
}

TEST(DialogFile, has_a_control_for_every_entry) {
  const auto controls =
      all_of(file("NewBook.xdl"), "<dlg:(?:textfield|menulist) dlg:id=\"(\\w+)\"");
  std::vector<std::string> entries;
  for (std::size_t i = 0; i < field_count; ++i) entries.emplace_back(key_of(static_cast<Field>(i)));
  EXPECT_THAT(controls, testing::UnorderedElementsAreArray(entries));
}

TEST(DialogFile, has_its_texts_beside_it_and_none_too_many) {
  for (const std::string dialog : dialogs) {
    std::multiset<std::string> asked;
    for (const std::string& key : all_of(file(dialog + ".xdl"), "\"&amp;(\\w+)\""))
      asked.insert(key);
    std::multiset<std::string> given;
    for (const auto& [key, text] : texts(dialog)) {
      given.insert(key);
      EXPECT_FALSE(text.empty()) << key;
    }
    EXPECT_GT(asked.size(), dialog == "NewBook" ? 60U : 25U);
    EXPECT_EQ(asked, given);
  }
}

// Words that stand in the dialog itself could not be translated.
TEST(DialogFile, holds_no_words_itself) {
  for (const std::string dialog : dialogs)
    for (const std::string& value :
         all_of(file(dialog + ".xdl"), "dlg:(?:value|title|help-text)=\"([^\"]*)\""))
      EXPECT_TRUE(value.starts_with("&amp;") || value == "mm" || value == "inch" || value == "1" ||
                  value == "2" || value == "3")
          << value;
}

// The office reads it as Latin-1.
TEST(DialogFile, texts_are_plain_letters) {
  for (const std::string dialog : dialogs)
    for (const char letter : file(dialog + "_en_US.properties"))
      ASSERT_TRUE(static_cast<unsigned char>(letter) < 128);
}

TEST(DialogFile, each_letter_leads_to_one_field) {
  for (const std::string dialog : dialogs) {
    std::set<char> letters;
    for (const auto& [key, text] : texts(dialog)) {
      const std::size_t mark = text.find('~');
      if (mark == std::string::npos) continue;
      const char letter = static_cast<char>(text.at(mark + 1) | 0x20);
      EXPECT_TRUE(letters.insert(letter).second) << letter << " in " << key;
    }
    EXPECT_GT(letters.size(), 10U);
  }
}

TEST(DialogFile, says_which_of_its_languages_stands_in_for_the_rest) {
  for (const std::string dialog : dialogs) EXPECT_FALSE(file(dialog + "_en_US.default").empty());
}

}  // namespace
}  // namespace shimwright::commands
