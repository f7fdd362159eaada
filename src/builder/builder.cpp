// SPDX-License-Identifier: MPL-2.0
#include "builder/builder.hpp"

#include <com/sun/star/lang/XSingleComponentFactory.hpp>
#include <com/sun/star/loader/XImplementationLoader.hpp>

#include "builder/layout_values.hpp"

namespace shimwright::builder {

namespace css = com::sun::star;
using book::as;
using office::to_office;

Builder::Builder(const office::Office& office) {
  const auto loader =
      as<css::loader::XImplementationLoader>(office.service("com.sun.star.loader.SharedLibrary"));
  const auto factory = as<css::lang::XSingleComponentFactory>(
      loader->activate(to_office(builder_name), {}, to_office(office::url_of(BOOK_BUILDER)), {}));
  job_ = as<css::task::XJob>(factory->createInstanceWithContext(office.context()));
}

book::Ref<css::sheet::XSpreadsheetDocument> Builder::build(const EngineLayout& layout,
                                                           std::string_view title,
                                                           std::string_view entries) const {
  return as<css::sheet::XSpreadsheetDocument>(
      job_->execute(values_of({layout, std::string(title), std::string(entries)})));
}

}  // namespace shimwright::builder
