// SPDX-License-Identifier: MPL-2.0
//
// The command on the notebook bar, for those who work with tabs in place of menus.
#include <gtest/gtest.h>

#include <chrono>
#include <com/sun/star/util/XCloseable.hpp>
#include <thread>

#include "desk.hpp"
#include "screen.hpp"

namespace shimwright::tests {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;

// As View, User Interface does it.
void choose_notebook_bar(const office::Office& office) {
  set_option(office,
             "/org.openoffice.Office.UI.ToolbarMode/Applications/"
             "org.openoffice.Office.UI.ToolbarMode:Application['Calc']",
             "Active", "notebookbar.ui");
}

// The bar's own widgets are out of UNO's sight, so the pointer goes where they are on a screen of
// this size.
constexpr int extension_tab_x = 945;
constexpr int extension_tab_y = 37;
constexpr int first_button_x = 20;
constexpr int first_button_y = 94;

TEST(NotebookBar, the_extension_tab_has_the_command) {
  Screen screen;
  office::Settings settings;
  settings.extension = PACKAGE;
  settings.display = screen.display();
  office::Office office(settings);
  choose_notebook_bar(office);
  const auto document = open_sheet(office);
  screen.maximize("Calc");
  const auto dialog = [&] { return window_titled(office, "New service book"); };
  EXPECT_TRUE(comes_true([&] {
    screen.click(extension_tab_x, extension_tab_y);
    std::this_thread::sleep_for(std::chrono::milliseconds(500));
    screen.picture(PICTURES "/notebook-bar.png");
    screen.click(first_button_x, first_button_y);
    return comes_true([&] { return dialog().has_value(); }, std::chrono::seconds(2));
  }));
  if (dialog()) dialog()->press("Cancel");
  EXPECT_TRUE(comes_true([&] { return !dialog(); }));
  Reference<css::util::XCloseable>(document, UNO_QUERY_THROW)->close(true);
}

}  // namespace
}  // namespace shimwright::tests
