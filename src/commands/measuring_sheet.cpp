// SPDX-License-Identifier: MPL-2.0
#include "commands/measuring_sheet.hpp"

#include <com/sun/star/frame/FrameSearchFlag.hpp>
#include <com/sun/star/frame/XDispatchProvider.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/sheet/XSpreadsheetView.hpp>
#include <com/sun/star/util/URLTransformer.hpp>
#include <exception>

#include "book/places.hpp"
#include "commands/message.hpp"
#include "commands/reason.hpp"
#include "commands/service_book.hpp"
#include "core/service/words/teller.hpp"

namespace shimwright::commands {
namespace {

using book::as;
using book::to_office;

// The office's own command; it prints the sheets that are selected: the one in sight.
void open_print_dialog(const Ref<css::uno::XComponentContext>& context,
                       const Ref<css::frame::XFrame>& frame) {
  css::util::URL url;
  url.Complete = ".uno:Print";
  css::util::URLTransformer::create(context)->parseStrict(url);
  const auto dispatch = as<css::frame::XDispatchProvider>(frame)->queryDispatch(
      url, to_office("_self"), css::frame::FrameSearchFlag::SELF);
  if (dispatch.is()) dispatch->dispatch(url, {});
}

void run(const Ref<css::frame::XFrame>& frame, const Over& over) {
  const auto controller = frame->getController();
  const ServiceBook::Document document(
      controller.is() ? controller->getModel() : Ref<css::frame::XModel>(), css::uno::UNO_QUERY);
  if (!ServiceBook::in(document))
    return tell(over, Tone::information, Teller().say(Say::bench_no_book));
  const rtl::OUString name = to_office(book::sheet_name::measure);
  if (!document->getSheets()->hasByName(name))
    return tell(over, Tone::information, Teller().say(Say::measure_no_sheet));
  as<css::sheet::XSpreadsheetView>(controller)
      ->setActiveSheet(as<css::sheet::XSpreadsheet>(document->getSheets()->getByName(name)));
  open_print_dialog(over.context, frame);
}

}  // namespace

void measuring_sheet(const Ref<css::uno::XComponentContext>& context,
                     const Ref<css::frame::XFrame>& frame) noexcept try {
  if (!frame.is()) return;
  const Over over{context, frame->getContainerWindow(), Teller().say(Say::measure_command)};
  try {
    run(frame, over);
  } catch (const css::uno::Exception& failure) {
    tell(over, Tone::trouble, reason_in(office::from_office(failure.Message)));
  } catch (const std::exception& failure) {
    tell(over, Tone::trouble, reason_in(failure.what()));
  }
} catch (...) {
  // The window is gone: there is no one left to tell.
}

}  // namespace shimwright::commands
