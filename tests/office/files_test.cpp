// SPDX-License-Identifier: MPL-2.0
//
// What Calc writes into users' files, which is for ever.
#include <gtest/gtest.h>

#include <fstream>
#include <sstream>

#include "sheet.hpp"

namespace shimwright::tests {
namespace {

void fill(Sheet& sheet) {
  sheet.put("A1", 0.1);
  sheet.put("B1", "=CLEARANCE.STATE(A1;0.16;0.2)");
  sheet.put("B2", "=SHIM.IDEAL(A1;2.85;0.2)");
  sheet.put_matrix("C1:C3", "=SHIM.LADDER(2.7;2.8;0.05)");
}

void expect_filled(const Sheet& sheet) {
  EXPECT_EQ(sheet.text("B1"), "tight");
  EXPECT_EQ(sheet.number("B2"), 2.75);
  EXPECT_EQ(sheet.number("C3"), 2.8);
  EXPECT_EQ(sheet.error("B1") + sheet.error("B2") + sheet.error("C3"), 0);
}

class File : public ::testing::TestWithParam<std::pair<const char*, const char*>> {};

TEST_P(File, keeps_formulas_and_answers) {
  const auto [ending, filter] = GetParam();
  const auto file = the_office().profile().folder() / (std::string("kept.") + ending);
  {
    Sheet sheet;
    fill(sheet);
    expect_filled(sheet);
    sheet.save(file, filter);
  }
  Sheet again(file);
  expect_filled(again);
  again.recalculate();
  expect_filled(again);
  again.put("A1", 0.18);
  EXPECT_EQ(again.text("B1"), "good");
}

INSTANTIATE_TEST_SUITE_P(of_either_kind, File,
                         ::testing::Values(std::pair("ods", "calc8"),
                                           std::pair("xlsx", "Calc MS Excel 2007 XML")));

TEST(OpenDocument, names_the_functions_by_service_and_method) {
  const auto file = the_office().profile().folder() / "named.fods";
  {
    Sheet sheet;
    fill(sheet);
    sheet.save(file, "OpenDocument Spreadsheet Flat XML");
  }
  std::ostringstream content;
  content << std::ifstream(file).rdbuf();
  for (const char* name : {"ORG.SHIMWRIGHT.CELLS.CLEARANCESTATE(",
                           "ORG.SHIMWRIGHT.CELLS.SHIMIDEAL(", "ORG.SHIMWRIGHT.CELLS.SHIMLADDER("})
    EXPECT_NE(content.str().find(name), std::string::npos) << name;
}

}  // namespace
}  // namespace shimwright::tests
