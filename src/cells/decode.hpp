// SPDX-License-Identifier: MPL-2.0
//
// From Calc's values to the core's, and all the policy on what a person may have put in a cell:
// - blank and text where a number is due: not given;
// - zero where zero cannot be meant (a thickness, a largest limit, an aim): not given, as Calc
//   hands a single blank cell over as 0;
// - TRUE and FALSE: 1 and 0, as Calc has them;
// - an argument left out that is needed: BadInput with its name.
#pragma once

#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Sequence.hxx>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/drift/drift.hpp"
#include "core/entries/entries.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/length.hpp"
#include "core/values/mark.hpp"

namespace shimwright::cells {

struct Shape {
  std::size_t rows = 1;
  std::size_t columns = 1;
  bool operator==(const Shape&) const = default;
  bool single() const { return rows == 1 && columns == 1; }
};

std::string text_of(const Shape& shape);  // `3 rows by 1 column`

// One argument as it came: a single value, a range of them, or left out. A range of one cell is a
// single value.
class Argument {
 public:
  // `in_use` is for tables: of whole columns, mostly blank, the blank tail is not worth reading.
  // `all` is for values each of which has its answer.
  enum class Rows { all, in_use };

  // Throws BadInput for a value that is neither number nor text nor a range of those, and, before
  // it is read, for a range of more cells than any function takes. Time and space grow with the
  // cells that are read.
  Argument(std::string_view name, const com::sun::star::uno::Any& value, Rows rows = Rows::all);

  const std::string& name() const { return name_; }
  bool left_out() const { return left_out_; }
  Shape shape() const;

  // A single value stands for every place.
  const Entry& at(std::size_t row, std::size_t column) const {
    return shape().single() ? table_[0][0] : table_[row][column];
  }

  // The whole; no rows at all where it was left out or is a single blank (which arrives as 0).
  EntryTable table() const;

  Argument&& needed() &&;  // throws BadInput where it was left out

 private:
  std::string name_;
  bool left_out_ = false;
  EntryTable table_;
};

// An argument whose every value is to be a T, with what stands in for one that is not given.
template <class T>
struct Values {
  using Element = T;

  Argument argument;
  std::optional<T> (*read)(const Entry&);
  std::optional<T> fallback = std::nullopt;

  // Throws BadInput, with the argument's name, for a value that cannot be.
  std::optional<T> element(std::size_t row, std::size_t column) const try {
    auto value = read(argument.at(row, column));
    return value ? value : fallback;
  } catch (const BadInput& trouble) {
    throw BadInput(argument.name() + ": " + trouble.what());
  }

  // The one value of an argument that may not be a range.
  std::optional<T> single() const {
    if (!argument.shape().single())
      throw BadInput(argument.name() + " is one value, not a range of " +
                     text_of(argument.shape()));
    return element(0, 0);
  }
};

// The same where the function has an answer for a value that is not given.
template <class T>
struct Maybe : Values<T> {
  using Element = std::optional<T>;

  std::optional<Element> element(std::size_t row, std::size_t column) const {
    return Values<T>::element(row, column);
  }
};

using Any = com::sun::star::uno::Any;

Values<Length> length(std::string_view name, const Any& value);  // in mm; zero is a value
Values<Length> length_or(std::string_view name, const Any& value, Length fallback);
Values<Length> size(std::string_view name, const Any& value);  // in mm; zero is not given
Values<double> number_or(std::string_view name, const Any& value, double fallback);
// A share of one; zero is not given.
Values<double> share(std::string_view name, const Any& value);
Values<Entry> entry(std::string_view name, const Any& value);   // number or text
Entry optional_entry(std::string_view name, const Any& value);  // one value, as it is
Values<std::string> mark(std::string_view name, const Any& value);
Values<MarkScheme> mark_scheme(Argument argument);
Values<Unit> unit(std::string_view name, const Any& value);  // mm unless given

// Needed, but each of its values may be left blank.
Maybe<Length> maybe_length(std::string_view name, const Any& value);
Maybe<Length> maybe_size(std::string_view name, const Any& value);
// May be left out altogether as well.
Maybe<Length> optional_size(std::string_view name, const Any& value);

enum class Zero { is_a_value, is_not_given };

// A range of many numbers, each read where it stands when it is asked for. A single value stands
// for every place.
class Numbers {
 public:
  // Throws BadInput where the argument is left out or is a range without cells.
  Numbers(std::string_view name, const Any& value, Zero zero = Zero::is_a_value);

  const std::string& name() const { return name_; }
  Shape shape() const { return shape_; }

  // Throws BadInput for what is neither number nor text, and for a row of another length.
  std::optional<double> at(std::size_t row, std::size_t column) const;

 private:
  std::optional<double> number_of(const Any& cell) const;

  std::string name_;
  Zero zero_;
  Shape shape_;
  Any value_;
  com::sun::star::uno::Sequence<com::sun::star::uno::Sequence<Any>> rows_;  // none: a single value
};

// The sizes in a range of choices; whatever is not given is skipped.
std::vector<Length> sizes(std::string_view name, const Any& value);

// The user's own marks and sizes; a row without either is skipped.
MarkTable mark_table(const Argument& argument);

// A table, needed or not, without the blank rows at its end.
EntryTable table(std::string_view name, const Any& value);
EntryTable optional_table(std::string_view name, const Any& value);

// The one method of a drift; least squares unless given.
Method method(std::string_view name, const Any& value);

// A word such as a column's name; empty where not given.
std::string word(std::string_view name, const Any& value);

}  // namespace shimwright::cells
