// SPDX-License-Identifier: MPL-2.0
//
// The library that an office loads to build books inside (builder.hpp).
#include <com/sun/star/lang/XSingleComponentFactory.hpp>
#include <com/sun/star/task/XJob.hpp>
#include <cppuhelper/factory.hxx>
#include <cppuhelper/implbase1.hxx>
#include <exception>
#include <list>

#include "book/book.hpp"
#include "book/filling.hpp"
#include "builder/layout_values.hpp"
#include "commands/draw_drift.hpp"
#include "commands/log_range.hpp"
#include "commands/service_book.hpp"
#include "commands/undo_step.hpp"

namespace shimwright::builder {
namespace {

namespace css = com::sun::star;

class BookBuilder : public cppu::WeakImplHelper1<css::task::XJob> {
 public:
  explicit BookBuilder(book::Ref<css::uno::XComponentContext> context)
      : context_(std::move(context)) {}

  css::uno::Any SAL_CALL
  execute(const css::uno::Sequence<css::beans::NamedValue>& arguments) override {
    try {
      const Order order = order_of(arguments);
      const auto made = book::build_book(context_, order.layout, order.title);
      if (!order.entries.empty()) {
        book::fill(made, order.layout, order.entries);
        draw_drift(made);
      }
      return css::uno::Any(made);
    } catch (const std::exception& failure) {
      throw css::uno::RuntimeException(office::to_office(failure.what()), {});
    }
  }

 private:
  // As the commands do it that write a log; without one nothing is drawn.
  void draw_drift(const commands::ServiceBook::Document& made) {
    const auto book = commands::ServiceBook::in(made);
    const auto log = commands::LogRange::in(made);
    if (!book || !log) return;
    log->print_used();
    commands::UndoStep step(made, {});
    std::list<commands::Lock> locks;
    for (const auto& sheet : commands::sheets_of_drift(*book)) locks.emplace_back(sheet).unlock();
    commands::draw_drift_in(context_, *book, step);
    for (commands::Lock& lock : locks) lock.relock();
    step.done();
  }

  book::Ref<css::uno::XComponentContext> context_;
};

css::uno::Reference<css::uno::XInterface> make(
    const css::uno::Reference<css::uno::XComponentContext>& context) {
  return static_cast<cppu::OWeakObject*>(new BookBuilder(context));
}

}  // namespace
}  // namespace shimwright::builder

extern "C" SAL_DLLPUBLIC_EXPORT void* component_getFactory(const char* /*name*/, void* /*manager*/,
                                                           void* /*key*/) {
  const auto factory = cppu::createSingleComponentFactory(
      shimwright::builder::make, shimwright::office::to_office(shimwright::builder::builder_name),
      {});
  factory->acquire();
  return factory.get();
}
