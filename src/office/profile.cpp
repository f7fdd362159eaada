// SPDX-License-Identifier: MPL-2.0
#include "office/profile.hpp"

#include <stdlib.h>
#include <unistd.h>

#include <array>
#include <fstream>
#include <osl/file.hxx>
#include <stdexcept>
#include <string_view>
#include <vector>

#include "office/process.hpp"

namespace shimwright::office {
namespace {

namespace fs = std::filesystem;

constexpr uid_t nobody = 65534;

// Whether a user without rights of his own could reach the folder and write a folder he is given
// in it: the package tool refuses to run as root.
bool open_to_all(fs::path folder) {
  for (folder = fs::canonical(folder);; folder = folder.parent_path()) {
    if ((fs::status(folder).permissions() & fs::perms::others_exec) == fs::perms::none)
      return false;
    if (folder == folder.parent_path()) return true;
  }
}

fs::path new_folder() {
  fs::path base = fs::temp_directory_path();
  if (getuid() == 0 && !open_to_all(base)) base = "/tmp";
  std::string name = (base / "shimwright-XXXXXX").string();
  if (mkdtemp(name.data()) == nullptr)
    throw std::runtime_error("cannot make a temporary folder in " + base.string());
  return name;
}

void give_to(uid_t user, const fs::path& folder) {
  const auto change = [&](const fs::path& path) {
    if (lchown(path.c_str(), user, user) != 0)
      throw std::runtime_error("cannot change the owner of " + path.string());
  };
  change(folder);
  for (const auto& entry : fs::recursive_directory_iterator(folder)) change(entry.path());
}

void write_text(const fs::path& file, std::string_view text) {
  std::ofstream out(file);
  out << text;
  out.close();
  if (!out) throw std::runtime_error("cannot write " + file.string());
}

// Else each start of the office, and of the package tool twice, looks for Java by starting it.
constexpr std::string_view no_java = R"(<?xml version="1.0" encoding="UTF-8"?>
<java xmlns="http://openoffice.org/2004/java/framework/1.0" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<enabled xsi:nil="false">false</enabled>
</java>
)";

// The sidebar hidden (H), which is filled anew at each change of sheet, and the bars of buttons,
// whose lists of fonts are made anew with each window and follow each cell.
constexpr std::string_view bare_windows =
    R"(<item oor:path="/org.openoffice.Office.Views/Windows"><node oor:name="scalc/10336" oor:op="replace"><node oor:name="UserData"><prop oor:name="Data" oor:op="fuse" oor:type="xs:string"><value>V2,H,0</value></prop></node></node></item>
<item oor:path="/org.openoffice.Office.UI.CalcWindowState/UIElements/States/org.openoffice.Office.UI.WindowState:WindowStateType['private:resource/toolbar/standardbar']"><prop oor:name="Visible" oor:op="fuse"><value>false</value></prop></item>
<item oor:path="/org.openoffice.Office.UI.CalcWindowState/UIElements/States/org.openoffice.Office.UI.WindowState:WindowStateType['private:resource/toolbar/formatobjectbar']"><prop oor:name="Visible" oor:op="fuse"><value>false</value></prop></item>
)";

void write_settings(const fs::path& file, const std::string& locale, bool sparing) {
  struct Setting {
    std::string_view path;
    std::string_view name;
    std::string_view value;
  };
  const std::array settings{
      Setting{"/org.openoffice.Setup/L10N", "ooSetupSystemLocale", locale},
      Setting{"/org.openoffice.Setup/L10N", "ooLocale", locale},
      Setting{"/org.openoffice.Setup/Office", "ooSetupInstCompleted", "true"},
      Setting{"/org.openoffice.Setup/Office", "LastCompatibilityCheckID", "none"},
      // A version and dates far ahead: no bar about news, donations or joining in.
      Setting{"/org.openoffice.Setup/Product", "ooSetupLastVersion", "99.9"},
      Setting{"/org.openoffice.Setup/Product", "LastTimeDonateShown", "9000000000"},
      Setting{"/org.openoffice.Setup/Product", "LastTimeGetInvolvedShown", "9000000000"},
      Setting{"/org.openoffice.Office.Common/Misc", "FirstRun", "false"},
      Setting{"/org.openoffice.Office.Common/Misc", "ShowTipOfTheDay", "false"},
      Setting{"/org.openoffice.Office.Common/Misc", "PerformFileExtCheck", "false"},
      Setting{"/org.openoffice.Office.Common/Save/Document", "WarnAlienFormat", "false"},
      Setting{"/org.openoffice.Office.Recovery/AutoSave", "Enabled", "false"},
      Setting{"/org.openoffice.Office.Common/Save/Document", "GenerateThumbnail",
              sparing ? "false" : "true"},
      Setting{"/org.openoffice.Office.Common/History", "RecentDocsThumbnail",
              sparing ? "false" : "true"},
  };
  std::string xml = R"(<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
)";
  for (const Setting& setting : settings) {
    if (setting.value.empty()) continue;
    xml.append("<item oor:path=\"").append(setting.path);
    xml.append("\"><prop oor:name=\"").append(setting.name);
    xml.append("\" oor:op=\"fuse\"><value>").append(setting.value);
    xml.append("</value></prop></item>\n");
  }
  if (sparing) xml += bare_windows;
  xml += "</oor:items>\n";
  write_text(file, xml);
}

}  // namespace

Profile::Profile(const std::string& locale, bool sparing) : folder_(new_folder()) {
  try {
    fs::permissions(folder_, fs::perms(0755));
    fs::create_directories(folder_ / "profile/user/config");
    fs::create_directories(folder_ / "home");
    fs::create_directories(folder_ / "tmp");
    write_settings(folder_ / "profile/user/registrymodifications.xcu", locale, sparing);
    write_text(folder_ / "profile/user/config/javasettings_Linux_X86_64.xml", no_java);
  } catch (...) {
    std::error_code ignored;
    fs::remove_all(folder_, ignored);
    throw;
  }
}

Profile::~Profile() {
  std::error_code ignored;
  fs::remove_all(folder_, ignored);
}

void Profile::install(const fs::path& extension) {
  if (!fs::exists(extension))
    throw std::runtime_error("the extension " + extension.string() + " does not exist");
  const fs::path package = folder_ / extension.filename();
  fs::copy_file(extension, package, fs::copy_options::overwrite_existing);
  std::vector<std::string> command{OFFICE_PROGRAM "/unopkg", "add", "-f", "-s", argument(),
                                   package.string()};
  const bool root = getuid() == 0;
  if (root) {
    give_to(nobody, folder_);
    // The folder where we stand, perhaps root's own, may be closed to nobody.
    command.insert(command.begin(), {"env", "--chdir=" + folder_.string(), "setpriv",
                                     "--reuid=65534", "--regid=65534", "--clear-groups"});
  }
  Process unopkg(command, environment(), folder_ / "unopkg.log");
  const auto code = unopkg.wait_for(std::chrono::minutes(2));
  if (root && code) give_to(getuid(), folder_);
  if (code != 0)
    throw std::runtime_error("the package tool would not install " + extension.string() + ": " +
                             (code ? unopkg.output() : "no answer in two minutes"));
}

std::string Profile::argument() const {
  return "-env:UserInstallation=" + url_of(folder_ / "profile");
}

std::map<std::string, std::string> Profile::environment() const {
  return {{"HOME", (folder_ / "home").string()},
          {"TMPDIR", (folder_ / "tmp").string()},
          {"XDG_CONFIG_HOME", ""},
          {"XDG_CACHE_HOME", ""},
          {"XDG_RUNTIME_DIR", ""},
          {"LC_ALL", "C.UTF-8"}};
}

std::string url_of(const fs::path& path) {
  const std::string text = fs::absolute(path).lexically_normal().string();
  rtl::OUString url;
  osl::FileBase::getFileURLFromSystemPath(
      rtl::OStringToOUString(rtl::OString(text.c_str()), RTL_TEXTENCODING_UTF8), url);
  return rtl::OUStringToOString(url, RTL_TEXTENCODING_UTF8).getStr();
}

}  // namespace shimwright::office
