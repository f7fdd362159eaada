// SPDX-License-Identifier: MPL-2.0
#include "made_up_job.hpp"

#include <set>

#include "core/values/choice.hpp"
#include "core/values/mark.hpp"
#include "plan_questions.hpp"

namespace shimwright::tests {
namespace {

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

}  // namespace shimwright::tests
