// SPDX-License-Identifier: MPL-2.0
//
// Gaps that are likelier misread, or written with the decimal mark in the wrong place, than worn.
// How far off is common practice, no source.
#pragma once

#include "core/values/verdict.hpp"

namespace shimwright {

enum class GapSlip { none, too_large, too_small };

// To be looked at again: twice the largest gap allowed or more, or a fifth of the smallest or less,
// as 0.024 for 0.24. A gap of nothing is none: no blade goes. Limits of nothing say nothing.
GapSlip likely_slip(Length gap, const Limits& limits);

// Three times the largest gap allowed or more: no engine runs so, and ten times a gap inside its
// limits comes to that. Never a small gap: a valve that closes up may well come to it, and must not
// go unseen.
bool cannot_be_right(Length gap, const Limits& limits);

}  // namespace shimwright
