// SPDX-License-Identifier: MPL-2.0
//
// Every text of the book can be read on the ground it stands on: WCAG 2.1, success criterion 1.4.3.
#include <gtest/gtest.h>

#include <algorithm>
#include <com/sun/star/beans/XPropertyState.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/style/XStyle.hpp>
#include <com/sun/star/style/XStyleFamiliesSupplier.hpp>
#include <string>
#include <vector>

#include "../core/colour_science.hpp"
#include "book/look/styles.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

using book::as;

constexpr double least = 4.5;

struct Look {
  std::string name;
  bool laid_over = false;  // says only what it sets, and leaves the rest to the cell it lies over
  bool sets_letters = false;
  bool sets_ground = false;
  Rgb letters;
  Rgb ground;
};

Rgb rgb(sal_Int32 colour) {
  return {static_cast<std::uint8_t>(colour >> 16), static_cast<std::uint8_t>(colour >> 8),
          static_cast<std::uint8_t>(colour)};
}

std::vector<Look> looks_of(const OpenBook& book) {
  const auto styles =
      as<css::container::XNameAccess>(as<css::style::XStyleFamiliesSupplier>(book.document())
                                          ->getStyleFamilies()
                                          ->getByName("CellStyles"));
  const auto style = [&styles](const rtl::OUString& name) {
    return as<css::style::XStyle>(styles->getByName(name));
  };
  const auto descends_from_page = [&style](rtl::OUString name) {
    while (!name.isEmpty() && name != "Default" && name != book::to_office(book::style::page))
      name = style(name)->getParentStyle();
    return name == book::to_office(book::style::page);
  };
  std::vector<Look> looks;
  for (const rtl::OUString& name : styles->getElementNames()) {
    if (!style(name)->isUserDefined()) continue;
    const auto properties = as<css::beans::XPropertySet>(style(name));
    const auto sets = [&](const char* property) {
      return as<css::beans::XPropertyState>(properties)
                 ->getPropertyState(rtl::OUString::createFromAscii(property)) ==
             css::beans::PropertyState_DIRECT_VALUE;
    };
    const auto colour = [&](const char* property) {
      return rgb(
          properties->getPropertyValue(rtl::OUString::createFromAscii(property)).get<sal_Int32>());
    };
    looks.push_back({.name = office::from_office(name),
                     .laid_over = !descends_from_page(name),
                     .sets_letters = sets("CharColor"),
                     .sets_ground = sets("CellBackColor"),
                     .letters = colour("CharColor"),
                     .ground = colour("CellBackColor")});
  }
  return looks;
}

TEST(Contrast, of_every_style_is_enough_to_read_it) {
  const std::vector<Look> looks = looks_of(OpenBook(the_office(), template_file()));
  std::size_t texts = 0;
  for (const Look& look : looks)
    if (!look.laid_over && look.name != book::style::bench_kind) {
      ++texts;
      EXPECT_GE(contrast(look.letters, look.ground), least) << look.name;
    }
  EXPECT_GT(texts, 60);
}

// Whatever it lies over, the key to the colours apart, over which nothing is laid.
TEST(Contrast, of_every_style_laid_over_another_is_enough_to_read_it) {
  const std::vector<Look> looks = looks_of(OpenBook(the_office(), template_file()));
  std::size_t laid_over = 0;
  for (const Look& over : looks) {
    if (!over.laid_over) continue;
    if (!over.sets_letters && !over.sets_ground) continue;
    ++laid_over;
    for (const Look& under : looks) {
      if (under.laid_over || under.name.starts_with("Legend") ||
          under.name == book::style::bench_kind)
        continue;
      EXPECT_GE(contrast(over.sets_letters ? over.letters : under.letters,
                         over.sets_ground ? over.ground : under.ground),
                least)
          << over.name << " over " << under.name;
    }
  }
  EXPECT_GT(laid_over, 20);
}

// What only the add-in reads, in a column without width, is not to be read by people.
TEST(Contrast, of_what_is_hidden_is_none) {
  const std::vector<Look> looks = looks_of(OpenBook(the_office(), template_file()));
  const auto named = [&looks](std::string_view name) {
    return *std::ranges::find(looks, name, &Look::name);
  };
  EXPECT_EQ(contrast(named(book::style::bench_kind).letters, named(book::style::page).ground), 1);
}

}  // namespace
}  // namespace shimwright::tests
