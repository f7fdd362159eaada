// SPDX-License-Identifier: MPL-2.0
#include "commands/bring_in.hpp"

#include <algorithm>
#include <com/sun/star/awt/XTopWindow.hpp>
#include <com/sun/star/frame/Desktop.hpp>
#include <com/sun/star/frame/XModel.hpp>
#include <com/sun/star/frame/XTitle.hpp>
#include <set>

#include "book/places.hpp"
#include "commands/book_command.hpp"
#include "commands/bring_in_dialog.hpp"
#include "commands/draw_drift.hpp"
#include "commands/log_range.hpp"
#include "commands/owner_sheet.hpp"
#include "commands/rest.hpp"
#include "core/entries/entry_row.hpp"
#include "core/log/bring_in/bring_in.hpp"

namespace shimwright::commands {
namespace {

using book::as;

// Beyond it even the list of rows is no longer usable.
constexpr int most_rows = 20'000;

using Frames = std::vector<Ref<css::frame::XFrame>>;

Ref<css::frame::XFrame> frame_of(const Ref<css::frame::XModel>& model) {
  const auto controller = model->getCurrentController();
  return controller.is() ? controller->getFrame() : Ref<css::frame::XFrame>();
}

Ref<css::frame::XModel> model_in(const Ref<css::frame::XFrame>& frame) {
  const auto controller = frame.is() ? frame->getController() : Ref<css::frame::XController>();
  return controller.is() ? controller->getModel() : Ref<css::frame::XModel>();
}

bool is_book(const Ref<css::uno::XInterface>& document) {
  return ServiceBook::in(ServiceBook::Document(document, css::uno::UNO_QUERY)).has_value();
}

// The front document's, where that is a book; else those of all books that are open.
Frames frames_of_books(const Ref<css::uno::XComponentContext>& context,
                       const Ref<css::frame::XFrame>& front) {
  if (is_book(model_in(front))) return {front};
  Frames frames;
  const auto all = css::frame::Desktop::create(context)->getComponents()->createEnumeration();
  while (all->hasMoreElements()) {
    const Ref<css::frame::XModel> model(all->nextElement(), css::uno::UNO_QUERY);
    if (model.is() && is_book(model) && frame_of(model).is()) frames.push_back(frame_of(model));
  }
  return frames;
}

std::string title_of(const Ref<css::uno::XInterface>& document) {
  return office::from_office(as<css::frame::XTitle>(document)->getTitle());
}

bool is_own_sheet(std::string_view name) {
  namespace sheet = book::sheet_name;
  constexpr std::string_view own[] = {sheet::read_me,  sheet::engine, sheet::head,
                                      sheet::measure,  sheet::shims,  sheet::plan,
                                      sheet::arrivals, sheet::fit,    sheet::recheck,
                                      sheet::log,      sheet::drift,  sheet::workings};
  return std::ranges::find(own, name) != std::ranges::end(own);
}

class BringInCommand : public BookCommand {
 public:
  BringInCommand(const Ref<css::uno::XComponentContext>& context,
                 const Ref<css::frame::XFrame>& front, Say title)
      : BringInCommand(context, front, title, frames_of_books(context, front)) {}

  void bring_in() {
    if (books_.empty()) return inform(say(Say::bring_no_book));
    if (books_.size() > 1) return inform(say(Say::bring_many_books));
    if (!begin()) return;
    const auto log = LogRange::in(book().document());
    if (!log) return inform(say(Say::bring_old_book));
    const auto selected = selected_in(front_->getController());
    if (!selected) return inform(say(Say::bring_no_range));
    if (books_.front() == front_ && is_own_sheet(selected->sheet))
      return inform(say(Say::bring_own_log));
    if (selected->rows > most_rows)
      return inform(
          say(Say::bring_too_many, {std::int64_t{selected->rows}, std::int64_t{most_rows}}));
    bring_up_to_date(model_in(front_));
    const OwnerSheet sheet = read_sheet(*selected, model_in(front_));
    const bool all_blank = std::ranges::all_of(sheet.table.rows, [](const auto& row) {
      return std::ranges::all_of(row, [](const OwnerCell& cell) { return is_blank(cell.value); });
    });
    if (all_blank) return inform(say(Say::bring_no_range));
    BringIn brought(sheet.table, what_the_book_knows(*log), found().teller);
    const std::string where = sheet.sheet + ", " + sheet.range;
    const std::string from =
        say(Say::bring_from, {where, title_of(model_in(front_)), title_of(book().document())});
    if (!ask_what_to_bring_in(over().context, over().window, brought, found().teller, from)) return;
    write(*log, brought.rows());
  }

 private:
  BringInCommand(const Ref<css::uno::XComponentContext>& context,
                 const Ref<css::frame::XFrame>& front, Say title, Frames books)
      : BookCommand(context, books.size() == 1 ? books.front() : front, title),
        front_(front),
        books_(std::move(books)) {
    tell_over(front);
  }

  BringInBook what_the_book_knows(const LogRange& log) const {
    BringInBook known;
    for (const Service::ValveEntries& valve : service().valves) {
      known.valves.push_back(valve.name);
      known.limits.push_back(found().of(valve.side).limits);
    }
    known.unit = found().teller.unit();
    known.distance =
        distance_unit_named(word_in(service().distance_unit)).value_or(DistanceUnit::km);
    known.size_marked = [this](const Entry& mark) { return size_marked(service(), mark); };
    known.log = present_rows(log.rows());
    return known;
  }

  void write(const LogRange& log, const std::vector<LogRow>& rows) {
    const int first = log.last_used_row() + 1;
    std::vector<SheetRef> sheets{log.sheet()};
    for (const SheetRef& sheet : sheets_of_drift(book())) sheets.push_back(sheet);
    const bool done = change(sheets, [&](UndoStep& step) {
      log.append(step, rows, found().teller.unit());
      draw_drift_in(over().context, book(), step);
    });
    if (!done) return;
    show(log.sheet(), {book::log_place::first.column, first});
    const auto window = books_.front()->getContainerWindow();
    as<css::awt::XTopWindow>(window)->toFront();
    tell_over(books_.front());
    std::set<std::int64_t> checks;
    for (const LogRow& row : rows) checks.insert(row.check);
    inform(say(Say::bring_done,
               {static_cast<std::int64_t>(rows.size()), static_cast<std::int64_t>(checks.size())}));
  }

  Ref<css::frame::XFrame> front_;
  Frames books_;
};

}  // namespace

void bring_in_log(const Ref<css::uno::XComponentContext>& context,
                  const Ref<css::frame::XFrame>& frame) noexcept {
  if (!frame.is()) return;
  run_command(context, frame, Say::bring_in, &BringInCommand::bring_in);
}

}  // namespace shimwright::commands
