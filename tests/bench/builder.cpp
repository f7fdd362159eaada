// SPDX-License-Identifier: MPL-2.0
//
// Loaded into the office by the benchmark, so that a book is built where the menu's command builds
// it: inside, without a bridge in between.
#include "builder.hpp"

#include <com/sun/star/lang/XSingleComponentFactory.hpp>
#include <com/sun/star/task/XJob.hpp>
#include <cppuhelper/factory.hxx>
#include <cppuhelper/implbase1.hxx>

#include "book/book.hpp"
#include "invented_book.hpp"

namespace shimwright::bench {
namespace {

namespace css = com::sun::star;

// Its one argument is the layout's index.
class Builder : public cppu::WeakImplHelper1<css::task::XJob> {
 public:
  explicit Builder(book::Ref<css::uno::XComponentContext> context) : context_(std::move(context)) {}

  css::uno::Any SAL_CALL
  execute(const css::uno::Sequence<css::beans::NamedValue>& arguments) override {
    sal_Int32 index = 0;
    arguments[0].Value >>= index;
    const EngineLayout layout = layouts_of_48_valves().at(static_cast<std::size_t>(index));
    return css::uno::Any(book::build_book(context_, layout, layout.name));
  }

 private:
  book::Ref<css::uno::XComponentContext> context_;
};

css::uno::Reference<css::uno::XInterface> make(
    const css::uno::Reference<css::uno::XComponentContext>& context) {
  return static_cast<cppu::OWeakObject*>(new Builder(context));
}

}  // namespace
}  // namespace shimwright::bench

extern "C" SAL_DLLPUBLIC_EXPORT void* component_getFactory(const char* /*name*/, void* /*manager*/,
                                                           void* /*key*/) {
  const auto factory = cppu::createSingleComponentFactory(
      shimwright::bench::make, shimwright::book::to_office(shimwright::bench::builder_name), {});
  factory->acquire();
  return factory.get();
}
