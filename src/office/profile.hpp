// SPDX-License-Identifier: MPL-2.0
//
// A LibreOffice profile made afresh in a temporary folder and removed with the object: nothing of
// the user's own profile is read or changed, and no first-start dialog stands in the way.
#pragma once

#include <filesystem>
#include <map>
#include <string>

namespace shimwright::office {

class Profile {
 public:
  // `locale` such as `de-DE` rules decimal marks and, where that language is installed, the
  // window's texts; blank leaves both to the system's. A sparing one does without what takes time
  // and no test looks at: pictures of the first page in files that are saved, the sidebar and the
  // bars of buttons of Calc's windows. Throws std::runtime_error where the folder cannot be made.
  explicit Profile(const std::string& locale = "en-US", bool sparing = false);
  Profile(const Profile&) = delete;
  Profile& operator=(const Profile&) = delete;
  ~Profile();

  // Installs an extension (.oxt) as a user would. Throws std::runtime_error where the office's
  // package tool refuses; what it lets pass may still not work (only a call proves that).
  void install(const std::filesystem::path& extension);

  // The temporary folder; the profile itself is one folder in it, and whoever runs an office may
  // put files of that run beside it.
  const std::filesystem::path& folder() const { return folder_; }
  // For the command line: -env:UserInstallation=...
  std::string argument() const;
  // What every program run in this profile is given on top of the present environment.
  std::map<std::string, std::string> environment() const;

 private:
  std::filesystem::path folder_;
};

// file:///... of a path, made absolute.
std::string url_of(const std::filesystem::path& path);

}  // namespace shimwright::office
