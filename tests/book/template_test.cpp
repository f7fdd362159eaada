// SPDX-License-Identifier: MPL-2.0
//
// The template as a person finds it and opens it.
#include <gtest/gtest.h>

#include <algorithm>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/document/XDocumentPropertiesSupplier.hpp>
#include <com/sun/star/frame/XDocumentTemplates.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/lang/Locale.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XSheetCellRanges.hpp>
#include <com/sun/star/sheet/XUniqueCellFormatRangesSupplier.hpp>
#include <com/sun/star/ucb/XContent.hpp>
#include <com/sun/star/ucb/XContentIdentifier.hpp>
#include <com/sun/star/ucb/XSimpleFileAccess.hpp>
#include <com/sun/star/util/CellProtection.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <osl/file.hxx>
#include <rtl/uri.hxx>
#include <set>

#include "entry_cells.hpp"
#include "open_book.hpp"
#include "the_book.hpp"

namespace shimwright::tests {
namespace {

namespace card = book::card;
using book::as;
using office::from_office;
using office::to_office;

std::string plain(const rtl::OUString& url) {
  return from_office(rtl::Uri::decode(url, rtl_UriDecodeWithCharset, RTL_TEXTENCODING_UTF8));
}

Ref<css::ucb::XSimpleFileAccess> files() {
  return as<css::ucb::XSimpleFileAccess>(the_office().service("com.sun.star.ucb.SimpleFileAccess"));
}

// The file among the installed extension's, where the office looks for templates.
std::string installed_template() {
  css::uno::Sequence<rtl::OUString> folders;
  as<css::beans::XPropertySet>(the_office().service("com.sun.star.util.PathSettings"))
      ->getPropertyValue("Template_internal") >>= folders;
  for (const rtl::OUString& folder : folders) {
    if (folder.indexOf("shimwright.oxt") < 0) continue;
    for (const rtl::OUString& file : files()->getFolderContents(folder, false))
      if (plain(file).ends_with(template_file().filename().string())) return from_office(file);
  }
  return {};
}

TEST(Template, is_in_the_list_of_templates_by_its_title) {
  const auto templates = as<css::frame::XDocumentTemplates>(
      the_office().service("com.sun.star.frame.DocumentTemplates"));
  templates->update();
  std::vector<std::string> titles;
  const rtl::OUString root = templates->getContent()->getIdentifier()->getContentIdentifier();
  for (const rtl::OUString& group : files()->getFolderContents(root, true))
    for (const rtl::OUString& one : files()->getFolderContents(group, true))
      titles.push_back(plain(one.copy(one.lastIndexOf('/') + 1)));
  EXPECT_EQ(std::ranges::count(titles, "Valve service, inline four, 16 valves"), 1)
      << ::testing::PrintToString(titles);
}

TEST(Template, opens_from_the_extension_as_a_new_book_without_a_name) {
  const std::string url = installed_template();
  ASSERT_FALSE(url.empty());
  rtl::OUString path;
  osl::FileBase::getSystemPathFromFileURL(to_office(url), path);
  OpenBook book(the_office(), from_office(path));
  EXPECT_FALSE(as<css::frame::XStorable>(book.document())->hasLocation());
  EXPECT_FALSE(as<css::util::XModifiable>(book.document())->isModified());
  const auto sheets = book.document()->getSheets()->getElementNames();
  ASSERT_GE(sheets.getLength(), 5);
  for (int i = 0; i < 5; ++i) EXPECT_EQ(from_office(sheets[i]), faces[i]);
  EXPECT_TRUE(book.shown(book::sheet_name::head, the_places().head.banner().from)
                  .starts_with("Shimwright "));
}

TEST(Template, has_a_title_that_reads_well) {
  OpenBook book(the_office(), template_file());
  const auto properties =
      as<css::document::XDocumentPropertiesSupplier>(book.document())->getDocumentProperties();
  EXPECT_EQ(from_office(properties->getTitle()), "Valve service, inline four, 16 valves");
  EXPECT_TRUE(properties->getAuthor().isEmpty());
}

// A protected sheet could be neither sorted nor filtered.
TEST(Template, keeps_every_sheet_but_the_log_protected_without_a_password) {
  OpenBook book(the_office(), template_file());
  for (const rtl::OUString& name : book.document()->getSheets()->getElementNames()) {
    const auto sheet = as<css::util::XProtectable>(book.document()->getSheets()->getByName(name));
    EXPECT_EQ(sheet->isProtected(), from_office(name) != book::sheet_name::log)
        << from_office(name);
    sheet->unprotect(rtl::OUString());
    EXPECT_FALSE(sheet->isProtected()) << from_office(name);
  }
}

std::vector<At> unlocked_cells(const OpenBook& book, std::string_view sheet) {
  std::vector<At> unlocked;
  const auto looks = as<css::container::XIndexAccess>(
      as<css::sheet::XUniqueCellFormatRangesSupplier>(book.sheet(sheet))
          ->getUniqueCellFormatRanges());
  for (sal_Int32 i = 0; i < looks->getCount(); ++i) {
    const auto alike = as<css::sheet::XSheetCellRanges>(looks->getByIndex(i));
    const auto protection = as<css::beans::XPropertySet>(alike)
                                ->getPropertyValue("CellProtection")
                                .get<css::util::CellProtection>();
    if (protection.IsLocked) continue;
    for (const css::table::CellRangeAddress& area : alike->getRangeAddresses())
      for (int row = area.StartRow; row <= area.EndRow; ++row)
        for (int column = area.StartColumn; column <= area.EndColumn; ++column)
          unlocked.push_back({column, row});
  }
  return unlocked;
}

TEST(Template, lets_a_person_type_into_the_entries_and_nowhere_else) {
  OpenBook book(the_office(), template_file());
  const auto entries = entry_cells(the_places());
  const auto by_place = [](const At& a, const At& b) {
    return std::pair(a.row, a.column) < std::pair(b.row, b.column);
  };
  for (const rtl::OUString& name : book.document()->getSheets()->getElementNames()) {
    const std::string sheet = from_office(name);
    if (sheet == book::sheet_name::log) continue;
    std::vector<At> due;
    for (const EntryCell& entry : entries)
      if (entry.sheet == sheet) due.push_back(entry.at);
    std::vector<At> found = unlocked_cells(book, sheet);
    std::ranges::sort(due, by_place);
    std::ranges::sort(found, by_place);
    EXPECT_EQ(found.size(), due.size()) << sheet;
    for (std::size_t i = 0; i < std::min(found.size(), due.size()); ++i)
      ASSERT_EQ(book::relative(found[i]), book::relative(due[i])) << sheet;
  }
}

// The office would complete a number from them.
TEST(Template, has_no_words_that_begin_with_a_figure_above_or_below_an_entry) {
  OpenBook book(the_office(), template_file());
  std::set<std::pair<std::string, int>> columns;
  for (const EntryCell& entry : entry_cells(the_places()))
    if (!entry.free_text && entry.sheet != book::sheet_name::fit &&
        !(entry.sheet == book::sheet_name::engine &&
          entry.at.column == book::engine_place::words_column))
      columns.emplace(entry.sheet, entry.at.column);
  EXPECT_GE(columns.size(), 18U);
  for (const auto& [sheet, column] : columns)
    for (int row = 0; row < 120; ++row) {
      const auto cell = book.sheet(sheet)->getCellByPosition(column, row);
      if (cell->getType() != css::table::CellContentType_TEXT) continue;
      const std::string words = from_office(cell->getFormula());
      EXPECT_NE(words.find_first_of("0123456789.,-+"), 0U)
          << book::on(sheet, {column, row}) << ": " << words;
    }
}

// Names of valves, marks and trade terms would be marked as misspelt.
TEST(Template, is_of_no_language_so_that_the_office_checks_no_spelling) {
  OpenBook book(the_office(), template_file());
  for (const std::string_view face : faces) {
    const auto looks = as<css::container::XIndexAccess>(
        as<css::sheet::XUniqueCellFormatRangesSupplier>(book.sheet(face))
            ->getUniqueCellFormatRanges());
    int of_no_language = 0;
    for (sal_Int32 i = 0; i < looks->getCount(); ++i) {
      const auto alike = as<css::beans::XPropertySet>(looks->getByIndex(i));
      const auto style = alike->getPropertyValue("CellStyle").get<rtl::OUString>();
      if (style.isEmpty() || style == "Default") continue;  // beyond the sheet's own cells
      EXPECT_EQ(alike->getPropertyValue("CharLocale").get<css::lang::Locale>().Language, "zxx")
          << face << ": " << from_office(style) << " "
          << from_office(as<css::sheet::XSheetCellRanges>(alike)->getRangeAddressesAsString());
      ++of_no_language;
    }
    EXPECT_GT(of_no_language, 3) << face;
    for (const auto& [at, words] : book.texts(face))
      EXPECT_EQ(as<css::beans::XPropertySet>(book.cell(face, at))
                    ->getPropertyValue("CharLocale")
                    .get<css::lang::Locale>()
                    .Language,
                "zxx")
          << face << ": " << words;
  }
}

TEST(Template, has_nothing_measured_and_nothing_listed) {
  OpenBook book(the_office(), template_file());
  for (const book::Card& one : the_places().head.cards) {
    EXPECT_EQ(book.shown(book::sheet_name::head, one.at(card::banner)), "\u25cb unread");
    for (const card::Row row : {card::limits, card::shim_is, card::action, card::from, card::then})
      EXPECT_EQ(book.shown(book::sheet_name::head, one.at(row)), "");
  }
  EXPECT_TRUE(book.tells(book::sheet_name::engine, "Begin here: "));
  for (const std::string_view sheet : {book::sheet_name::head, book::sheet_name::shims})
    EXPECT_TRUE(book.tells(sheet, "Begin on Engine: the limits are not entered yet.")) << sheet;
}

}  // namespace
}  // namespace shimwright::tests
