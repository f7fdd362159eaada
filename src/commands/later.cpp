// SPDX-License-Identifier: MPL-2.0
#include "commands/later.hpp"

#include <com/sun/star/awt/XRequestCallback.hpp>
#include <cppuhelper/implbase1.hxx>
#include <exception>
#include <utility>

namespace shimwright::commands {
namespace {

namespace css = com::sun::star;
using book::as;
using book::Ref;

class Errand : public cppu::WeakImplHelper1<css::awt::XCallback> {
 public:
  explicit Errand(std::function<void()> work) : work_(std::move(work)) {}

  void SAL_CALL notify(const css::uno::Any&) override {
    try {
      work_();
    } catch (const css::uno::Exception&) {
    } catch (const std::exception&) {
    }
  }

 private:
  std::function<void()> work_;
};

}  // namespace

void later(const Ref<css::uno::XComponentContext>& context, std::function<void()> work) {
  const auto queue = context->getServiceManager()->createInstanceWithContext(
      book::to_office("com.sun.star.awt.AsyncCallback"), context);
  as<css::awt::XRequestCallback>(queue)->addCallback(new Errand(std::move(work)), css::uno::Any());
}

}  // namespace shimwright::commands
