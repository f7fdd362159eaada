// SPDX-License-Identifier: MPL-2.0
#include "builder/layout_values.hpp"

#include <string_view>
#include <vector>

#include "office/text.hpp"

namespace shimwright::builder {
namespace {

namespace css = com::sun::star;
using css::uno::Any;
using css::uno::Sequence;
using Values = Sequence<css::beans::NamedValue>;
using office::from_office;
using office::to_office;

css::beans::NamedValue named(std::string_view name, const Any& value) {
  css::beans::NamedValue made;
  made.Name = to_office(name);
  made.Value = value;
  return made;
}

Values in_sequence(const std::vector<css::beans::NamedValue>& values) {
  return Values(values.data(), static_cast<sal_Int32>(values.size()));
}

Values values_of(const Bank& bank) {
  std::vector<sal_Int32> cylinders(bank.cylinders.begin(), bank.cylinders.end());
  return in_sequence(
      {named("name", Any(to_office(bank.name))),
       named("cylinders",
             Any(Sequence<sal_Int32>(cylinders.data(), static_cast<sal_Int32>(cylinders.size())))),
       named("exhaust above", Any(bank.exhaust_above))});
}

class Reader {
 public:
  explicit Reader(const Values& values) : values_(values) {}

  template <typename Value>
  Value value(std::string_view name, Value otherwise = {}) const {
    for (const css::beans::NamedValue& each : values_)
      if (from_office(each.Name) == name) each.Value >>= otherwise;
    return otherwise;
  }
  std::string text(std::string_view name) const { return from_office(value<rtl::OUString>(name)); }

 private:
  const Values& values_;
};

Bank bank_of(const Values& values) {
  const Reader from(values);
  Bank bank{.name = from.text("name"),
            .cylinders = {},
            .exhaust_above = from.value<bool>("exhaust above", true)};
  for (const sal_Int32 cylinder : from.value<Sequence<sal_Int32>>("cylinders"))
    bank.cylinders.push_back(cylinder);
  return bank;
}

}  // namespace

Values values_of(const Order& order) {
  const EngineLayout& layout = order.layout;
  std::vector<Values> banks;
  for (const Bank& bank : layout.banks) banks.push_back(values_of(bank));
  return in_sequence(
      {named("layout", Any(to_office(layout.name))),
       named("arrangement", Any(static_cast<sal_Int32>(layout.arrangement))),
       named("banks", Any(Sequence<Values>(banks.data(), static_cast<sal_Int32>(banks.size())))),
       named("exhaust valves", Any(static_cast<sal_Int32>(layout.exhaust_valves))),
       named("inlet valves", Any(static_cast<sal_Int32>(layout.inlet_valves))),
       named("firing", Any(to_office(layout.firing))), named("title", Any(to_office(order.title))),
       named("entries", Any(to_office(order.entries)))});
}

Order order_of(const Values& values) {
  const Reader from(values);
  Order order;
  EngineLayout& layout = order.layout;
  layout.name = from.text("layout");
  layout.arrangement = static_cast<Arrangement>(from.value<sal_Int32>("arrangement"));
  for (const Values& bank : from.value<Sequence<Values>>("banks"))
    layout.banks.push_back(bank_of(bank));
  layout.exhaust_valves = from.value<sal_Int32>("exhaust valves");
  layout.inlet_valves = from.value<sal_Int32>("inlet valves");
  layout.firing = from.text("firing");
  order.title = from.text("title");
  order.entries = from.text("entries");
  return order;
}

}  // namespace shimwright::builder
