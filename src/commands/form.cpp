// SPDX-License-Identifier: MPL-2.0
#include "commands/form.hpp"

#include <algorithm>
#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/awt/Key.hpp>
#include <com/sun/star/awt/PosSize.hpp>
#include <com/sun/star/awt/XActionListener.hpp>
#include <com/sun/star/awt/XButton.hpp>
#include <com/sun/star/awt/XDialog.hpp>
#include <com/sun/star/awt/XDialogProvider2.hpp>
#include <com/sun/star/awt/XFocusListener.hpp>
#include <com/sun/star/awt/XItemList.hpp>
#include <com/sun/star/awt/XItemListener.hpp>
#include <com/sun/star/awt/XKeyListener.hpp>
#include <com/sun/star/awt/XListBox.hpp>
#include <com/sun/star/awt/XTextComponent.hpp>
#include <com/sun/star/awt/XTextListener.hpp>
#include <com/sun/star/awt/XTopWindow.hpp>
#include <com/sun/star/awt/XWindowPeer.hpp>
#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/deployment/PackageInformationProvider.hpp>
#include <com/sun/star/lang/XComponent.hpp>
#include <cppuhelper/implbase1.hxx>
#include <cppuhelper/implbase3.hxx>
#include <utility>

namespace shimwright::commands {
namespace {

using book::as;
using book::set;
using book::to_office;
using office::from_office;

class Listener : public cppu::WeakImplHelper3<css::awt::XTextListener, css::awt::XItemListener,
                                              css::awt::XActionListener> {
 public:
  explicit Listener(std::function<void()> work) : work_(std::move(work)) {}

  void SAL_CALL textChanged(const css::awt::TextEvent&) override { work_(); }
  void SAL_CALL itemStateChanged(const css::awt::ItemEvent&) override { work_(); }
  void SAL_CALL actionPerformed(const css::awt::ActionEvent&) override { work_(); }
  void SAL_CALL disposing(const css::lang::EventObject&) override {}

 private:
  std::function<void()> work_;
};

// The button is Enter's only while a control listened to has the focus: should the office miss a
// change of focus, as it may while a window comes up, Enter does too little and not too much.
class EnterGiver : public cppu::WeakImplHelper1<css::awt::XFocusListener> {
 public:
  explicit EnterGiver(const Ref<css::beans::XPropertySet>& button) : button_(button) {}

  void SAL_CALL focusGained(const css::awt::FocusEvent&) override {
    set(button_, "DefaultButton", true);
  }
  void SAL_CALL focusLost(const css::awt::FocusEvent&) override {
    set(button_, "DefaultButton", false);
  }
  void SAL_CALL disposing(const css::lang::EventObject&) override {}

 private:
  Ref<css::beans::XPropertySet> button_;
};

// The space bar does what a double click does.
class SpaceBar : public cppu::WeakImplHelper1<css::awt::XKeyListener> {
 public:
  explicit SpaceBar(const Ref<css::awt::XActionListener>& listener) : listener_(listener) {}

  void SAL_CALL keyPressed(const css::awt::KeyEvent& key) override {
    if (key.KeyCode == css::awt::Key::SPACE) listener_->actionPerformed({});
  }
  void SAL_CALL keyReleased(const css::awt::KeyEvent&) override {}
  void SAL_CALL disposing(const css::lang::EventObject&) override {}

 private:
  Ref<css::awt::XActionListener> listener_;
};

Ref<css::awt::XDialog> load(const Ref<css::uno::XComponentContext>& context, std::string_view name,
                            const Ref<css::awt::XWindow>& parent) {
  const rtl::OUString package =
      css::deployment::PackageInformationProvider::get(context)->getPackageLocation(
          to_office("org.shimwright"));
  css::beans::NamedValue over;
  over.Name = to_office("ParentWindow");
  over.Value <<= Ref<css::awt::XWindowPeer>(parent, css::uno::UNO_QUERY);
  const css::uno::Sequence<css::beans::NamedValue> arguments(&over, parent.is() ? 1 : 0);
  const auto provider =
      as<css::awt::XDialogProvider2>(context->getServiceManager()->createInstanceWithContext(
          to_office("com.sun.star.awt.DialogProvider2"), context));
  const auto dialog = provider->createDialogWithArguments(
      package + to_office("/dialogs/" + std::string(name) + ".xdl"), arguments);
  if (!dialog.is())
    throw css::uno::RuntimeException(
        to_office("the package has no dialog " + std::string(name) + "."));
  return dialog;
}

bool is_list(const Ref<css::beans::XPropertySet>& model) {
  return model->getPropertySetInfo()->hasPropertyByName(to_office("StringItemList"));
}

std::vector<std::string> choices_of(const Ref<css::beans::XPropertySet>& list) {
  css::uno::Sequence<rtl::OUString> choices;
  list->getPropertyValue(to_office("StringItemList")) >>= choices;
  std::vector<std::string> words;
  for (const rtl::OUString& choice : choices) words.push_back(from_office(choice));
  return words;
}

}  // namespace

Form::Form(const Ref<css::uno::XComponentContext>& context, std::string_view name,
           const Ref<css::awt::XWindow>& parent)
    : parent_(parent), dialog_(as<css::awt::XControlContainer>(load(context, name, parent))) {
  models_ = as<css::container::XNameAccess>(as<css::awt::XControl>(dialog_)->getModel());
}

Form::~Form() {
  try {
    as<css::lang::XComponent>(dialog_)->dispose();
  } catch (const css::uno::Exception&) {
    // It is gone already.
  }
}

Ref<css::beans::XPropertySet> Form::model_of(std::string_view name) const {
  return as<css::beans::XPropertySet>(models_->getByName(to_office(name)));
}

void Form::offer(std::string_view list, const std::vector<std::string>& choices) {
  css::uno::Sequence<rtl::OUString> words(static_cast<sal_Int32>(choices.size()));
  std::ranges::transform(choices, words.getArray(), to_office);
  set(model_of(list), "StringItemList", words);
}

std::string Form::entry(std::string_view name) const {
  const auto model = model_of(name);
  if (!is_list(model)) {
    rtl::OUString text;
    model->getPropertyValue(to_office("Text")) >>= text;
    return from_office(text);
  }
  css::uno::Sequence<sal_Int16> chosen;
  model->getPropertyValue(to_office("SelectedItems")) >>= chosen;
  if (!chosen.hasElements()) return {};
  return choices_of(model).at(static_cast<std::size_t>(chosen[0]));
}

void Form::enter(std::string_view name, std::string_view text) {
  if (entry(name) == text) return;
  const auto model = model_of(name);
  if (!is_list(model)) return set(model, "Text", to_office(text));
  const auto choices = choices_of(model);
  const auto found = std::ranges::find(choices, text);
  if (found == choices.end()) return;
  css::uno::Sequence<sal_Int16> chosen(1);
  chosen.getArray()[0] = static_cast<sal_Int16>(found - choices.begin());
  set(model, "SelectedItems", chosen);
}

int Form::chosen(std::string_view list) const {
  css::uno::Sequence<sal_Int16> lines;
  model_of(list)->getPropertyValue(to_office("SelectedItems")) >>= lines;
  return lines.hasElements() ? lines[0] : -1;
}

void Form::choose(std::string_view list, int line) {
  if (chosen(list) == line) return;
  css::uno::Sequence<sal_Int16> lines(line < 0 ? 0 : 1);
  if (line >= 0) lines.getArray()[0] = static_cast<sal_Int16>(line);
  set(model_of(list), "SelectedItems", lines);
}

void Form::rewrite(std::string_view list, int line, std::string_view words) {
  const int chosen_before = chosen(list);
  as<css::awt::XItemList>(model_of(list))->setItemText(line, to_office(words));
  // The line in sight is taken out and put in again, and with it the choice goes.
  choose(list, -1);
  choose(list, chosen_before);
}

void Form::tell(std::string_view label, std::string_view words, Weight weight) {
  const auto model = model_of(label);
  set(model, "Label", to_office(words));
  set(model, "FontWeight",
      weight == Weight::bold ? css::awt::FontWeight::BOLD : css::awt::FontWeight::NORMAL);
}

void Form::enable(std::string_view name, bool enabled) { set(model_of(name), "Enabled", enabled); }

void Form::accept_by_enter(std::string_view button) {
  const Ref<css::awt::XFocusListener> giver(new EnterGiver(model_of(button)));
  for (const auto& control : dialog_->getControls())
    if (Ref<css::awt::XTextComponent>(control, css::uno::UNO_QUERY).is())
      as<css::awt::XWindow>(control)->addFocusListener(giver);
}

void Form::on_change(std::function<void()> work) {
  const Ref<Listener> listener(new Listener(std::move(work)));
  for (const auto& control : dialog_->getControls()) {
    const Ref<css::awt::XTextComponent> field(control, css::uno::UNO_QUERY);
    const Ref<css::awt::XListBox> list(control, css::uno::UNO_QUERY);
    if (field.is()) field->addTextListener(listener.get());
    if (list.is()) list->addItemListener(listener.get());
  }
}

void Form::on_press(std::string_view control, std::function<void()> work) {
  const Ref<css::awt::XActionListener> listener(new Listener(std::move(work)));
  const auto one = dialog_->getControl(to_office(control));
  const Ref<css::awt::XListBox> list(one, css::uno::UNO_QUERY);
  if (!list.is()) return as<css::awt::XButton>(one)->addActionListener(listener);
  list->addActionListener(listener);
  as<css::awt::XWindow>(one)->addKeyListener(new SpaceBar(listener));
}

bool Form::run() {
  const auto window = as<css::awt::XWindow>(dialog_);
  if (parent_.is()) {
    const css::awt::Rectangle under = parent_->getPosSize();
    const css::awt::Rectangle own = window->getPosSize();
    window->setPosSize(std::max<sal_Int32>(0, (under.Width - own.Width) / 2),
                       std::max<sal_Int32>(0, (under.Height - own.Height) / 3), 0, 0,
                       css::awt::PosSize::POS);
  }
  return as<css::awt::XDialog>(dialog_)->execute() == 1;
}

void Form::to_front() const {
  as<css::awt::XTopWindow>(dialog_)->toFront();
  as<css::awt::XWindow>(dialog_)->setFocus();
}

}  // namespace shimwright::commands
