// SPDX-License-Identifier: MPL-2.0
//
// The add-in's library as it is shipped, loaded without an office: what the sentence of a refusal
// says, what of Calc's values is taken, and that nothing but the one exception ever leaves.
#include <dlfcn.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <com/sun/star/lang/IllegalArgumentException.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <com/sun/star/uno/RuntimeException.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <functional>
#include <limits>
#include <org/shimwright/XCells.hpp>
#include <stdexcept>
#include <string>
#include <utility>
#include <vector>

#include "cells/answer.hpp"
#include "office/text.hpp"

namespace shimwright::tests {
namespace {

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using org::shimwright::XCells;

const Reference<XCells>& the_cells() {
  static const Reference<XCells> cells = [] {
    using Constructor =
        css::uno::XInterface* (*)(css::uno::XComponentContext*, const Sequence<Any>&);
    void* library = dlopen(CELLS_LIBRARY, RTLD_NOW);
    if (library == nullptr) throw std::runtime_error(dlerror());
    const auto make = reinterpret_cast<Constructor>(dlsym(library, "shimwright_cells"));
    if (make == nullptr) throw std::runtime_error(dlerror());
    return Reference<XCells>(
        Reference<css::uno::XInterface>(make(nullptr, Sequence<Any>()), SAL_NO_ACQUIRE),
        css::uno::UNO_QUERY_THROW);
  }();
  return cells;
}

Any text(std::string_view words) { return Any(office::to_office(words)); }

// Rows of one or more cells.
Any range(const std::vector<std::vector<Any>>& rows) {
  Sequence<Sequence<Any>> made(static_cast<sal_Int32>(rows.size()));
  auto* row = made.getArray();
  for (const auto& cells : rows)
    *row++ = Sequence<Any>(cells.data(), static_cast<sal_Int32>(cells.size()));
  return Any(made);
}

std::string sentence_of(const std::function<Any()>& question) {
  try {
    question();
  } catch (const css::lang::IllegalArgumentException& refusal) {
    return office::from_office(refusal.Message);
  }
  return "no refusal";
}

std::string state_sentence(const Any& clearance, const Any& min, const Any& max,
                           const Any& doubt = Any()) {
  return sentence_of([&] { return the_cells()->clearanceState(clearance, min, max, doubt); });
}

TEST(Refusal, names_the_argument_that_is_missing) {
  EXPECT_EQ(state_sentence(Any(), Any(0.16), Any(0.2)), "the argument clearance is missing");
}

TEST(Refusal, tells_the_limits_that_cannot_be) {
  const std::string sentence = state_sentence(Any(0.1), Any(0.2), Any(0.16));
  EXPECT_NE(sentence.find("0.20 mm"), std::string::npos) << sentence;
  EXPECT_NE(sentence.find("0.16 mm"), std::string::npos) << sentence;
}

TEST(Refusal, tells_the_row_and_the_argument) {
  const std::string sentence =
      state_sentence(range({{Any(0.1)}, {Any(150.0)}}), Any(0.16), Any(0.2));
  EXPECT_TRUE(sentence.starts_with("row 2 of the ranges: clearance: ")) << sentence;
}

TEST(Refusal, tells_both_shapes) {
  EXPECT_EQ(state_sentence(range({{Any(0.1)}, {Any(0.1)}, {Any(0.1)}}),
                           range({{Any(0.16), Any(0.16)}}), Any(0.2)),
            "clearance has 3 rows by 1 column, min has 1 row by 2 columns: ranges must be of one "
            "shape");
}

TEST(Refusal, of_a_whole_column_says_how_much_is_possible) {
  const std::vector<std::vector<Any>> column(1'048'576, {text("")});
  EXPECT_EQ(state_sentence(range(column), Any(0.16), Any(0.2)),
            "clearance has 1048576 rows by 1 column: at most 100000 cells can be answered at once");
}

TEST(Refusal, lists_the_columns_there_are) {
  EXPECT_EQ(
      sentence_of([] { return the_cells()->shimCheck(Any(0.0), Any(0.0), Any(), text("colour")); }),
      "part 'colour' is none of table, row, column, trouble");
}

TEST(Refusal, of_a_range_where_one_value_is_due_says_so) {
  EXPECT_EQ(sentence_of([] {
              return the_cells()->shimLadder(range({{Any(2.0)}, {Any(2.1)}}), Any(3.0), Any(0.1));
            }),
            "from is one value, not a range of 2 rows by 1 column");
}

TEST(Refusal, of_an_unknown_unit_lists_the_known) {
  EXPECT_EQ(sentence_of([] { return the_cells()->lengthMm(Any(1.0), text("ell")); }),
            "unit: 'ell' is unknown: use mm, in, thou or um");
}

std::string stops_sentence(const Any& firing, const Any& timing = Any(),
                           const Any& margin = Any()) {
  return sentence_of([&] { return the_cells()->crankStops(firing, timing, margin, Any()); });
}

TEST(Refusal, of_a_firing_tells_what_is_wrong_with_it) {
  EXPECT_EQ(stops_sentence(Any()), "the argument firing is missing");
  EXPECT_EQ(stops_sentence(text("1-3-4")), "the firing order leaves out cylinder 2");
  EXPECT_EQ(stops_sentence(range({{text("cylinder"), text("angle")}, {Any(1.0), text("")}})),
            "firing, row 2, firing angle: it is missing");
}

TEST(Refusal, of_timing_and_margin_tells_what_is_wrong_with_them) {
  EXPECT_EQ(stops_sentence(Any(1.0), range({{Any(20.0), text("60\u00b0"), Any(60.0), Any(20.0)}})),
            "timing, inlet closes after BDC: \"60\u00b0\" is not a number of degrees");
  EXPECT_EQ(stops_sentence(Any(1.0), Any(), Any(-1.0)),
            "a margin of -1\u00b0: it lies between 0\u00b0 and 180\u00b0");
  EXPECT_EQ(stops_sentence(Any(1.0), Any(), range({{Any(5.0)}, {Any(5.0)}})),
            "margin is one value, not a range of 2 rows by 1 column");
}

std::string steps_sentence(const Any& stops) {
  const Any valves = range({{text("A"), text(""), Any(0.1), Any(2.8), Any(0.16), Any(0.2)},
                            {text("B"), text(""), Any(0.18), Any(2.8), Any(0.16), Any(0.2)}});
  const Any shims = range({{text("sale"), text(""), Any(2.7)}});
  return sentence_of([&] { return the_cells()->shimSteps(valves, shims, stops, Any(), Any()); });
}

TEST(Refusal, of_stops_tells_the_row_or_the_valve) {
  EXPECT_EQ(steps_sentence(range({{text("a"), Any(1.0)}})), "no refusal");
  EXPECT_EQ(steps_sentence(range({{text("a"), Any(1.0)}, {text("C"), Any(1.0)}})),
            "stops, row 2, valve: \"C\" is none of the valves");
  EXPECT_EQ(steps_sentence(range({{text("A"), Any(1.5)}})),
            "stops, row 1, stop: 1.5 is not the number of a stop: stops count 1, 2, 3 and so on");
  EXPECT_EQ(
      steps_sentence(range({{text("B"), Any(1.0)}})),
      "valve \"A\": its shim is to be changed, but it can be worked on at no stop of the crank");
}

std::string drift_sentence(const Any& distance, const Any& clearance, const Any& shim,
                           const Any& method = Any()) {
  return sentence_of(
      [&] { return the_cells()->clearanceDrift(distance, clearance, shim, method); });
}

TEST(Refusal, of_a_history_tells_the_check_or_the_shapes) {
  const Any three = range({{Any(0.1)}, {Any(0.2)}, {Any(0.3)}});
  EXPECT_EQ(drift_sentence(three, three, Any(2.7)), "no refusal");
  EXPECT_EQ(drift_sentence(three, three, Any()), "the argument shim is missing");
  EXPECT_EQ(drift_sentence(three, range({{Any(0.1)}, {Any(0.2)}}), Any(2.7)),
            "distance has 3 rows by 1 column, clearance has 2 rows by 1 column: ranges must be of "
            "one shape");
  EXPECT_EQ(drift_sentence(three, three, range({{Any(2.7)}, {Any(-2.7)}, {Any(2.7)}})),
            "check 2: a shim of -2.70 mm cannot be: a thickness is above zero");
  EXPECT_EQ(drift_sentence(three, three, Any(2.7), text("mean")),
            "method: \"mean\" is unknown: use least or median");
  EXPECT_EQ(drift_sentence(three, range({{Any(0.1)}, {Any(0.2), Any(0.2)}, {Any(0.3)}}), Any(2.7)),
            "clearance is a range whose rows are not of one length");
  EXPECT_EQ(drift_sentence(three, range({}), Any(2.7)), "clearance is a range without cells");
  EXPECT_EQ(drift_sentence(three, three, Any(the_cells())), "shim is neither a number nor a text");
}

TEST(Refusal, of_a_confidence_says_what_it_may_be) {
  const Any three = range({{Any(0.1)}, {Any(0.2)}, {Any(0.3)}});
  EXPECT_EQ(sentence_of([&] {
              return the_cells()->clearanceDue(three, three, Any(2.7), Any(2.7), Any(0.1), Any(0.2),
                                               Any(95.0));
            }),
            "a confidence of 95 cannot be used: it is at least 0.5 and below 1, such as 0.95");
}

TEST(Refusal, of_a_part_lists_those_beside_the_table_too) {
  EXPECT_EQ(
      sentence_of([] { return the_cells()->crankStops(Any(1.0), Any(), Any(), text("colour")); }),
      "part 'colour' is none of stop, angle, cylinder, side, clear, words");
}

TEST(Refusal, of_numbers_that_are_none_leaves_as_the_one_exception) {
  for (const double strange : {std::numeric_limits<double>::quiet_NaN(),
                               std::numeric_limits<double>::infinity(), -1e308, 1e308}) {
    EXPECT_NE(state_sentence(Any(strange), Any(0.16), Any(0.2)), "no refusal");
    EXPECT_NE(
        sentence_of([&] { return the_cells()->shimLadder(Any(strange), Any(3.0), Any(0.1)); }),
        "no refusal");
    EXPECT_NE(
        sentence_of([&] { return the_cells()->clearanceAim(Any(0.1), Any(0.2), Any(strange)); }),
        "no refusal");
    EXPECT_NE(stops_sentence(Any(strange)), "no refusal");
    EXPECT_NE(stops_sentence(Any(1.0), Any(), Any(strange)), "no refusal");
    EXPECT_NE(steps_sentence(Any(strange)), "no refusal");
    EXPECT_NE(drift_sentence(Any(strange), Any(0.1), Any(2.7)), "no refusal");
    EXPECT_NE(drift_sentence(Any(0.1), Any(0.1), Any(strange)), "no refusal");
  }
}

TEST(Refusal, of_what_calc_never_hands_over_leaves_as_the_one_exception) {
  EXPECT_EQ(state_sentence(Any(the_cells()), Any(0.16), Any(0.2)),
            "clearance is neither a number nor a text");
  EXPECT_EQ(state_sentence(range({{Any(0.1), Any(0.1)}, {Any(0.1)}}), Any(0.16), Any(0.2)),
            "clearance is a range whose rows are not of one length");
  EXPECT_EQ(state_sentence(range({}), Any(0.16), Any(0.2)), "clearance is a range without cells");
}

TEST(Refusal, keeps_the_words_of_whatever_was_thrown) {
  const auto sentence = [](const auto& thrown) {
    return sentence_of([&] { return cells::answer([&]() -> Any { throw thrown; }, the_cells()); });
  };
  EXPECT_EQ(sentence(std::runtime_error("the core said so")), "the core said so");
  EXPECT_EQ(sentence(css::uno::RuntimeException(office::to_office("the office said so"))),
            "the office said so");
  EXPECT_EQ(sentence(css::uno::RuntimeException()), "something went wrong that has no name");
  EXPECT_EQ(sentence(5), "something went wrong that has no name");
}

TEST(Values, of_every_kind_of_number_are_taken) {
  EXPECT_EQ(the_cells()->shimMm(Any(sal_Int32(275)), Any()), Any(2.75));
  EXPECT_EQ(the_cells()->clearanceAim(Any(0.1), Any(sal_Int16(1)), Any(false)), Any(0.1));
  EXPECT_EQ(the_cells()->clearanceAim(Any(0.1), Any(0.2), Any(true)), Any(0.2));
}

TEST(Values, of_every_kind_of_number_are_taken_in_a_history) {
  const Any distances = range({{Any(sal_Int32(0))}, {Any(sal_Int16(1000))}, {Any(2000.0)}});
  const Any gaps = range({{Any(0.2)}, {Any(0.19)}, {Any(true)}});
  Sequence<Sequence<Any>> row;
  ASSERT_TRUE(the_cells()->clearanceDrift(distances, gaps, Any(2.7), Any()) >>= row);
  EXPECT_EQ(row[0][4], Any(3.0));
}

TEST(Values, that_are_not_given_make_a_void_answer) {
  EXPECT_FALSE(the_cells()->shimIdeal(text(""), Any(2.85), Any(0.2)).hasValue());
  EXPECT_FALSE(the_cells()->shimIdeal(Any(0.1), Any(0.0), Any(0.2)).hasValue());
  EXPECT_FALSE(the_cells()->shimIdeal(Any(0.1), Any(2.85), text("later")).hasValue());
}

TEST(Texts, over_a_range_come_as_texts_only) {
  Sequence<Sequence<rtl::OUString>> states;
  EXPECT_TRUE(the_cells()->clearanceState(range({{Any(0.1)}, {text("")}}), Any(0.16), Any(0.2),
                                          Any()) >>= states);
}

TEST(Numbers, not_given_in_a_range_come_as_empty_text) {
  Sequence<Sequence<Any>> margins;
  ASSERT_TRUE(the_cells()->clearanceMargin(range({{Any(0.1)}, {text("")}}), Any(0.16), Any(0.2)) >>=
              margins);
  EXPECT_EQ(margins[1][0], Any(rtl::OUString()));
}

TEST(Object, tells_its_name) {
  const Reference<css::lang::XServiceInfo> info(the_cells(), css::uno::UNO_QUERY_THROW);
  EXPECT_EQ(office::from_office(info->getImplementationName()), "org.shimwright.Cells");
  EXPECT_TRUE(info->supportsService(office::to_office("org.shimwright.Cells")));
}

// 0.10 over 2.48 and 0.24 over 2.50, limits 0.25 to 0.27, on sale 2.30 and 2.50: none serves, but
// with the nearest in A its own shim serves B.
TEST(Nearest, is_a_column_of_the_valves_and_a_rule) {
  const auto actions = [](const Any& nearest, const Any& rules) {
    const Any no = text("");
    const auto valve = [&no](const char* name, double clearance, double shim, const Any& last) {
      return std::vector<Any>{
          text(name), no, Any(clearance), Any(shim), Any(0.25), Any(0.27), no, no, no, last};
    };
    const Any valves = range({valve("A", 0.10, 2.48, nearest), valve("B", 0.24, 2.50, no)});
    const Any shims = range({{text("sale"), no, Any(2.30)}, {text("sale"), no, Any(2.50)}});
    Sequence<Sequence<rtl::OUString>> found;
    the_cells()->shimPlan(valves, shims, rules, text("action")) >>= found;
    return office::from_office(std::as_const(found)[0][0]) + " " +
           office::from_office(std::as_const(found)[1][0]);
  };
  EXPECT_EQ(actions(text(""), Any()), "none none");
  EXPECT_EQ(actions(text("yes"), Any()), "buy move");
  EXPECT_EQ(actions(text(""), range({{text("nearest"), text("yes")}})), "buy move");
}

// As Calc hands over whole columns: a million rows, most of them blank.
Any whole_columns(const std::vector<std::vector<Any>>& used, std::size_t columns) {
  constexpr std::size_t all = 1'048'576;
  std::vector<std::vector<Any>> rows = used;
  rows.resize(all, std::vector<Any>(columns, text("")));
  return range(rows);
}

TEST(Bounds, ten_thousand_marks_are_found_in_a_table_of_as_many) {
  std::vector<std::vector<Any>> table;
  std::vector<std::vector<Any>> marks;
  for (int i = 0; i < 10'000; ++i) {
    const Any mark = text("mark " + std::to_string(i));
    table.push_back({mark, Any(2.0 + 0.0001 * i)});
    marks.push_back({mark});
  }
  std::ranges::reverse(marks);
  const Any sizes = the_cells()->shimMm(range(marks), range(table));
  Sequence<Sequence<Any>> found;
  ASSERT_TRUE(sizes >>= found);
  EXPECT_EQ(std::as_const(found)[0][0], Any(2.9999));
  EXPECT_EQ(std::as_const(found)[9999][0], Any(2.0));
}

TEST(Bounds, whole_columns_are_read_as_far_as_they_are_used) {
  const Any marks = whole_columns({{text("A"), Any(2.5)}, {text("B"), Any(2.6)}}, 2);
  EXPECT_EQ(the_cells()->shimMm(text("b"), marks), Any(2.6));
  const Any shims = whole_columns({{text("spare"), text(""), Any(2.7)}}, 3);
  const Any valves = range({{text("V"), text(""), Any(0.1), Any(2.8), Any(0.16), Any(0.2)}});
  Sequence<Sequence<rtl::OUString>> action;
  ASSERT_TRUE(the_cells()->shimPlan(valves, shims, Any(), text("action")) >>= action);
  EXPECT_EQ(std::as_const(action)[0][0], office::to_office("spare"));
}

TEST(Bounds, more_cells_than_any_table_has_are_refused_before_they_are_read) {
  const Any full = range(std::vector<std::vector<Any>>(500'001, {Any(1.0), Any(2.0)}));
  EXPECT_EQ(sentence_of([&] { return the_cells()->shimMm(Any(275.0), full); }),
            "scheme has 500001 rows by 2 columns: at most 1000000 cells can be read");
}

}  // namespace
}  // namespace shimwright::tests
