// SPDX-License-Identifier: MPL-2.0
//
// A LibreOffice of one's own: started in a fresh profile, reached over a pipe, ended and cleared
// away with the object. For building books and for tests, never in the extension.
//
//   office::Office office({.extension = "build/shimwright.oxt"});
//   auto loader = office.desktop();
#pragma once

#include <chrono>
#include <com/sun/star/frame/XComponentLoader.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

#include "office/process.hpp"
#include "office/profile.hpp"
#include "office/text.hpp"

namespace shimwright::office {

struct Settings {
  std::optional<std::filesystem::path> extension;  // to be installed in the profile
  std::string locale = "en-US";
  // Of the process, as LC_ALL: under a window the office follows its decimal mark.
  std::string process_locale = "C.UTF-8";
  std::string display;                // such as `:99`; empty: headless
  bool sparing = false;               // a sparing profile
  std::chrono::seconds patience{60};  // for the start
};

class Office {
 public:
  // Throws std::runtime_error, with what the office printed, where none can be started.
  explicit Office(const Settings& settings = {});
  Office(const Office&) = delete;
  Office& operator=(const Office&) = delete;
  // Ends the office; one that does not end in time is killed.
  ~Office();

  const com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext>& context() const {
    return context_;
  }

  // A service by name from the office. Throws std::runtime_error where there is none.
  com::sun::star::uno::Reference<com::sun::star::uno::XInterface> service(
      std::string_view name) const;

  com::sun::star::uno::Reference<com::sun::star::frame::XComponentLoader> desktop() const;

  const Profile& profile() const { return profile_; }

  // As a power cut ends it: in the midst of whatever it does, with nothing saved. Returns when it
  // writes no more. From any thread; calls to it then fail.
  void kill();
  // Again in the same profile, after kill(). Throws as the constructor does.
  void restart();

  // The end of what the office printed so far.
  std::string output() const { return process_->output(); }

 private:
  void start();

  Settings settings_;
  Profile profile_;
  std::optional<Process> process_;
  com::sun::star::uno::Reference<com::sun::star::uno::XComponentContext> context_;
};

}  // namespace shimwright::office
