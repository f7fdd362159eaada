// SPDX-License-Identifier: MPL-2.0
//
// Texts across the office's border: UTF-16 on its side, UTF-8 on ours.
#pragma once

#include <rtl/ustring.hxx>
#include <string>
#include <string_view>

namespace shimwright::office {

inline rtl::OUString to_office(std::string_view text) {
  return rtl::OUString(text.data(), static_cast<sal_Int32>(text.size()), RTL_TEXTENCODING_UTF8);
}

inline std::string from_office(const rtl::OUString& text) {
  const rtl::OString bytes = rtl::OUStringToOString(text, RTL_TEXTENCODING_UTF8);
  return std::string(bytes.getStr(), static_cast<std::size_t>(bytes.getLength()));
}

}  // namespace shimwright::office
