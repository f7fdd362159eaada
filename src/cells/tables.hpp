// SPDX-License-Identifier: MPL-2.0
//
// The answers that are tables, laid out in columns. `part` names the one column wanted; empty
// text: the whole table. Each throws BadInput where the entries cannot be planned with.
#pragma once

#include <com/sun/star/uno/Any.hxx>
#include <optional>
#include <string_view>

#include "core/crank/crank_entries.hpp"
#include "core/entries/entries.hpp"

namespace shimwright::cells {

com::sun::star::uno::Any plan_table(const Entries& entries, std::string_view part);
com::sun::star::uno::Any order_table(const Entries& entries, std::string_view part);
com::sun::star::uno::Any surplus_table(const Entries& entries, std::string_view part);
com::sun::star::uno::Any check_table(const Entries& entries, std::string_view part);

struct StepsAsked {
  EntryTable valves;
  EntryTable shims;
  EntryTable stops;
  EntryTable rules;
  bool operator==(const StepsAsked&) const = default;
};

com::sun::star::uno::Any steps_table(StepsAsked asked, std::string_view part);

// No firing: nowhere to stop.
com::sun::star::uno::Any stops_table(const std::optional<Firing>& firing, const ValveTiming& timing,
                                     CrankAngle margin, std::string_view part);

}  // namespace shimwright::cells
