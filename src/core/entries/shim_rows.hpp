// SPDX-License-Identifier: MPL-2.0
//
// The table of shims, spares and sizes on sale, as a person fills it in. Helper of read_entries.
#pragma once

#include <map>
#include <set>
#include <string>

#include "core/entries/entries.hpp"
#include "core/entries/entry_row.hpp"
#include "core/values/text.hpp"

namespace shimwright {

// Series are compared byte by byte further on, so all who mean one series get one spelling.
class SeriesSpellings {
 public:
  const std::string& first_seen(const std::string& word) {
    return spellings_.try_emplace(lower_case(word), word).first->second;
  }

 private:
  std::map<std::string, std::string> spellings_;
};

const TableDescription& shim_table();

// Adds the shims to the question and what is wrong with them to the troubles, not in order. A shim
// is passed over where no valve takes its series; without valves every series is taken.
void read_shim_rows(const EntryTable& shims, const std::set<std::string>& valve_series,
                    SeriesSpellings& spellings, Entries& entries);

}  // namespace shimwright
