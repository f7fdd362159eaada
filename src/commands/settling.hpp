// SPDX-License-Identifier: MPL-2.0
//
// Work that a listener of a dialog does at a change. What the work writes into other fields comes
// back as changes of theirs, which are passed over; what it throws must not pass through the
// office's event loop, nor leave the dialog deaf to the next change.
#pragma once

#include <functional>
#include <optional>
#include <string>

namespace shimwright::commands {

class Settling {
 public:
  // Does the work, unless some is being done. Where it throws, gives the reason as reason_in()
  // does; the next change is worked on all the same.
  std::optional<std::string> trouble_in(const std::function<void()>& work) noexcept;

 private:
  bool under_way_ = false;
};

}  // namespace shimwright::commands
