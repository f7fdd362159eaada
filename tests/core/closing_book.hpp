// SPDX-License-Identifier: MPL-2.0
//
// A service that is carried to its end, for tests: bench and recheck are filled as a person does
// it, and what the commands write goes back among the entries.
#pragma once

#include <map>
#include <string>
#include <utility>
#include <vector>

#include "core/service/closing.hpp"
#include "core/service/closing_rows.hpp"
#include "service_entries.hpp"

namespace shimwright::tests {

inline constexpr std::string_view closing_today = "2026-11-30";

class ClosingBook : public ServiceEntries {
 public:
  using ServiceEntries::ServiceEntries;

  // Limits 0.15 to 0.25, and every valve at 0.20 over 2.70.
  void all_good();
  // So many blank rows in the drawer, where nothing stands yet.
  void drawer_rows(int rows);
  ClosingBook& arrival(int row, Entry ordered, Entry arrived);

  void write(const std::vector<EntryWrite>& writes);
  void take_to_bench();
  void clear_bench();
  void tick(int step, Entry mark = "x");
  void tick_all();
  void recheck_as_predicted();

  Entry entry(const std::string& kind, const std::string& name, std::size_t value) const;

  Closing closing(const ClosingEntries& said, const EntryTable& log) const;
  std::vector<std::string> refusals(const ClosingEntries& said, const EntryTable& log) const;
  std::vector<std::string> questions(const ClosingEntries& said, const EntryTable& log) const;
  std::string deeds(const ClosingEntries& said, const EntryTable& log) const;
  // As the command does it.
  void close(const ClosingEntries& said, const EntryTable& log);

  // Its rows: `2.700 x1 out of 1 EX L, 2026-11-26`.
  std::vector<std::string> drawer() const;

  // How many shims of each series and size are in the engine, in the drawer and, arrived, on
  // Arrivals.
  std::map<std::pair<std::string, Length>, int> shims() const;

 private:
  int steps_ = 0;
};

}  // namespace shimwright::tests
