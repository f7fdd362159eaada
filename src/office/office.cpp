// SPDX-License-Identifier: MPL-2.0
#include "office/office.hpp"

#include <sys/prctl.h>
#include <unistd.h>

#include <com/sun/star/bridge/UnoUrlResolver.hpp>
#include <com/sun/star/connection/NoConnectException.hpp>
#include <com/sun/star/frame/XDesktop.hpp>
#include <com/sun/star/lang/XMultiComponentFactory.hpp>
#include <cppuhelper/bootstrap.hxx>
#include <csignal>
#include <rtl/bootstrap.hxx>
#include <stdexcept>
#include <thread>
#include <vector>

namespace shimwright::office {
namespace {

namespace css = com::sun::star;
using css::uno::Reference;
using css::uno::UNO_QUERY;
using css::uno::UNO_QUERY_THROW;

// This process's own corner of UNO, from which the office's is reached. Without the description of
// every type it would call into the void where the office hands it an interface.
const Reference<css::uno::XComponentContext>& own_context() {
  static const Reference<css::uno::XComponentContext> context = [] {
    const std::string types = url_of(OFFICE_PROGRAM "/types");
    rtl::Bootstrap::set("URE_MORE_TYPES", to_office("<" + types + ">*"));
    return cppu::defaultBootstrap_InitialComponentContext(
        to_office(url_of(OFFICE_PROGRAM "/unorc")));
  }();
  return context;
}

std::string new_pipe_name() {
  static int count = 0;
  return "shimwright-" + std::to_string(getpid()) + "-" + std::to_string(++count);
}

Reference<css::uno::XComponentContext> connect(const std::string& pipe, Process& office,
                                               std::chrono::seconds patience) {
  const auto resolver = css::bridge::UnoUrlResolver::create(own_context());
  const rtl::OUString url = to_office("uno:pipe,name=" + pipe + ";urp;StarOffice.ComponentContext");
  const auto deadline = std::chrono::steady_clock::now() + patience;
  for (;;) {
    try {
      return Reference<css::uno::XComponentContext>(resolver->resolve(url), UNO_QUERY_THROW);
    } catch (const css::connection::NoConnectException&) {
      // not listening yet
    }
    if (const auto code = office.wait_for(std::chrono::milliseconds(50)))
      throw std::runtime_error("LibreOffice ended at its start with code " + std::to_string(*code) +
                               ": " + office.output());
    if (std::chrono::steady_clock::now() > deadline)
      throw std::runtime_error("LibreOffice did not answer in " + std::to_string(patience.count()) +
                               " seconds: " + office.output());
  }
}

}  // namespace

Office::Office(const Settings& settings)
    : settings_(settings), profile_(settings.locale, settings.sparing) {
  // Where an office ends while something is still written to it, the call fails, not this program.
  std::signal(SIGPIPE, SIG_IGN);
  if (settings_.extension) profile_.install(*settings_.extension);
  start();
}

void Office::start() {
  const std::string pipe = new_pipe_name();
  std::vector<std::string> command{OFFICE_PROGRAM "/soffice",
                                   "--norestore",
                                   "--nologo",
                                   "--nodefault",
                                   "--nofirststartwizard",
                                   profile_.argument(),
                                   "--accept=pipe,name=" + pipe + ";urp;"};
  auto environment = profile_.environment();
  environment["LC_ALL"] = settings_.process_locale;
  environment["DISPLAY"] = settings_.display;
  environment["WAYLAND_DISPLAY"] = "";
  environment["DBUS_SESSION_BUS_ADDRESS"] = "";
  if (settings_.display.empty()) command.insert(command.begin() + 1, "--headless");
  process_.emplace(command, environment, profile_.folder() / "office.log");
  try {
    context_ = connect(pipe, *process_, settings_.patience);
  } catch (const css::uno::Exception& failure) {
    throw std::runtime_error("cannot reach LibreOffice: " + from_office(failure.Message) + ": " +
                             process_->output());
  }
}

Office::~Office() {
  try {
    Reference<css::frame::XDesktop>(desktop(), UNO_QUERY_THROW)->terminate();
  } catch (...) {
    // The connection breaks as the office ends, or it was dead already.
  }
  context_.clear();
  if (process_) process_->wait_for(std::chrono::seconds(10));
  process_.reset();  // kills what is left, before the profile is removed
}

void Office::kill() {
  // The office proper is a child of the process that was started: once that is gone it is ours, and
  // its end can be waited for.
  prctl(PR_SET_CHILD_SUBREAPER, 1);
  process_.reset();
}

void Office::restart() {
  context_.clear();
  start();
}

Reference<css::uno::XInterface> Office::service(std::string_view name) const {
  Reference<css::uno::XInterface> made;
  try {
    made = context_->getServiceManager()->createInstanceWithContext(to_office(name), context_);
  } catch (const css::uno::Exception& failure) {
    throw std::runtime_error("LibreOffice could not make " + std::string(name) + ": " +
                             from_office(failure.Message));
  }
  if (!made.is()) throw std::runtime_error("LibreOffice knows no " + std::string(name));
  return made;
}

Reference<css::frame::XComponentLoader> Office::desktop() const {
  return Reference<css::frame::XComponentLoader>(service("com.sun.star.frame.Desktop"),
                                                 UNO_QUERY_THROW);
}

}  // namespace shimwright::office
