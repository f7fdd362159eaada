// SPDX-License-Identifier: MPL-2.0
//
// Where the office hands over the menu's commands: URLs that begin with `vnd.org.shimwright:` come
// here (ProtocolHandler.xcu of the package says so).
#include <com/sun/star/awt/XRequestCallback.hpp>
#include <com/sun/star/frame/XDispatch.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/lang/XInitialization.hpp>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <cppuhelper/implbase1.hxx>
#include <cppuhelper/implbase4.hxx>
#include <cppuhelper/supportsservice.hxx>

#include "book/command_urls.hpp"
#include "commands/bench.hpp"
#include "commands/bring_in.hpp"
#include "commands/close_check.hpp"
#include "commands/draw_drift.hpp"
#include "commands/measuring_sheet.hpp"
#include "commands/new_book.hpp"
#include "commands/order.hpp"

namespace shimwright::commands {
namespace {

namespace css = com::sun::star;
using book::as;
using book::Ref;
using book::to_office;

using Command = void (*)(const Ref<css::uno::XComponentContext>&,
                         const Ref<css::frame::XFrame>&) noexcept;

// Null for a URL that is none of ours.
Command command_at(const css::util::URL& url) {
  constexpr std::pair<std::string_view, Command> commands[] = {
      {book::command::new_book, new_book},
      {book::command::measuring_sheet, measuring_sheet},
      {book::command::order_placed, order_placed},
      {book::command::take_to_bench, take_to_bench},
      {book::command::clear_bench, clear_bench},
      {book::command::close_check, close_check},
      {book::command::bring_in_log, bring_in_log},
      {book::command::draw_drift, draw_drift}};
  for (const auto& [name, command] : commands)
    if (url.Complete == to_office(name)) return command;
  return nullptr;
}

// Runs the command once the office comes round to it, on its main thread.
class Errand : public cppu::WeakImplHelper1<css::awt::XCallback> {
 public:
  Errand(Command command, const Ref<css::uno::XComponentContext>& context,
         const Ref<css::frame::XFrame>& frame)
      : command_(command), context_(context), frame_(frame) {}

  void SAL_CALL notify(const css::uno::Any&) override { command_(context_, frame_); }

 private:
  Command command_;
  Ref<css::uno::XComponentContext> context_;
  Ref<css::frame::XFrame> frame_;
};

class Commands : public cppu::WeakImplHelper4<css::frame::XDispatchProvider, css::frame::XDispatch,
                                              css::lang::XInitialization, css::lang::XServiceInfo> {
 public:
  explicit Commands(const Ref<css::uno::XComponentContext>& context) : context_(context) {}

  // The office gives the frame in which the command will be called, where there is one.
  void SAL_CALL initialize(const css::uno::Sequence<css::uno::Any>& arguments) override {
    if (arguments.hasElements()) arguments[0] >>= frame_;
  }

  Ref<css::frame::XDispatch> SAL_CALL queryDispatch(const css::util::URL& url, const rtl::OUString&,
                                                    sal_Int32) override {
    if (command_at(url) == nullptr) return {};
    return this;
  }

  css::uno::Sequence<Ref<css::frame::XDispatch>> SAL_CALL
  queryDispatches(const css::uno::Sequence<css::frame::DispatchDescriptor>& asked) override {
    css::uno::Sequence<Ref<css::frame::XDispatch>> answers(asked.getLength());
    for (sal_Int32 i = 0; i < asked.getLength(); ++i)
      answers.getArray()[i] =
          queryDispatch(asked[i].FeatureURL, asked[i].FrameName, asked[i].SearchFlags);
    return answers;
  }

  void SAL_CALL dispatch(const css::util::URL& url,
                         const css::uno::Sequence<css::beans::PropertyValue>&) override {
    const Command command = command_at(url);
    if (command == nullptr) return;
    const auto later = context_->getServiceManager()->createInstanceWithContext(
        to_office("com.sun.star.awt.AsyncCallback"), context_);
    as<css::awt::XRequestCallback>(later)->addCallback(new Errand(command, context_, frame_),
                                                       css::uno::Any());
  }

  // The commands are always to be had: no one needs telling.
  void SAL_CALL addStatusListener(const Ref<css::frame::XStatusListener>&,
                                  const css::util::URL&) override {}
  void SAL_CALL removeStatusListener(const Ref<css::frame::XStatusListener>&,
                                     const css::util::URL&) override {}

  rtl::OUString SAL_CALL getImplementationName() override {
    return to_office("org.shimwright.Commands");
  }
  sal_Bool SAL_CALL supportsService(const rtl::OUString& name) override {
    return cppu::supportsService(this, name);
  }
  css::uno::Sequence<rtl::OUString> SAL_CALL getSupportedServiceNames() override {
    const rtl::OUString name = to_office("com.sun.star.frame.ProtocolHandler");
    return css::uno::Sequence<rtl::OUString>(&name, 1);
  }

 private:
  Ref<css::uno::XComponentContext> context_;
  Ref<css::frame::XFrame> frame_;
};

}  // namespace
}  // namespace shimwright::commands

// Named in the package's .components file.
extern "C" SAL_DLLPUBLIC_EXPORT com::sun::star::uno::XInterface* shimwright_commands(
    com::sun::star::uno::XComponentContext* context,
    const com::sun::star::uno::Sequence<com::sun::star::uno::Any>& arguments) {
  // Arguments of a service made by a constructor come here and not through initialize().
  auto* made = new shimwright::commands::Commands(context);
  made->acquire();
  if (arguments.hasElements()) made->initialize(arguments);
  return static_cast<cppu::OWeakObject*>(made);
}
