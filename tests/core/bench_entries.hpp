// SPDX-License-Identifier: MPL-2.0
//
// The bench list in the entries of a service, as Take to the bench writes it and a person ticks it.
#pragma once

#include "service_entries.hpp"

namespace shimwright::tests {

// The steps of the present plan; how many they are.
int take_to_bench(ServiceEntries& book);

// From the first on.
void tick_steps(ServiceEntries& book, int steps);

// The list of the present plan, all of it done.
void fit_all(ServiceEntries& book);

}  // namespace shimwright::tests
