// SPDX-License-Identifier: MPL-2.0
#include "commands/memory.hpp"

#include <com/sun/star/beans/NamedValue.hpp>
#include <com/sun/star/container/XNameAccess.hpp>
#include <com/sun/star/container/XNameReplace.hpp>
#include <com/sun/star/lang/XMultiServiceFactory.hpp>
#include <com/sun/star/util/XChangesBatch.hpp>

namespace shimwright::commands {
namespace {

namespace css = com::sun::star;
using book::as;
using book::Ref;
using book::to_office;

constexpr std::string_view used = "Used";

Ref<css::uno::XInterface> last_entries(const Ref<css::uno::XComponentContext>& context,
                                       std::string_view access) {
  const auto provider =
      as<css::lang::XMultiServiceFactory>(context->getServiceManager()->createInstanceWithContext(
          to_office("com.sun.star.configuration.ConfigurationProvider"), context));
  css::beans::NamedValue path;
  path.Name = to_office("nodepath");
  path.Value <<= to_office("/org.shimwright.NewBook/Last");
  css::uno::Sequence<css::uno::Any> arguments(1);
  arguments.getArray()[0] <<= path;
  return provider->createInstanceWithArguments(
      to_office("com.sun.star.configuration." + std::string(access)), arguments);
}

}  // namespace

NewBookEntries remembered_entries(const Ref<css::uno::XComponentContext>& context) {
  try {
    const auto last = as<css::container::XNameAccess>(last_entries(context, "ConfigurationAccess"));
    bool was_used = false;
    last->getByName(to_office(used)) >>= was_used;
    if (!was_used) return first_entries();
    // What an older version did not ask for is not there.
    NewBookEntries entries = first_entries();
    for (std::size_t i = 0; i < field_count; ++i) {
      const auto field = static_cast<Field>(i);
      rtl::OUString text;
      if (last->getByName(to_office(key_of(field))) >>= text)
        entries[field] = office::from_office(text);
    }
    return entries;
  } catch (const css::uno::Exception&) {
    // A memory that is lost must not keep anybody from making a book.
    return first_entries();
  }
}

void remember(const Ref<css::uno::XComponentContext>& context, const NewBookEntries& entries) {
  const auto last =
      as<css::container::XNameReplace>(last_entries(context, "ConfigurationUpdateAccess"));
  for (std::size_t i = 0; i < field_count; ++i) {
    const auto field = static_cast<Field>(i);
    last->replaceByName(to_office(key_of(field)), css::uno::Any(to_office(entries[field])));
  }
  last->replaceByName(to_office(used), css::uno::Any(true));
  as<css::util::XChangesBatch>(last)->commitChanges();
}

}  // namespace shimwright::commands
