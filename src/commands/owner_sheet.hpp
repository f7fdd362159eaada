// SPDX-License-Identifier: MPL-2.0
//
// The cells that are selected in a document, read as the table of an old log.
#pragma once

#include <com/sun/star/frame/XController.hpp>
#include <com/sun/star/sheet/XCellRangeAddressable.hpp>
#include <optional>
#include <string>

#include "book/office/uno.hpp"
#include "core/log/bring_in/owner_table.hpp"

namespace shimwright::commands {

namespace css = com::sun::star;
using book::Ref;

struct OwnerSheet {
  OwnerTable table;
  std::string sheet;  // its name
  std::string range;  // `A1:H40`
};

// One cell stands for the block of filled cells around it; a selection ends where the sheet's used
// area does. None where nothing is selected, or blocks apart from each other. At most `most_rows`
// rows are read: `rows` tells how many there are.
struct Selected {
  Ref<css::sheet::XCellRangeAddressable> range;
  int rows = 0;
  std::string sheet;
};
std::optional<Selected> selected_in(const Ref<css::frame::XController>& controller);

// Values of formulas; one that failed is failed_entry. Time grows with the cells, and with the
// ranges of cells that look alike.
OwnerSheet read_sheet(const Selected& selected, const Ref<css::uno::XInterface>& document);

}  // namespace shimwright::commands
