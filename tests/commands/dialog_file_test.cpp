// SPDX-License-Identifier: MPL-2.0
//
// Each dialog's file and its texts, as they are packed.
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

class EachDialogFile : public testing::TestWithParam<std::string> {};

TEST_P(EachDialogFile, has_its_texts_beside_it_and_none_too_many) {
  std::multiset<std::string> asked;
  for (const std::string& key : all_of(file(GetParam() + ".xdl"), "\"&amp;(\\w+)\""))
    asked.insert(key);
  std::multiset<std::string> given;
  for (const auto& [key, text] : texts(GetParam())) {
    given.insert(key);
    EXPECT_FALSE(text.empty()) << key;
  }
  EXPECT_GT(asked.size(), 10U);
  EXPECT_EQ(asked, given);
}

// Words that stand in the dialog itself could not be translated.
TEST_P(EachDialogFile, holds_no_words_itself) {
  for (const std::string& value :
       all_of(file(GetParam() + ".xdl"), "dlg:(?:value|title|help-text)=\"([^\"]*)\""))
    EXPECT_TRUE(value.starts_with("&amp;") || value == "mm" || value == "inch" || value == "1" ||
                value == "2" || value == "3")
        << value;
}

// The office reads it as Latin-1.
TEST_P(EachDialogFile, texts_are_plain_letters) {
  for (const char letter : file(GetParam() + "_en_US.properties"))
    ASSERT_TRUE(static_cast<unsigned char>(letter) < 128);
}

TEST_P(EachDialogFile, each_letter_leads_to_one_field) {
  std::set<char> letters;
  for (const auto& [key, text] : texts(GetParam())) {
    const std::size_t mark = text.find('~');
    if (mark == std::string::npos) continue;
    const char letter = static_cast<char>(text.at(mark + 1) | 0x20);
    EXPECT_TRUE(letters.insert(letter).second) << letter << " in " << key;
  }
  EXPECT_GT(letters.size(), 4U);
}

TEST_P(EachDialogFile, says_which_of_its_languages_stands_in_for_the_rest) {
  EXPECT_FALSE(file(GetParam() + "_en_US.default").empty());
}

INSTANTIATE_TEST_SUITE_P(Dialogs, EachDialogFile,
                         testing::Values("NewBook", "BringIn", "CloseCheck"));

}  // namespace
}  // namespace shimwright::commands
