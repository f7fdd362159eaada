// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/rows.hpp"

#include <algorithm>
#include <optional>
#include <string>
#include <tuple>

namespace shimwright::fitting {
namespace {

class Rows {
 public:
  Rows(const FittingQuestion& question, const Work& work, const Schedule& schedule)
      : question_(question),
        work_(work),
        schedule_(schedule),
        shims_(work.shims),
        wanted_(work.jobs.size()) {
    name_spares();
    list_changes();
    for (const Shim& shim : shims_) place_of_.push_back(shim.out_of);
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
  using Origin = ShimAtBench::Origin;

  // Of spares alike, which one: taken in the order in which they are needed, one that is free then
  // stays free until it comes out. The thickest first, as it is the nearest.
  void name_spares() {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < schedule_.stand_ins.size(); ++i) order.push_back(i);
    std::sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) {
      const StandIn& x = schedule_.stand_ins[a];
      const StandIn& y = schedule_.stand_ins[b];
      return std::tuple(x.from, x.job) < std::tuple(y.from, y.job);
    });
    std::vector<std::vector<std::size_t>> of_row(work_.spares.size());  // shims named so far
    std::vector<std::size_t> free_from(shims_.size());                  // by shim: visit
    used_.resize(order.size());
    for (const std::size_t i : order) {
      const StandIn& use = schedule_.stand_ins[i];
      const Shim& alike = work_.shims[use.shim];
      used_[i] = use.shim;
      for (std::size_t r = alike.first_row; r < alike.last_row; ++r) {
        const auto free = std::find_if(of_row[r].begin(), of_row[r].end(),
                                       [&](std::size_t x) { return free_from[x] <= use.from; });
        const SpareRow& spare = work_.spares[r];
        if (free == of_row[r].end() && of_row[r].size() >= spare.count) continue;
        used_[i] = free != of_row[r].end() ? *free : shims_.size();
        if (free == of_row[r].end()) {
          of_row[r].push_back(shims_.size());
          shims_.push_back({.size = spare.size, .name = {Origin::spare, spare.row}});
          free_from.push_back(0);
        }
        free_from[used_[i]] = use.to;
        break;
      }
    }
  }

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

  // What is in a valve after a visit and was not before.
  struct Change {
    std::size_t job = 0;
    std::size_t shim = 0;
    std::size_t until = no_index;  // of a stand-in: the visit in which it comes out again
  };

  void list_changes() {
    changes_.resize(schedule_.visits.size());
    for (std::size_t j = 0; j < work_.jobs.size(); ++j)
      changes_[schedule_.finished[j]].push_back({j, work_.jobs[j].fresh});
    for (std::size_t i = 0; i < used_.size(); ++i) {
      const StandIn& use = schedule_.stand_ins[i];
      changes_[use.from].push_back({use.job, used_[i], use.to});
    }
    for (auto& changes : changes_)
      std::sort(changes.begin(), changes.end(),
                [](const Change& a, const Change& b) { return a.job < b.job; });
  }

  // A shim that is still in another valve has to come out there first: so go back from valve to
  // valve to one that can be done, and where that leads round in a ring, leave one valve empty.
  void do_visit() {
    for (const Change& change : changes_[visit_]) wanted_[change.job] = &change;
    for (const Change& change : changes_[visit_]) {
      if (wanted_[change.job] == nullptr) continue;
      std::vector<std::size_t> path{change.job};
      for (std::size_t giver = place_of_[change.shim]; giver != no_index;
           giver = place_of_[wanted_[giver]->shim]) {
        if (giver == change.job) {
          take_out(giver);
          break;
        }
        path.push_back(giver);
      }
      for (; !path.empty(); path.pop_back()) {
        fit(*wanted_[path.back()]);
        wanted_[path.back()] = nullptr;
      }
    }
  }

  void take_out(std::size_t job) {
    Step& row = add(Step::Kind::take_out);
    row.valve = work_.jobs[job].valve;
    row.out = shims_[held_[job]].size;
    row.notes = {kept_for(held_[job], job), {Say::step_leave_empty}};
    place_of_[held_[job]] = no_index;
    held_[job] = no_index;
  }

  void fit(const Change& change) {
    const auto [job, shim, until] = change;
    const bool empty = held_[job] == no_index;
    Step& row = add(empty ? Step::Kind::fit : Step::Kind::change);
    row.valve = work_.jobs[job].valve;
    if (!empty) {
      row.out = shims_[held_[job]].size;
      row.notes = {kept_for(held_[job], job)};
      place_of_[held_[job]] = no_index;
    }
    row.in = shims_[shim].size;
    row.shim = shims_[shim].name;
    row.stand_in = until != no_index;
    row.from = row.stand_in ? "stand-in" : source_of(work_.jobs[job]);
    if (row.stand_in) {
      const std::int64_t stop = work_.stops[schedule_.visits[until]];
      row.notes.insert(row.notes.begin(), {stand_in(shim, stop)});
    }
    held_[job] = shim;
    place_of_[shim] = job;
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
    const Shim& it = shims_[shim];
    if (it.name.origin == Origin::spare) return {Say::step_stand_in_spare, {back}};
    if (it.out_of != no_index) return {Say::step_stand_in_out_of, {name_of(it.out_of), back}};
    return {Say::step_stand_in_meant_for, {name_of(it.goes_to), back}};
  }

  // What becomes of a shim that comes out of the valve of this job.
  Told kept_for(std::size_t shim, std::size_t job) const {
    const Shim& it = shims_[shim];
    if (it.goes_to != no_index && it.goes_to != job)
      return {Say::step_keep_for, {name_of(it.goes_to)}};
    if (it.name.origin == Origin::spare) return {Say::step_back_to_spares};
    return {Say::step_left_over};
  }

  const FittingQuestion& question_;
  const Work& work_;
  const Schedule& schedule_;
  std::vector<Shim> shims_;                   // the work's, and after them each spare used
  std::vector<std::size_t> used_;             // by stand-in of the schedule: which of these
  std::vector<std::vector<Change>> changes_;  // by visit
  std::vector<const Change*> wanted_;         // by job: in this visit, and not yet done
  std::vector<std::size_t> place_of_;         // by shim: the job in whose valve it is
  std::vector<std::size_t> held_;             // by job: the shim in its valve
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
