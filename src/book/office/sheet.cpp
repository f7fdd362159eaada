// SPDX-License-Identifier: MPL-2.0
#include "book/office/sheet.hpp"

#include <com/sun/star/awt/Size.hpp>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/sheet/ConditionEntryType.hpp>
#include <com/sun/star/sheet/ConditionOperator.hpp>
#include <com/sun/star/sheet/DataBarEntryType.hpp>
#include <com/sun/star/sheet/ValidationAlertStyle.hpp>
#include <com/sun/star/sheet/ValidationType.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XConditionalFormat.hpp>
#include <com/sun/star/sheet/XConditionalFormats.hpp>
#include <com/sun/star/sheet/XDataBarEntry.hpp>
#include <com/sun/star/sheet/XPrintAreas.hpp>
#include <com/sun/star/sheet/XSheetCondition.hpp>
#include <com/sun/star/sheet/XSheetConditionalEntries.hpp>
#include <com/sun/star/table/XColumnRowRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XMergeable.hpp>
#include <com/sun/star/util/XProtectable.hpp>
#include <set>

#include "book/look/styles.hpp"
#include "core/values/length.hpp"

namespace shimwright::book {
namespace {

css::beans::PropertyValue property(std::string_view name, const css::uno::Any& value) {
  css::beans::PropertyValue made;
  made.Name = to_office(name);
  made.Value = value;
  return made;
}

Ref<css::beans::XPropertySet> column(const Ref<css::sheet::XSpreadsheet>& sheet, int index) {
  const auto columns = as<css::table::XColumnRowRange>(sheet)->getColumns();
  return as<css::beans::XPropertySet>(columns->getByIndex(index));
}

Ref<css::beans::XPropertySet> row(const Ref<css::sheet::XSpreadsheet>& sheet, int index) {
  const auto rows = as<css::table::XColumnRowRange>(sheet)->getRows();
  return as<css::beans::XPropertySet>(rows->getByIndex(index));
}

css::table::CellAddress address(const Ref<css::sheet::XSpreadsheet>& sheet, At at) {
  const auto whole = as<css::sheet::XCellRangeAddressable>(sheet)->getRangeAddress();
  return css::table::CellAddress(whole.Sheet, at.column, at.row);
}

css::sheet::ValidationType type_of(EntryCheck::Kind kind) {
  switch (kind) {
    case EntryCheck::Kind::choice:
      return css::sheet::ValidationType_LIST;
    case EntryCheck::Kind::number:
      return css::sheet::ValidationType_DECIMAL;
    case EntryCheck::Kind::whole_number:
      return css::sheet::ValidationType_WHOLE;
    case EntryCheck::Kind::text_length:
      return css::sheet::ValidationType_TEXT_LEN;
    case EntryCheck::Kind::condition:
      break;
  }
  return css::sheet::ValidationType_CUSTOM;
}

}  // namespace

Sheet::Sheet(const Ref<css::sheet::XSpreadsheetDocument>& book, std::string_view name)
    : name_(name),
      maker_(as<css::lang::XMultiServiceFactory>(book)),
      sheet_(as<css::sheet::XSpreadsheet>(
          as<css::container::XNameAccess>(book->getSheets())->getByName(to_office(name)))) {}

Ref<css::table::XCellRange> Sheet::range(const Area& area) const {
  return sheet_->getCellRangeByPosition(area.from.column, area.from.row, area.to.column,
                                        area.to.row);
}

void Sheet::paper() {
  style({{0, 0}, {1023, 1048575}}, style::page);
  // LibreOffice 7.4 loads the style of blank columns only as far as some cell differs.
  style(At{199, 0}, style::far_edge);
}

void Sheet::text(At at, std::string_view words) {
  as<css::text::XText>(sheet_->getCellByPosition(at.column, at.row))->setString(to_office(words));
}

void Sheet::number(At at, double value) {
  sheet_->getCellByPosition(at.column, at.row)->setValue(value);
}

void Sheet::entry(At at, const std::string& typed) {
  if (typed.empty()) return;
  if (const auto value = number_written(typed))
    number(at, *value);
  else
    text(at, typed);
}

void Sheet::formula(At at, std::string_view formula) {
  sheet_->getCellByPosition(at.column, at.row)->setFormula(to_office(formula));
}

void Sheet::formulas(At from, const std::vector<std::vector<std::string>>& formulas) {
  if (formulas.empty()) return;
  css::uno::Sequence<css::uno::Sequence<rtl::OUString>> rows(
      static_cast<sal_Int32>(formulas.size()));
  sal_Int32 r = 0;
  for (const auto& given : formulas) {
    css::uno::Sequence<rtl::OUString> cells(static_cast<sal_Int32>(given.size()));
    sal_Int32 c = 0;
    for (const std::string& formula : given) cells.getArray()[c++] = to_office(formula);
    rows.getArray()[r++] = cells;
  }
  const Area area =
      block(from, static_cast<int>(formulas.front().size()), static_cast<int>(formulas.size()));
  as<css::sheet::XCellRangeFormula>(range(area))->setFormulaArray(rows);
}

void Sheet::style(const Area& area, std::string_view style) {
  set(range(area), "CellStyle", to_office(style));
}

void Sheet::merge(const Area& area) { as<css::util::XMergeable>(range(area))->merge(true); }

void Sheet::column_width(int index, double mm) {
  set(column(sheet_, index), "Width", hundredths(mm));
}

void Sheet::row_height(int index, double mm) { set(row(sheet_, index), "Height", hundredths(mm)); }

void Sheet::row_heights(int first, int last, double mm) {
  const auto rows = as<css::table::XColumnRowRange>(range({{0, first}, {0, last}}))->getRows();
  set(rows, "Height", hundredths(mm));
}

void Sheet::check(const Area& area, const EntryCheck& check) {
  const auto cells = as<css::beans::XPropertySet>(range(area));
  const auto rule = as<css::beans::XPropertySet>(cells->getPropertyValue("Validation"));
  set(rule, "Type", type_of(check.kind));
  set(rule, "IgnoreBlankCells", true);
  set(rule, "ShowInputMessage", !check.help.empty());
  set(rule, "InputTitle", to_office(check.title));
  set(rule, "InputMessage", to_office(check.help));
  set(rule, "ShowErrorMessage", true);
  set(rule, "ErrorTitle", to_office(check.title));
  set(rule, "ErrorMessage", to_office(check.refusal));
  set(rule, "ErrorAlertStyle",
      check.may_keep ? css::sheet::ValidationAlertStyle_WARNING
                     : css::sheet::ValidationAlertStyle_STOP);
  const auto condition = as<css::sheet::XSheetCondition>(rule);
  // Saved and read again it would be a formula anyhow; until then it is what is said here.
  if (check.kind == EntryCheck::Kind::condition)
    condition->setOperator(css::sheet::ConditionOperator_FORMULA);
  else if (check.kind != EntryCheck::Kind::choice)
    condition->setOperator(css::sheet::ConditionOperator_BETWEEN);
  condition->setFormula1(to_office(check.rule));
  condition->setFormula2(to_office(check.most));
  condition->setSourcePosition(address(sheet_, area.from));
  set(cells, "Validation", rule);
}

void Sheet::grade(const Area& area, const std::vector<Grade>& grades) {
  const auto cells = as<css::beans::XPropertySet>(range(area));
  const auto entries =
      as<css::sheet::XSheetConditionalEntries>(cells->getPropertyValue("ConditionalFormat"));
  const css::table::CellAddress first = address(sheet_, area.from);
  for (const Grade& grade : grades) {
    css::uno::Sequence<css::beans::PropertyValue> entry(4);
    auto* fields = entry.getArray();
    fields[0] = property("Operator", css::uno::Any(css::sheet::ConditionOperator_FORMULA));
    fields[1] = property("Formula1", css::uno::Any(to_office(grade.condition)));
    fields[2] = property("StyleName", css::uno::Any(to_office(grade.style)));
    fields[3] = property("SourcePosition", css::uno::Any(first));
    entries->addNew(entry);
  }
  set(cells, "ConditionalFormat", entries);
}

void Sheet::bar(At at, std::int32_t colour) {
  const auto formats = as<css::sheet::XConditionalFormats>(
      as<css::beans::XPropertySet>(sheet_)->getPropertyValue("ConditionalFormats"));
  const auto ids = [&formats] {
    std::set<sal_Int32> all;
    for (const auto& format : formats->getConditionalFormats())
      all.insert(as<css::beans::XPropertySet>(format)->getPropertyValue("ID").get<sal_Int32>());
    return all;
  };
  // A format made by the newer interface is tied to its cells only once the book is saved and
  // opened again; one that begins with a condition, which never holds, is at once.
  const auto before = ids();
  grade(at, {{"FALSE()", "Default"}});
  for (const auto& format : formats->getConditionalFormats()) {
    if (before.contains(
            as<css::beans::XPropertySet>(format)->getPropertyValue("ID").get<sal_Int32>()))
      continue;
    format->createEntry(css::sheet::ConditionEntryType::DATABAR, 1);
    const auto bar = as<css::beans::XPropertySet>(format->getByIndex(1));
    set(bar, "UseGradient", false);
    set(bar, "ShowValue", false);
    set(bar, "Color", colour);
    css::uno::Sequence<Ref<css::sheet::XDataBarEntry>> ends;
    bar->getPropertyValue("DataBarEntries") >>= ends;
    for (sal_Int32 end = 0; end < ends.getLength(); ++end) {
      ends[end]->setType(css::sheet::DataBarEntryType::DATABAR_VALUE);
      ends[end]->setFormula(end == 0 ? rtl::OUString("0") : rtl::OUString("1"));
    }
  }
}

void Sheet::label(const Area& area, std::string_view words, std::string_view style_name) {
  style(area, style_name);
  if (!(area.from == area.to)) merge(area);
  text(area.from, words);
}

Sheet::Size Sheet::size_mm(const Area& area) const {
  const auto size =
      as<css::beans::XPropertySet>(range(area))->getPropertyValue("Size").get<css::awt::Size>();
  return {size.Width / 100.0, size.Height / 100.0};
}

void Sheet::print(const Area& area, std::string_view page_style) {
  css::uno::Sequence<css::table::CellRangeAddress> areas(1);
  areas.getArray()[0] = as<css::sheet::XCellRangeAddressable>(range(area))->getRangeAddress();
  as<css::sheet::XPrintAreas>(sheet_)->setPrintAreas(areas);
  set(sheet_, "PageStyle", to_office(page_style));
}

void Sheet::new_page(int first_row) { set(row(sheet_, first_row), "IsStartOfNewPage", true); }

void Sheet::repeat_rows(int first, int last) {
  const auto areas = as<css::sheet::XPrintAreas>(sheet_);
  auto rows =
      as<css::sheet::XCellRangeAddressable>(range({{0, first}, {0, last}}))->getRangeAddress();
  areas->setTitleRows(rows);
  areas->setPrintTitleRows(true);
}

void Sheet::hide() { set(sheet_, "IsVisible", false); }

void Sheet::keep_off_paper() { as<css::sheet::XPrintAreas>(sheet_)->setPrintAreas({}); }

void Sheet::protect() { as<css::util::XProtectable>(sheet_)->protect(rtl::OUString()); }

}  // namespace shimwright::book
