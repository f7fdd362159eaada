// SPDX-License-Identifier: MPL-2.0
#include "commands/form.hpp"

#include <algorithm>
#include <com/sun/star/awt/FontWeight.hpp>
#include <com/sun/star/awt/PosSize.hpp>
#include <com/sun/star/awt/PushButtonType.hpp>
#include <com/sun/star/awt/XControlModel.hpp>
#include <com/sun/star/awt/XDialog.hpp>
#include <com/sun/star/awt/XFocusListener.hpp>
#include <com/sun/star/awt/XListBox.hpp>
#include <com/sun/star/awt/XTextComponent.hpp>
#include <com/sun/star/awt/XToolkit.hpp>
#include <com/sun/star/awt/XTopWindow.hpp>
#include <com/sun/star/awt/XWindowPeer.hpp>
#include <com/sun/star/lang/XComponent.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/style/VerticalAlignment.hpp>
#include <cppuhelper/implbase1.hxx>

namespace shimwright::commands {
namespace {

using book::as;
using book::set;
using book::to_office;
using office::from_office;

css::uno::Sequence<rtl::OUString> sequence_of(const std::vector<std::string>& words) {
  css::uno::Sequence<rtl::OUString> sequence(static_cast<sal_Int32>(words.size()));
  std::ranges::transform(words, sequence.getArray(), to_office);
  return sequence;
}

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

}  // namespace

Form::Form(const Ref<css::uno::XComponentContext>& context, std::string_view title, int width,
           int height)
    : context_(context) {
  const auto services = context->getServiceManager();
  const auto model = services->createInstanceWithContext(
      to_office("com.sun.star.awt.UnoControlDialogModel"), context);
  set(model, "Title", to_office(title));
  set(model, "Width", sal_Int32(width));
  set(model, "Height", sal_Int32(height));
  set(model, "Moveable", true);
  set(model, "Closeable", true);
  model_ = as<css::container::XNameContainer>(model);
  dialog_ = as<css::awt::XControlContainer>(
      services->createInstanceWithContext(to_office("com.sun.star.awt.UnoControlDialog"), context));
  as<css::awt::XControl>(dialog_)->setModel(as<css::awt::XControlModel>(model));
}

Form::~Form() {
  try {
    as<css::lang::XComponent>(dialog_)->dispose();
  } catch (const css::uno::Exception&) {
    // It is gone already.
  }
}

Ref<css::beans::XPropertySet> Form::add(std::string_view kind, std::string_view name,
                                        const Place& place) {
  const auto made = as<css::lang::XMultiServiceFactory>(model_)->createInstance(
      to_office("com.sun.star.awt.UnoControl" + std::string(kind) + "Model"));
  const auto model = as<css::beans::XPropertySet>(made);
  set(model, "PositionX", sal_Int32(place.x));
  set(model, "PositionY", sal_Int32(place.y));
  set(model, "Width", sal_Int32(place.width));
  set(model, "Height", sal_Int32(place.height));
  set(model, "TabIndex", added_++);
  model_->insertByName(
      name.empty() ? to_office("control " + std::to_string(added_)) : to_office(name),
      css::uno::Any(as<css::awt::XControlModel>(made)));
  return model;
}

Ref<css::beans::XPropertySet> Form::model_of(std::string_view name) const {
  return as<css::beans::XPropertySet>(model_->getByName(to_office(name)));
}

Ref<css::awt::XControl> Form::control(std::string_view name) const {
  return dialog_->getControl(to_office(name));
}

void Form::label(const Place& place, std::string_view words) {
  const auto model = add("FixedText", "", place);
  set(model, "Label", to_office(words));
  set(model, "VerticalAlign", css::style::VerticalAlignment_MIDDLE);
}

void Form::unseen_label(std::string_view words) {
  set(add("FixedText", "", Place()), "Label", to_office(words));
}

void Form::note(const Place& place, std::string_view words, Weight weight) {
  const auto model = add("FixedText", "", place);
  set(model, "Label", to_office(words));
  set(model, "NoLabel", true);  // else the office underlines a letter of it
  set(model, "VerticalAlign", css::style::VerticalAlignment_MIDDLE);
  if (weight == Weight::bold) set(model, "FontWeight", css::awt::FontWeight::BOLD);
}

void Form::heading(const Place& place, std::string_view words) {
  const auto model = add("FixedLine", "", place);
  set(model, "Label", to_office(words));
  set(model, "FontWeight", css::awt::FontWeight::BOLD);
}

void Form::status(std::string_view name, const Place& place) {
  const auto model = add("FixedText", name, place);
  set(model, "MultiLine", true);
  set(model, "NoLabel", true);
}

void Form::field(std::string_view name, const Place& place, std::string_view help) {
  set(add("Edit", name, place), "HelpText", to_office(help));
  fields_.emplace_back(name);
}

void Form::list(std::string_view name, const Place& place, const std::vector<std::string>& choices,
                std::string_view help) {
  const auto model = add("ListBox", name, place);
  set(model, "Dropdown", true);
  set(model, "LineCount", static_cast<sal_Int16>(std::min<std::size_t>(choices.size(), 12)));
  set(model, "StringItemList", sequence_of(choices));
  set(model, "HelpText", to_office(help));
  lists_.emplace_back(name);
}

void Form::button(Button kind, std::string_view name, const Place& place, std::string_view words) {
  const auto model = add("Button", name, place);
  set(model, "Label", to_office(words));
  set(model, "PushButtonType",
      static_cast<sal_Int16>(kind == Button::accept ? css::awt::PushButtonType_OK
                                                    : css::awt::PushButtonType_CANCEL));
  if (kind == Button::accept) accept_ = name;
}

std::string Form::entry(std::string_view name) const {
  const auto model = model_of(name);
  if (std::ranges::find(fields_, name) != fields_.end()) {
    rtl::OUString text;
    model->getPropertyValue(to_office("Text")) >>= text;
    return from_office(text);
  }
  css::uno::Sequence<sal_Int16> chosen;
  css::uno::Sequence<rtl::OUString> choices;
  model->getPropertyValue(to_office("SelectedItems")) >>= chosen;
  model->getPropertyValue(to_office("StringItemList")) >>= choices;
  return chosen.hasElements() ? from_office(choices[chosen[0]]) : std::string();
}

void Form::enter(std::string_view name, std::string_view text) {
  if (entry(name) == text) return;
  const auto model = model_of(name);
  if (std::ranges::find(fields_, name) != fields_.end()) return set(model, "Text", to_office(text));
  css::uno::Sequence<rtl::OUString> choices;
  model->getPropertyValue(to_office("StringItemList")) >>= choices;
  for (sal_Int32 i = 0; i < choices.getLength(); ++i) {
    if (from_office(choices[i]) != text) continue;
    css::uno::Sequence<sal_Int16> chosen(1);
    chosen.getArray()[0] = static_cast<sal_Int16>(i);
    set(model, "SelectedItems", chosen);
  }
}

void Form::tell(std::string_view status, std::string_view words, Weight weight) {
  const auto model = model_of(status);
  set(model, "Label", to_office(words));
  set(model, "FontWeight",
      weight == Weight::bold ? css::awt::FontWeight::BOLD : css::awt::FontWeight::NORMAL);
}

void Form::enable(std::string_view name, bool enabled) { set(model_of(name), "Enabled", enabled); }

void Form::listen(const Ref<css::awt::XTextListener>& to_fields,
                  const Ref<css::awt::XItemListener>& to_lists) {
  for (const std::string& name : fields_)
    as<css::awt::XTextComponent>(control(name))->addTextListener(to_fields);
  for (const std::string& name : lists_)
    as<css::awt::XListBox>(control(name))->addItemListener(to_lists);
}

void Form::let_enter_accept() {
  const Ref<css::awt::XFocusListener> giver(new EnterGiver(model_of(accept_)));
  for (const std::string& name : fields_)
    as<css::awt::XWindow>(control(name))->addFocusListener(giver);
}

bool Form::run(const Ref<css::awt::XWindow>& parent) {
  const auto toolkit =
      as<css::awt::XToolkit>(context_->getServiceManager()->createInstanceWithContext(
          to_office("com.sun.star.awt.Toolkit"), context_));
  const Ref<css::awt::XWindowPeer> over(parent, css::uno::UNO_QUERY);
  as<css::awt::XControl>(dialog_)->createPeer(toolkit, over);
  let_enter_accept();
  const auto window = as<css::awt::XWindow>(dialog_);
  if (parent.is()) {
    const css::awt::Rectangle under = parent->getPosSize();
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
