// SPDX-License-Identifier: MPL-2.0
//
// The book rests while a command writes, and while Undo takes it back: it is drawn and worked out
// anew once, at the end, and not after each of a few hundred cells. Whether it works itself out at
// all stays as its owner has it (Data > Calculate > AutoCalculate).
#pragma once

#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XCalculatable.hpp>

#include "commands/service_book.hpp"

namespace shimwright::commands {

// Works out what has been entered since the last time, where the document has AutoCalculate off:
// true. Else all is up to date already.
bool bring_up_to_date(const Ref<css::uno::XInterface>& document);

class Rest {
 public:
  explicit Rest(const Ref<css::uno::XInterface>& document);
  Rest(const Rest&) = delete;
  Rest& operator=(const Rest&) = delete;
  ~Rest();

 private:
  Ref<css::frame::XModel> model_;
  Ref<css::sheet::XCalculatable> calculation_;
  bool was_automatic_;
};

}  // namespace shimwright::commands
