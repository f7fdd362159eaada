// SPDX-License-Identifier: MPL-2.0
//
// Books built inside an office of one's own, for what ships as a template and for tests.
#pragma once

#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <com/sun/star/task/XJob.hpp>
#include <string>
#include <string_view>

#include "book/office/uno.hpp"
#include "core/engine/layout.hpp"
#include "office/office.hpp"

namespace shimwright::builder {

class Builder {
 public:
  // Has the office load the library that builds. Throws css::uno::Exception where it cannot.
  explicit Builder(const office::Office& office);

  // A new, hidden book as book::build_book makes it, with these entries (book::fill) if any. Throws
  // css::uno::RuntimeException with the reason where it cannot be built or filled.
  book::Ref<com::sun::star::sheet::XSpreadsheetDocument> build(const EngineLayout& layout,
                                                               std::string_view title,
                                                               std::string_view entries = {}) const;

 private:
  book::Ref<com::sun::star::task::XJob> job_;
};

}  // namespace shimwright::builder
