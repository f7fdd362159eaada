// SPDX-License-Identifier: MPL-2.0
//
// The list of functions against the real office: every example gives what it says, and the
// function wizard shows every description.
#include <gtest/gtest.h>

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XIndexAccess.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/FunctionArgument.hpp>
#include <fstream>
#include <map>
#include <sstream>

#include "cells/describe/functions.hpp"
#include "core/values/length.hpp"
#include "core/values/text.hpp"
#include "sheet.hpp"

namespace shimwright::tests {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;

const cells::FunctionList& the_list() {
  static const cells::FunctionList list = [] {
    std::ostringstream idl;
    idl << std::ifstream(FUNCTION_LIST).rdbuf();
    return cells::read_functions(idl.str());
  }();
  return list;
}

std::vector<std::string> split(const std::string& text, char mark) {
  std::vector<std::string> parts;
  std::istringstream rest(text + mark);
  for (std::string part; std::getline(rest, part, mark);) parts.emplace_back(trimmed(part));
  return parts;
}

// A1, 2, 3 -> D3: so many columns and rows further.
std::string further(const std::string& place, std::size_t columns, std::size_t rows) {
  return static_cast<char>(place[0] + static_cast<int>(columns)) +
         std::to_string(std::stoul(place.substr(1)) + rows);
}

void put_example_sheet(Sheet& sheet) {
  for (const auto& [first, cells] : the_list().sheet)
    for (std::size_t column = 0; column < cells.size(); ++column)
      sheet.put(further(first, column, 0), cells[column]);
}

void expect_example(const cells::Example& example) {
  Sheet sheet;
  put_example_sheet(sheet);
  const auto rows = split(example.result, '|');
  const std::size_t columns = split(rows.front(), ';').size();
  sheet.put_matrix("P1:" + further("P1", columns - 1, rows.size() - 1), example.formula);
  for (std::size_t row = 0; row < rows.size(); ++row) {
    const auto wanted = split(rows[row], ';');
    ASSERT_EQ(wanted.size(), columns) << example.formula;
    for (std::size_t column = 0; column < columns; ++column) {
      const std::string place = further("P1", column, row);
      if (const auto figure = number_written(wanted[column]);
          figure && wanted[column].back() != '.')
        EXPECT_EQ(sheet.number(place), *figure) << example.formula;
      else
        EXPECT_EQ(sheet.text(place), wanted[column]) << example.formula;
    }
  }
}

TEST(Examples, give_what_they_say) {
  for (const cells::Function& function : the_list().functions)
    for (const cells::Example& example : function.examples) expect_example(example);
}

std::map<std::string, Any> properties(const Any& description) {
  Sequence<css::beans::PropertyValue> values;
  EXPECT_TRUE(description >>= values);
  std::map<std::string, Any> found;
  for (const auto& value : values) found[office::from_office(value.Name)] = value.Value;
  return found;
}

std::string text_in(const Any& value) {
  rtl::OUString text;
  value >>= text;
  return office::from_office(text);
}

TEST(Wizard, shows_every_function_with_its_arguments) {
  const Reference<css::container::XNameAccess> wizard(
      the_office().service("com.sun.star.sheet.FunctionDescriptions"), css::uno::UNO_QUERY_THROW);
  for (const cells::Function& function : the_list().functions) {
    ASSERT_TRUE(wizard->hasByName(office::to_office(function.name))) << function.name;
    auto shown = properties(wizard->getByName(office::to_office(function.name)));
    EXPECT_EQ(text_in(shown["Description"]), cells::description_of(function));
    Sequence<css::sheet::FunctionArgument> arguments;
    EXPECT_EQ(shown["Arguments"] >>= arguments, !function.parameters.empty());
    ASSERT_EQ(arguments.getLength(), static_cast<sal_Int32>(function.parameters.size()))
        << function.name;
    for (sal_Int32 i = 0; i < arguments.getLength(); ++i) {
      const auto& wanted = function.parameters[static_cast<std::size_t>(i)];
      EXPECT_EQ(office::from_office(arguments[i].Name), wanted.display) << function.name;
      EXPECT_NE(office::from_office(arguments[i].Description).find(wanted.text), std::string::npos)
          << function.name << ": " << wanted.name;
    }
  }
}

}  // namespace
}  // namespace shimwright::tests
