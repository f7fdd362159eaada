// SPDX-License-Identifier: MPL-2.0
#include "commands/order.hpp"

#include "book/places.hpp"
#include "commands/book_command.hpp"
#include "core/service/order_command.hpp"

namespace shimwright::commands {
namespace {

class OrderCommand : public BookCommand {
 public:
  using BookCommand::BookCommand;

  void place() {
    if (!begin() || !readings_count()) return;
    if (const std::string why = why_no_order(service(), found()); !why.empty()) {
      write_readings_count();
      return inform(why);
    }
    if (!goes_on_by(question_before_ordering(service(), found()))) return;
    constexpr std::size_t letters_of_a_day = 10;
    const auto writes = order_to_write(service(), found(), time_now().substr(0, letters_of_a_day));
    const EntryWrite& first = writes.front();
    const auto row = book().place_of(first.kind, first.name, first.value);
    if (!change({row.sheet}, [&](UndoStep& step) { write_all(step, writes); })) return;
    show(row.sheet, {book::arrivals_place::arrived, row.at.row});
    inform(order_in_words(found()));
  }
};

}  // namespace

void order_placed(const Ref<css::uno::XComponentContext>& context,
                  const Ref<css::frame::XFrame>& frame) noexcept {
  run_command(context, frame, Say::order_placed, &OrderCommand::place);
}

}  // namespace shimwright::commands
