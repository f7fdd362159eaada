// SPDX-License-Identifier: MPL-2.0
#include "cells/decode.hpp"

#include <algorithm>
#include <com/sun/star/uno/Sequence.hxx>
#include <span>

#include "core/values/text.hpp"
#include "office/text.hpp"

namespace shimwright::cells {
namespace {

namespace css = com::sun::star;
using css::uno::Sequence;

Entry entry_of(const Any& value, std::string_view name) {
  if (!value.hasValue()) return {};
  if (bool yes = false; value >>= yes) return yes ? 1.0 : 0.0;
  if (double number = 0; value >>= number) return number;
  if (rtl::OUString text; value >>= text) {
    std::string plain = office::from_office(text);
    if (trimmed(plain).empty()) return {};
    return plain;
  }
  throw BadInput(std::string(name) + " is neither a number nor a text");
}

std::optional<double> number_in(const Entry& entry) {
  if (const double* number = std::get_if<double>(&entry)) return *number;
  return std::nullopt;
}

std::optional<Length> length_in(const Entry& entry) {
  const auto number = number_in(entry);
  return number ? std::optional(Length::of(*number)) : std::nullopt;
}

std::optional<Length> size_in(const Entry& entry) {
  const auto found = length_in(entry);
  return found == Length() ? std::nullopt : found;
}

std::optional<double> share_in(const Entry& entry) {
  const auto number = number_in(entry);
  return number == 0.0 ? std::nullopt : number;
}

std::optional<Entry> entry_in(const Entry& entry) {
  return std::holds_alternative<std::monostate>(entry) ? std::nullopt : std::optional(entry);
}

// What a cell says as text; a zero is a blank one.
std::optional<std::string> text_in(const Entry& entry) {
  if (const std::string* text = std::get_if<std::string>(&entry))
    return std::string(trimmed(*text));
  const auto number = number_in(entry);
  return number && *number != 0 ? std::optional(shimwright::text_of(*number)) : std::nullopt;
}

std::optional<MarkScheme> mark_scheme_in(const Entry& entry) {
  const auto text = text_in(entry);
  return text ? std::optional(mark_scheme_named(*text)) : std::nullopt;
}

std::optional<Method> method_in(const Entry& entry) {
  const auto text = text_in(entry);
  return text ? std::optional(method_named(*text)) : std::nullopt;
}

std::optional<Unit> unit_in(const Entry& entry) {
  const auto text = text_in(entry);
  if (!text) return std::nullopt;
  const auto found = unit_named(*text);
  if (!found) throw BadInput("'" + *text + "' is unknown: use mm, in, thou or um");
  return found;
}

// Without a copy of the text: whole columns are looked through by it.
bool is_blank(const Any& cell) {
  if (!cell.hasValue()) return true;
  return cell.getValueTypeClass() == com::sun::star::uno::TypeClass_STRING &&
         static_cast<const rtl::OUString*>(cell.getValue())->isEmpty();
}

// A first row stays, blank or not, as a table laid out is not one left out.
sal_Int32 rows_in_use(const Sequence<Sequence<Any>>& range) {
  sal_Int32 used = range.getLength();
  while (used > 1 && std::all_of(range[used - 1].begin(), range[used - 1].end(), is_blank)) --used;
  return used;
}

// No engine needs as many; Calc itself takes minutes to show the answers for a whole column.
constexpr std::size_t most_answered = 100'000;

// More than the largest table a function takes: 20 000 rows of shims, and the columns beside them.
constexpr std::size_t most_read = 1'000'000;

std::string counted(std::size_t count, std::string_view thing) {
  return std::to_string(count) + " " + std::string(thing) + (count == 1 ? "" : "s");
}

}  // namespace

std::string text_of(const Shape& shape) {
  return counted(shape.rows, "row") + " by " + counted(shape.columns, "column");
}

Argument::Argument(std::string_view name, const Any& value, Rows rows)
    : name_(name), left_out_(!value.hasValue()) {
  Sequence<Sequence<Any>> range;
  if (!(value >>= range)) {
    table_.push_back({entry_of(value, name)});
    return;
  }
  const auto count =
      static_cast<std::size_t>(rows == Rows::all ? range.getLength() : rows_in_use(range));
  const Sequence<Any>* const all = range.getConstArray();  // the other access copies
  const auto width = static_cast<std::size_t>(count == 0 ? 0 : all->getLength());
  const bool is_table = rows == Rows::in_use;
  const std::size_t most = is_table ? most_read : most_answered;
  if (count * width > most)
    throw BadInput(name_ + " has " + text_of(Shape{count, width}) + ": at most " +
                   std::to_string(most) + " cells can be " +
                   (is_table ? "read" : "answered at once"));
  table_.reserve(count);
  for (const Sequence<Any>& cells : std::span(all, count)) {
    auto& row = table_.emplace_back();
    row.reserve(static_cast<std::size_t>(cells.getLength()));
    for (const Any& cell : cells) row.push_back(entry_of(cell, name));
    if (row.empty() || row.size() != table_.front().size())
      throw BadInput(name_ + " is a range whose rows are not of one length");
  }
  if (table_.empty()) throw BadInput(name_ + " is a range without cells");
}

Shape Argument::shape() const { return {table_.size(), table_.front().size()}; }

EntryTable Argument::table() const {
  const bool blank = shape().single() && !text_in(table_[0][0]);
  return blank ? EntryTable() : table_;
}

Argument&& Argument::needed() && {
  if (left_out_) throw BadInput("the argument " + name_ + " is missing");
  return std::move(*this);
}

Values<Length> length(std::string_view name, const Any& value) {
  return {Argument(name, value).needed(), length_in};
}

Values<Length> length_or(std::string_view name, const Any& value, Length fallback) {
  return {Argument(name, value), length_in, fallback};
}

Values<Length> size(std::string_view name, const Any& value) {
  return {Argument(name, value).needed(), size_in};
}

Values<double> number_or(std::string_view name, const Any& value, double fallback) {
  return {Argument(name, value), number_in, fallback};
}

Values<double> share(std::string_view name, const Any& value) {
  return {Argument(name, value), share_in};
}

Values<Entry> entry(std::string_view name, const Any& value) {
  return {Argument(name, value).needed(), entry_in};
}

Entry optional_entry(std::string_view name, const Any& value) {
  return Values<Entry>{Argument(name, value), entry_in}.single().value_or(Entry());
}

Values<std::string> mark(std::string_view name, const Any& value) {
  return {Argument(name, value).needed(), text_in};
}

Values<MarkScheme> mark_scheme(Argument argument) {
  return {std::move(argument), mark_scheme_in, MarkScheme::automatic};
}

Values<Unit> unit(std::string_view name, const Any& value) {
  return {Argument(name, value), unit_in, Unit::mm};
}

Maybe<Length> maybe_length(std::string_view name, const Any& value) {
  return {length(name, value)};
}

Maybe<Length> maybe_size(std::string_view name, const Any& value) { return {size(name, value)}; }

Maybe<Length> optional_size(std::string_view name, const Any& value) {
  return {{Argument(name, value), size_in}};
}

Numbers::Numbers(std::string_view name, const Any& value, Zero zero)
    : name_(name), zero_(zero), value_(value) {
  if (!value_.hasValue()) throw BadInput("the argument " + name_ + " is missing");
  if (!(value_ >>= rows_)) return;
  if (!rows_.hasElements() || !rows_.getConstArray()[0].hasElements())
    throw BadInput(name_ + " is a range without cells");
  shape_ = {static_cast<std::size_t>(rows_.getLength()),
            static_cast<std::size_t>(rows_.getConstArray()[0].getLength())};
}

std::optional<double> Numbers::at(std::size_t row, std::size_t column) const {
  if (!rows_.hasElements()) return number_of(value_);
  if (shape_.single()) row = column = 0;
  const Sequence<Any>& cells = rows_.getConstArray()[row];
  if (static_cast<std::size_t>(cells.getLength()) != shape_.columns)
    throw BadInput(name_ + " is a range whose rows are not of one length");
  return number_of(cells.getConstArray()[column]);
}

std::optional<double> Numbers::number_of(const Any& cell) const {
  std::optional<double> number;
  switch (cell.getValueTypeClass()) {
    case css::uno::TypeClass_DOUBLE:
      number = *static_cast<const double*>(cell.getValue());
      break;
    case css::uno::TypeClass_STRING:
      break;  // blank, or text: not given
    default:
      number = number_in(entry_of(cell, name_));
  }
  return number == 0.0 && zero_ == Zero::is_not_given ? std::nullopt : number;
}

std::vector<Length> sizes(std::string_view name, const Any& value) {
  const Values<Length> range{Argument(name, value, Argument::Rows::in_use).needed(), size_in};
  const Shape shape = range.argument.shape();
  std::vector<Length> found;
  for (std::size_t row = 0; row < shape.rows; ++row)
    for (std::size_t column = 0; column < shape.columns; ++column)
      if (const auto one = range.element(row, column)) found.push_back(*one);
  return found;
}

MarkTable mark_table(const Argument& argument) {
  MarkTable found;
  for (std::size_t row = 0; row < argument.shape().rows; ++row) {
    const auto own_mark = text_in(argument.at(row, 0));
    const auto thickness = size_in(argument.at(row, 1));
    if (own_mark && thickness) found.add(*own_mark, *thickness);
  }
  return found;
}

EntryTable table(std::string_view name, const Any& value) {
  return Argument(name, value, Argument::Rows::in_use).needed().table();
}

EntryTable optional_table(std::string_view name, const Any& value) {
  return Argument(name, value, Argument::Rows::in_use).table();
}

Method method(std::string_view name, const Any& value) {
  return Values<Method>{Argument(name, value), method_in}.single().value_or(Method::least);
}

std::string word(std::string_view name, const Any& value) {
  return Values<std::string>{Argument(name, value), text_in}.single().value_or("");
}

}  // namespace shimwright::cells
