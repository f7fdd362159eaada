// SPDX-License-Identifier: MPL-2.0
//
// What the log of a book comes to, still as values: each valve's history, its drift, and when to
// look again. It hangs on the log, on what Engine says of limits, doubt and distance, and on which
// check is in another round; never on the readings of the check that is under way.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/drift/engine_drift.hpp"
#include "core/drift/next_check.hpp"
#include "core/log/read_log.hpp"
#include "core/service/log_slips.hpp"
#include "core/service/service.hpp"
#include "core/service/words/teller.hpp"

namespace shimwright {

struct DriftFindings {
  Teller teller;
  std::string distance_unit;  // `km`, `miles`, `hours`
  std::optional<double> interval;
  ReadLog log;              // without gaps that cannot be right
  std::vector<Told> slips;  // which those are

  // As many as the service has valves.
  std::vector<ValveToJudge> valves;
  std::vector<std::vector<double>> changes;  // the distances at which the shim was changed
  std::vector<LogLack> lacks;                // of a valve without a check, why it has none
  EngineDrift drift;

  std::size_t checks = 0;      // distances with a reading of any valve
  std::optional<double> last;  // of them
  std::optional<NextCheck> next;
  std::optional<std::size_t> first_due;  // the valve whose cautious distance is the earliest
};

DriftFindings drift_findings_in(const Service& service, const EntryTable& log);

// Valves that may be at a limit at the last check already, as indices.
std::vector<std::size_t> valves_at_a_limit(const DriftFindings& found);

// As the cautious bound of that valve goes: to its smallest gap; where its checks prove no drift,
// whether that limit is the nearer one. Expects that the valve has a cautious distance.
bool goes_tight(const DriftFindings& found, std::size_t valve);

// The next check is due at the last one already.
bool is_due_now(const DriftFindings& found);

// It is due now, or before the manual's interval ends.
bool is_sooner_than_planned(const DriftFindings& found);

// Stands for all that the charts are drawn from: another text, another drawing.
std::string drawing_mark(const DriftFindings& found);

}  // namespace shimwright
