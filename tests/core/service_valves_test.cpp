// SPDX-License-Identifier: MPL-2.0
//
// What the book shows for each valve: every column of the View's table `valves`. Check values by
// hand from the formulas of clearance.hpp and choice.hpp: gap after = gap + shim out - shim in.
#include <gtest/gtest.h>

#include <algorithm>

#include "service_entries.hpp"

namespace shimwright::tests {
namespace {

class ShownValves : public ::testing::Test {
 protected:
  ShownValves() { book.limits(0.16, 0.22); }

  std::string shown(std::string_view column, const std::string& valve = "1 IN L") const {
    return book.of_valve(valve, column);
  }

  ServiceEntries book;
};

TEST_F(ShownValves, are_in_the_order_of_the_layout) {
  const View view = book.view();
  ASSERT_EQ(view["valves"].rows.size(), 16U);
  for (std::size_t i = 0; i < book.valves().size(); ++i)
    EXPECT_EQ(view["valves"].at("name", i + 1), book.valves()[i]);
}

// Without a doubt the limits themselves are good; with one, what lies nearer to them is doubtful.
TEST_F(ShownValves, have_each_state_with_its_word_and_sign) {
  struct Case {
    double gap;
    double doubt;
    const char* state;
    const char* now;
  };
  const Case cases[] = {
      {0.15, 0, "tight", "\u25bc tight"},       {0.16, 0, "good", "\u25cf good"},
      {0.22, 0, "good", "\u25cf good"},         {0.221, 0, "loose", "\u25b2 loose"},
      {0.165, 0.01, "tight?", "\u25bd tight?"}, {0.155, 0.01, "tight?", "\u25bd tight?"},
      {0.149, 0.01, "tight", "\u25bc tight"},   {0.17, 0.01, "good", "\u25cf good"},
      {0.215, 0.01, "loose?", "\u25b3 loose?"}, {0.231, 0.01, "loose", "\u25b2 loose"},
  };
  for (const Case& one : cases) {
    book.setting("doubt", one.doubt).gap("1 IN L", one.gap);
    EXPECT_EQ(shown("state"), one.state) << one.gap;
    EXPECT_EQ(shown("now"), one.now) << one.gap;
  }
}

TEST_F(ShownValves, are_unread_without_a_gap_and_have_no_state_then) {
  EXPECT_EQ(shown("state"), "unread");
  EXPECT_EQ(shown("now"), "\u25cb unread");
  EXPECT_EQ(shown("then state"), "unread");
  for (const char* column : {"card do", "card from", "after label", "after", "card then", "gap"})
    EXPECT_EQ(shown(column), "") << column;
}

TEST_F(ShownValves, ask_for_the_limits_where_a_gap_cannot_be_judged) {
  ServiceEntries blank;
  blank.gap("1 IN L", 0.2);
  EXPECT_EQ(blank.of_valve("1 IN L", "state"), "unjudged");
  EXPECT_EQ(blank.of_valve("1 IN L", "now"), "limits?");
  EXPECT_EQ(blank.of_valve("1 IN L", "limits"), "");
}

TEST_F(ShownValves, ask_for_the_gap_where_it_is_no_length) {
  book.gap("1 IN L", "wide").gap("2 IN L", "#error");
  for (const char* valve : {"1 IN L", "2 IN L"}) {
    EXPECT_NE(shown("state", valve), "good") << valve;
    EXPECT_EQ(shown("gap", valve), "") << valve;
  }
}

TEST_F(ShownValves, have_the_limits_of_their_side) {
  book.set("side", "exhaust", 0, 0.235).set("side", "exhaust", 1, 0.28);
  EXPECT_EQ(shown("limits"), "limits 0.16\u20130.22");
  EXPECT_EQ(shown("limits", "1 EX L"), "limits 0.235\u20130.280");
}

// Of an inline four firing 1-3-4-2 with usual timing, cylinder 1's lobes are clear at the first.
TEST_F(ShownValves, name_the_stop_at_which_the_gap_is_measured) {
  EXPECT_EQ(shown("gap label", "1 IN L"), "gap, stop 1");
  std::vector<std::string> labels;
  for (const std::string& valve : book.valves()) labels.push_back(shown("gap label", valve));
  EXPECT_TRUE(std::ranges::all_of(
      labels, [](const std::string& label) { return label.starts_with("gap, stop "); }));
  book.setting("firing", "");
  EXPECT_EQ(shown("gap label", "1 IN L"), "gap");
}

TEST_F(ShownValves, say_what_is_known_of_the_shim) {
  EXPECT_EQ(shown("shim is"), "");
  book.mark("1 IN L", 270.0);
  EXPECT_EQ(shown("shim is"), "shim not measured");
  EXPECT_EQ(shown("shim"), "2.700");
  EXPECT_EQ(shown("shim odd"), "");
  book.micrometer("1 IN L", 2.702);
  EXPECT_EQ(shown("shim is"), "shim is as marked");
  EXPECT_EQ(shown("shim"), "2.702");
  EXPECT_EQ(shown("shim odd"), "");
  book.micrometer("1 IN L", 2.66);
  EXPECT_EQ(shown("shim is"), "0.04 thinner than marked");
  EXPECT_EQ(shown("shim odd"), "yes");
  book.micrometer("1 IN L", 2.73);
  EXPECT_EQ(shown("shim is"), "0.03 thicker than marked");
  EXPECT_EQ(shown("shim odd"), "yes");
  book.mark("1 IN L", "");
  EXPECT_EQ(shown("shim is"), "shim has no mark");
  EXPECT_EQ(shown("shim odd"), "");
}

// Half a hundredth is too little to call it worn.
TEST_F(ShownValves, take_the_allowed_difference_that_is_entered) {
  book.mark("1 IN L", 270.0).micrometer("1 IN L", 2.68);
  EXPECT_EQ(shown("shim odd"), "yes");
  book.setting("allowed difference", 0.02);
  EXPECT_EQ(shown("shim odd"), "");
}

TEST_F(ShownValves, move_a_shim_out_of_another_valve_and_say_what_comes_of_it) {
  // 0.10 + 2.80 - 2.70 = 0.20; 0.30 + 2.70 - 2.80 = 0.20.
  book.gap("1 IN L", 0.10).micrometer("1 IN L", 2.80);
  book.gap("2 IN L", 0.30).micrometer("2 IN L", 2.70);
  const View view = book.view();
  const auto of = [&](std::string_view column) { return book.of_valve(view, "1 IN L", column); };
  EXPECT_EQ(of("action"), "move");
  EXPECT_EQ(of("card do"), "move 2.700");
  EXPECT_EQ(of("do"), "move");
  EXPECT_EQ(of("fit"), "2.700");
  EXPECT_EQ(of("card from"), "from 2 IN L");
  EXPECT_EQ(of("from"), "2 IN L");
  EXPECT_EQ(of("after label"), "after");
  EXPECT_EQ(of("after"), "0.200");
  EXPECT_EQ(of("margin"), "0.020");
  EXPECT_EQ(of("card then"), "then \u25cf good");
  EXPECT_EQ(of("then"), "\u25cf good");
  EXPECT_EQ(of("then state"), "good");
  EXPECT_EQ(of("kept"), "");
  EXPECT_EQ(of("outside"), "");
  EXPECT_EQ(of("cost"), "");
}

TEST_F(ShownValves, have_a_shim_measured_that_moves_by_its_mark_alone) {
  book.gap("1 IN L", 0.10).micrometer("1 IN L", 2.80);
  book.gap("2 IN L", 0.30).mark("2 IN L", 270.0);
  EXPECT_EQ(shown("card from"), "from 2 IN L, measure it");
  EXPECT_EQ(shown("from"), "2 IN L, measure it");
}

TEST_F(ShownValves, take_a_spare_or_buy) {
  book.gap("1 IN L", 0.10).micrometer("1 IN L", 2.80).spare(1, "A", 2.70);
  EXPECT_EQ(shown("card do"), "spare 2.700");
  EXPECT_EQ(shown("card from"), "from the spares");
  EXPECT_EQ(shown("from"), "spares");
  book.spare(1, "A", 2.40).sizes(1, "A", 2.70, 2.70, 0.05, 6.9);
  EXPECT_EQ(shown("card do"), "buy 2.700");
  EXPECT_EQ(shown("card from"), "to order");
  EXPECT_EQ(shown("from"), "order");
  EXPECT_EQ(shown("cost"), "6.90");
}

TEST_F(ShownValves, are_kept_where_they_are_good) {
  book.gap("1 IN L", 0.20).micrometer("1 IN L", 2.80);
  EXPECT_EQ(shown("card do"), "keep");
  EXPECT_EQ(shown("kept"), "yes");
  EXPECT_EQ(shown("card from"), "");
  EXPECT_EQ(shown("fit"), "");
}

// 0.10 + 2.85 - 0.22 = 2.73, 0.10 + 2.85 - 0.16 = 2.79.
TEST_F(ShownValves, say_which_size_is_needed_where_none_fits) {
  book.gap("2 IN R", 0.10).micrometer("2 IN R", 2.85).spare(1, "A", 2.5);
  EXPECT_EQ(shown("card do", "2 IN R"), "none fits");
  EXPECT_EQ(shown("do", "2 IN R"), "none fits");
  EXPECT_EQ(shown("card from", "2 IN R"), "needs 2.73\u20132.79");
  EXPECT_EQ(shown("from", "2 IN R"), "needs 2.73\u20132.79");
  EXPECT_EQ(shown("outside", "2 IN R"), "yes");
}

// 0.10 + 2.48 - 2.33 = 0.25; sizes of 2.30 and 2.35 leave 0.28 and 0.23, by 0.01 and 0.02 outside.
class ValveBetweenTwoSizes : public ShownValves {
 protected:
  ValveBetweenTwoSizes() {
    book.limits(0.25, 0.27).sizes(1, "A", 2.00, 3.50, 0.05, 5);
    book.gap("1 IN L", 0.10).micrometer("1 IN L", 2.48);
    book.gap("2 IN L", 0.24).micrometer("2 IN L", 2.50);
  }
};

TEST_F(ValveBetweenTwoSizes, says_what_the_nearest_listed_size_would_leave) {
  EXPECT_EQ(shown("card do"), "none fits");
  EXPECT_EQ(shown("from"), "needs 2.31\u20132.33");
  EXPECT_EQ(shown("foot label"), "nearest");
  EXPECT_EQ(shown("foot value"), "2.300");
  EXPECT_EQ(shown("foot"), "0.280, 0.010 too loose");
  EXPECT_EQ(shown("after"), "0.100") << "it keeps its shim";
  EXPECT_EQ(shown("then state"), "tight");
  EXPECT_EQ(shown("foot label", "2 IN L"), "after") << "no size comes nearer than its own shim";
  EXPECT_EQ(shown("foot value", "2 IN L"), "0.240");
  EXPECT_EQ(shown("foot", "2 IN L"), "then \u25bc tight");
  EXPECT_NE(box_of(book.view(), "plan")
                .find("Nearest sizes listed: 1 IN L 2.300 (0.280, 0.010 too loose)."),
            std::string::npos)
      << box_of(book.view(), "plan");
  book.gap("1 IN L", 0.40);  // 2.88: 2.60 leaves 0.28, 2.65 leaves 0.23
  book.sizes(1, "A", 2.65, 2.65, 0.05, 5);
  EXPECT_EQ(shown("foot"), "0.230, 0.020 too tight");
}

TEST_F(ValveBetweenTwoSizes, takes_the_nearest_where_that_is_chosen_and_gives_its_own) {
  book.set("valve", "1 IN L", 3, "nearest");
  EXPECT_EQ(shown("card do"), "buy 2.300");
  EXPECT_EQ(shown("after"), "0.280");
  EXPECT_EQ(shown("margin"), "-0.010");
  EXPECT_EQ(shown("then"), "\u25b2 loose");
  EXPECT_EQ(shown("outside"), "yes") << "as loud as before";
  EXPECT_EQ(shown("foot"), "then \u25b2 loose");
  EXPECT_EQ(shown("card do", "2 IN L"), "move 2.480");
  EXPECT_EQ(shown("after", "2 IN L"), "0.260");
  EXPECT_EQ(shown("outside", "2 IN L"), "");
  const View view = book.view();
  EXPECT_EQ(view["book"].at("count outside"), "1");
  EXPECT_EQ(view["book"].at("count none"), "0");
  EXPECT_EQ(view["book"].at("outside count"), "1");
  EXPECT_NE(
      box_of(view, "plan").find("Still reading out of limits: 1 IN L, even with the nearest shim."),
      std::string::npos)
      << box_of(view, "plan");
  EXPECT_EQ(view["boxes"].at("mood plan"), "loud");
  EXPECT_EQ(view["book"].at("remarks count"), "0");
}

TEST_F(ValveBetweenTwoSizes, takes_the_nearest_where_that_is_set_for_all) {
  book.setting("nearest", "yes");
  EXPECT_EQ(shown("card do"), "buy 2.300");
  book.set("valve", "1 IN L", 3, "leave");
  EXPECT_EQ(shown("card do"), "stays tight");
}

TEST_F(ValveBetweenTwoSizes,
       is_left_alone_for_every_word_that_says_so_and_for_one_that_is_unclear) {
  for (const Entry& entry : {Entry("leave"), Entry(" Leave "), Entry("yes"), Entry("x"), Entry(1.0),
                             Entry("TRUE"), Entry("perhaps")}) {
    book.set("valve", "1 IN L", 3, entry);
    EXPECT_EQ(shown("do"), "stays tight");
  }
  for (const Entry& entry : {Entry("no"), Entry(""), Entry(0.0), Entry("#error")}) {
    book.set("valve", "1 IN L", 3, entry);
    EXPECT_EQ(shown("do"), "none fits");
  }
}

TEST_F(ValveBetweenTwoSizes, says_it_in_inches_where_the_book_is) {
  ServiceEntries inches;
  inches.setting("unit", "inch").limits(0.0100, 0.0104).sizes(1, "A", 0.08, 0.12, 0.002, 5);
  inches.gap("1 IN L", 0.004).micrometer("1 IN L", 0.0993);  // 0.1033: 0.094 leaves 0.0093
  EXPECT_EQ(inches.of_valve("1 IN L", "foot value"), "0.0940");
  EXPECT_EQ(inches.of_valve("1 IN L", "foot"), "0.0093, 0.0007 too tight");
}

// Nobody has looked yet whether a shim fits.
TEST_F(ShownValves, ask_for_the_shims_as_long_as_none_is_listed) {
  book.gap("2 IN R", 0.10).micrometer("2 IN R", 2.85);
  EXPECT_EQ(shown("card do", "2 IN R"), "list shims");
  EXPECT_EQ(shown("card from", "2 IN R"), "needs 2.73\u20132.79");
  const View view = book.view();
  EXPECT_EQ(view["book"].at("label none"), "list shims first");
  EXPECT_EQ(view["book"].at("count none"), "1");
  EXPECT_EQ(view["book"].at("outside label"), "valves that want a shim");
  EXPECT_EQ(view["book"].at("outside count"), "1");
  EXPECT_NE(box_of(view, "plan").find("list the spares and the sizes on sale on Shims first"),
            std::string::npos);
}

TEST_F(ShownValves, keep_a_good_valve_whose_shim_nobody_has_seen) {
  book.gap("1 IN L", 0.20).gap("2 IN L", 0.10);
  EXPECT_EQ(shown("do"), "keep");
  EXPECT_EQ(shown("from"), "no need to measure this shim");
  EXPECT_EQ(shown("card do"), "keep");
  EXPECT_EQ(shown("card from"), "no need to measure");
  EXPECT_EQ(shown("card then"), "then \u25cf good");
  EXPECT_EQ(shown("do", "2 IN L"), "measure");
  EXPECT_EQ(shown("card do", "2 IN L"), "measure shim");
  const View view = book.view();
  EXPECT_EQ(view["book"].at("count keep"), "1");
  EXPECT_EQ(view["book"].at("count unread"), "15");
  EXPECT_EQ(view["book"].at("gaps measured"), "2 of 16");
  EXPECT_EQ(view["book"].at("shims known"), "0 of 15");
}

TEST_F(ShownValves, are_not_called_unread_where_only_the_shim_is_missing) {
  book.gap("2 IN L", 0.10);
  EXPECT_EQ(shown("now", "2 IN L"), "\u25bc tight");
  EXPECT_EQ(shown("then", "2 IN L"), "shim unknown");
  EXPECT_EQ(shown("then", "3 IN L"), "\u25cb unread");
  EXPECT_EQ(shown("action", "2 IN L"), "unread") << "SHIM.PLAN's own word";
  book.micrometer("2 IN L", 2.70);
  EXPECT_EQ(shown("then", "2 IN L"), "\u25bc tight");
}

TEST_F(ShownValves, have_the_gap_measured_where_the_shim_is_known) {
  book.mark("1 IN L", 270.0);
  EXPECT_EQ(shown("card do"), "measure gap");
  EXPECT_EQ(shown("do"), "measure");
}

TEST_F(ShownValves, have_every_shim_measured_where_good_valves_may_be_opened) {
  book.gap("1 IN L", 0.20).setting("touch good", "yes");
  EXPECT_EQ(shown("do"), "measure");
  EXPECT_EQ(shown("card do"), "measure shim");
  EXPECT_EQ(book.view()["book"].at("shims known"), "0 of 16");
}

TEST_F(ShownValves, have_a_doubtful_valve_measured_unless_the_plan_ignores_the_doubt) {
  book.gap("1 IN L", 0.165).setting("doubt", 0.01);
  EXPECT_EQ(shown("do"), "measure");
  book.setting("stay clear", "no");
  EXPECT_EQ(shown("do"), "keep");
}

// Its shim known or not.
TEST_F(ShownValves, left_alone_stay_outside_their_limits_and_say_so) {
  book.gap("1 EX L", 0.10).leave_alone("1 EX L");
  book.gap("3 EX R", 0.30).mark("3 EX R", 270.0).leave_alone("3 EX R");
  book.gap("4 EX L", 0.20).leave_alone("4 EX L");
  EXPECT_EQ(shown("do", "1 EX L"), "stays tight");
  EXPECT_EQ(shown("card do", "1 EX L"), "stays tight");
  EXPECT_EQ(shown("do", "3 EX R"), "stays loose");
  EXPECT_EQ(shown("from", "3 EX R"), "left alone, as entered");
  EXPECT_EQ(shown("outside", "3 EX R"), "yes");
  EXPECT_EQ(shown("kept", "3 EX R"), "");
  EXPECT_EQ(shown("do", "4 EX L"), "keep");
  EXPECT_EQ(shown("outside", "4 EX L"), "");
  const View view = book.view();
  EXPECT_EQ(view["book"].at("count outside"), "2");
  EXPECT_EQ(view["book"].at("count keep"), "1");
  EXPECT_EQ(view["book"].at("outside count"), "2");
  EXPECT_NE(box_of(view, "plan").find("Still reading out of limits: 1 EX L and 3 EX R, left alone"),
            std::string::npos)
      << box_of(view, "plan");
}

// The gap may be anything below the thinnest blade.
TEST_F(ShownValves, are_to_be_measured_again_where_no_blade_goes) {
  book.gap("1 IN L", 0.0).micrometer("1 IN L", 2.80).spare(1, "A", 2.60);
  EXPECT_EQ(shown("state"), "tight");
  EXPECT_EQ(shown("card do"), "spare 2.600");
  EXPECT_EQ(shown("then"), "measure again");
  EXPECT_EQ(shown("card then"), "then measure again");
  EXPECT_EQ(shown("then state"), "again");
  EXPECT_EQ(shown("margin"), "");
}

// Nothing can be planned.
TEST_F(ShownValves, say_that_the_entries_are_to_be_corrected_first) {
  book.gap("1 IN L", 0.10).micrometer("1 IN L", 2.80).gap("2 IN L", -0.1);
  EXPECT_EQ(shown("card do"), "correct entries");
  EXPECT_EQ(shown("state"), "tight");
  EXPECT_EQ(book.view()["valves"].at("after"), "");
}

// 1 in is 25.4 mm exactly: 0.0040 + 0.1100 - 0.1070 = 0.0070.
TEST_F(ShownValves, are_in_inches_where_the_book_is) {
  ServiceEntries inches;
  inches.setting("unit", "inch").limits(0.006, 0.009);
  inches.gap("1 IN L", 0.004).micrometer("1 IN L", 0.110).spare(1, "A", 0.107);
  EXPECT_EQ(inches.of_valve("1 IN L", "state"), "tight");
  EXPECT_EQ(inches.of_valve("1 IN L", "limits"), "limits 0.0060\u20130.0090");
  EXPECT_EQ(inches.of_valve("1 IN L", "gap"), "0.0040");
  EXPECT_EQ(inches.of_valve("1 IN L", "card do"), "spare 0.1070");
  EXPECT_EQ(inches.of_valve("1 IN L", "after"), "0.0070");
  // 0.004 + 0.110 - 0.009 = 0.105, 0.004 + 0.110 - 0.006 = 0.108.
  inches.spare(1, "A", 0.09);
  EXPECT_EQ(inches.of_valve("1 IN L", "card from"), "needs 0.1050\u20130.1080");
}

TEST_F(ShownValves, have_the_decimal_mark_of_the_office) {
  book.setting("half", "0,5");
  book.gap("1 IN L", 0.10).micrometer("1 IN L", 2.80).spare(1, "A", 2.70);
  EXPECT_EQ(shown("limits"), "limits 0,16\u20130,22");
  EXPECT_EQ(shown("gap"), "0,100");
  EXPECT_EQ(shown("card do"), "spare 2,700");
  EXPECT_EQ(shown("after"), "0,200");
}

// A mark is read by the scheme; left to the book, one with a point is in the book's unit.
TEST_F(ShownValves, read_a_mark_with_a_point_in_the_books_unit) {
  const auto shim = [this](const Entry& mark) {
    book.mark("1 IN L", mark);
    return shown("shim");
  };
  EXPECT_EQ(shim(2.75), "2.750");
  EXPECT_EQ(shim(275.0), "2.750");
  EXPECT_EQ(shim(2755.0), "2.755");
  book.setting("unit", "inch");
  EXPECT_EQ(shim(0.108), "0.1080");
  EXPECT_EQ(shim(".108"), "0.1080");
  EXPECT_EQ(shim(275.0), "0.1083");  // 2.75 / 25.4
  EXPECT_EQ(shim(2.75), "");
  EXPECT_NE(box_of(book.view(), "head").find("Marks that stand for no size: 1 IN L (2.75)"),
            std::string::npos);
  book.setting("marks", "mm");
  EXPECT_EQ(shim(2.75), "0.1083");
}

}  // namespace
}  // namespace shimwright::tests
