// SPDX-License-Identifier: MPL-2.0
//
// The few bridges to LibreOffice's object model that every file of the book needs.
#pragma once

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/uno/Any.hxx>
#include <com/sun/star/uno/Reference.hxx>
#include <string_view>

#include "office/text.hpp"

namespace shimwright::book {

namespace css = com::sun::star;

template <typename Interface>
using Ref = css::uno::Reference<Interface>;

using office::to_office;

// The same object through another of its interfaces. Throws css::uno::RuntimeException where it
// has none such.
template <typename Interface, typename Other>
Ref<Interface> as(const Ref<Other>& object) {
  return Ref<Interface>(object, css::uno::UNO_QUERY_THROW);
}
template <typename Interface>
Ref<Interface> as(const css::uno::Any& object) {
  return Ref<Interface>(object, css::uno::UNO_QUERY_THROW);
}

template <typename Object, typename Value>
void set(const Ref<Object>& object, std::string_view property, const Value& value) {
  as<css::beans::XPropertySet>(object)->setPropertyValue(to_office(property), css::uno::Any(value));
}

// Millimetres in the office's own unit, hundredths of one.
inline sal_Int32 hundredths(double mm) { return static_cast<sal_Int32>(mm * 100 + 0.5); }

}  // namespace shimwright::book
