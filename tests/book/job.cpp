// SPDX-License-Identifier: MPL-2.0
#include "job.hpp"

#include <set>

#include "core/plan_questions.hpp"
#include "core/values/choice.hpp"
#include "core/values/mark.hpp"

namespace shimwright::tests {
namespace {

namespace engine_place = book::engine_place;
namespace shims_place = book::shims_place;
namespace card = book::card;
using questions::Dice;
using questions::micrometres;

Job::Reading made_up_reading(Dice& dice, const Limits& limits) {
  Job::Reading reading;
  const auto step = dice.between(46, 62);
  if (!dice.one_in(12)) reading.mark = std::to_string(5 * step);
  if (!dice.one_in(8)) reading.micrometer = micrometres(50 * step + dice.between(-12, 4));
  if (!dice.one_in(16)) reading.gap = limits.min + micrometres(10 * dice.between(-6, 8));
  reading.alone = dice.one_in(24);
  return reading;
}

}  // namespace

Job made_up_job(std::uint64_t seed, const EngineLayout& layout) {
  Dice dice(seed);
  const bool one_series = dice.one_in(2);
  Job job;
  job.exhaust = {{micrometres(220), micrometres(280)}, 0.75, "28 mm"};
  job.inlet = {{micrometres(150), micrometres(210)}, 0.5, one_series ? "28 mm" : "25 mm"};
  job.doubt = micrometres(5 * dice.between(0, 2));
  job.rules.touch_good = dice.one_in(2);
  job.rules.use_doubt = !dice.one_in(3);
  job.rules.aim_first = dice.one_in(2);
  job.rules.work = Money::thousandths(500 * dice.between(0, 4));
  for (const ValveId& valve : valves_of(layout))
    job.readings.push_back(made_up_reading(dice, job.of(valve.side).limits));
  std::set<std::string> series{job.exhaust.series, job.inlet.series};
  for (const std::string& one : series) {
    std::set<Length> listed;
    for (int i = 0; i < 3; ++i) {
      const Length size = micrometres(50 * dice.between(46, 62) + dice.between(-9, 3));
      if (!listed.insert(size).second) continue;
      job.spares.push_back({one, size, std::nullopt});
      if (dice.one_in(3)) job.spares.back().count = static_cast<int>(dice.between(0, 3));
    }
    job.ladders.push_back({one, micrometres(2300), micrometres(3100),
                           micrometres(dice.one_in(2) ? 50 : 25),
                           Money::thousandths(100 * dice.between(40, 90))});
    job.singles.push_back({one, micrometres(25 * dice.between(92, 124) + 12), 1,
                           Money::thousandths(100 * dice.between(20, 60))});
  }
  return job;
}

PlanQuestion question_of(const Job& job, const EngineLayout& layout) {
  PlanQuestion question;
  question.rules = job.rules;
  const auto valves = valves_of(layout);
  for (std::size_t i = 0; i < valves.size(); ++i) {
    const Job::Reading& reading = job.readings[i];
    const Job::SideLimits& side = job.of(valves[i].side);
    question.valves.push_back(
        {.name = name_of(valves[i], layout),
         .series = side.series,
         .clearance = reading.gap,
         .shim = reading.micrometer ? reading.micrometer : thickness_marked(reading.mark),
         .limits = side.limits,
         .aim = aim_between(side.limits, side.bias),
         .doubt = job.doubt,
         .locked = reading.alone});
  }
  for (const auto& [series, size, count] : job.spares)
    question.stock.push_back(questions::spare(series, size, count.value_or(1)));
  for (const auto& [series, size, count, price] : job.singles)
    question.stock.push_back(questions::sale(series, size, price.value_or(Money()), count));
  for (const auto& [series, from, to, step, price] : job.ladders)
    for (const Length size : ladder(from, to, step))
      question.stock.push_back(questions::sale(series, size, price.value_or(Money())));
  return question;
}

namespace {

class Typist {
 public:
  Typist(OpenBook& book, const book::Places& places, Unit unit)
      : book_(book), places_(places), unit_(unit) {}

  void type(const Job& job) {
    engine(job);
    for (std::size_t i = 0; i < job.readings.size(); ++i)
      reading(places_.head.cards[i], job.readings[i]);
    int row = 0;
    for (const auto& [series, size, count] : job.spares) {
      const At first = below(shims_place::first_spare, row++);
      shims(first, series);
      length(book::sheet_name::shims, right_of(first), size);
      if (count) shims(right_of(first, 2), *count);
    }
    row = 0;
    for (const auto& [series, from, to, step, price] : job.ladders) {
      const At first = below(shims_place::first_ladder, row++);
      shims(first, series);
      int column = 0;
      for (const Length size : {from, to, step})
        length(book::sheet_name::shims, right_of(first, ++column), size);
      if (price) shims(right_of(first, 4), price->amount());
    }
    row = 0;
    for (const auto& [series, size, count, price] : job.singles) {
      const At first = below(shims_place::first_single, row++);
      shims(first, series);
      length(book::sheet_name::shims, right_of(first), size);
      if (count) shims(right_of(first, 2), *count);
      if (price) shims(right_of(first, 3), price->amount());
    }
    book_.recalculate();
  }

 private:
  void engine(const Job& job) {
    const auto words = [this](At at, std::string_view text) {
      book_.type(book::sheet_name::engine, at, text);
    };
    words(engine_place::unit, unit_ == Unit::inch ? "inch" : "mm");
    for (const Side side : {Side::exhaust, Side::inlet}) {
      const Job::SideLimits& own = job.of(side);
      const auto at = [side](int row) { return engine_place::of(side, row); };
      length(book::sheet_name::engine, at(engine_place::min_row), own.limits.min);
      length(book::sheet_name::engine, at(engine_place::max_row), own.limits.max);
      book_.type(book::sheet_name::engine, at(engine_place::bias_row), own.bias);
      words(at(engine_place::series_row), own.series);
    }
    length(book::sheet_name::engine, engine_place::doubt, job.doubt);
    words(engine_place::touch_good, job.rules.touch_good ? "yes" : "no");
    words(engine_place::use_doubt, job.rules.use_doubt ? "yes" : "no");
    words(engine_place::first, job.rules.aim_first ? "aim" : "cost");
    book_.type(book::sheet_name::engine, engine_place::work, job.rules.work.amount());
  }

  void reading(const book::Card& card, const Job::Reading& reading) {
    if (reading.gap) length(book::sheet_name::head, card.value(card::gap), *reading.gap);
    if (!reading.mark.empty())
      book_.type(book::sheet_name::head, card.value(card::mark), std::stod(reading.mark));
    if (reading.micrometer)
      length(book::sheet_name::head, card.value(card::micrometer), *reading.micrometer);
    if (reading.alone) book_.type(book::sheet_name::head, card.value(card::alone), "yes");
  }

  void length(std::string_view sheet, At at, Length size) {
    book_.type(sheet, at, unit_ == Unit::inch ? size.mm() / 25.4 : size.mm());
  }

  void shims(At at, std::string_view words) { book_.type(book::sheet_name::shims, at, words); }
  void shims(At at, double number) { book_.type(book::sheet_name::shims, at, number); }

  OpenBook& book_;
  const book::Places& places_;
  Unit unit_;
};

}  // namespace

void type_job(OpenBook& book, const Job& job, const book::Places& places, Unit unit) {
  Typist(book, places, unit).type(job);
}

}  // namespace shimwright::tests
