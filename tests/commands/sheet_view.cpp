// SPDX-License-Identifier: MPL-2.0
#include "sheet_view.hpp"

#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/frame/XDispatchHelper.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>

namespace shimwright::tests {

namespace css = com::sun::star;
using book::as;
using book::Ref;
using office::to_office;

void show_sheet(const Ref<css::sheet::XSpreadsheetDocument>& document, std::string_view sheet) {
  as<css::sheet::XSpreadsheetView>(as<css::frame::XModel>(document)->getCurrentController())
      ->setActiveSheet(
          as<css::sheet::XSpreadsheet>(document->getSheets()->getByName(to_office(sheet))));
}

void go_to(const office::Office& office, const Ref<css::sheet::XSpreadsheetDocument>& document,
           std::string_view sheet, book::At at) {
  show_sheet(document, sheet);
  css::uno::Sequence<css::beans::PropertyValue> where(1);
  where.getArray()[0].Name = to_office("ToPoint");
  where.getArray()[0].Value <<= to_office(book::absolute(at));
  const auto frame = as<css::frame::XModel>(document)->getCurrentController()->getFrame();
  as<css::frame::XDispatchHelper>(office.service("com.sun.star.frame.DispatchHelper"))
      ->executeDispatch(as<css::frame::XDispatchProvider>(frame), to_office(".uno:GoToCell"),
                        rtl::OUString(), 0, where);
}

}  // namespace shimwright::tests
