// SPDX-License-Identifier: MPL-2.0
//
// An engine, its shims and its drawer as an owner with pencil and paper would keep them over the
// years: plain sums in whole micrometres, apart from the program that is tried. What the book shows
// after a check is compared with it.
#pragma once

#include <map>
#include <string>
#include <vector>

namespace shimwright::tests {

// `2.705` of 2705.
std::string in_mm(int micrometres);

struct PaperShim {
  int size = 0;  // by micrometer, else by mark
  std::string mark = {};
  std::string micrometer = {};
};

struct PaperValve {
  std::string name;
  int least = 0;  // limits of the gap
  int most = 0;
  PaperShim shim = {};
  int gap = 0;  // as found

  std::string state_of(int some_gap) const {
    return some_gap < least ? "tight" : some_gap > most ? "loose" : "good";
  }
};

// A shim that a step on the bench puts in: out of another valve (`from` is its name), out of the
// drawer (`spare`), or `bought`, which is then the shim itself.
struct PaperMove {
  std::string valve;
  std::string from;
  PaperShim shim = {};
};

struct PaperFacts {
  int check = 0;
  int round = 0;
  std::string date;
  std::string distance;
  std::string temperature;
  std::string who;
  std::string note;
};

struct PaperSpare {
  int count = 0;
  std::string note;
  bool operator==(const PaperSpare&) const = default;
};

class PaperService {
 public:
  explicit PaperService(std::vector<PaperValve> valves) : valves_(std::move(valves)) {}

  PaperValve& at(const std::string& valve);
  const std::vector<PaperValve>& valves() const { return valves_; }
  std::map<int, PaperSpare>& drawer() { return drawer_; }

  // `2 EX L out 2.700 in 2.640 from spare`, in the order of the moves.
  std::vector<std::string> steps_of(const std::vector<PaperMove>& moves);

  // The end of a round: a row a valve in the log, the shims where they are now, the drawer after
  // it. `new_gaps` holds those that were measured again, `why` the words that leave a valve open.
  // The gaps as left are those found in a round after it.
  void end_round(const PaperFacts& facts, const std::vector<PaperMove>& moves,
                 const std::map<std::string, int>& new_gaps,
                 const std::map<std::string, std::string>& why = {});

  // A row each, its cells as displayed with ` | ` between them.
  const std::vector<std::string>& log() const { return log_; }

 private:
  PaperShim shim_of(const PaperMove& move);

  std::vector<PaperValve> valves_;
  std::map<int, PaperSpare> drawer_;  // by size
  std::vector<std::string> log_;
};

}  // namespace shimwright::tests
