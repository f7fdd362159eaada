// SPDX-License-Identifier: MPL-2.0
//
// A service as a book hands it over, for tests: entries are set by their words (service.hpp), and
// what is shown for each valve is read by the valve's name.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/engine/layout.hpp"
#include "core/service/view.hpp"

namespace shimwright::tests {

class ServiceEntries {
 public:
  explicit ServiceEntries(EngineLayout layout = inline_four());

  ServiceEntries& set(const std::string& kind, const std::string& name, std::size_t value,
                      Entry entry);
  ServiceEntries& setting(const std::string& name, Entry entry) {
    return set("setting", name, 0, std::move(entry));
  }
  // Of both sides.
  ServiceEntries& limits(double min, double max);
  ServiceEntries& gap(const std::string& valve, Entry entry) {
    return set("valve", valve, 0, std::move(entry));
  }
  ServiceEntries& mark(const std::string& valve, Entry entry) {
    return set("valve", valve, 1, std::move(entry));
  }
  ServiceEntries& micrometer(const std::string& valve, Entry entry) {
    return set("valve", valve, 2, std::move(entry));
  }
  ServiceEntries& leave_alone(const std::string& valve) { return set("valve", valve, 3, "leave"); }
  ServiceEntries& spare(int row, const std::string& series, Entry size);
  ServiceEntries& sizes(int row, const std::string& series, double from, double to, double step,
                        double price);

  const std::vector<std::string>& valves() const { return valves_; }
  const EntryTable& rows() const { return rows_; }
  Service service() const { return service_of(rows_); }
  View view() const { return view_of(service()); }

  // A valve's cell in a view of these entries.
  std::string of_valve(const View& view, const std::string& valve, std::string_view column) const;
  std::string of_valve(const std::string& valve, std::string_view column) const {
    return of_valve(view(), valve, column);
  }

 private:
  EntryTable rows_;
  std::vector<std::string> valves_;
};

// Whether these words stand somewhere in it.
inline bool tells(const std::string& all, std::string_view words) {
  return all.find(words) != std::string::npos;
}

// An engine with limits, whose log is kept in km, and room on Drift for all there is to say.
ServiceEntries driven_engine();

// What a sheet's box says, its lines joined.
std::string box_of(const View& view, std::string_view sheet);

}  // namespace shimwright::tests
