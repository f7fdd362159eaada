// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/steps_rows.hpp"

#include <algorithm>
#include <optional>
#include <string>

namespace shimwright::fitting {
namespace {

class Rows {
 public:
  Rows(const FittingQuestion& question, const Work& work, const Schedule& schedule)
      : question_(question), work_(work), schedule_(schedule), place_of_(work.shims.size()) {
    for (std::size_t x = 0; x < work.shims.size(); ++x) place_of_[x] = work.shims[x].out_of;
    for (std::size_t j = 0; j < work.jobs.size(); ++j) held_.push_back(j);
  }

  std::vector<Step> take() {
    for (visit_ = 0; visit_ < schedule_.visits.size(); ++visit_) {
      if (!question_.camshafts_out) turn();
      do_visit();
    }
    finish();
    return std::move(rows_);
  }

 private:
  const std::string& name_of(std::size_t job) const {
    return question_.valves[work_.jobs[job].valve].name;
  }

  Step& add(Step::Kind kind) {
    Step& row = rows_.emplace_back();
    row.kind = kind;
    if (!question_.camshafts_out && visit_ < schedule_.visits.size())
      row.stop = work_.stops[schedule_.visits[visit_]];
    return row;
  }

  void turn() {
    Step& row = add(Step::Kind::turn);
    row.notes = {{Say::step_turn, {std::int64_t{*row.stop}}}};
  }

  void finish() {
    Step& row = add(Step::Kind::finish);
    row.notes = {{question_.camshafts_out ? Say::step_finish_camshafts : Say::step_finish}};
  }

  // What is to be in the valve after this visit, where that is not what it was before.
  std::optional<std::size_t> new_content(std::size_t job) const {
    if (schedule_.finished[job] == visit_) return work_.jobs[job].fresh;
    for (const StandIn& use : schedule_.stand_ins)
      if (use.job == job && use.from == visit_) return use.shim;
    return std::nullopt;
  }

  // A shim that is still in another valve has to come out there first: so go back from valve to
  // valve to one that can be done, and where that leads round in a ring, leave one valve empty.
  void do_visit() {
    std::vector<std::optional<std::size_t>> wanted;
    for (std::size_t j = 0; j < work_.jobs.size(); ++j) wanted.push_back(new_content(j));
    for (std::size_t j = 0; j < work_.jobs.size(); ++j) {
      if (!wanted[j]) continue;
      std::vector<std::size_t> path{j};
      for (std::size_t giver = place_of_[*wanted[j]]; giver != nobody;
           giver = place_of_[*wanted[giver]]) {
        if (giver == j) {
          take_out(j);
          break;
        }
        path.push_back(giver);
      }
      for (; !path.empty(); path.pop_back()) {
        fit(path.back(), *wanted[path.back()]);
        wanted[path.back()].reset();
      }
    }
  }

  void take_out(std::size_t job) {
    Step& row = add(Step::Kind::take_out);
    row.valve = work_.jobs[job].valve;
    row.out = work_.shims[held_[job]].size;
    row.notes = {kept_for(held_[job], job), {Say::step_leave_empty}};
    place_of_[held_[job]] = nobody;
    held_[job] = nobody;
  }

  void fit(std::size_t job, std::size_t shim) {
    const bool empty = held_[job] == nobody;
    Step& row = add(empty ? Step::Kind::fit : Step::Kind::change);
    row.valve = work_.jobs[job].valve;
    if (!empty) {
      row.out = work_.shims[held_[job]].size;
      row.notes = {kept_for(held_[job], job)};
      place_of_[held_[job]] = nobody;
    }
    row.in = work_.shims[shim].size;
    row.shim = work_.shims[shim].name;
    row.stand_in = shim != work_.jobs[job].fresh;
    row.from = row.stand_in ? "stand-in" : source_of(work_.jobs[job]);
    if (row.stand_in) {
      const std::int64_t back = work_.stops[schedule_.visits[comes_out(job)]];
      row.notes.insert(row.notes.begin(), {stand_in(shim, back)});
    }
    held_[job] = shim;
    place_of_[shim] = job;
  }

  std::size_t comes_out(std::size_t job) const {
    for (const StandIn& use : schedule_.stand_ins)
      if (use.job == job && use.from == visit_) return use.to;
    return visit_;
  }

  std::string source_of(const Job& job) const {
    const FittingValve& valve = question_.valves[job.valve];
    switch (valve.supply) {
      case FittingValve::Supply::valve:
        return question_.valves[valve.giver].name;
      case FittingValve::Supply::spare:
        return "spare";
      default:
        return "bought";
    }
  }

  // Sizes stand in columns of their own, in the unit of whoever lays out the table.
  Told stand_in(std::size_t shim, std::int64_t back) const {
    const Shim& it = work_.shims[shim];
    if (it.name.origin == ShimAtBench::Origin::spare) return {Say::step_stand_in_spare, {back}};
    if (it.out_of != nobody) return {Say::step_stand_in_out_of, {name_of(it.out_of), back}};
    return {Say::step_stand_in_meant_for, {name_of(it.goes_to), back}};
  }

  // What becomes of a shim that comes out of the valve of this job.
  Told kept_for(std::size_t shim, std::size_t job) const {
    const Shim& it = work_.shims[shim];
    if (it.goes_to != nobody && it.goes_to != job)
      return {Say::step_keep_for, {name_of(it.goes_to)}};
    if (it.name.origin == ShimAtBench::Origin::spare) return {Say::step_back_to_spares};
    return {Say::step_left_over};
  }

  const FittingQuestion& question_;
  const Work& work_;
  const Schedule& schedule_;
  std::vector<std::size_t> place_of_;  // by shim: the job in whose valve it is
  std::vector<std::size_t> held_;      // by job: the shim in its valve
  std::size_t visit_ = 0;
  std::vector<Step> rows_;
};

}  // namespace

std::vector<Step> rows_of(const FittingQuestion& question, const Work& work,
                          const Schedule& schedule) {
  return Rows(question, work, schedule).take();
}

Step waiting_row(const FittingQuestion& question, const Work& work, const Chain& ring) {
  const auto thickest = *std::max_element(
      ring.jobs.begin(), ring.jobs.end(),
      [&](std::size_t a, std::size_t b) { return work.shims[a].size < work.shims[b].size; });
  std::vector<std::string> names;
  for (const std::size_t job : ring.jobs)
    names.push_back(question.valves[work.jobs[job].valve].name);
  const FittingValve& valve = question.valves[work.jobs[thickest].valve];
  Step row;
  row.kind = Step::Kind::wait;
  row.valve = work.jobs[thickest].valve;
  const Length size = work.shims[thickest].size;
  row.notes = {valve.series.empty() ? Told{Say::step_borrow, {size, names}}
                                    : Told{Say::step_borrow_series, {size, valve.series, names}}};
  return row;
}

}  // namespace shimwright::fitting
