// SPDX-License-Identifier: MPL-2.0
#include "new_book_desk.hpp"

#include <com/sun/star/awt/XCallback.hpp>
#include <com/sun/star/awt/XRequestCallback.hpp>
#include <com/sun/star/awt/XWindow2.hpp>
#include <com/sun/star/beans/PropertyValue.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/frame/XDesktop.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XStorable.hpp>
#include <com/sun/star/frame/XTitle.hpp>
#include <com/sun/star/table/XCellRange.hpp>
#include <com/sun/star/text/XText.hpp>
#include <com/sun/star/util/XCloseable.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <cppuhelper/implbase1.hxx>
#include <filesystem>
#include <future>
#include <rtl/ref.hxx>
#include <stdexcept>
#include <utility>

namespace shimwright::tests {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using office::from_office;
using office::to_office;

class Turn : public cppu::WeakImplHelper1<css::awt::XCallback> {
 public:
  void SAL_CALL notify(const css::uno::Any&) override { come_.set_value(); }
  std::future<void> comes() { return come_.get_future(); }

 private:
  std::promise<void> come_;
};

css::uno::Sequence<css::beans::PropertyValue> arguments(
    const std::vector<std::pair<const char*, css::uno::Any>>& all) {
  css::uno::Sequence<css::beans::PropertyValue> made(static_cast<sal_Int32>(all.size()));
  for (std::size_t i = 0; i < all.size(); ++i) {
    made.getArray()[i].Name = to_office(all[i].first);
    made.getArray()[i].Value = all[i].second;
  }
  return made;
}

bool is_shown(const Reference<css::sheet::XSpreadsheetDocument>& document) {
  const auto controller =
      Reference<css::frame::XModel>(document, UNO_QUERY_THROW)->getCurrentController();
  return controller.is() && controller->getFrame().is() &&
         Reference<css::awt::XWindow2>(controller->getFrame()->getContainerWindow(),
                                       UNO_QUERY_THROW)
             ->isVisible();
}

}  // namespace

std::optional<Screen> NewBook::screen_;
std::optional<office::Office> NewBook::office_;
NewBook::Document NewBook::sheet_;

void NewBook::SetUpTestSuite() { start({}); }

void NewBook::start(office::Settings settings) {
  screen_.emplace();
  settings.extension = PACKAGE;
  settings.sparing = true;
  settings.display = screen_->display();
  office_.emplace(settings);
  sheet_ = open_sheet(*office_);
  screen_->maximize("Calc");
}

// Whatever a test left: an interface of an office that is gone must not outlive it.
void NewBook::TearDownTestSuite() {
  sheet_.clear();
  office_.reset();
  screen_.reset();
}

void NewBook::TearDown() {
  if (const auto dialog = window_titled(*office_, dialog_title)) {
    dialog->press("Cancel");
    // Else the next test's dialog would come up within the end of this one's.
    EXPECT_TRUE(dialog_closes());
    wait_for_turn();
  }
  for (const Document& document : new_documents()) close(document);
}

void NewBook::close(const Document& document) {
  Reference<css::util::XModifiable>(document, UNO_QUERY_THROW)->setModified(false);
  Reference<css::util::XCloseable>(document, UNO_QUERY_THROW)->close(true);
}

// The office's main thread does one errand after the other: one that waits behind the command's is
// run when the command has ended, or has opened its dialog.
void NewBook::wait_for_turn() {
  const rtl::Reference<Turn> turn(new Turn);
  auto comes = turn->comes();
  Reference<css::awt::XRequestCallback>(office_->service("com.sun.star.awt.AsyncCallback"),
                                        UNO_QUERY_THROW)
      ->addCallback(turn.get(), css::uno::Any());
  if (comes.wait_for(std::chrono::seconds(30)) != std::future_status::ready)
    throw std::runtime_error("the office is busy for ever");
}

void NewBook::dispatch() { dispatch(sheet_, "vnd.org.shimwright:new-book"); }

void NewBook::dispatch(const Document& document, std::string_view name) {
  run_command(document, name);
}

Window NewBook::dialog() {
  std::optional<Window> found;
  comes_true([&] { return (found = window_titled(*office_, dialog_title)).has_value(); });
  if (!found) throw std::runtime_error("no dialog has come up");
  if (!found->has_button(make_button))
    throw std::runtime_error("in place of the dialog: " + found->words());
  return *found;
}

Window NewBook::ask() {
  dispatch();
  return dialog();
}

bool NewBook::dialog_closes() {
  return comes_true([] { return !window_titled(*office_, dialog_title); });
}

std::vector<NewBook::Document> NewBook::new_documents() {
  std::vector<Document> documents;
  const auto all = Reference<css::frame::XDesktop>(office_->desktop(), UNO_QUERY_THROW)
                       ->getComponents()
                       ->createEnumeration();
  while (all->hasMoreElements()) {
    const Document document(all->nextElement(), UNO_QUERY);
    if (document.is() && document != sheet_) documents.push_back(document);
  }
  return documents;
}

NewBook::Document NewBook::new_document() {
  EXPECT_TRUE(comes_true([] {
    const auto documents = new_documents();
    return documents.size() == 1 && is_shown(documents.front());
  }));
  wait_for_turn();
  const auto documents = new_documents();
  if (documents.size() != 1) throw std::runtime_error("no new document, or more than one");
  return documents.front();
}

NewBook::Document NewBook::make(const Window& dialog) {
  EXPECT_TRUE(dialog.can_press(make_button)) << sentence(dialog);
  dialog.press(make_button);
  EXPECT_TRUE(dialog_closes());
  return new_document();
}

NewBook::Document NewBook::make_usual_book() {
  const Window window = ask();
  fill_in(window);
  const Document made = make(window);
  screen_->focus(title_of(made));
  return made;
}

NewBook::Document NewBook::usual_book() {
  const auto file = office_->profile().folder() / "usual.ods";
  const auto url = to_office(office::url_of(file));
  if (!std::filesystem::exists(file)) {
    const Document made = make_usual_book();
    Reference<css::frame::XStorable>(made, UNO_QUERY_THROW)
        ->storeToURL(url, arguments({{"FilterName", css::uno::Any(to_office("calc8"))}}));
    return made;
  }
  const Document copy(
      office_->desktop()->loadComponentFromURL(
          url, to_office("_blank"), 0,
          arguments({{"AsTemplate", css::uno::Any(true)}, {"OnMainThread", css::uno::Any(true)}})),
      UNO_QUERY_THROW);
  wait_for_turn();
  screen_->focus(title_of(copy));
  return copy;
}

std::string NewBook::title_of(const Document& document) {
  return from_office(Reference<css::frame::XTitle>(document, UNO_QUERY_THROW)->getTitle());
}

std::string NewBook::text_in(const Document& document, std::string_view sheet, book::At at) {
  const Reference<css::table::XCellRange> cells(
      Reference<css::container::XNameAccess>(document->getSheets(), UNO_QUERY_THROW)
          ->getByName(to_office(sheet)),
      UNO_QUERY_THROW);
  return from_office(
      Reference<css::text::XText>(cells->getCellByPosition(at.column, at.row), UNO_QUERY_THROW)
          ->getString());
}

void NewBook::fill_in(const Window& dialog) {
  dialog.choose("Kind", 0, "inline four");
  dialog.choose("Unit", 0, "mm");
  dialog.enter("Smallest clearance", 0, "0.16");
  dialog.enter("Smallest clearance", 1, "0.22");
  dialog.enter("Largest clearance", 0, "0.22");
  dialog.enter("Largest clearance", 1, "0.28");
  dialog.enter("Shim series", 0, "A");
  dialog.enter("Shim series", 1, "A");
  dialog.enter("On sale from", 0, "2.20");
  dialog.enter("On sale to", 0, "3.20");
  dialog.enter("On sale in steps of", 0, "0.05");
}

// The last labels of all.
std::string NewBook::sentence(const Window& dialog) {
  const auto labels = dialog.labels();
  return labels.at(labels.size() - 2);
}
std::string NewBook::remarks(const Window& dialog) { return dialog.labels().back(); }

}  // namespace shimwright::tests
