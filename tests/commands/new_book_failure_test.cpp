// SPDX-License-Identifier: MPL-2.0
//
// New service book in an office that cannot make the book: some other program meddles with it
// before it is finished.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <com/sun/star/document/XDocumentEventBroadcaster.hpp>
#include <com/sun/star/util/XModifiable.hpp>
#include <cppuhelper/implbase1.hxx>
#include <rtl/ref.hxx>
#include <string>

#include "book/places.hpp"
#include "new_book_desk.hpp"

namespace shimwright::tests {
namespace {

using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;
using office::to_office;

// At whatever the office tells of a document, takes the sheet Engine out of it.
class Meddler : public cppu::WeakImplHelper1<css::document::XDocumentEventListener> {
 public:
  explicit Meddler(const office::Office& office)
      : events_(office.service("com.sun.star.frame.GlobalEventBroadcaster"), UNO_QUERY_THROW) {}

  void start() { events_->addDocumentEventListener(this); }
  void stop() { events_->removeDocumentEventListener(this); }

  void SAL_CALL documentEventOccured(const css::document::DocumentEvent& event) override {
    const Reference<css::sheet::XSpreadsheetDocument> document(event.Source, UNO_QUERY);
    const rtl::OUString engine = to_office(book::sheet_name::engine);
    if (document.is() && document->getSheets()->hasByName(engine))
      document->getSheets()->removeByName(engine);
  }
  void SAL_CALL disposing(const css::lang::EventObject&) override {}

 private:
  Reference<css::document::XDocumentEventBroadcaster> events_;
};

class NewBookFailure : public NewBook {
 protected:
  void SetUp() override {
    meddler_.set(new Meddler(*office_));
    meddler_->start();
  }
  void TearDown() override {
    meddler_->stop();
    meddler_.clear();
    if (const auto told = box()) told->press("OK");
    NewBook::TearDown();
  }

  // The message box has the dialog's title.
  static std::optional<Window> box() {
    const auto found = window_titled(*office_, dialog_title);
    return found && !found->has_button(make_button) ? found : std::nullopt;
  }

  rtl::Reference<Meddler> meddler_;
};

TEST_F(NewBookFailure, is_told_in_a_box_and_leaves_nothing_behind) {
  Window window = ask();
  fill_in(window);
  window.enter("Currency", 0, "pearls");
  ASSERT_TRUE(window.can_press(make_button)) << sentence(window);
  window.press(make_button);
  ASSERT_TRUE(comes_true([] { return box().has_value(); }));
  screen_->picture(PICTURES "/no-book.png");
  EXPECT_EQ(box()->words(), "No book was made: LibreOffice gave no reason.");
  box()->press("OK");
  EXPECT_TRUE(dialog_closes());
  EXPECT_TRUE(new_documents().empty());
  EXPECT_FALSE(Reference<css::util::XModifiable>(sheet_, UNO_QUERY_THROW)->isModified());

  // The cause gone, what was typed is still there, and makes a book.
  meddler_->stop();
  window = ask();
  EXPECT_EQ(window.entry("Currency"), "pearls");
  EXPECT_EQ(text_in(make(window), book::sheet_name::engine, book::engine_place::currency),
            "pearls");
}

}  // namespace
}  // namespace shimwright::tests
