// SPDX-License-Identifier: MPL-2.0
//
// The value functions in cells of the real office: single values, blanks, text, booleans, errors.
#include <gtest/gtest.h>

#include "sheet.hpp"

namespace shimwright::tests {
namespace {

struct Figure {
  std::string formula;
  double value;
};

void PrintTo(const Figure& figure, std::ostream* out) { *out << figure.formula; }

class Figures : public ::testing::TestWithParam<Figure> {};

TEST_P(Figures, come_out_to_the_last_digit) {
  Sheet sheet;
  EXPECT_EQ(sheet.error_of(GetParam().formula), 0);
  EXPECT_EQ(sheet.number_of(GetParam().formula), GetParam().value);
}

// Common practice, no source.
INSTANTIATE_TEST_SUITE_P(
    of_the_trade, Figures,
    ::testing::Values(
        Figure{"=SHIM.IDEAL(0.1;2.85;0.2)", 2.75}, Figure{"=SHIM.IDEAL(0.1;2.84;0.2)", 2.74},
        Figure{"=SHIM.IDEAL(0.05;2.75;0.15)", 2.65}, Figure{"=CLEARANCE.AFTER(0.1;2.85;2.75)", 0.2},
        Figure{"=CLEARANCE.AFTER(0.1;2.84;2.75)", 0.19},
        Figure{"=CLEARANCE.AFTER(0.1;2.5;3)", -0.4}, Figure{"=SHIM.MM(275)", 2.75},
        Figure{"=SHIM.MM(\"275\")", 2.75}, Figure{"=SHIM.MM(2755)", 2.755},
        Figure{"=SHIM.MM(2.75)", 2.75}, Figure{"=SHIM.MM(\"2,75\")", 2.75},
        Figure{"=SHIM.MM(75;\"hundredths\")", 0.75}, Figure{"=SHIM.MM(0.1;\"in\")", 2.54}));

// 1 in = 25.4 mm exactly: NIST SP 811.
INSTANTIATE_TEST_SUITE_P(of_lengths, Figures,
                         ::testing::Values(Figure{"=LENGTH.MM(1;\"in\")", 25.4},
                                           Figure{"=LENGTH.MM(\"0.004 in\")", 0.1016},
                                           Figure{"=LENGTH.MM(\"4 thou\")", 0.1016},
                                           Figure{"=LENGTH.MM(4;\"thou\")", 0.1016},
                                           Figure{"=LENGTH.MM(\"0,10 mm\")", 0.1},
                                           Figure{"=LENGTH.MM(\".108\"\"\")", 2.7432},
                                           Figure{"=LENGTH.MM(\"250 µm\")", 0.25},
                                           Figure{"=LENGTH.MM(250;\"um\")", 0.25},
                                           Figure{"=LENGTH.MM(0.1)", 0.1},
                                           Figure{"=LENGTH.MM(0)", 0}));

INSTANTIATE_TEST_SUITE_P(
    of_clearances, Figures,
    ::testing::Values(Figure{"=CLEARANCE.MARGIN(0.17;0.16;0.2)", 0.01},
                      Figure{"=CLEARANCE.MARGIN(0.1;0.16;0.2)", -0.06},
                      Figure{"=CLEARANCE.MARGIN(0.16;0.16;0.2)", 0},
                      Figure{"=CLEARANCE.MARGIN(-0.1;0.16;0.2)", -0.26},
                      Figure{"=CLEARANCE.AIM(0.16;0.2)", 0.19},
                      Figure{"=CLEARANCE.AIM(0.16;0.2;0)", 0.16},
                      Figure{"=CLEARANCE.AIM(0.16;0.2;1)", 0.2},
                      Figure{"=CLEARANCE.AIM(0.16;0.2;TRUE())", 0.2},
                      // common practice, no source
                      Figure{"=SHIM.PICK(0.1;2.85;0.16;0.2;0.2;SHIM.LADDER(2;3;0.05))", 2.75},
                      Figure{"=SHIM.PICK(0.1;2.84;0.16;0.2;0.2;SHIM.LADDER(2;3;0.05))", 2.75},
                      // aim left out: 0.19, which 2.76 brings
                      Figure{"=SHIM.PICK(0.1;2.85;0.16;0.2;;SHIM.LADDER(2;3;0.01))", 2.76},
                      Figure{"=SHIM.PICK(0.1;2.85;0.16;0.2;0;SHIM.LADDER(2;3;0.01))", 2.76},
                      Figure{"=SHIM.PICK(0.1;2.85;0.16;0.2;ZY1;SHIM.LADDER(2;3;0.01))", 2.76},
                      Figure{"=SHIM.PICK(0.1;2.85;0.16;0.2;0.18;2.77)", 2.77},
                      Figure{"=INDEX(SHIM.RANGE(0.1;2.85;0.16;0.2);1;1)", 2.75},
                      Figure{"=INDEX(SHIM.RANGE(0.1;2.85;0.16;0.2);1;2)", 2.79},
                      Figure{"=INDEX(SHIM.RANGE(0.1;2.85;0.16;0.2;0.01);1;2)", 2.78},
                      Figure{"=SUM(SHIM.LADDER(2.7;2.85;0.05))", 11.1},
                      Figure{"=ROWS(SHIM.LADDER(1;3;0.001))", 2001},
                      Figure{"=ROWS(SHIM.LADDER(2.75;2.75;0.05))", 1}));

struct Word {
  std::string formula;
  std::string text;
};

void PrintTo(const Word& word, std::ostream* out) { *out << word.formula; }

class Words : public ::testing::TestWithParam<Word> {};

TEST_P(Words, come_out_and_compare_equal) {
  Sheet sheet;
  EXPECT_EQ(sheet.text_of(GetParam().formula), GetParam().text);
  sheet.put("A1", GetParam().formula);
  EXPECT_EQ(sheet.number_of("=A1=\"" + GetParam().text + "\""), 1);
  EXPECT_EQ(sheet.number_of("=COUNTIF(A1:A2;\"=" + GetParam().text + "\")"), 1);
}

INSTANTIATE_TEST_SUITE_P(of_the_trade, Words,
                         ::testing::Values(Word{"=CLEARANCE.STATE(0.18;0.16;0.2)", "good"},
                                           Word{"=CLEARANCE.STATE(0.16;0.16;0.2)", "good"},
                                           Word{"=CLEARANCE.STATE(0.2;0.16;0.2)", "good"},
                                           Word{"=CLEARANCE.STATE(0.15;0.16;0.2)", "tight"},
                                           Word{"=CLEARANCE.STATE(0;0.16;0.2)", "tight"},
                                           Word{"=CLEARANCE.STATE(-0.1;0.16;0.2)", "tight"},
                                           Word{"=CLEARANCE.STATE(0.21;0.16;0.2)", "loose"},
                                           // guard band w = U: ILAC-G8:09/2019
                                           Word{"=CLEARANCE.STATE(0.17;0.16;0.2;0.02)", "tight?"},
                                           Word{"=CLEARANCE.STATE(0.22;0.16;0.2;0.02)", "loose?"},
                                           Word{"=CLEARANCE.STATE(\"later\";0.16;0.2)", "unread"},
                                           Word{"=CLEARANCE.STATE(\"\";0.16;0.2)", "unread"},
                                           Word{"=SHIM.TRUST(2.75;2.74)", "as marked"},
                                           Word{"=SHIM.TRUST(2.75;2.735)", "as marked"},
                                           Word{"=SHIM.TRUST(2.75;2.73)", "thinner"},
                                           Word{"=SHIM.TRUST(2.75;2.77)", "thicker"},
                                           Word{"=SHIM.TRUST(2.75;2.77;0.02)", "as marked"},
                                           Word{"=SHIM.TRUST(ZY1;2.77)", "unmarked"},
                                           Word{"=SHIM.TRUST(2.75;ZY1)", "unmeasured"},
                                           Word{"=SHIM.TRUST(ZY1;ZY1)", "unmeasured"}));

struct Refusal {
  std::string formula;
  int error;
};

void PrintTo(const Refusal& refusal, std::ostream* out) { *out << refusal.formula; }

class Refusals : public ::testing::TestWithParam<Refusal> {};

TEST_P(Refusals, show_the_error_in_the_cell) {
  Sheet sheet;
  EXPECT_EQ(sheet.error_of(GetParam().formula), GetParam().error);
}

INSTANTIATE_TEST_SUITE_P(
    of_what_cannot_be, Refusals,
    ::testing::Values(Refusal{"=CLEARANCE.STATE(0.1;0.2;0.16)", bad_argument},
                      Refusal{"=CLEARANCE.STATE(0.1;-0.1;0.16)", bad_argument},
                      Refusal{"=CLEARANCE.STATE(0.1;0.16;0.2;-0.01)", bad_argument},
                      Refusal{"=CLEARANCE.STATE(101;0.16;0.2)", bad_argument},
                      Refusal{"=CLEARANCE.MARGIN(0.1;0.2;0.16)", bad_argument},
                      Refusal{"=CLEARANCE.AIM(0.16;0.2;1.5)", bad_argument},
                      Refusal{"=CLEARANCE.AIM(0.16;0.2;-0.1)", bad_argument},
                      Refusal{"=CLEARANCE.AFTER(0.1;-2.85;2.75)", bad_argument},
                      Refusal{"=SHIM.IDEAL(0.1;-2.85;0.2)", bad_argument},
                      Refusal{"=SHIM.TRUST(-2.75;2.74)", bad_argument},
                      Refusal{"=SHIM.TRUST(2.75;2.74;-1)", bad_argument},
                      Refusal{"=SHIM.MM(275;\"letters\")", bad_argument},
                      Refusal{"=SHIM.MM(-2.75)", bad_argument},
                      Refusal{"=LENGTH.MM(1;\"ell\")", bad_argument},
                      Refusal{"=LENGTH.MM(\"101 mm\")", bad_argument},
                      Refusal{"=LENGTH.MM(1E300)", bad_argument},
                      Refusal{"=SHIM.LADDER(2.7;2.6;0.05)", bad_argument},
                      Refusal{"=SHIM.LADDER(2.7;2.8;-0.05)", bad_argument},
                      Refusal{"=SHIM.LADDER(1;11;0.001)", bad_argument},  // 10 001 sizes
                      Refusal{"=SHIM.PICK(0.1;2.85;0.16;0.2;0.3;2.75)", bad_argument},
                      Refusal{"=SHIM.PICK(0.1;2.85;0.16;0.2;0.2;-2.75)", bad_argument},
                      Refusal{"=SHIM.RANGE(0.1;2.85;0.2;0.16)", bad_argument}));

INSTANTIATE_TEST_SUITE_P(of_arguments_left_out, Refusals,
                         ::testing::Values(Refusal{"=CLEARANCE.STATE(;0.16;0.2)", bad_argument},
                                           Refusal{"=SHIM.IDEAL(0.1;2.85)", bad_argument},
                                           Refusal{"=SHIM.PLAN(A1:F2)", bad_argument}));

INSTANTIATE_TEST_SUITE_P(
    of_what_is_not_there, Refusals,
    ::testing::Values(Refusal{"=CLEARANCE.STATE(0.1;\"low\";0.2)", no_answer},
                      Refusal{"=CLEARANCE.STATE(0.1;0.16;ZY1)", no_answer},
                      Refusal{"=CLEARANCE.MARGIN(\"\";0.16;0.2)", no_answer},
                      Refusal{"=SHIM.IDEAL(0.1;ZY1;0.2)", no_answer},
                      Refusal{"=SHIM.IDEAL(0.1;2.85;ZY1)", no_answer},
                      Refusal{"=SHIM.IDEAL(0.1;0.05;0.2)", no_answer},  // none is that thin
                      Refusal{"=CLEARANCE.AFTER(0.1;2.85;ZY1)", no_answer},
                      Refusal{"=SHIM.MM(75)", no_answer}, Refusal{"=SHIM.MM(\"worn\")", no_answer},
                      Refusal{"=SHIM.MM(ZY1)", no_answer},
                      Refusal{"=LENGTH.MM(\"a hair\")", no_answer},
                      Refusal{"=SHIM.LADDER(ZY1;3;0.05)", no_answer},
                      Refusal{"=SHIM.PICK(0.1;2.85;0.16;0.2;0.2;3)", no_answer},
                      Refusal{"=SHIM.PICK(0.1;2.85;0.16;0.2;0.2;ZY1:ZY3)", no_answer},
                      Refusal{"=SHIM.RANGE(0.1;2.85;0.16;0.2;0.03)", no_answer}));

// 511 and 522: missing variable, circular reference, as Calc itself answers.
INSTANTIATE_TEST_SUITE_P(of_errors_handed_in, Refusals,
                         ::testing::Values(Refusal{"=CLEARANCE.STATE(1/0;0.16;0.2)", 532},
                                           Refusal{"=CLEARANCE.STATE(NA();0.16;0.2)", no_answer}));

TEST(Version, is_text_and_tells_a_reader_without_the_add_in) {
  Sheet sheet;
  EXPECT_EQ(sheet.text_of("=IFERROR(SHIM.VERSION();\"missing\")"), SHIMWRIGHT_VERSION);
}

TEST(Functions, can_be_called_from_macros) {
  double ideal = 0;
  EXPECT_TRUE(call("org.shimwright.Cells.shimIdeal", {number(0.1), number(2.85), number(0.2)}) >>=
              ideal);
  EXPECT_EQ(ideal, 2.75);
  rtl::OUString state;
  EXPECT_TRUE(call("CLEARANCE.STATE", {number(0.1), number(0.16), number(0.2)}) >>= state);
  EXPECT_EQ(office::from_office(state), "tight");
}

}  // namespace
}  // namespace shimwright::tests
