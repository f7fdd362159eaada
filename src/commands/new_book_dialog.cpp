// SPDX-License-Identifier: MPL-2.0
#include "commands/new_book_dialog.hpp"

#include <algorithm>
#include <cppuhelper/implbase2.hxx>
#include <functional>
#include <vector>

#include "book/places.hpp"
#include "book/presets.hpp"
#include "commands/remarks.hpp"

namespace shimwright::commands {
namespace {

constexpr std::string_view status = "Status";
constexpr std::string_view to_check = "ToCheck";
constexpr std::string_view accept = "Accept";

// Two panes side by side: the engine, and a table with a column for each side of the cylinders.
constexpr int margin = 8;
constexpr int row_height = 16;
constexpr int row_pitch = 20;
constexpr int left_label = 54;
constexpr int left_field = 128;
constexpr int panes_apart = 16;
constexpr int unit_width = 44;
constexpr int currency_label = 34;
constexpr int right_x = margin + left_label + left_field + panes_apart;
constexpr int right_label = 78;
constexpr int column_width = 62;
constexpr int columns_apart = 6;
constexpr int width = right_x + right_label + 2 * column_width + columns_apart + margin;
constexpr int line_height = 9;
constexpr int status_height = 2 * line_height + 1;
constexpr int remarks_height = 4 * line_height + 2;
constexpr int button_height = 18;
constexpr int button_width = 74;
constexpr int last_row = 8;

constexpr int row_y(int row) { return margin + 15 + row * row_pitch; }
constexpr int status_y = row_y(last_row) + row_height + 9;
constexpr int remarks_y = status_y + status_height + 1;
constexpr int buttons_y = remarks_y + remarks_height + 4;
constexpr int height = buttons_y + button_height + margin;

std::vector<std::string> engines() {
  std::vector<std::string> names;
  for (const book::Preset& preset : book::presets()) names.push_back(preset.name);
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

class Listener : public cppu::WeakImplHelper2<css::awt::XTextListener, css::awt::XItemListener> {
 public:
  explicit Listener(std::function<void()> changed) : changed_(std::move(changed)) {}

  void SAL_CALL textChanged(const css::awt::TextEvent&) override { changed_(); }
  void SAL_CALL itemStateChanged(const css::awt::ItemEvent&) override { changed_(); }
  void SAL_CALL disposing(const css::lang::EventObject&) override {}

 private:
  std::function<void()> changed_;
};

class NewBookDialog {
 public:
  NewBookDialog(const Ref<css::uno::XComponentContext>& context, const NewBookEntries& entries)
      : form_(context, "New service book", width, height),
        opened_(entries),
        entries_(without_unseen(entries)) {
    engine_pane();
    book_pane();
    sides_pane();
    foot();
    show_entries();
    // Nothing thrown may pass through the office's event loop.
    const Ref<Listener> listener(new Listener([this] {
      try {
        changed();
      } catch (const std::exception&) {
      } catch (const css::uno::Exception&) {
      }
    }));
    form_.listen(listener.get(), listener.get());
    open_ = this;
  }
  NewBookDialog(const NewBookDialog&) = delete;
  NewBookDialog& operator=(const NewBookDialog&) = delete;
  ~NewBookDialog() { open_ = nullptr; }

  static const NewBookDialog* open() { return open_; }

  std::optional<BookRequest> run(const Ref<css::awt::XWindow>& parent) {
    judge();
    if (!form_.run(parent)) return std::nullopt;
    take_entries();
    auto result = read_request(entries_);
    if (auto* request = std::get_if<BookRequest>(&result)) return std::move(*request);
    return std::nullopt;
  }

  void to_front() const { form_.to_front(); }

  const NewBookEntries& entries() const { return entries_; }

 private:
  // ---- layout ----

  Place left(int row) const { return {margin + left_label, row_y(row), left_field, row_height}; }
  Place right(int row, int column) const {
    return {right_x + right_label + column * (column_width + columns_apart), row_y(row),
            column_width, row_height};
  }

  void left_name(int row, std::string_view words) {
    form_.label({margin, row_y(row), left_label - 4, row_height}, words);
  }
  void right_name(int row, std::string_view words) {
    form_.label({right_x, row_y(row), right_label - 4, row_height}, words);
  }
  void left_note(int row, std::string_view words) {
    form_.note({margin + left_label, row_y(row) - 4, left_field, row_height}, words);
  }

  void field(Field field, const Place& place, std::string_view help) {
    form_.field(key_of(field), place, help);
  }
  void list(Field field, const Place& place, const std::vector<std::string>& choices,
            std::string_view help) {
    form_.list(key_of(field), place, choices, help);
  }

  void engine_pane() {
    form_.heading({margin, margin, left_label + left_field, 10}, "Engine");
    left_name(0, "~Kind");
    list(Field::engine, left(0), engines(),
         "A usual engine fills in the four fields below; each may be changed.");
    left_name(1, "~Arrangement");
    list(Field::arrangement, left(1), arrangement_words(), "How the cylinders lie.");
    left_name(2, "~Cylinders");
    Place count = left(2);
    count.width = 30;
    field(Field::cylinders, count, "How many cylinders the engine has: 1 to 16.");
    left_name(3, "~Banks");
    field(Field::banks, left(3),
          "The cylinders as they lie, seen from above, from left to right. A V or flat engine has "
          "two banks: the upper one, a stroke (/), the lower one.");
    left_name(4, "~Firing");
    field(Field::firing, left(4),
          "The firing order, such as 1-3-4-2. For uneven firing the degrees of crank at which each "
          "cylinder fires, such as 1 at 0, 2 at 270. The engine\u2019s own manual has it.");
    left_note(5, "1-3-4-2, or uneven: 1 at 0, 2 at 270");
    left_name(6, "Shims cha~nged");
    list(Field::shims_changed, left(6), ways_to_change_shims(),
         "Can a shim be changed with its camshaft in place? The manual says. With the camshafts "
         "out every shim can be reached at once, and must be: fit them all before the camshafts "
         "go back.");
  }

  void book_pane() {
    form_.heading({margin, row_y(7) + 4, left_label + left_field, 10}, "Book");
    const Place row = left(8);
    left_name(8, "~Unit");
    list(Field::unit, {row.x, row.y, unit_width, row.height}, {"mm", "inch"},
         "Of every length here and in the book. Numbers already typed are not converted.");
    const int label_x = row.x + unit_width + columns_apart;
    const int field_x = label_x + currency_label;
    form_.label({label_x, row.y, currency_label, row.height}, "Curr~ency");
    field(Field::currency, {field_x, row.y, row.x + row.width - field_x, row.height},
          "A word or sign shown with sums; may be blank.");
  }

  // The head of the column, said with the label of the row.
  void column_name(std::string_view name, std::string_view column) {
    std::string words(name);
    std::erase(words, '~');
    form_.unseen_label(words + ", " + std::string(column));
  }

  void pair(int row, std::string_view name, Field inlet, Field exhaust, const std::string& what) {
    right_name(row, name);
    column_name(name, "inlet");
    field(inlet, right(row, 0), "Inlet side: " + what);
    column_name(name, "exhaust");
    field(exhaust, right(row, 1), "Exhaust side: " + what);
  }

  void sides_pane() {
    form_.heading({right_x, margin, width - margin - right_x, 10}, "Valves and shims");
    form_.note(right(0, 0), "inlet", Weight::bold);
    form_.note(right(0, 1), "exhaust", Weight::bold);
    constexpr std::string_view valves = "~Valves a cylinder";
    right_name(1, valves);
    column_name(valves, "inlet");
    list(Field::inlet_valves, right(1, 0), {"1", "2", "3"}, "Inlet valves of each cylinder.");
    column_name(valves, "exhaust");
    list(Field::exhaust_valves, right(1, 1), {"1", "2", "3"}, "Exhaust valves of each cylinder.");
    pair(2, "~Smallest clearance", Field::inlet_min, Field::exhaust_min,
         "the smallest clearance allowed, engine cold, from the engine\u2019s own manual.");
    pair(3, "~Largest clearance", Field::inlet_max, Field::exhaust_max,
         "the largest clearance allowed, engine cold, from the engine\u2019s own manual.");
    pair(4, "S~him series", Field::inlet_series, Field::exhaust_series,
         "any word. A shim fits only valves of its own series: the same word where all fit. The "
         "sizes on sale are then typed once.");
    pair(5, "On sale f~rom", Field::inlet_from, Field::exhaust_from,
         "the thinnest shim that can be bought.");
    pair(6, "On sale ~to", Field::inlet_to, Field::exhaust_to,
         "the thickest shim that can be bought.");
    pair(7, "On sale in ste~ps of", Field::inlet_step, Field::exhaust_step,
         "from one size on sale to the next.");
    pair(8, "Pr~ice of one", Field::inlet_price, Field::exhaust_price,
         "what one shim costs; may be blank.");
  }

  void foot() {
    form_.status(status, {margin, status_y, width - 2 * margin, status_height});
    form_.status(to_check, {margin, remarks_y, width - 2 * margin, remarks_height});
    const int cancel_x = width - margin - button_width;
    form_.button(Form::Button::accept, accept,
                 {cancel_x - 6 - button_width, buttons_y, button_width, button_height},
                 "~Make the book");
    form_.button(Form::Button::cancel, "Cancel", {cancel_x, buttons_y, button_width, button_height},
                 "Cancel");
  }

  // ---- what happens in it ----

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
    // What settling writes into other fields comes back as changes of theirs.
    if (settling_) return;
    settling_ = true;
    const NewBookEntries before = entries_;
    take_entries();
    for (std::size_t i = 0; i < field_count; ++i)
      if (const auto field = static_cast<Field>(i); entries_[field] != before[field]) {
        settle(entries_, field);
        break;
      }
    show_entries();
    judge();
    settling_ = false;
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
  bool settling_ = false;
};

}  // namespace

std::optional<BookRequest> ask_for_book(const Ref<css::uno::XComponentContext>& context,
                                        const Ref<css::awt::XWindow>& parent,
                                        NewBookEntries& entries) {
  if (const NewBookDialog* open = NewBookDialog::open()) {
    open->to_front();
    return std::nullopt;
  }
  NewBookDialog dialog(context, entries);
  auto request = dialog.run(parent);
  if (request) entries = dialog.entries();
  return request;
}

}  // namespace shimwright::commands
