// SPDX-License-Identifier: MPL-2.0
//
// What a book is built of, as values that go over the bridge into an office.
#pragma once

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/uno/Sequence.hxx>
#include <string>

#include "core/engine/layout.hpp"

namespace shimwright::builder {

// The name under which the library loaded into the office makes its one object.
inline constexpr const char* builder_name = "org.shimwright.BookBuilder";

struct Order {
  EngineLayout layout;
  std::string title;
  std::string entries;  // as book::fill takes them; empty: nothing is entered
};

com::sun::star::uno::Sequence<com::sun::star::beans::NamedValue> values_of(const Order& order);

// The order that those values came from; what is missing keeps its default.
Order order_of(const com::sun::star::uno::Sequence<com::sun::star::beans::NamedValue>& values);

}  // namespace shimwright::builder
