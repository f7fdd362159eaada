// SPDX-License-Identifier: MPL-2.0
//
// A dialog under construction, in the words of someone who lays it out: a label here, a field
// there. Places are in the office's dialog units, which grow with the user's font: a letter is
// about 4 wide and 8 high. Controls take the Tab key in the order in which they are added; a `~` in
// a label marks the letter that leads to the field after it.
#pragma once

#include <com/sun/star/awt/XControl.hpp>
#include <com/sun/star/awt/XControlContainer.hpp>
#include <com/sun/star/awt/XItemListener.hpp>
#include <com/sun/star/awt/XTextListener.hpp>
#include <com/sun/star/awt/XWindow.hpp>
#include <com/sun/star/container/XNameContainer.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <string>
#include <string_view>
#include <vector>

#include "book/office/uno.hpp"

namespace shimwright::commands {

namespace css = com::sun::star;
using book::Ref;

struct Place {
  int x = 0;
  int y = 0;
  int width = 0;
  int height = 0;
};

enum class Weight { normal, bold };

class Form {
 public:
  Form(const Ref<css::uno::XComponentContext>& context, std::string_view title, int width,
       int height);
  Form(const Form&) = delete;
  Form& operator=(const Form&) = delete;
  ~Form();

  // The label of the field added next.
  void label(const Place& place, std::string_view words);
  // The same, for a screen reader alone: where a table's heads say it to the eye.
  void unseen_label(std::string_view words);
  // Words that lead nowhere.
  void note(const Place& place, std::string_view words, Weight weight = Weight::normal);
  // A title with a line after it.
  void heading(const Place& place, std::string_view words);
  // Text that changes; it may take more than one line.
  void status(std::string_view name, const Place& place);
  // `help` is shown under the pointer; a screen reader reads the label only.
  void field(std::string_view name, const Place& place, std::string_view help);
  void list(std::string_view name, const Place& place, const std::vector<std::string>& choices,
            std::string_view help);
  // Enter in a field presses the accepting button; in a list it belongs to the choice.
  enum class Button { accept, cancel };
  void button(Button kind, std::string_view name, const Place& place, std::string_view words);

  // What fields and lists hold; other controls have no entry. A word that is none of a list's
  // choices leaves the list as it is.
  std::string entry(std::string_view name) const;
  void enter(std::string_view name, std::string_view text);

  void tell(std::string_view status, std::string_view words, Weight weight);
  void enable(std::string_view name, bool enabled);

  // Listeners to every field, or list, of those added so far.
  void listen(const Ref<css::awt::XTextListener>& to_fields,
              const Ref<css::awt::XItemListener>& to_lists);

  // Shown over `parent` (or alone, where it is null) until accepted (true) or cancelled.
  bool run(const Ref<css::awt::XWindow>& parent);
  // Of a form that is shown: before all other windows, with the keyboard.
  void to_front() const;

 private:
  Ref<css::beans::XPropertySet> add(std::string_view kind, std::string_view name,
                                    const Place& place);
  Ref<css::beans::XPropertySet> model_of(std::string_view name) const;
  Ref<css::awt::XControl> control(std::string_view name) const;
  void let_enter_accept();

  Ref<css::uno::XComponentContext> context_;
  Ref<css::container::XNameContainer> model_;
  Ref<css::awt::XControlContainer> dialog_;
  std::vector<std::string> fields_;
  std::vector<std::string> lists_;
  std::string accept_;
  sal_Int16 added_ = 0;
};

}  // namespace shimwright::commands
