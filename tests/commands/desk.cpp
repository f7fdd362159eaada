// SPDX-License-Identifier: MPL-2.0
#include "desk.hpp"

#include <algorithm>
#include <com/sun/star/accessibility/AccessibleRole.hpp>
#include <com/sun/star/accessibility/AccessibleStateType.hpp>
#include <com/sun/star/accessibility/XAccessible.hpp>
#include <com/sun/star/accessibility/XAccessibleAction.hpp>
#include <com/sun/star/accessibility/XAccessibleComponent.hpp>
#include <com/sun/star/accessibility/XAccessibleStateSet.hpp>
#include <com/sun/star/awt/XButton.hpp>
#include <com/sun/star/awt/XExtendedToolkit.hpp>
#include <com/sun/star/awt/XFixedText.hpp>
#include <com/sun/star/awt/XLayoutConstrains.hpp>
#include <com/sun/star/awt/XListBox.hpp>
#include <com/sun/star/awt/XTextComponent.hpp>
#include <com/sun/star/awt/XVclContainer.hpp>
#include <com/sun/star/awt/XVclWindowPeer.hpp>
#include <com/sun/star/awt/XWindow2.hpp>
#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XNameReplace.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/sheet/XCellRangeData.hpp>
#include <com/sun/star/sheet/XCellRangeFormula.hpp>
#include <com/sun/star/sheet/XSpreadsheet.hpp>
#include <com/sun/star/sheet/XUsedAreaCursor.hpp>
#include <com/sun/star/util/XChangesBatch.hpp>
#include <stdexcept>
#include <thread>

namespace shimwright::tests {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using office::from_office;
using office::to_office;

std::string without_mark(std::string words) {
  std::erase(words, '~');
  return words;
}

Reference<css::accessibility::XAccessibleContext> accessible(
    const Reference<css::awt::XWindow>& window) {
  const Reference<css::accessibility::XAccessible> object(window, UNO_QUERY);
  return object.is() ? object->getAccessibleContext() : nullptr;
}

std::string name_of(const Reference<css::awt::XWindow>& window) {
  const auto context = accessible(window);
  return context.is() ? from_office(context->getAccessibleName()) : "";
}

// Asked of the window itself: one that is asked through its accessible object tells of each of its
// changes from then on, which slows all that is done in it.
std::string title_of(const Reference<css::awt::XWindow>& window) {
  rtl::OUString title;
  Reference<css::awt::XVclWindowPeer>(window, UNO_QUERY_THROW)->getProperty(to_office("Title")) >>=
      title;
  return from_office(title);
}

std::optional<std::string> label_words(const Reference<css::awt::XWindow>& window) {
  const Reference<css::awt::XFixedText> label(window, UNO_QUERY);
  if (!label.is()) return std::nullopt;
  return without_mark(from_office(label->getText()));
}

bool is_unseen_label(const Reference<css::awt::XWindow>& window) {
  return label_words(window).has_value() && window->getPosSize().Width == 0;
}

bool takes_entries(const Reference<css::awt::XWindow>& window) {
  return Reference<css::awt::XListBox>(window, UNO_QUERY).is() ||
         Reference<css::awt::XTextComponent>(window, UNO_QUERY).is();
}

}  // namespace

bool comes_true(const std::function<bool()>& condition, std::chrono::milliseconds time) {
  const auto deadline = std::chrono::steady_clock::now() + time;
  for (;;) {
    if (condition()) return true;
    if (std::chrono::steady_clock::now() > deadline) return false;
    std::this_thread::sleep_for(std::chrono::milliseconds(100));
  }
}

// A window has all its controls from the start; to list them takes hundreds of calls.
const std::vector<Window::Control>& Window::controls() const {
  if (!controls_) controls_ = std::make_shared<std::vector<Control>>(list_controls());
  return *controls_;
}

std::vector<Window::Control> Window::list_controls() const {
  const Reference<css::awt::XVclContainer> container(window_, UNO_QUERY_THROW);
  std::vector<Control> all;
  for (const Control& control : container->getWindows()) {
    // A field stands in a frame of its own.
    const auto frame = accessible(control);
    const bool framed = frame.is() &&
                        frame->getAccessibleRole() == css::accessibility::AccessibleRole::PANEL &&
                        frame->getAccessibleChildCount() == 1;
    const Control inside(framed ? frame->getAccessibleChild(0) : nullptr, UNO_QUERY);
    all.push_back(inside.is() ? inside : control);
  }
  return all;
}

Window::Control Window::after(std::string_view label, int place) const {
  const auto& all = controls();
  auto at = std::ranges::find_if(
      all, [&](const Control& control) { return label_words(control) == std::string(label); });
  if (at == all.end()) throw std::runtime_error("no label " + std::string(label));
  // The second column's fields have labels of their own, which only a screen reader sees.
  for (++at; at != all.end() && (takes_entries(*at) || is_unseen_label(*at)); ++at)
    if (takes_entries(*at) && place-- == 0) return *at;
  throw std::runtime_error("no such field after " + std::string(label));
}

Window::Control Window::button(std::string_view words) const {
  for (const Control& control : controls())
    if (Reference<css::awt::XButton>(control, UNO_QUERY).is() && name_of(control) == words)
      return control;
  throw std::runtime_error("no button " + std::string(words));
}

void Window::enter(std::string_view label, int place, std::string_view text) const {
  Reference<css::awt::XTextComponent>(after(label, place), UNO_QUERY_THROW)
      ->setText(to_office(text));
}

void Window::choose(std::string_view label, int place, std::string_view choice) const {
  const Reference<css::awt::XListBox> list(after(label, place), UNO_QUERY_THROW);
  const auto choices = list->getItems();
  for (sal_Int32 i = 0; i < choices.getLength(); ++i)
    if (from_office(choices[i]) == choice)
      return list->selectItemPos(static_cast<sal_Int16>(i), true);
  throw std::runtime_error("no choice " + std::string(choice));
}

void Window::select_line(std::string_view label, int line) const {
  Reference<css::awt::XListBox>(after(label, 0), UNO_QUERY_THROW)
      ->selectItemPos(static_cast<sal_Int16>(line), true);
}

void Window::focus(std::string_view label, int place) const { after(label, place)->setFocus(); }

css::awt::Point Window::corner(std::string_view label, int place) const {
  return Reference<css::accessibility::XAccessibleComponent>(accessible(after(label, place)),
                                                             UNO_QUERY_THROW)
      ->getLocationOnScreen();
}

std::string Window::entry(std::string_view label, int place) const {
  const Control control = after(label, place);
  const Reference<css::awt::XListBox> list(control, UNO_QUERY);
  if (list.is()) return from_office(list->getSelectedItem());
  return from_office(Reference<css::awt::XTextComponent>(control, UNO_QUERY_THROW)->getText());
}

bool Window::can_enter(std::string_view label, int place) const {
  return Reference<css::awt::XWindow2>(after(label, place), UNO_QUERY_THROW)->isEnabled();
}

std::string Window::spoken(std::string_view label, int place) const {
  return name_of(after(label, place));
}

bool Window::can_press(std::string_view words) const {
  return Reference<css::awt::XWindow2>(button(words), UNO_QUERY_THROW)->isEnabled();
}

void Window::press(std::string_view words) const {
  Reference<css::accessibility::XAccessibleAction>(accessible(button(words)), UNO_QUERY_THROW)
      ->doAccessibleAction(0);
}

bool Window::has_button(std::string_view words) const {
  return std::ranges::any_of(controls(), [&](const Control& control) {
    return Reference<css::awt::XButton>(control, UNO_QUERY).is() && name_of(control) == words;
  });
}

std::string Window::words() const {
  std::string all;
  for (const Control& control : controls())
    if (!Reference<css::awt::XButton>(control, UNO_QUERY).is()) all += name_of(control);
  return all;
}

std::vector<std::string> Window::labels() const {
  std::vector<std::string> all;
  for (const Control& control : controls())
    if (auto words = label_words(control); words && !is_unseen_label(control))
      all.push_back(*words);
  return all;
}

std::vector<std::string> Window::labels_cut() const {
  std::vector<std::string> cut;
  for (const Control& control : controls()) {
    const auto words = label_words(control);
    if (!words || is_unseen_label(control)) continue;
    const auto room = control->getPosSize();
    const auto needed = Reference<css::awt::XLayoutConstrains>(control, UNO_QUERY_THROW)
                            ->calcAdjustedSize(css::awt::Size(room.Width, room.Height));
    if (needed.Width > room.Width || needed.Height > room.Height) cut.push_back(*words);
  }
  return cut;
}

std::string Window::focused() const {
  std::string label;
  int place = 0;
  for (const Control& control : controls()) {
    const auto states = accessible(control)->getAccessibleStateSet();
    const bool here = states->contains(css::accessibility::AccessibleStateType::FOCUSED);
    if (is_unseen_label(control)) continue;
    if (const auto words = label_words(control)) {
      label = *words;
      place = 0;
    } else if (takes_entries(control)) {
      if (here) return label + " " + std::to_string(place);
      ++place;
    } else if (here) {
      return name_of(control);
    }
  }
  return {};
}

std::optional<Window> window_titled(const office::Office& office, std::string_view title) {
  const Reference<css::awt::XExtendedToolkit> toolkit(office.service("com.sun.star.awt.Toolkit"),
                                                      UNO_QUERY_THROW);
  for (sal_Int32 i = 0; i < toolkit->getTopWindowCount(); ++i) {
    const Reference<css::awt::XWindow> window(toolkit->getTopWindow(i), UNO_QUERY);
    const Reference<css::awt::XWindow2> seen(window, UNO_QUERY);
    if (seen.is() && seen->isVisible() && title_of(window) == title) return Window(window);
  }
  return std::nullopt;
}

Reference<css::sheet::XSpreadsheetDocument> open_sheet(const office::Office& office) {
  // A window made on any other thread than the office's own may wait for ever for the clipboard.
  css::uno::Sequence<css::beans::PropertyValue> how(1);
  how.getArray()[0].Name = to_office("OnMainThread");
  how.getArray()[0].Value <<= true;
  return Reference<css::sheet::XSpreadsheetDocument>(
      office.desktop()->loadComponentFromURL(to_office("private:factory/scalc"),
                                             to_office("_blank"), 0, how),
      UNO_QUERY_THROW);
}

void run_command(const Reference<css::sheet::XSpreadsheetDocument>& document,
                 std::string_view name) {
  const auto frame =
      Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getCurrentController()->getFrame();
  css::util::URL url;
  url.Complete = to_office(name);
  url.Protocol = to_office("vnd.org.shimwright:");
  const auto command = Reference<css::frame::XDispatchProvider>(frame, UNO_QUERY_THROW)
                           ->queryDispatch(url, to_office("_self"), 0);
  if (!command.is()) throw std::runtime_error("no command " + std::string(name));
  command->dispatch(url, {});
}

std::vector<std::string> everything_in(
    const Reference<css::sheet::XSpreadsheetDocument>& document) {
  std::vector<std::string> all;
  for (const rtl::OUString& name : document->getSheets()->getElementNames()) {
    const Reference<css::sheet::XSpreadsheet> sheet(document->getSheets()->getByName(name),
                                                    UNO_QUERY_THROW);
    const auto cursor = sheet->createCursor();
    Reference<css::sheet::XUsedAreaCursor>(cursor, UNO_QUERY_THROW)->gotoEndOfUsedArea(true);
    const auto formulas =
        Reference<css::sheet::XCellRangeFormula>(cursor, UNO_QUERY_THROW)->getFormulaArray();
    const auto data =
        Reference<css::sheet::XCellRangeData>(cursor, UNO_QUERY_THROW)->getDataArray();
    for (sal_Int32 row = 0; row < data.getLength(); ++row)
      for (sal_Int32 column = 0; column < data[row].getLength(); ++column) {
        if (formulas[row][column].isEmpty()) continue;
        rtl::OUString text;
        double number = 0;
        std::string shown = "nothing";  // an error
        if (data[row][column] >>= text)
          shown = from_office(text);
        else if (data[row][column] >>= number)
          shown = std::to_string(number);
        all.push_back(from_office(name) + " row " + std::to_string(row + 1) + " column " +
                      std::to_string(column + 1) + ": " + from_office(formulas[row][column]) +
                      " is " + shown);
      }
  }
  return all;
}

void set_option(const office::Office& office, std::string_view node, std::string_view name,
                std::optional<std::string_view> value) {
  const Reference<css::lang::XMultiServiceFactory> provider(
      office.service("com.sun.star.configuration.ConfigurationProvider"), UNO_QUERY_THROW);
  css::beans::NamedValue path;
  path.Name = to_office("nodepath");
  path.Value <<= to_office(node);
  css::uno::Sequence<css::uno::Any> arguments(1);
  arguments.getArray()[0] <<= path;
  const Reference<css::container::XNameReplace> options(
      provider->createInstanceWithArguments(
          to_office("com.sun.star.configuration.ConfigurationUpdateAccess"), arguments),
      UNO_QUERY_THROW);
  options->replaceByName(to_office(name),
                         value ? css::uno::Any(to_office(*value)) : css::uno::Any());
  Reference<css::util::XChangesBatch>(options, UNO_QUERY_THROW)->commitChanges();
}

}  // namespace shimwright::tests
