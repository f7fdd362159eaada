// SPDX-License-Identifier: MPL-2.0
//
// The office's windows as a person at the desk finds them: by title, and their fields by the
// label before them.
#pragma once

#include <chrono>
#include <com/sun/star/awt/Point.hpp>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/sheet/XSpreadsheetDocument.hpp>
#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "office/office.hpp"

namespace shimwright::tests {

namespace css = com::sun::star;

// True as soon as `condition` is; false where it has not come true in `time`.
bool comes_true(const std::function<bool()>& condition,
                std::chrono::milliseconds time = std::chrono::seconds(30));

class Window {
 public:
  explicit Window(const css::uno::Reference<css::awt::XWindow>& window) : window_(window) {}

  // The fields and lists after the label; `place` counts them from 0. Throws std::runtime_error
  // where there is none.
  void enter(std::string_view label, int place, std::string_view text) const;
  void choose(std::string_view label, int place, std::string_view choice) const;
  std::string entry(std::string_view label, int place = 0) const;
  // Of a list whose lines may be alike, by number, as a click on it does.
  void select_line(std::string_view label, int line) const;
  void focus(std::string_view label, int place = 0) const;
  // Where its left upper corner is on the screen.
  css::awt::Point corner(std::string_view label, int place = 0) const;
  bool can_enter(std::string_view label, int place = 0) const;
  // What a screen reader calls it.
  std::string spoken(std::string_view label, int place = 0) const;

  bool can_press(std::string_view button) const;
  void press(std::string_view button) const;

  bool has_button(std::string_view button) const;

  // What a message box says.
  std::string words() const;
  // Every label's words, in order.
  std::vector<std::string> labels() const;
  // The words of those that have too little room to show them all.
  std::vector<std::string> labels_cut() const;
  // The label of what has the focus, with its place: `Firing order 0`; a button's words; empty for
  // none.
  std::string focused() const;

 private:
  using Control = css::uno::Reference<css::awt::XWindow>;
  const std::vector<Control>& controls() const;
  std::vector<Control> list_controls() const;
  Control after(std::string_view label, int place) const;
  Control button(std::string_view words) const;

  css::uno::Reference<css::awt::XWindow> window_;
  mutable std::shared_ptr<const std::vector<Control>> controls_;
};

// The visible top window of that title, or none.
std::optional<Window> window_titled(const office::Office& office, std::string_view title);

// A new, empty sheet in a window of its own.
css::uno::Reference<css::sheet::XSpreadsheetDocument> open_sheet(const office::Office& office);

// A command of ours, in the window of that document, as the menu does it.
void run_command(const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document,
                 std::string_view name);

// All that stands in a document: a line a cell, with what was entered and what it comes to.
std::vector<std::string> everything_in(
    const css::uno::Reference<css::sheet::XSpreadsheetDocument>& document);

// One of the office's options: a text, or nothing at all, at a node of its configuration.
void set_option(const office::Office& office, std::string_view node, std::string_view name,
                std::optional<std::string_view> value);

}  // namespace shimwright::tests
