// SPDX-License-Identifier: MPL-2.0
#include "commands/settling.hpp"

#include <com/sun/star/uno/Exception.hpp>
#include <exception>

#include "commands/reason.hpp"
#include "office/text.hpp"

namespace shimwright::commands {

std::optional<std::string> Settling::trouble_in(const std::function<void()>& work) noexcept {
  if (under_way_) return std::nullopt;
  under_way_ = true;
  std::optional<std::string> trouble;
  try {
    work();
  } catch (const com::sun::star::uno::Exception& failure) {
    trouble = reason_in(office::from_office(failure.Message));
  } catch (const std::exception& failure) {
    trouble = reason_in(failure.what());
  } catch (...) {
    trouble = reason_in({});
  }
  under_way_ = false;
  return trouble;
}

}  // namespace shimwright::commands
