// SPDX-License-Identifier: MPL-2.0
#include "commands/close_check.hpp"

#include <algorithm>

#include "book/places.hpp"
#include "commands/bench_list.hpp"
#include "commands/book_command.hpp"
#include "commands/close_dialog.hpp"
#include "commands/draw_drift.hpp"
#include "commands/log_range.hpp"
#include "core/service/closing.hpp"

namespace shimwright::commands {
namespace {

std::string lines_of(const std::vector<Told>& all, const Teller& teller) {
  std::string lines;
  for (const Told& one : all) lines += (lines.empty() ? "" : "\n\n") + in_words(one, teller);
  return lines;
}

class CloseCommand : public BookCommand {
 public:
  using BookCommand::BookCommand;

  void close() {
    if (!begin()) return;
    auto log = LogRange::in(document());
    if (!log) return inform(say(Say::close_no_log));
    constexpr std::size_t letters_of_a_day = 10;
    const std::string today = time_now().substr(0, letters_of_a_day);
    const auto entries = ask_to_close(over(), service(), found(), log->rows(), today);
    if (!entries) return;
    // The book may have been changed in another window meanwhile.
    if (!begin()) return;
    log = LogRange::in(document());
    if (!log) return inform(say(Say::close_no_log));
    const Closing closing = closing_of(service(), found(), log->rows(), *entries, today);
    if (!closing.refusals.empty()) return inform(lines_of(closing.refusals, found().teller));
    if (!closing.questions.empty() &&
        ask(over(), say(Say::close_ask, {lines_of(closing.questions, found().teller)}), false) !=
            Answer::yes)
      return;
    write_down(closing, *log);
  }

 private:
  void write_down(const Closing& closing, const LogRange& log) {
    const BenchList list(book().place_of("taken", "list", 0).sheet,
                         static_cast<int>(service().valves.size()));
    std::vector<SheetRef> sheets{log.sheet(), list.sheet()};
    const auto add = [&sheets](const SheetRef& sheet) {
      if (std::ranges::find(sheets, sheet) == sheets.end()) sheets.push_back(sheet);
    };
    for (const EntryWrite& one : closing.writes)
      add(book().place_of(one.kind, one.name, one.value).sheet);
    for (const SheetRef& sheet : sheets_of_drift(book())) add(sheet);
    const int first_row = log.last_used_row() + 1;
    const bool done = change(sheets, [&](UndoStep& step) {
      write_all(step, closing.writes);
      list.empty(step);
      list.print(0);
      log.append(step, closing.rows, found().teller.unit());
      draw_drift_in(over().context, book(), step);
    });
    if (done) show(log.sheet(), {book::log_place::first.column, first_row});
  }
};

}  // namespace

void close_check(const Ref<css::uno::XComponentContext>& context,
                 const Ref<css::frame::XFrame>& frame) noexcept {
  run_command(context, frame, Say::close_check, &CloseCommand::close);
}

}  // namespace shimwright::commands
