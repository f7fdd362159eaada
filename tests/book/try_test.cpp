// SPDX-License-Identifier: MPL-2.0
//
// What the `try` command leaves behind.
#include <gtest/gtest.h>

#include <com/sun/star/io/XInputStream.hpp>
#include <com/sun/star/packages/zip/ZipFileAccess.hpp>
#include <filesystem>
#include <fstream>

#include "office/process.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

using book::as;
using std::chrono_literals::operator""s;

// How the book was last looked at, as it stands in the file.
std::string settings_in(const std::filesystem::path& file) {
  const auto package = css::packages::zip::ZipFileAccess::createWithURL(
      the_office().context(), office::to_office(office::url_of(file)));
  const auto stream = as<css::io::XInputStream>(
      package->getByName(office::to_office(std::string_view("settings.xml"))));
  css::uno::Sequence<sal_Int8> bytes;
  std::string text;
  while (stream->readBytes(bytes, 65536) > 0)
    for (const sal_Int8 byte : bytes) text += static_cast<char>(byte);
  return text;
}

std::string text_of_file(const std::filesystem::path& file) {
  std::ifstream stream(file);
  return {std::istreambuf_iterator<char>(stream), {}};
}

TEST(Try, leaves_a_demo_book_whose_heads_stay_in_sight) {
  const auto folder = the_office().profile().folder() / "try";
  std::filesystem::create_directories(folder);
  office::Process process({TRY_DEMO, PACKAGE, demo_file().string(), folder.string()}, {},
                          folder / "try.log");
  ASSERT_EQ(process.wait_for(120s), 0) << process.output();
  EXPECT_TRUE(std::filesystem::exists(folder / "demo.pdf"));
  // The window is to open in the language and with the decimal mark of its user.
  const std::string profile = text_of_file(folder / "profile/user/registrymodifications.xcu");
  EXPECT_NE(profile.find("ShowTipOfTheDay"), std::string::npos);
  EXPECT_EQ(profile.find("ooSetupSystemLocale\" oor:op=\"fuse\"><value>en-US"), std::string::npos);
  const std::string settings = settings_in(folder / "demo.ods");
  constexpr std::string_view frozen = "config:name=\"VerticalSplitMode\" config:type=\"short\">2<";
  int sheets = 0;
  for (std::size_t at = 0; (at = settings.find(frozen, at)) != std::string::npos; ++at) ++sheets;
  // Engine, Head, Plan and Fit at least.
  EXPECT_GE(sheets, 4);
}

}  // namespace
}  // namespace shimwright::tests
