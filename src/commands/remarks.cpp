// SPDX-License-Identifier: MPL-2.0
#include "commands/remarks.hpp"

#include <array>
#include <map>
#include <optional>
#include <utility>

#include "core/crank/firing_written.hpp"
#include "core/engine/presets.hpp"
#include "core/entries/ranges.hpp"
#include "core/values/choice.hpp"
#include "core/values/length.hpp"
#include "core/values/share.hpp"
#include "core/values/text.hpp"

namespace shimwright::commands {
namespace {

// One clearance changed shows that the others have been looked at too.
bool clearances_are_the_last_books(const BookRequest& request, const NewBookEntries& opened) {
  if (opened == first_entries()) return false;
  const std::array<std::pair<std::string_view, Field>, 4> clearances = {
      {{request.inlet.min, Field::inlet_min},
       {request.inlet.max, Field::inlet_max},
       {request.exhaust.min, Field::exhaust_min},
       {request.exhaust.max, Field::exhaust_max}}};
  for (const auto& [now, field] : clearances)
    if (now != trimmed(opened[field])) return false;
  return true;
}

// `cylinders 1 and 4 fire together, and so do 2 and 3`; empty where each fires by itself.
std::string firing_together(const Firing& firing) {
  std::map<CrankAngle, std::vector<std::string>> at;
  for (int cylinder = 1; cylinder <= firing.cylinders(); ++cylinder)
    at[firing.angle_of(cylinder)].push_back(std::to_string(cylinder));
  std::string words;
  for (const auto& [angle, cylinders] : at)
    if (cylinders.size() > 1)
      words += words.empty() ? "cylinders " + listed(cylinders) + " fire together"
                             : ", and so do " + listed(cylinders);
  return words;
}

// An engine of two cylinders is built with so many cranks that none can be taken for granted.
// Flat, both fire a full turn apart. Intervals: common practice, no source.
std::optional<std::string> remark_on_two(Arrangement arrangement, const Firing& firing) {
  if (firing.cylinders() != 2 || arrangement == Arrangement::flat) return std::nullopt;
  return "Check the firing order: cylinder 2 fires " + text_of(firing.angle_of(2).degrees()) +
         "\u00b0 after cylinder 1. " +
         (arrangement == Arrangement::vee
              ? "In a V it depends on the angle between the two and on the crank pins (at 90\u00b0 "
                "on one pin it is 270\u00b0 or 450\u00b0): "
              : "In line it depends on the crank (180\u00b0, 270\u00b0 and 360\u00b0 are all "
                "usual): ") +
         "the engine\u2019s own manual has it.";
}

// What the dialog filled in by itself: of engines laid out alike some fire otherwise.
std::optional<std::string> remark_on_usual(const EngineLayout& layout) {
  const Preset* usual = preset_like(layout);
  if (usual == nullptr || usual->layout.firing != layout.firing || cylinders_of(layout) < 3)
    return std::nullopt;
  return "Check the firing order: " + layout.firing +
         " is usual in this layout, and not the only one. "
         "The engine\u2019s own manual has it.";
}

// A series of its own begins with the inlet's sizes: they may have been left so unseen.
bool of_two_series_in_the_same_sizes(const std::vector<LadderRequest>& ladders) {
  return ladders.size() == 2 && ladders[0].from == ladders[1].from &&
         ladders[0].to == ladders[1].to && ladders[0].step == ladders[1].step;
}

// A book can be begun without them; nothing is planned before they are there.
std::string left_for_later(const BookRequest& request) {
  const bool one = same_word(request.inlet.series, request.exhaust.series);
  std::vector<std::string> later;
  if (request.inlet.min.empty() || request.exhaust.min.empty())
    later.emplace_back("clearances on Engine");
  if (request.ladders.size() < (one ? 1U : 2U)) later.emplace_back("sizes on sale on Shims");
  return later.empty() ? "" : "Left for later, in the book: " + listed(later) + ".";
}

std::optional<Limits> limits_of(const SideRequest& side, Unit unit) {
  const auto min = length_written(side.min, unit);
  const auto max = length_written(side.max, unit);
  if (!min || !max) return std::nullopt;
  return Limits{*min, *max};
}

Length to_hundredths(Length length) {
  return (length + 0.005_mm).nanometres() / (0.01_mm).nanometres() * 0.01_mm;
}

// Typed in mm into a book in inches, a clearance may be as wide as a book takes it.
std::optional<std::string> remark_on_wide_clearance(const BookRequest& request, Unit unit) {
  for (const SideRequest* side : {&request.inlet, &request.exhaust}) {
    const auto limits = limits_of(*side, unit);
    if (!limits || limits->max <= ranges::usual_clearance) continue;
    const std::string in_mm = told_in(Unit::mm, to_hundredths(limits->max));
    return "A clearance of " + told_in(unit, limits->max) +
           (unit == Unit::mm ? "" : " (" + in_mm + ")") + " is unusually wide: is the unit right?";
  }
  return std::nullopt;
}

// Of a side whose limits are narrower than the step on sale.
struct Narrow {
  Side side;
  Share share;
  Length width;
  Length step;
};

std::vector<Narrow> narrow_sides(const BookRequest& request, Unit unit) {
  std::vector<Narrow> narrow;
  for (const Side which : {Side::inlet, Side::exhaust}) {
    const SideRequest& side = which == Side::inlet ? request.inlet : request.exhaust;
    const auto limits = limits_of(side, unit);
    if (!limits) continue;
    for (const LadderRequest& row : request.ladders) {
      const auto step = length_written(row.step, unit);
      if (!same_word(row.series, side.series) || !step) continue;
      const Share share = gaps_served(*limits, *step);
      if (!share.is_all()) narrow.push_back({which, share, limits->max - limits->min, *step});
    }
  }
  return narrow;
}

// The sizes on sale cannot serve every valve: better known before shims are ordered.
std::vector<std::string> remarks_on_narrow_limits(const BookRequest& request, Unit unit) {
  std::vector<Narrow> narrow = narrow_sides(request, unit);
  const bool alike =
      narrow.size() == 2 && narrow[0].width == narrow[1].width && narrow[0].step == narrow[1].step;
  if (alike) narrow.pop_back();
  std::vector<std::string> remarks;
  for (const Narrow& side : narrow)
    remarks.push_back(
        "Sizes on sale serve " + (side.share.served == 0 ? "hardly any" : text_of(side.share)) +
        (alike ? "" : " " + word_for(side.side)) + " gaps: the limits are " +
        told_in(unit, side.width) + " wide, the sizes step by " + told_in(unit, side.step) + ".");
  return remarks;
}

// The steps need not come out at the size that was typed as the last.
std::optional<std::string> remark_on_last_size(const LadderRequest& row, Unit unit) {
  const auto from = length_written(row.from, unit);
  const auto to = length_written(row.to, unit);
  const auto step = length_written(row.step, unit);
  if (!from || !to || !step) return std::nullopt;
  const Length last = ladder(*from, *to, *step).back();
  if (last == *to) return std::nullopt;
  return "In steps of " + row.step + " from " + row.from + " the last size on sale is " +
         told_in(unit, last) + ", not " + row.to + ".";
}

}  // namespace

std::vector<std::string> remarks_on(const BookRequest& request, const NewBookEntries& opened) {
  std::vector<std::string> remarks;
  if (clearances_are_the_last_books(request, opened))
    remarks.emplace_back(
        "Filled in as for the last book: check the clearances and the sizes on sale against this "
        "engine\u2019s own manual.");
  if (std::string later = left_for_later(request); !later.empty())
    remarks.push_back(std::move(later));
  const Unit unit = unit_named(request.unit).value_or(Unit::mm);
  if (auto remark = remark_on_wide_clearance(request, unit)) remarks.push_back(std::move(*remark));
  const Firing firing = firing_written(request.layout.firing);
  if (const std::string together = firing_together(firing); !together.empty())
    remarks.push_back("C" + together.substr(1) +
                      ": is that so? In most engines each fires by itself.");
  else if (auto remark = remark_on_two(request.layout.arrangement, firing))
    remarks.push_back(std::move(*remark));
  else if (auto usual = remark_on_usual(request.layout))
    remarks.push_back(std::move(*usual));
  for (std::string& remark : remarks_on_narrow_limits(request, unit))
    remarks.push_back(std::move(remark));
  for (const LadderRequest& row : request.ladders)
    if (auto remark = remark_on_last_size(row, unit)) remarks.push_back(std::move(*remark));
  if (of_two_series_in_the_same_sizes(request.ladders))
    remarks.emplace_back("Inlet and exhaust shims are on sale in the same sizes: is that so?");
  return remarks;
}

}  // namespace shimwright::commands
