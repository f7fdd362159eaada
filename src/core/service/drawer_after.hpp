// SPDX-License-Identifier: MPL-2.0
//
// The drawer of spares after the work: a spare that is in the engine now leaves it, a shim that
// came out of the engine and is in no valve goes in, and so does one that was bought and is not
// used. Nobody counts the drawer after each job, so the book does.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/service/entry_write.hpp"
#include "core/service/findings.hpp"
#include "core/service/shim_moves.hpp"

namespace shimwright {

struct DrawerAfter {
  std::vector<MovedShim> out;
  std::vector<MovedShim> in;
  std::vector<MovedShim> not_listed;  // spares in the engine that no row of the drawer has
  std::vector<std::size_t> arrivals;  // rows, counted from 0, whose shims go in unused
  std::int64_t rows_short = 0;        // sizes that find no blank row; nothing fits then
  std::vector<EntryWrite> writes;
};

// With `arrivals` what has arrived and is not fitted goes in too. A size that the drawer has
// already adds to its count; any other takes a blank row, or that of a spare which went out. The
// note beside it says where a shim came from and when (`day`, as it is to stand there), as far as
// there is room.
DrawerAfter drawer_after(const Service& service, const Findings& found, bool arrivals,
                         std::string_view day);

}  // namespace shimwright
