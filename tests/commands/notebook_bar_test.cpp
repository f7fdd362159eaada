// SPDX-License-Identifier: MPL-2.0
//
// The command on the notebook bar, for those who work with tabs in place of menus. The bar's own
// widgets are out of UNO's sight and answer to no key, so its item is found where the bar finds it,
// in the configuration, and its command is given as the bar gives it.
#include <gtest/gtest.h>

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/util/URLTransformer.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <optional>

#include "desk.hpp"
#include "screen.hpp"

namespace shimwright::tests {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY_THROW;
using office::from_office;
using office::to_office;

// As View, User Interface does it.
void choose_notebook_bar(const office::Office& office) {
  set_option(office,
             "/org.openoffice.Office.UI.ToolbarMode/Applications/"
             "org.openoffice.Office.UI.ToolbarMode:Application['Calc']",
             "Active", "notebookbar.ui");
}

struct Item {
  std::string title;
  std::string url;
  std::string target;
  std::string context;
};

// Of the Extension tab, all that extensions put there.
std::vector<Item> extension_items(const office::Office& office) {
  const Reference<css::lang::XMultiServiceFactory> provider(
      office.service("com.sun.star.configuration.ConfigurationProvider"), UNO_QUERY_THROW);
  css::uno::Sequence<css::uno::Any> arguments(1);
  arguments.getArray()[0] <<= css::beans::NamedValue(
      to_office("nodepath"),
      css::uno::Any(to_office("/org.openoffice.Office.Addons/AddonUI/OfficeNotebookBar")));
  const Reference<css::container::XNameAccess> bars(
      provider->createInstanceWithArguments(
          to_office("com.sun.star.configuration.ConfigurationAccess"), arguments),
      UNO_QUERY_THROW);
  std::vector<Item> items;
  for (const rtl::OUString& bar : bars->getElementNames()) {
    const Reference<css::container::XNameAccess> nodes(bars->getByName(bar), UNO_QUERY_THROW);
    for (const rtl::OUString& node : nodes->getElementNames()) {
      const Reference<css::container::XNameAccess> item(nodes->getByName(node), UNO_QUERY_THROW);
      const auto text = [&item](const char* property) {
        rtl::OUString value;
        item->getByName(to_office(property)) >>= value;
        return from_office(value);
      };
      items.push_back({text("Title"), text("URL"), text("Target"), text("Context")});
    }
  }
  return items;
}

bool dispatch(const office::Office& office,
              const Reference<css::sheet::XSpreadsheetDocument>& document, const Item& item) {
  css::util::URL url;
  url.Complete = to_office(item.url);
  css::util::URLTransformer::create(office.context())->parseStrict(url);
  const auto command = Reference<css::frame::XDispatchProvider>(
                           Reference<css::frame::XModel>(document, UNO_QUERY_THROW)
                               ->getCurrentController()
                               ->getFrame(),
                           UNO_QUERY_THROW)
                           ->queryDispatch(url, to_office(item.target), 0);
  if (command.is()) command->dispatch(url, {});
  return command.is();
}

TEST(NotebookBar, the_extension_tab_has_the_command) {
  Screen screen;
  office::Settings settings;
  settings.extension = PACKAGE;
  settings.display = screen.display();
  office::Office office(settings);
  choose_notebook_bar(office);
  const auto document = open_sheet(office);
  screen.maximize("Calc");
  const auto items = extension_items(office);
  ASSERT_EQ(items.size(), 8U);
  EXPECT_EQ(items[1].title, "Measuring sheet");
  EXPECT_EQ(items[1].url, "vnd.org.shimwright:measuring-sheet");
  EXPECT_EQ(items[2].title, "Order placed");
  EXPECT_EQ(items[2].url, "vnd.org.shimwright:order-placed");
  EXPECT_EQ(items[3].title, "Take to the bench");
  EXPECT_EQ(items[3].url, "vnd.org.shimwright:take-to-bench");
  EXPECT_EQ(items[4].title, "Clear the bench");
  EXPECT_EQ(items[4].url, "vnd.org.shimwright:clear-bench");
  EXPECT_EQ(items[5].title, "Close this check");
  EXPECT_EQ(items[5].url, "vnd.org.shimwright:close-check");
  EXPECT_EQ(items[6].title, "Bring in a log");
  EXPECT_EQ(items[6].url, "vnd.org.shimwright:bring-in-log");
  EXPECT_EQ(items[7].title, "Draw the drift");
  EXPECT_EQ(items[7].url, "vnd.org.shimwright:draw-drift");
  EXPECT_EQ(items[0].title, "New service book");
  EXPECT_EQ(items[0].context, "com.sun.star.sheet.SpreadsheetDocument");
  ASSERT_TRUE(dispatch(office, document, items[0]));
  const auto dialog = [&] { return window_titled(office, "New service book"); };
  EXPECT_TRUE(comes_true([&] { return dialog().has_value(); }));
  screen.picture(PICTURES "/notebook-bar.png");
  if (dialog()) dialog()->press("Cancel");
  EXPECT_TRUE(comes_true([&] { return !dialog(); }));
  Reference<css::util::XCloseable>(document, UNO_QUERY_THROW)->close(true);
}

}  // namespace
}  // namespace shimwright::tests
