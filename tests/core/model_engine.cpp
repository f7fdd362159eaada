// SPDX-License-Identifier: MPL-2.0
#include "model_engine.hpp"

#include <map>
#include <optional>
#include <stdexcept>
#include <tuple>
#include <variant>
#include <vector>

namespace shimwright::model {
namespace {

using Origin = ShimAtBench::Origin;
using Supply = FittingValve::Supply;

struct Fault : std::runtime_error {
  using std::runtime_error::runtime_error;
};

void expect(bool holds, const std::string& fault) {
  if (!holds) throw Fault(fault);
}

class Engine {
 public:
  explicit Engine(const FittingQuestion& question) : question_(question) {
    for (std::size_t i = 0; i < question.valves.size(); ++i) {
      const FittingValve& valve = question.valves[i];
      in_valve_.emplace_back();
      comes_out_at_.emplace_back();
      if (valve.shim) in_valve_[i] = ShimAtBench{Origin::out_of_valve, i};
      if (valve.supply == Supply::spare || valve.supply == Supply::bought)
        ++bench_[key({Origin::meant_for_valve, i})];
    }
    for (std::size_t row = 0; row < question.spares.size(); ++row)
      bench_[key({Origin::spare, row})] += question.spares[row].count;
  }

  void play(const Step& step) {
    expect(!finished_, "a step after the end");
    expect(!step.notes.empty() || step.kind == Step::Kind::fit || !step.out,
           "nothing said of the shim that comes out");
    switch (step.kind) {
      case Step::Kind::wait:
        expect(turns_ == 0 && !worked_, "what is wanting is said too late");
        expect(step.valve && !step.out && !step.in, "a waiting row that changes something");
        break;
      case Step::Kind::turn:
        turn(step);
        break;
      case Step::Kind::take_out:
      case Step::Kind::change:
      case Step::Kind::fit:
        change(step);
        break;
      case Step::Kind::finish:
        expect(!step.stop && !step.valve, "the end at a stop or a valve");
        check_safe_to_turn();
        finished_ = true;
        break;
    }
  }

  void check_end(const FittingSteps& result) const {
    std::size_t waiting = 0;
    bool any_work = false;
    for (std::size_t i = 0; i < question_.valves.size(); ++i) {
      const FittingValve& valve = question_.valves[i];
      if (valve.supply == Supply::keep) {
        expect(has_old(i), valve.name + ": was to keep its shim");
      } else if (in_valve_[i] == planned(i)) {
        any_work = true;
      } else {
        expect(has_old(i), valve.name + ": not the shim of the plan");
        ++waiting;
        // Only whole rings wait.
        expect(valve.supply == Supply::valve, valve.name + ": left undone, but is in no ring");
        expect(has_old(valve.giver), valve.name + ": left undone, but its giver is not");
      }
    }
    expect(waiting == result.waiting, "another number of valves waits");
    expect(turns_ == result.turns, "another number of turns");
    expect(stand_ins_ == result.stand_ins, "another number of stand-ins");
    expect(any_work == finished_, "the last row is to turn and measure again");
  }

 private:
  using Key = std::tuple<Origin, std::size_t>;
  static Key key(const ShimAtBench& shim) { return {shim.origin, shim.index}; }

  ShimAtBench planned(std::size_t i) const {
    const FittingValve& valve = question_.valves[i];
    return valve.supply == Supply::valve ? ShimAtBench{Origin::out_of_valve, valve.giver}
                                         : ShimAtBench{Origin::meant_for_valve, i};
  }

  bool has_old(std::size_t i) const {
    if (!in_valve_[i]) return !question_.valves[i].shim;
    return *in_valve_[i] == ShimAtBench{Origin::out_of_valve, i};
  }

  Length size_of(const ShimAtBench& shim) const {
    switch (shim.origin) {
      case Origin::out_of_valve:
        return question_.valves.at(shim.index).shim.value();
      case Origin::meant_for_valve:
        return question_.valves.at(shim.index).fit;
      case Origin::spare:
        return question_.spares.at(shim.index).size;
    }
    throw Fault("no such shim");
  }

  const std::string& series_of(const ShimAtBench& shim) const {
    return shim.origin == Origin::spare ? question_.spares.at(shim.index).series
                                        : question_.valves.at(shim.index).series;
  }

  void check_safe_to_turn() const {
    for (std::size_t i = 0; i < question_.valves.size(); ++i) {
      const FittingValve& valve = question_.valves[i];
      if (!valve.shim) continue;
      expect(in_valve_[i].has_value(), valve.name + ": the crank is turned over an empty valve");
      const bool right = has_old(i) || (valve.supply != Supply::keep && in_valve_[i] == planned(i));
      expect(right || size_of(*in_valve_[i]) <= *valve.shim,
             valve.name + ": the crank is turned over too thick a stand-in");
    }
  }

  void turn(const Step& step) {
    expect(!question_.camshafts_out, "the crank is turned with the camshafts out");
    expect(step.stop && !step.valve, "a turn is to a stop and to no valve");
    expect(at_ != step.stop, "a turn to where the crank stands");
    expect(turns_ == 0 || worked_, "a turn to a stop where nothing was done");
    check_safe_to_turn();
    at_ = step.stop;
    ++turns_;
    worked_ = false;
  }

  void change(const Step& step) {
    expect(step.valve.has_value(), "work on no valve");
    const std::size_t i = *step.valve;
    const FittingValve& valve = question_.valves.at(i);
    expect(valve.supply != Supply::keep, valve.name + ": opened though it keeps its shim");
    expect(step.stop == at_, valve.name + ": worked on at another stop than the crank's");
    if (!question_.camshafts_out) {
      bool open = false;
      for (const int stop : valve.stops) open = open || at_ == stop;
      expect(open, valve.name + ": not open at this stop");
    }
    expect(in_valve_[i] != planned(i), valve.name + ": opened again though it was done");
    worked_ = true;
    const bool takes = step.kind != Step::Kind::fit;
    const bool fits = step.kind != Step::Kind::take_out;
    expect(step.out.has_value() == takes && step.in.has_value() == fits &&
               step.shim.has_value() == fits && step.from.empty() != fits,
           valve.name + ": out and in do not agree with the kind of step");
    expect(in_valve_[i].has_value() == takes, valve.name + ": taken out of or put onto nothing");
    if (takes) {
      expect(step.out == size_of(*in_valve_[i]), valve.name + ": another shim is in it");
      expect(!comes_out_at_[i] || comes_out_at_[i] == at_,
             valve.name + ": its stand-in comes out at another stop than was said");
      comes_out_at_[i].reset();
      ++bench_[key(*in_valve_[i])];
      in_valve_[i].reset();
    }
    if (fits) fit(step, i);
  }

  void fit(const Step& step, std::size_t i) {
    const FittingValve& valve = question_.valves[i];
    const ShimAtBench& shim = *step.shim;
    expect(bench_[key(shim)] > 0, valve.name + ": its shim is not on the bench");
    --bench_[key(shim)];
    expect(step.in == size_of(shim), valve.name + ": the size is not that of the shim");
    expect(series_of(shim) == valve.series, valve.name + ": a shim of another series");
    in_valve_[i] = shim;
    if (shim == planned(i)) {
      expect(!step.stand_in, valve.name + ": its own shim called a stand-in");
      expect(step.from == (valve.supply == Supply::valve   ? question_.valves[valve.giver].name
                           : valve.supply == Supply::spare ? "spare"
                                                           : "bought"),
             valve.name + ": from somewhere else");
    } else {
      expect(step.stand_in && step.from == "stand-in", valve.name + ": a stranger's shim");
      expect(*step.in <= *valve.shim, valve.name + ": too thick a stand-in");
      comes_out_at_[i] = stop_said(step);
      ++stand_ins_;
    }
  }

  // Of a stand-in: at which stop it comes out again, by the note.
  static int stop_said(const Step& step) {
    for (const Told& note : step.notes)
      if (note.what == Say::step_stand_in_spare || note.what == Say::step_stand_in_out_of ||
          note.what == Say::step_stand_in_meant_for)
        return static_cast<int>(std::get<std::int64_t>(note.words.back()));
    throw Fault("nothing said of when a stand-in comes out");
  }

  const FittingQuestion& question_;
  std::vector<std::optional<ShimAtBench>> in_valve_;
  std::vector<std::optional<int>> comes_out_at_;
  std::map<Key, std::int64_t> bench_;
  std::optional<int> at_;
  std::size_t turns_ = 0;
  std::size_t stand_ins_ = 0;
  bool worked_ = false;
  bool finished_ = false;
};

}  // namespace

std::string play(const FittingQuestion& question, const FittingSteps& result) {
  std::size_t row = 0;
  try {
    Engine engine(question);
    for (const Step& step : result.steps) {
      ++row;
      engine.play(step);
    }
    engine.check_end(result);
  } catch (const Fault& fault) {
    return "row " + std::to_string(row) + ": " + fault.what();
  }
  return {};
}

}  // namespace shimwright::model
