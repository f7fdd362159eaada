// SPDX-License-Identifier: MPL-2.0
//
// The list of functions: what a description has to hold, and what is made of it.
#include "cells/describe/functions.hpp"

#include <gtest/gtest.h>

#include <fstream>
#include <regex>
#include <set>
#include <sstream>

#include "cells/describe/write.hpp"

namespace shimwright::cells {
namespace {

std::string content_of(const char* file) {
  std::ostringstream text;
  text << std::ifstream(file).rdbuf();
  return text.str();
}

const FunctionList& the_list() {
  static const FunctionList list = read_functions(content_of(FUNCTION_LIST));
  return list;
}

// Whatever is a length by its name.
const std::set<std::string> lengths{
    "clearance", "shim", "oldShim", "newShim",  "min",     "max",   "aim",    "doubt", "from",
    "to",        "step", "marked",  "measured", "allowed", "sizes", "valves", "shims", "fitted"};

// As a word of its own: the decimal comma is no unit.
bool says_mm(const std::string& text) {
  static const std::regex word("\\bmm\\b");
  return std::regex_search(text, word);
}

TEST(List, holds_every_function_once) {
  std::set<std::string> names;
  std::set<std::string> methods;
  for (const Function& function : the_list().functions) {
    EXPECT_TRUE(names.insert(function.name).second) << function.name;
    EXPECT_TRUE(methods.insert(function.method).second) << function.method;
  }
  EXPECT_TRUE(names.contains("SHIM.VERSION"));
}

// Calc writes ORG.SHIMWRIGHT.CELLS.SHIMPICK for SHIM.PICK: a reader of a file should recognise it.
TEST(List, names_the_method_as_the_sheet_does) {
  for (const Function& function : the_list().functions) {
    if (function.method == "version") continue;
    std::string method;
    for (const char c : function.name)
      if (c != '.') method += static_cast<char>(std::tolower(c));
    std::string lower;
    for (const char c : function.method) lower += static_cast<char>(std::tolower(c));
    EXPECT_EQ(lower, method);
  }
}

TEST(Description, tells_the_unit_of_the_answer) {
  EXPECT_FALSE(says_mm("a comma is the decimal mark"));
  EXPECT_TRUE(says_mm("size (mm), count"));
  for (const Function& function : the_list().functions)
    EXPECT_TRUE(says_mm(function.gives) || function.gives.find("degrees") != std::string::npos ||
                function.gives.starts_with("text"))
        << function.name << " gives " << function.gives;
}

TEST(Description, tells_the_unit_of_every_length) {
  for (const Function& function : the_list().functions)
    for (const Parameter& parameter : function.parameters)
      EXPECT_TRUE(!lengths.contains(parameter.name) || says_mm(parameter.text))
          << function.name << ": " << parameter.name;
}

TEST(Description, tells_the_sign_where_an_answer_may_be_negative) {
  const std::set<std::string> signed_answers{"CLEARANCE.MARGIN", "CLEARANCE.AFTER",
                                             "CLEARANCE.DRIFT", "SHIM.PLAN"};
  for (const Function& function : the_list().functions)
    EXPECT_EQ(function.gives.find("negative") != std::string::npos,
              signed_answers.contains(function.name))
        << function.name;
}

TEST(Description, stands_alone_with_an_example) {
  for (const Function& function : the_list().functions) {
    const std::string text = description_of(function);
    EXPECT_NE(text.find(function.summary), std::string::npos);
    EXPECT_NE(text.find("Example: ="), std::string::npos) << text;
  }
}

TEST(Configuration, names_methods_and_arguments_as_the_interface_does) {
  const std::string xml = configuration_of(the_list());
  for (const Function& function : the_list().functions) {
    EXPECT_NE(xml.find("<node oor:name=\"" + function.method + "\""), std::string::npos);
    for (const Parameter& parameter : function.parameters)
      EXPECT_NE(xml.find("<node oor:name=\"" + parameter.name + "\""), std::string::npos);
  }
}

TEST(Configuration, escapes_what_xml_takes_for_its_own) {
  FunctionList list;
  list.functions.push_back({"a", "A", "Less < more & \"more\".", "mm", {}, {{"=A()", "1"}}});
  const std::string xml = configuration_of(list);
  EXPECT_NE(xml.find("Less &lt; more &amp; &quot;more&quot;."), std::string::npos) << xml;
}

TEST(Help, tells_every_function_with_its_arguments) {
  const std::string page = help_of(the_list());
  for (const Function& function : the_list().functions)
    EXPECT_NE(page.find(usage_of(function)), std::string::npos) << function.name;
}

TEST(Readme, holds_the_table_of_functions_as_it_is) {
  const std::string readme = content_of(README);
  constexpr std::string_view begin = "<!-- functions:begin -->\n";
  const auto from = readme.find(begin);
  const auto to = readme.find("<!-- functions:end -->");
  ASSERT_TRUE(from != std::string::npos && to != std::string::npos && from < to)
      << "README.md holds no table of functions between its markers";
  EXPECT_EQ(readme.substr(from + begin.size(), to - from - begin.size()), table_of(the_list()))
      << "paste what `cmake --build build --target function_table` prints";
}

std::string with_method(const std::string& comment) {
  return "/** " + comment + "*/ any doIt([in] any what, [in] any why);";
}

const std::string sound =
    "DO.IT: Does it.\n@gives mm\n@param what a thing\n@param why [optional] a reason\n"
    "@example =DO.IT(1) -> 2\n";

TEST(Form, is_read_whole) {
  const auto list = read_functions(with_method(sound));
  ASSERT_EQ(list.functions.size(), 1U);
  EXPECT_EQ(usage_of(list.functions[0]), "DO.IT(what; [why])");
  EXPECT_EQ(list.functions[0].parameters[1].text, "a reason");
  EXPECT_EQ(list.functions[0].examples[0].result, "2");
}

class Forgotten : public ::testing::TestWithParam<const char*> {};

TEST_P(Forgotten, lines_are_found) {
  std::string comment = sound;
  comment.erase(comment.find(GetParam()), std::string(GetParam()).size());
  EXPECT_THROW(read_functions(with_method(comment)), std::runtime_error);
}

INSTANTIATE_TEST_SUITE_P(in_a_comment, Forgotten,
                         ::testing::Values("DO.IT: Does it.", "@gives mm\n",
                                           "@param what a thing\n",
                                           "@param why [optional] a reason\n",
                                           "@example =DO.IT(1) -> 2\n"));

TEST(Form, wants_a_comment_for_every_method) {
  EXPECT_THROW(read_functions(with_method(sound) + " any other([in] any what);"),
               std::runtime_error);
}

}  // namespace
}  // namespace shimwright::cells
