// SPDX-License-Identifier: MPL-2.0
//
// Made-up jobs, typed into a book as a person would.
#pragma once

#include "../core/made_up_job.hpp"
#include "open_book.hpp"

namespace shimwright::tests {

// Types everything into its place, in mm or in inches.
void type_job(OpenBook& book, const Job& job, const book::Places& places, Unit unit = Unit::mm);

// Holds what the book shows, on Head and Plan, against the plan of this job.
void expect_plan(const OpenBook& book, const Job& job, const book::Places& places,
                 Unit unit = Unit::mm);

}  // namespace shimwright::tests
