// SPDX-License-Identifier: MPL-2.0
#include "core/fitting/work.hpp"

#include <algorithm>
#include <map>
#include <string>
#include <tuple>

#include "core/values/bad_input.hpp"

namespace shimwright::fitting {
namespace {

using Supply = FittingValve::Supply;
using Origin = ShimAtBench::Origin;

constexpr std::size_t most_valves = 1000;
constexpr std::size_t most_spare_rows = 20'000;

class WorkTable {
 public:
  WorkTable(const FittingQuestion& question, const std::vector<bool>& left_out)
      : question_(question), job_of_(question.valves.size(), no_index) {
    for (std::size_t i = 0; i < question.valves.size(); ++i) {
      if (question.valves[i].supply == Supply::keep || (!left_out.empty() && left_out[i])) continue;
      job_of_[i] = work_.jobs.size();
      work_.jobs.emplace_back().valve = i;
    }
    number_stops();
    list_shims();
    list_spares();
    sort_shims();
    list_chains();
  }

  Work take() { return std::move(work_); }

 private:
  const FittingValve& valve_of(const Job& job) const { return question_.valves[job.valve]; }

  void number_stops() {
    if (question_.camshafts_out) {
      work_.stops = {1};
      for (Job& job : work_.jobs) job.stops = {0};
      for (Job& job : work_.jobs) job.open = 1;
      return;
    }
    std::map<int, std::uint8_t> number;
    for (const Job& job : work_.jobs)
      for (const int stop : valve_of(job).stops) number.emplace(stop, 0);
    if (number.size() > most_stops)
      throw BadInput("there are more than " + std::to_string(most_stops) + " stops of the crank");
    for (auto& [stop, place] : number) {
      place = static_cast<std::uint8_t>(work_.stops.size());
      work_.stops.push_back(stop);
    }
    for (Job& job : work_.jobs)
      for (const int stop : valve_of(job).stops) {
        const std::uint8_t place = number[stop];
        if (in_set(job.open, place)) continue;
        job.open |= StopSet{1} << place;
        job.stops.push_back(place);
      }
  }

  void list_shims() {
    for (std::size_t j = 0; j < work_.jobs.size(); ++j) {
      const FittingValve& valve = valve_of(work_.jobs[j]);
      const std::size_t series = series_.try_emplace(valve.series, series_.size()).first->second;
      work_.shims.push_back({.size = *valve.shim,
                             .series = series,
                             .out_of = j,
                             .name = {Origin::out_of_valve, work_.jobs[j].valve}});
    }
    for (std::size_t j = 0; j < work_.jobs.size(); ++j) {
      Job& job = work_.jobs[j];
      const FittingValve& valve = valve_of(job);
      if (valve.supply == Supply::valve) {
        job.giver = job_of_[valve.giver];
        job.fresh = job.giver;
        work_.jobs[job.giver].taker = j;
      } else {
        job.fresh = work_.shims.size();
        work_.shims.push_back({.size = valve.fit,
                               .series = work_.shims[j].series,
                               .name = {Origin::meant_for_valve, job.valve}});
      }
      work_.shims[job.fresh].goes_to = j;
    }
  }

  // Spares between the same two old shims are alike: any fits where the thickest does. One that is
  // thicker than every old shim is of no use, nor are more than there are valves.
  void list_spares() {
    std::vector<std::vector<Length>> old(series_.size());
    for (std::size_t j = 0; j < work_.jobs.size(); ++j)
      old[work_.shims[j].series].push_back(work_.shims[j].size);
    for (auto& sizes : old) std::sort(sizes.begin(), sizes.end());
    const auto fits_from = [&old](const SpareRow& spare) {
      const auto& sizes = old[spare.series];
      return std::lower_bound(sizes.begin(), sizes.end(), spare.size);
    };
    for (std::size_t row = 0; row < question_.spares.size(); ++row) {
      const FittingQuestion::Spare& spare = question_.spares[row];
      const auto series = series_.find(spare.series);
      if (series == series_.end() || spare.count <= 0) continue;
      const auto useful = std::min(spare.count, static_cast<std::int64_t>(work_.jobs.size()));
      const SpareRow it{row, spare.size, series->second, static_cast<std::size_t>(useful)};
      if (fits_from(it) != old[it.series].end()) work_.spares.push_back(it);
    }
    std::sort(work_.spares.begin(), work_.spares.end(), [](const SpareRow& a, const SpareRow& b) {
      return std::tuple(a.series, -a.size, a.row) < std::tuple(b.series, -b.size, b.row);
    });
    for (std::size_t i = 0; i < work_.spares.size(); ++i) {
      const SpareRow& spare = work_.spares[i];
      if (i == 0 || spare.series != work_.spares[i - 1].series ||
          *fits_from(spare) != *fits_from(work_.spares[i - 1]))
        work_.shims.push_back(
            {.size = spare.size, .series = spare.series, .count = 0, .first_row = i});
      Shim& alike = work_.shims.back();
      alike.count = std::min(alike.count + spare.count, work_.jobs.size());
      alike.last_row = i + 1;
    }
  }

  void sort_shims() {
    const auto rank = [this](std::size_t x) {
      const Shim& shim = work_.shims[x];
      return std::tuple(shim.series, -shim.size, !shim.is_spare(), x);
    };
    for (std::size_t x = 0; x < work_.shims.size(); ++x) work_.by_size.push_back(x);
    std::sort(work_.by_size.begin(), work_.by_size.end(),
              [&](std::size_t a, std::size_t b) { return rank(a) < rank(b); });
    work_.series_end.resize(series_.size());
    for (std::size_t place = 0; place < work_.by_size.size(); ++place)
      work_.series_end[work_.shims[work_.by_size[place]].series] = place + 1;
    for (std::size_t j = 0; j < work_.jobs.size(); ++j) {
      const Shim& own = work_.shims[j];
      const auto first =
          std::partition_point(work_.by_size.begin(), work_.by_size.end(), [&](std::size_t x) {
            const Shim& shim = work_.shims[x];
            return std::tuple(shim.series, -shim.size) < std::tuple(own.series, -own.size);
          });
      work_.from.push_back(static_cast<std::size_t>(first - work_.by_size.begin()));
      const Shim& fresh = work_.shims[work_.jobs[j].fresh];
      const bool fresh_too = fresh.series == own.series && fresh.size <= own.size;
      work_.jobs[j].can_wait = work_.no_thicker(j).size() > (fresh_too ? 2U : 1U);
    }
  }

  void list_chains() {
    std::vector<bool> placed(work_.jobs.size());
    const auto follow = [&](std::size_t first, bool ring) {
      Chain chain{.jobs = {}, .ring = ring, .common = ~StopSet{0}};
      for (std::size_t j = first; j != no_index && !placed[j]; j = work_.jobs[j].taker) {
        placed[j] = true;
        chain.jobs.push_back(j);
        chain.common &= work_.jobs[j].open;
      }
      work_.chains.push_back(std::move(chain));
    };
    for (std::size_t j = 0; j < work_.jobs.size(); ++j)
      if (work_.jobs[j].giver == no_index) follow(j, false);
    for (std::size_t j = 0; j < work_.jobs.size(); ++j)
      if (!placed[j]) follow(j, true);
  }

  const FittingQuestion& question_;
  std::vector<std::size_t> job_of_;  // by valve
  std::map<std::string, std::size_t> series_;
  Work work_;
};

}  // namespace

void check(const FittingQuestion& question) {
  if (question.valves.size() > most_valves)
    throw BadInput("there are more than " + std::to_string(most_valves) + " valves");
  if (question.spares.size() > most_spare_rows)
    throw BadInput("there are more than " + std::to_string(most_spare_rows) + " rows of spares");
  std::vector<bool> gave(question.valves.size());
  for (const FittingValve& valve : question.valves) {
    if (valve.supply == Supply::keep) continue;
    const std::string subject = "valve \"" + valve.name + "\": ";
    if (!valve.shim) throw BadInput(subject + "its shim is not known, so none can be fitted");
    if (!question.camshafts_out && valve.stops.empty())
      throw BadInput(subject +
                     "its shim is to be changed, but it can be worked on at no stop of the crank");
    if (valve.supply != Supply::valve) continue;
    if (valve.giver >= question.valves.size() || &question.valves[valve.giver] == &valve)
      throw BadInput(subject + "the valve its shim is to come from does not exist");
    const FittingValve& giver = question.valves[valve.giver];
    if (giver.supply == Supply::keep)
      throw BadInput(subject + "its shim is to come from \"" + giver.name + "\", which keeps it");
    if (gave[valve.giver])
      throw BadInput(subject + "the shim of \"" + giver.name + "\" is given away twice");
    gave[valve.giver] = true;
    if (giver.shim && giver.shim != valve.fit)
      throw BadInput(subject + text_of(valve.fit) + " is to come from \"" + giver.name +
                     "\", which has another size");
  }
}

Work work_of(const FittingQuestion& question, const std::vector<bool>& left_out) {
  return WorkTable(question, left_out).take();
}

}  // namespace shimwright::fitting
