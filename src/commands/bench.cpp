// SPDX-License-Identifier: MPL-2.0
#include "commands/bench.hpp"

#include <algorithm>
#include <vector>

#include "book/fit_map.hpp"
#include "commands/bench_list.hpp"
#include "commands/book_command.hpp"
#include "core/service/bench_commands.hpp"
#include "core/service/gaps_taken.hpp"

namespace shimwright::commands {
namespace {

using book::FitMap;

class BenchCommand : public BookCommand {
 public:
  using BookCommand::BookCommand;

  void take() {
    if (!begin() || !readings_count()) return;
    const std::vector<BenchRow> rows = rows_for_bench(service(), found());
    if (rows.empty()) {
      write_readings_count();
      return inform(why_nothing_to_take(service(), found()));
    }
    const BenchList list = bench_list();
    const FitMap& map = list.map();
    const auto steps = static_cast<int>(rows.size());
    if (steps > map.rows)
      return inform(say(Say::bench_too_long, {std::int64_t{steps}, std::int64_t{map.rows}}));
    if (ask_all(question_before_taking(service(), found())) != Answer::yes) return;
    const bool done = change({fit_}, [&](UndoStep& step) {
      write_all(step, new_gaps_to_clear(service()));
      list.empty(step);
      for (int row = 0; row < steps; ++row)
        write_row(step, list, row, rows[static_cast<std::size_t>(row)]);
      step.put(book().place_of("taken", "list", 0), time_now());
      step.put({fit_, FitMap::gaps_taken}, gaps_as_taken(found()));
      list.print(steps);
    });
    if (done) show(fit_, map.at(0, FitMap::done));
  }

  void clear_all() {
    if (!begin()) return;
    if (service().bench.empty()) return inform(say(Say::bench_empty));
    const BenchQuestion question = question_before_clearing(service(), found());
    const Answer answer = ask_all(question);
    if (answer == Answer::cancel || (answer == Answer::no && !question.offers_shims)) return;
    const BenchList list = bench_list();
    std::vector<EntryWrite> shims;
    if (question.offers_shims && answer == Answer::yes) shims = shims_to_enter(service(), found());
    std::vector<SheetRef> sheets{fit_};
    const auto arrival = std::ranges::find(shims, "arrival", &EntryWrite::kind);
    if (arrival != shims.end())
      sheets.push_back(book().place_of(arrival->kind, arrival->name, arrival->value).sheet);
    const bool done = change(sheets, [&](UndoStep& step) {
      write_all(step, shims);
      write_all(step, new_gaps_to_clear(service()));
      list.empty(step);
      list.print(0);
    });
    if (done) show(fit_, list.map().at(0, FitMap::done));
  }

 private:
  bool begin() {
    if (!BookCommand::begin()) return false;
    fit_ = book().place_of("taken", "list", 0).sheet;
    return true;
  }

  // Yes at once where there is nothing to ask.
  Answer ask_all(const BenchQuestion& question) const {
    if (!question.caution.empty() && ask(over(), question.caution, false) != Answer::yes)
      return Answer::cancel;
    if (question.words.empty()) return Answer::yes;
    return ask(over(), question.words, question.offers_shims);
  }

  BenchList bench_list() const { return {fit_, static_cast<int>(service().valves.size())}; }

  void write_row(UndoStep& step, const BenchList& list, int row, const BenchRow& from) {
    const auto put = [&](FitMap::Column column, const Entry& what) {
      step.put({fit_, list.map().at(row, column)}, what);
    };
    put(FitMap::kind, from.step.kind);
    put(FitMap::step, static_cast<double>(row + 1));
    put(FitMap::stop, from.step.stop);
    put(FitMap::valve, from.valve);
    put(FitMap::out, from.step.out);
    put(FitMap::in, from.step.in);
    put(FitMap::from, from.step.from);
    put(FitMap::note, from.note);
    const double mm = book::bench_row_height(from.note);
    if (mm > book::bench_row_mm) list.height(list.map().at(row, FitMap::kind), mm);
  }

  Ref<css::sheet::XSpreadsheet> fit_;
};

}  // namespace

void take_to_bench(const Ref<css::uno::XComponentContext>& context,
                   const Ref<css::frame::XFrame>& frame) noexcept {
  run_command(context, frame, Say::bench_take, &BenchCommand::take);
}

void clear_bench(const Ref<css::uno::XComponentContext>& context,
                 const Ref<css::frame::XFrame>& frame) noexcept {
  run_command(context, frame, Say::bench_clear, &BenchCommand::clear_all);
}

}  // namespace shimwright::commands
