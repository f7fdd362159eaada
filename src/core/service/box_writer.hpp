// SPDX-License-Identifier: MPL-2.0
//
// Writes a sheet's box sentence by sentence: what several boxes say alike.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/service/arrivals.hpp"
#include "core/service/boxes.hpp"

namespace shimwright {

class BoxWriter {
 public:
  BoxWriter(const Service& service, const Findings& found) : service_(service), found_(found) {}

  std::vector<BoxLine> lines() && { return std::move(lines_); }
  bool is_empty() const { return lines_.empty(); }

  void add(Mood mood, const Told& told) { lines_.push_back({in_words(told, found_.teller), mood}); }
  // Words already said; nothing where they are blank.
  void add_words(Mood mood, std::string words);
  // The valves by name; nothing where there are none.
  void add_valves(Mood mood, Say what, const std::vector<std::string>& names);
  // All of them, however many; a remark.
  void add_list(Say what, const std::vector<std::string>& names);
  void add(std::vector<BoxLine> lines);

  void add_remarks_on(Page page);
  // Of every sheet, each told with it.
  void add_all_remarks();
  // Where an entry there keeps the sheet from being right.
  void add_mend_first(Page page, Say sheet);
  // Where there is nothing else to tell.
  void add_calm(Say begin);

  void add_changed_gaps();
  void add_readings_off();
  void add_valves_that_stay_outside();
  void add_near_limits();
  void add_still_to_come();
  // So that they can be ordered with the rest, and are not missed at the bench.
  void add_stand_ins_wanted();

 private:
  const Service& service_;
  const Findings& found_;
  std::vector<BoxLine> lines_;
};

// `2.60 mm for 1 EX L`, a text each; counted where they are many.
Word shims_listed(const Service& service, const Findings& found,
                  const std::vector<MissingShim>& shims);

// Of those not in hand, the ones on order, or the ones still to be ordered.
std::vector<MissingShim> missing_shims(const Findings& found, bool on_order);

// A ring of moves has no shim to stand in.
bool waits_for_stand_in(const Findings& found);

}  // namespace shimwright
