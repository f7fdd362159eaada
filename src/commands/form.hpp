// SPDX-License-Identifier: MPL-2.0
//
// A dialog of the package: the .xdl file describes it, with its texts in .properties files beside
// it, one a language. Here it is filled, read and shown. Controls are called as in the file; the
// office shows them by type: what takes text is a field, what offers choices a list.
#pragma once

#include <com/sun/star/awt/XControl.hpp>
#include <com/sun/star/awt/XControlContainer.hpp>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <functional>
#include <string>
#include <string_view>
#include <vector>

#include "book/office/uno.hpp"

namespace shimwright::commands {

namespace css = com::sun::star;
using book::Ref;

enum class Weight { normal, bold };

class Form {
 public:
  // `name` is that of the file without its ending. The dialog will be shown over `parent`, or alone
  // where it is null. Throws css::uno::Exception where the package has no such dialog.
  Form(const Ref<css::uno::XComponentContext>& context, std::string_view name,
       const Ref<css::awt::XWindow>& parent);
  Form(const Form&) = delete;
  Form& operator=(const Form&) = delete;
  ~Form();

  void offer(std::string_view list, const std::vector<std::string>& choices);

  // What a field or list holds. A word that is none of a list's choices leaves the list as it is.
  std::string entry(std::string_view name) const;
  void enter(std::string_view name, std::string_view text);

  // Of a list whose lines may be alike: by number, from 0; -1: no line is chosen.
  int chosen(std::string_view list) const;
  void choose(std::string_view list, int line);
  void rewrite(std::string_view list, int line, std::string_view words);

  void tell(std::string_view label, std::string_view words, Weight weight);
  void enable(std::string_view name, bool enabled);

  // Enter in a field presses `button`; in a list it belongs to the choice.
  void accept_by_enter(std::string_view button);

  // What is done when any field or list changes; nothing may leave it.
  void on_change(std::function<void()> work);

  // What one button does; a double click or the space bar on a line of one list. Nothing may leave
  // it.
  void on_press(std::string_view control, std::function<void()> work);

  // Shown until accepted (true) or cancelled.
  bool run();
  // Of a form that is shown: before all other windows, with the keyboard.
  void to_front() const;

 private:
  Ref<css::beans::XPropertySet> model_of(std::string_view name) const;

  Ref<css::awt::XWindow> parent_;
  Ref<css::awt::XControlContainer> dialog_;
  Ref<css::container::XNameAccess> models_;
};

}  // namespace shimwright::commands
