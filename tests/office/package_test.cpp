// SPDX-License-Identifier: MPL-2.0
//
// The package as the office sees it once installed.
#include <gtest/gtest.h>

#include <com/sun/star/beans/XPropertySet.hpp>
#include <com/sun/star/deployment/XExtensionManager.hpp>
#include <com/sun/star/deployment/XPackageInformationProvider.hpp>
#include <com/sun/star/graphic/XGraphic.hpp>
#include <com/sun/star/task/XAbortChannel.hpp>
#include <com/sun/star/ucb/XCommandEnvironment.hpp>
#include <com/sun/star/ucb/XSimpleFileAccess.hpp>

#include "sheet.hpp"

namespace shimwright::tests {
namespace {

using css::uno::Any;
using css::uno::Reference;
using css::uno::Sequence;
using css::uno::UNO_QUERY_THROW;
using office::from_office;
using office::to_office;

template <class T>
Reference<T> singleton(std::string_view name) {
  const std::string path = std::string("/singletons/").append(name);
  return Reference<T>(the_office().context()->getValueByName(to_office(path)), UNO_QUERY_THROW);
}

TEST(Package, is_known_by_its_name_and_version) {
  const auto packages = singleton<css::deployment::XPackageInformationProvider>(
      "com.sun.star.deployment.PackageInformationProvider");
  std::string version = "not installed";
  for (const Sequence<rtl::OUString>& package : packages->getExtensionList())
    if (from_office(package[0]) == "org.shimwright") version = from_office(package[1]);
  EXPECT_EQ(version, SHIMWRIGHT_VERSION);
}

TEST(Package, shows_its_name_and_picture_in_the_extension_manager) {
  const auto manager =
      singleton<css::deployment::XExtensionManager>("com.sun.star.deployment.ExtensionManager");
  const auto package = manager->getDeployedExtension(to_office("user"), to_office("org.shimwright"),
                                                     to_office("shimwright.oxt"),
                                                     Reference<css::ucb::XCommandEnvironment>());
  EXPECT_EQ(from_office(package->getDisplayName()), "Shimwright: valve-clearance shims");
  EXPECT_NE(from_office(package->getDescription()).find("shims"), std::string::npos);
  EXPECT_TRUE(package->getIcon(false).is());
  EXPECT_TRUE(package->getLicenseText().isEmpty()) << "a licence to agree to at install";
}

// Where File, New, Templates looks.
TEST(Package, brings_its_templates) {
  const Reference<css::beans::XPropertySet> paths(
      the_office().service("com.sun.star.util.PathSettings"), UNO_QUERY_THROW);
  Sequence<rtl::OUString> folders;
  ASSERT_TRUE(paths->getPropertyValue(to_office("Template_internal")) >>= folders);
  const Reference<css::ucb::XSimpleFileAccess> files(
      the_office().service("com.sun.star.ucb.SimpleFileAccess"), UNO_QUERY_THROW);
  int templates = 0;
  for (const rtl::OUString& folder : folders) {
    const std::string plain = from_office(folder);
    if (plain.find("shimwright.oxt") == std::string::npos) continue;
    for (const rtl::OUString& file : files->getFolderContents(folder, false))
      templates += from_office(file).ends_with(".ots") ? 1 : 0;
  }
  EXPECT_GE(templates, 1);
}

}  // namespace
}  // namespace shimwright::tests
