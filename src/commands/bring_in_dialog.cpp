// SPDX-License-Identifier: MPL-2.0
#include "commands/bring_in_dialog.hpp"

#include <algorithm>
#include <functional>

#include "book/area.hpp"
#include "commands/settling.hpp"
#include "core/log/bring_in/lines.hpp"

namespace shimwright::commands {
namespace {

// The controls, as the file calls them.
constexpr std::string_view source = "Source";
constexpr std::string_view form_list = "Form";
constexpr std::string_view heading = "Heading";
constexpr std::string_view order = "Order";
constexpr std::string_view columns_head = "ColumnsHead";
constexpr std::string_view columns = "Columns";
constexpr std::string_view column = "Column";
constexpr std::string_view what = "What";
constexpr std::string_view valve = "Valve";
constexpr std::string_view unit = "ColumnUnit";
constexpr std::string_view show = "Show";
constexpr std::string_view rows_head = "RowsHead";
constexpr std::string_view rows = "Rows";
constexpr std::string_view turn = "Turn";
constexpr std::string_view tick_all = "TickAll";
constexpr std::string_view tick_none = "TickNone";
constexpr std::string_view status = "Status";
constexpr std::string_view accept = "Accept";

// The order in which a list offers what a column may hold: none, then as Log has it.
std::vector<std::optional<LogColumn>> meanings() {
  std::vector<std::optional<LogColumn>> all{std::nullopt};
  for (int i = 0; i < log_columns; ++i) all.emplace_back(static_cast<LogColumn>(i));
  return all;
}

class BringInDialog {
 public:
  BringInDialog(const Ref<css::uno::XComponentContext>& context,
                const Ref<css::awt::XWindow>& parent, BringIn& log, const Teller& teller,
                std::string_view from)
      : form_(context, "BringIn", parent), log_(log), teller_(teller) {
    form_.tell(source, from, Weight::normal);
    form_.tell(columns_head, log_.columns_heading(), Weight::bold);
    form_.tell(rows_head, log_.rows_heading(), Weight::bold);
    form_.offer(form_list, {say(Say::bring_row_a_valve), say(Say::bring_row_a_check)});
    form_.offer(heading, {say(Say::bring_no_heading), say(Say::bring_one_heading),
                          say(Say::bring_two_headings)});
    form_.offer(order, {say(Say::bring_day_first), say(Say::bring_month_first)});
    form_.offer(show, {say(Say::bring_all_rows), say(Say::bring_rows_left_out)});
    std::vector<std::string> choices;
    for (const auto& one : meanings()) choices.push_back(in_words(one, teller_));
    form_.offer(what, choices);
    choices = {say(Say::bring_no_valve_chosen)};
    choices.insert(choices.end(), log_.book().valves.begin(), log_.book().valves.end());
    form_.offer(valve, choices);
    form_.choose(form_list, static_cast<int>(log_.mapping().form));
    form_.choose(heading, static_cast<int>(log_.mapping().heading_rows));
    form_.choose(order, static_cast<int>(log_.mapping().order));
    form_.choose(show, 0);
    show_columns();
    form_.choose(columns, first_to_look_at());
    column_ = form_.chosen(columns);
    show_column();
    show_rows();
    form_.on_change([this] { settle([this] { changed(); }); });
    listen(turn, [this] { turn_tick(); });
    listen(rows, [this] { turn_tick(); });
    listen(tick_all, [this] { set_ticks(true); });
    listen(tick_none, [this] { set_ticks(false); });
    open_ = this;
  }
  BringInDialog(const BringInDialog&) = delete;
  BringInDialog& operator=(const BringInDialog&) = delete;
  ~BringInDialog() { open_ = nullptr; }

  static const BringInDialog* open() { return open_; }

  bool run() { return form_.run() && sound_; }
  void to_front() const { form_.to_front(); }

 private:
  std::string say(Say words, std::initializer_list<Word> blanks = {}) const {
    return teller_.say(words, blanks);
  }

  void listen(std::string_view control, std::function<void()> work) {
    form_.on_press(control, [this, work = std::move(work)] { settle(work); });
  }

  // What could not be read cannot be taken.
  void settle(const std::function<void()>& work) noexcept {
    const auto trouble = settling_.trouble_in(work);
    if (!trouble) return;
    sound_ = false;
    try {
      form_.enable(accept, false);
      form_.tell(status, "\u25b2 " + *trouble, Weight::bold);
    } catch (...) {
      // The dialog itself is gone: there is nowhere left to say it.
    }
  }

  // The first column that is left out although something stands in it, else the first.
  int first_to_look_at() const {
    const auto& mapped = log_.mapping().columns;
    for (std::size_t i = 0; i < mapped.size(); ++i)
      if (!mapped[i].what) return static_cast<int>(i);
    return mapped.empty() ? -1 : 0;
  }

  void show_columns() {
    const int chosen = form_.chosen(columns);
    form_.offer(columns, log_.column_lines());
    form_.choose(columns, chosen);
  }

  const ColumnMapping* chosen_column() const {
    const int at = form_.chosen(columns);
    const auto& mapped = log_.mapping().columns;
    return at < 0 || at >= static_cast<int>(mapped.size()) ? nullptr
                                                           : &mapped[static_cast<std::size_t>(at)];
  }

  // The lists below the columns say what the chosen one holds.
  void show_column() {
    const ColumnMapping* mapped = chosen_column();
    const bool a_check = log_.mapping().form == LogForm::row_a_check;
    for (const std::string_view list : {what, valve, unit}) form_.enable(list, mapped != nullptr);
    if (mapped == nullptr) return;
    form_.tell(column,
               say(Say::bring_column,
                   {book::column_name(log_.table().first_column + form_.chosen(columns))}),
               Weight::bold);
    form_.choose(what, mapped->what ? static_cast<int>(*mapped->what) + 1 : 0);
    form_.choose(valve, mapped->valve ? static_cast<int>(*mapped->valve) + 1 : 0);
    form_.enable(valve, a_check && mapped->what &&
                            (is_gap(*mapped->what) || is_shim(*mapped->what) ||
                             mapped->what == LogColumn::state));
    units_ = units_of(mapped->what, log_.book());
    std::vector<std::string> choices;
    int chosen = 0;
    for (std::size_t i = 0; i < units_.size(); ++i) {
      choices.push_back(in_words(units_[i], teller_));
      if (units_[i] == mapped->unit) chosen = static_cast<int>(i);
    }
    if (choices.empty()) choices.push_back(in_words(ColumnUnit::none, teller_));
    form_.offer(unit, choices);
    form_.choose(unit, chosen);
    form_.enable(unit, !units_.empty());
  }

  void show_rows() {
    // The office counts the lines of a list in 16 bits; the rows beyond them are taken by their
    // usual ticks, or all or none.
    constexpr std::size_t most_lines = 32'000;
    std::vector<std::string> lines = log_.row_lines();
    if (lines.size() > most_lines) lines.resize(most_lines);
    form_.offer(rows, lines);
    show_outcome();
  }

  void show_outcome() {
    form_.tell(status, log_.outcome(), Weight::normal);
    form_.enable(accept, sound_ && !log_.rows().empty());
    form_.enable(turn, form_.chosen(rows) >= 0);
  }

  void turn_tick() {
    const int line = form_.chosen(rows);
    if (line < 0) return;
    log_.turn_tick(static_cast<std::size_t>(line));
    form_.rewrite(rows, line, log_.row_line(static_cast<std::size_t>(line)));
    show_outcome();
  }

  void set_ticks(bool tick) {
    log_.tick_all(tick);
    show_rows();
  }

  // The office does not say which list was changed: that which differs from what holds.
  void changed() {
    if (const int line = form_.chosen(columns); line != column_) {
      column_ = line;
      return show_column();
    }
    const Mapping& mapping = log_.mapping();
    const auto differs = [this](std::string_view list, int held) {
      return form_.chosen(list) >= 0 && form_.chosen(list) != held;
    };
    if (differs(show, shown_)) {
      shown_ = form_.chosen(show);
      log_.show(shown_ == 0);
      return show_rows();
    }
    if (differs(form_list, static_cast<int>(mapping.form)))
      log_.set_form(static_cast<LogForm>(form_.chosen(form_list)));
    else if (differs(heading, static_cast<int>(mapping.heading_rows)))
      log_.set_heading_rows(static_cast<std::size_t>(form_.chosen(heading)));
    else if (differs(order, static_cast<int>(mapping.order)))
      log_.set_order(static_cast<DateOrder>(form_.chosen(order)));
    else if (!change_column())
      return show_outcome();
    show_columns();
    show_column();
    show_rows();
  }

  bool change_column() {
    const ColumnMapping* mapped = chosen_column();
    if (mapped == nullptr) return false;
    const auto at = static_cast<std::size_t>(form_.chosen(columns));
    const auto meaning = meanings().at(static_cast<std::size_t>(std::max(0, form_.chosen(what))));
    const int of_valve = form_.chosen(valve);
    const auto named =
        of_valve > 0 ? std::optional(static_cast<std::size_t>(of_valve - 1)) : std::nullopt;
    const int in_unit = form_.chosen(unit);
    if (meaning != mapped->what)
      log_.set_what(at, meaning);
    else if (named != mapped->valve)
      log_.set_valve(at, named);
    else if (in_unit >= 0 && in_unit < static_cast<int>(units_.size()) &&
             units_[static_cast<std::size_t>(in_unit)] != mapped->unit)
      log_.set_unit(at, units_[static_cast<std::size_t>(in_unit)]);
    else
      return false;
    return true;
  }

  // While it is open the office goes on with what comes in, such as the same command from another
  // window; all of it on the office's main thread.
  static inline const BringInDialog* open_ = nullptr;

  Form form_;
  BringIn& log_;
  Teller teller_;
  Settling settling_;
  std::vector<ColumnUnit> units_;  // that the chosen column can have
  int column_ = -1;
  int shown_ = 0;
  bool sound_ = true;
};

}  // namespace

bool ask_what_to_bring_in(const Ref<css::uno::XComponentContext>& context,
                          const Ref<css::awt::XWindow>& parent, BringIn& log, const Teller& teller,
                          std::string_view from) {
  if (const BringInDialog* open = BringInDialog::open()) {
    open->to_front();
    return false;
  }
  return BringInDialog(context, parent, log, teller, from).run();
}

}  // namespace shimwright::commands
