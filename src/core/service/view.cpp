// SPDX-License-Identifier: MPL-2.0
#include "core/service/view.hpp"

#include <algorithm>

#include "core/service/view_parts.hpp"

namespace shimwright {

View view_of(const Service& service) {
  const Findings found = findings_in(service);
  std::vector<View::Table> tables;
  for (const ViewPart& part : view_parts) tables.push_back({part.name, part.show(service, found)});
  return View(std::move(tables));
}

bool is_told_without_gaps(std::string_view table) {
  return std::ranges::any_of(view_parts, [table](const ViewPart& part) {
    return part.without_gaps && part.name == table;
  });
}

const ShownTable* View::table(std::string_view name) const {
  const auto found = std::ranges::find(tables_, name, &Table::name);
  return found == tables_.end() ? nullptr : &found->shown;
}

const ShownTable& View::operator[](std::string_view name) const {
  static const ShownTable nothing;
  const ShownTable* found = table(name);
  return found ? *found : nothing;
}

}  // namespace shimwright
