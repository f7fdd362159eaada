// SPDX-License-Identifier: MPL-2.0
#include "job_entries.hpp"

#include <gtest/gtest.h>

namespace shimwright::tests {
namespace {

Entry in_books_unit(Length length, Unit unit) {
  return unit == Unit::inch ? length.mm() / 25.4 : length.mm();
}

Entry yes_or_no(bool yes) { return std::string(yes ? "yes" : "no"); }

}  // namespace

ServiceEntries entries_of(const Job& job, const EngineLayout& layout, Unit unit) {
  ServiceEntries book(layout);
  book.setting("unit", std::string(unit == Unit::inch ? "inch" : "mm"));
  book.setting("doubt", in_books_unit(job.doubt, unit));
  book.setting("touch good", yes_or_no(job.rules.touch_good));
  book.setting("stay clear", yes_or_no(job.rules.use_doubt));
  book.setting("first", std::string(job.rules.aim_first ? "aim" : "cost"));
  book.setting("work", job.rules.work.amount());
  for (const Side side : {Side::exhaust, Side::inlet}) {
    const Job::SideLimits& own = job.of(side);
    const std::string name(word_for(side));
    book.set("side", name, 0, in_books_unit(own.limits.min, unit));
    book.set("side", name, 1, in_books_unit(own.limits.max, unit));
    book.set("side", name, 2, own.bias).set("side", name, 3, own.series);
  }
  for (std::size_t i = 0; i < job.readings.size(); ++i) {
    const std::string& valve = book.valves()[i];
    const Job::Reading& reading = job.readings[i];
    if (reading.gap) book.gap(valve, in_books_unit(*reading.gap, unit));
    if (const auto mark = number_written(reading.mark)) book.mark(valve, *mark);
    if (reading.micrometer) book.micrometer(valve, in_books_unit(*reading.micrometer, unit));
    if (reading.alone) book.leave_alone(valve);
  }
  int row = 0;
  for (const Job::Spare& spare : job.spares) {
    book.spare(++row, spare.series, in_books_unit(spare.size, unit));
    if (spare.count) book.set("spare", std::to_string(row), 2, static_cast<double>(*spare.count));
  }
  row = 0;
  for (const Job::Ladder& sizes : job.ladders) {
    const std::string name = std::to_string(++row);
    book.set("sizes", name, 0, sizes.series);
    std::size_t value = 0;
    for (const Length size : {sizes.from, sizes.to, sizes.step})
      book.set("sizes", name, ++value, in_books_unit(size, unit));
    if (sizes.price) book.set("sizes", name, 4, sizes.price->amount());
  }
  row = 20;
  for (const Job::Single& single : job.singles) {
    const std::string name = std::to_string(++row);
    book.set("single", name, 0, single.series)
        .set("single", name, 1, in_books_unit(single.size, unit));
    if (single.count) book.set("single", name, 2, static_cast<double>(*single.count));
    if (single.price) book.set("single", name, 3, single.price->amount());
  }
  return book;
}

void expect_best_plan(const Job& job, const EngineLayout& layout, Unit unit,
                      std::string_view half) {
  ServiceEntries book = entries_of(job, layout, unit);
  book.setting("half", std::string(half));
  const View view = book.view();
  ASSERT_EQ(view["valves"].rows.size(), job.readings.size());
  expect_plan_shown(
      [&view](std::string_view table, std::string_view column, int row) {
        return view.table(table)->at(column, static_cast<std::size_t>(row));
      },
      job, layout, unit, half.substr(1, 1));
}

}  // namespace shimwright::tests
