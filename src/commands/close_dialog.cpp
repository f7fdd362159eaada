// SPDX-License-Identifier: MPL-2.0
#include "commands/close_dialog.hpp"

#include <functional>
#include <utility>

#include "commands/form.hpp"
#include "commands/settling.hpp"
#include "core/service/closing_words.hpp"

namespace shimwright::commands {
namespace {

constexpr std::string_view what = "What";
constexpr std::string_view status = "Status";
constexpr std::string_view words = "Words";
constexpr std::string_view accept = "Accept";

constexpr std::pair<std::string_view, std::string ClosingEntries::*> fields[] = {
    {"Date", &ClosingEntries::date},
    {"Distance", &ClosingEntries::distance},
    {"Temperature", &ClosingEntries::temperature},
    {"Who", &ClosingEntries::who},
    {"Note", &ClosingEntries::note}};

class CloseDialog {
 public:
  CloseDialog(const Over& over, const Service& service, const Findings& found,
              const EntryTable& log, std::string today)
      : form_(over.context, "CloseCheck", over.window),
        service_(service),
        found_(found),
        log_(log),
        today_(std::move(today)) {
    form_.tell("DistanceLabel", say(Say::close_distance_in, {distance_unit_of(service)}),
               Weight::normal);
    form_.offer(what, {say(Say::close_check), say(Say::close_another_round)});
    form_.enter(what, say(Say::close_check));
    const ClosingEntries begin = entries_to_begin_with(service, found, log, today_);
    for (const auto& [name, member] : fields) form_.enter(name, begin.*member);
    judge();
    form_.on_change([this] {
      if (const auto trouble = settling_.trouble_in([this] { judge(); })) tell_trouble(*trouble);
    });
    form_.accept_by_enter(accept);
    open_ = this;
  }
  CloseDialog(const CloseDialog&) = delete;
  CloseDialog& operator=(const CloseDialog&) = delete;
  ~CloseDialog() { open_ = nullptr; }

  static const CloseDialog* open() { return open_; }

  std::optional<ClosingEntries> run() {
    if (!form_.run()) return std::nullopt;
    return entries();
  }

  void to_front() const { form_.to_front(); }

 private:
  std::string say(Say one, std::initializer_list<Word> with = {}) const {
    return found_.teller.say(one, with);
  }

  ClosingEntries entries() const {
    ClosingEntries entries;
    for (const auto& [name, member] : fields) entries.*member = form_.entry(name);
    entries.another_round = form_.entry(what) == say(Say::close_another_round);
    return entries;
  }

  void judge() {
    const Closing closing = closing_of(service_, found_, log_, entries(), today_);
    const bool can = closing.refusals.empty();
    form_.tell(status, say(can ? Say::close_will_do : Say::close_not_yet), Weight::bold);
    std::string all;
    const auto add = [&](const std::string& line) { all += (all.empty() ? "" : "\n") + line; };
    for (const Told& why : closing.refusals) add(say(Say::bullet, {in_words(why, found_.teller)}));
    for (const Told& deed : closing.deeds) add(say(Say::bullet, {in_words(deed, found_.teller)}));
    if (!closing.questions.empty()) add("\n" + say(Say::close_to_think_of));
    for (const Told& question : closing.questions)
      add(say(Say::bullet, {in_words(question, found_.teller)}));
    form_.enter(words, all);
    form_.enable(accept, can);
  }

  // Nothing is closed by entries that were not checked; the next change is checked again.
  void tell_trouble(const std::string& reason) noexcept try {
    form_.enable(accept, false);
    form_.tell(status, say(Say::close_not_yet), Weight::bold);
    form_.enter(words, reason);
  } catch (...) {
    // The dialog itself is gone: there is nowhere left to say it.
  }

  // As of New service book: the same command may come from another window meanwhile.
  static inline const CloseDialog* open_ = nullptr;

  Form form_;
  const Service& service_;
  const Findings& found_;
  const EntryTable& log_;
  std::string today_;
  Settling settling_;
};

}  // namespace

std::optional<ClosingEntries> ask_to_close(const Over& over, const Service& service,
                                           const Findings& found, const EntryTable& log,
                                           const std::string& today) {
  if (const CloseDialog* open = CloseDialog::open()) {
    open->to_front();
    return std::nullopt;
  }
  CloseDialog dialog(over, service, found, log, today);
  return dialog.run();
}

}  // namespace shimwright::commands
