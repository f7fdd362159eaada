// SPDX-License-Identifier: MPL-2.0
#include "commands/new_book_dialog.hpp"

#include <algorithm>
#include <functional>
#include <vector>

#include "book/places.hpp"
#include "commands/remarks.hpp"
#include "commands/settling.hpp"
#include "core/engine/presets.hpp"

namespace shimwright::commands {
namespace {

constexpr std::string_view status = "Status";
constexpr std::string_view to_check = "ToCheck";
constexpr std::string_view accept = "Accept";

std::vector<std::string> engines() {
  std::vector<std::string> names;
  for (const Preset& preset : presets()) names.push_back(preset.name);
  names.emplace_back(own_layout);
  return names;
}

std::vector<std::string> arrangement_words() {
  std::vector<std::string> words;
  for (const Arrangement each : arrangements) words.push_back(word_for(each));
  return words;
}

std::vector<std::string> ways_to_change_shims() {
  return {std::string(book::engine_place::cams_in_place),
          std::string(book::engine_place::cams_out)};
}

class NewBookDialog {
 public:
  NewBookDialog(const Ref<css::uno::XComponentContext>& context,
                const Ref<css::awt::XWindow>& parent, const NewBookEntries& entries)
      : form_(context, "NewBook", parent), opened_(entries), entries_(without_unseen(entries)) {
    form_.offer(key_of(Field::engine), engines());
    form_.offer(key_of(Field::arrangement), arrangement_words());
    form_.offer(key_of(Field::shims_changed), ways_to_change_shims());
    show_entries();
    form_.on_change([this] {
      if (const auto trouble = settling_.trouble_in([this] { changed(); })) tell_trouble(*trouble);
    });
    form_.accept_by_enter(accept);
    open_ = this;
  }
  NewBookDialog(const NewBookDialog&) = delete;
  NewBookDialog& operator=(const NewBookDialog&) = delete;
  ~NewBookDialog() { open_ = nullptr; }

  static const NewBookDialog* open() { return open_; }

  std::optional<BookRequest> run() {
    judge();
    if (!form_.run()) return std::nullopt;
    take_entries();
    auto result = read_request(entries_);
    if (auto* request = std::get_if<BookRequest>(&result)) return std::move(*request);
    return std::nullopt;
  }

  void to_front() const { form_.to_front(); }

  const NewBookEntries& entries() const { return entries_; }

 private:
  void show_entries() {
    const NewBookEntries seen = as_seen(entries_);
    for (std::size_t i = 0; i < field_count; ++i)
      form_.enter(key_of(static_cast<Field>(i)), seen[static_cast<Field>(i)]);
  }

  void take_entries() {
    const bool one = one_series(entries_);
    for (std::size_t i = 0; i < field_count; ++i) {
      const auto field = static_cast<Field>(i);
      if (one && std::ranges::find(exhaust_sale, field) != exhaust_sale.end()) continue;
      entries_[field] = form_.entry(key_of(field));
    }
  }

  void changed() {
    const NewBookEntries before = entries_;
    take_entries();
    for (std::size_t i = 0; i < field_count; ++i)
      if (const auto field = static_cast<Field>(i); entries_[field] != before[field]) {
        settle(entries_, field);
        break;
      }
    show_entries();
    judge();
  }

  // No book can be made of entries that were not checked; the next change is checked again.
  void tell_trouble(const std::string& reason) noexcept try {
    form_.enable(accept, false);
    form_.tell(status,
               "\u25b2 This change could not be checked: " + reason + " Change an entry once more.",
               Weight::bold);
    form_.tell(to_check, "", Weight::bold);
  } catch (...) {
    // The dialog itself is gone: there is nowhere left to say it.
  }

  void judge() {
    const bool one = one_series(entries_);
    for (const Field field : exhaust_sale) form_.enable(key_of(field), !one);
    const auto result = read_request(entries_);
    if (const auto* refusal = std::get_if<Refusal>(&result)) {
      form_.tell(status, refusal->missing ? refusal->sentence : "\u25b2 " + refusal->sentence,
                 refusal->missing ? Weight::normal : Weight::bold);
      form_.tell(to_check, "", Weight::bold);
    } else {
      const auto& request = std::get<BookRequest>(result);
      form_.tell(status, "Ready: a book for " + request.layout.name + ".", Weight::normal);
      std::string remarks;
      for (const std::string& remark : remarks_on(request, opened_))
        remarks += (remarks.empty() ? "\u25c6 " : "\n\u25c6 ") + remark;
      form_.tell(to_check, remarks, Weight::bold);
    }
    form_.enable(accept, std::holds_alternative<BookRequest>(result));
  }

  // While it is open the office goes on with what comes in, such as the same command from another
  // window; all of it on the office's main thread.
  static inline const NewBookDialog* open_ = nullptr;

  Form form_;
  NewBookEntries opened_;  // what it opened with
  NewBookEntries entries_;
  Settling settling_;
};

}  // namespace

std::optional<BookRequest> ask_for_book(const Ref<css::uno::XComponentContext>& context,
                                        const Ref<css::awt::XWindow>& parent,
                                        NewBookEntries& entries) {
  if (const NewBookDialog* open = NewBookDialog::open()) {
    open->to_front();
    return std::nullopt;
  }
  NewBookDialog dialog(context, parent, entries);
  auto request = dialog.run();
  if (request) entries = dialog.entries();
  return request;
}

}  // namespace shimwright::commands
