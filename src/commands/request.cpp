// SPDX-License-Identifier: MPL-2.0
#include "commands/request.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "book/places.hpp"
#include "commands/banks.hpp"
#include "core/crank/firing_written.hpp"
#include "core/engine/presets.hpp"
#include "core/entries/ranges.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/choice.hpp"
#include "core/values/length.hpp"
#include "core/values/money.hpp"
#include "core/values/text.hpp"

namespace shimwright::commands {
namespace {

constexpr int most_valves = 48;
constexpr int most_valves_of_cylinder = 5;
constexpr std::size_t longest_word = 20;

struct SideFields {
  std::string_view name;
  Field min, max, series, from, to, step, price;
};
constexpr SideFields inlet_fields = {
    "inlet",           Field::inlet_min, Field::inlet_max,  Field::inlet_series,
    Field::inlet_from, Field::inlet_to,  Field::inlet_step, Field::inlet_price};
constexpr SideFields exhaust_fields = {
    "exhaust",           Field::exhaust_min, Field::exhaust_max,  Field::exhaust_series,
    Field::exhaust_from, Field::exhaust_to,  Field::exhaust_step, Field::exhaust_price};

// `the firing order is empty` as a sentence of its own.
std::string sentence(std::string_view words) {
  std::string made(words);
  if (!made.empty() && made[0] >= 'a' && made[0] <= 'z')
    made[0] = static_cast<char>(made[0] - 'a' + 'A');
  if (!made.ends_with('.')) made += '.';
  return made;
}

class RequestReader {
 public:
  explicit RequestReader(const NewBookEntries& entries) : entries_(entries) {}

  std::variant<BookRequest, Refusal> read() {
    layout();
    request_.shims_changed = text(Field::shims_changed);
    if (request_.shims_changed != book::engine_place::cams_in_place &&
        request_.shims_changed != book::engine_place::cams_out)
      refuse(Field::shims_changed,
             "shims are changed with the camshafts in place or with them out");
    request_.unit = text(Field::unit);
    if (request_.unit != "mm" && request_.unit != "inch")
      refuse(Field::unit, "the unit is mm or inch");
    request_.inlet = side(inlet_fields);
    request_.exhaust = side(exhaust_fields);
    ladders();
    currency();
    if (wrong_) return *wrong_;
    if (missing_) return *missing_;
    request_.layout.name = full_name(request_.layout);
    request_.title = "Valve service, " + request_.layout.name;
    return request_;
  }

 private:
  std::string text(Field field) const { return std::string(trimmed(entries_[field])); }

  // Keeps the first.
  void refuse(Field field, std::string_view words) {
    if (!wrong_) wrong_ = Refusal{field, sentence(words), false};
  }
  void miss(Field field, std::string_view words) {
    if (!missing_) missing_ = Refusal{field, sentence(words), true};
  }

  // What the core refuses is told as trouble of that field.
  template <class Function>
  void reading(Field field, Function function, std::string_view where = {}) {
    try {
      function();
    } catch (const BadInput& trouble) {
      refuse(field, std::string(where) + trouble.what());
    }
  }

  std::string word(Field field, const std::string& what) {
    const std::string typed = text(field);
    if (typed.size() > longest_word)
      refuse(field, what + " is a short word: " + shimwright::in_quotes(typed) + " is too long");
    return typed;
  }

  // ---- how the engine is made ----

  std::optional<int> count(Field field, int most, const std::string& refusal) {
    const auto number = count_written(text(field), most);
    if (!number) refuse(field, refusal);
    return number;
  }

  void arrangement() {
    if (const auto named = arrangement_named(text(Field::arrangement)))
      request_.layout.arrangement = *named;
    else
      refuse(Field::arrangement, "the cylinders lie in line, as a V or flat");
  }

  void layout() {
    arrangement();
    const auto cylinders =
        count(Field::cylinders, Firing::most_cylinders,
              text(Field::cylinders).empty()
                  ? "how many cylinders has the engine? It may have 1 to 16"
                  : "an engine may have 1 to 16 cylinders: " +
                        shimwright::in_quotes(text(Field::cylinders)) + " is no such number");
    valves(cylinders);
    if (cylinders)
      reading(Field::banks, [&] {
        request_.layout.banks =
            banks_in(entries_[Field::banks], request_.layout.arrangement, *cylinders);
      });
    firing(cylinders);
  }

  void firing(std::optional<int> cylinders) {
    request_.layout.firing = text(Field::firing);
    if (request_.layout.firing.empty())
      return miss(Field::firing,
                  "the firing order is still missing, such as 1-3-4-2: the engine\u2019s own "
                  "manual has it");
    reading(Field::firing, [&] { firing_written(request_.layout.firing, cylinders); });
  }

  void valves(std::optional<int> cylinders) {
    const auto inlet = count(Field::inlet_valves, 3, "a cylinder has 1, 2 or 3 inlet valves");
    const auto exhaust = count(Field::exhaust_valves, 3, "a cylinder has 1, 2 or 3 exhaust valves");
    if (!inlet || !exhaust) return;
    request_.layout.inlet_valves = *inlet;
    request_.layout.exhaust_valves = *exhaust;
    const int each = *inlet + *exhaust;
    if (each > most_valves_of_cylinder)
      return refuse(Field::inlet_valves,
                    "a cylinder may have two to five valves: " + std::to_string(*inlet) +
                        " inlet and " + std::to_string(*exhaust) + " exhaust make " +
                        std::to_string(each));
    if (cylinders && *cylinders * each > most_valves)
      refuse(Field::cylinders, std::to_string(*cylinders) + " cylinders with " +
                                   std::to_string(each) + " valves each make " +
                                   std::to_string(*cylinders * each) +
                                   " valves: a book has room for 48");
  }

  // ---- clearances and shims ----

  std::optional<Length> length(Field field, const std::string& what, Length least, Length most) {
    const std::string typed = text(field);
    if (typed.empty()) return std::nullopt;
    std::optional<Length> found;
    bool cannot_be = false;
    try {
      found = length_written(typed, unit());
    } catch (const BadInput&) {
      cannot_be = true;
    }
    if (!found && !cannot_be)
      refuse(field, what + " is not a number of " + (unit() == Unit::inch ? "inches: " : "mm: ") +
                        shimwright::in_quotes(typed));
    else if (cannot_be || *found < least || *found > most)
      refuse(field, what + " is " + shimwright::in_quotes(typed) + ": it can only lie between " +
                        told_in(unit(), least) + " and " + told_in(unit(), most));
    else
      return found;
    return std::nullopt;
  }

  Unit unit() const { return unit_named(request_.unit).value_or(Unit::mm); }

  SideRequest side(const SideFields& fields) {
    const std::string name(fields.name);
    const auto min = length(fields.min, "the smallest " + name + " clearance", Length(),
                            ranges::widest_clearance);
    const auto max = length(fields.max, "the largest " + name + " clearance", Length(),
                            ranges::widest_clearance);
    const bool blank_min = text(fields.min).empty();
    const bool blank_max = text(fields.max).empty();
    if (blank_min != blank_max)
      miss(blank_min ? fields.min : fields.max,
           "the " + std::string(blank_min ? "smallest " : "largest ") + name +
               " clearance is still missing");
    if (max && *max == Length())
      refuse(fields.max, "the largest " + name + " clearance is 0: every engine has some");
    if (min && max && *min > *max)
      refuse(fields.min, "the smallest " + name + " clearance, " + text(fields.min) +
                             ", is above the largest, " + text(fields.max));
    return {text(fields.min), text(fields.max),
            word(fields.series, "the " + name + " shim series")};
  }

  void ladders() {
    if (request_.inlet.series.empty() != request_.exhaust.series.empty())
      miss(request_.inlet.series.empty() ? Field::inlet_series : Field::exhaust_series,
           "the " + std::string(request_.inlet.series.empty() ? "inlet" : "exhaust") +
               " shim series is still to be named: any word will do");
    if (request_.inlet.series.empty() && request_.exhaust.series.empty())
      request_.inlet.series = request_.exhaust.series = "A";
    const bool one = one_series(entries_);
    if (one) request_.exhaust.series = request_.inlet.series;
    std::size_t sizes = ladder_of(inlet_fields, one ? "" : "inlet ", request_.inlet.series);
    if (!one) sizes += ladder_of(exhaust_fields, "exhaust ", request_.exhaust.series);
    constexpr std::size_t most = longest_ladder;
    if (sizes > most)
      refuse(Field::inlet_step, "the sizes on sale come to " + std::to_string(sizes) +
                                    ": the book has room for " + std::to_string(most));
  }

  // How many sizes it has: none where they are left for later.
  std::size_t ladder_of(const SideFields& fields, const std::string& whose,
                        const std::string& series) {
    const std::string what = whose + "sizes on sale";
    const std::array<Field, 4> all{fields.from, fields.to, fields.step, fields.price};
    if (std::ranges::all_of(all, [this](Field field) { return text(field).empty(); })) return 0;
    const auto from = length(fields.from, "the first of the " + what, ranges::thinnest_shim,
                             ranges::thickest_shim);
    const auto to =
        length(fields.to, "the last of the " + what, ranges::thinnest_shim, ranges::thickest_shim);
    const auto step =
        length(fields.step, "the step of the " + what, ranges::finest_step, ranges::widest_step);
    price(fields.price, whose);
    const std::pair<Field, const char*> ends[] = {
        {fields.from, "from"}, {fields.to, "to"}, {fields.step, "step"}};
    std::optional<Field> first;
    std::vector<std::string> missing;
    for (const auto& [field, name] : ends) {
      if (!text(field).empty()) continue;
      if (!first) first = field;
      missing.emplace_back(name);
    }
    if (first)
      miss(*first, "of the " + what + ", " + listed(missing) +
                       (missing.size() == 1 ? " is" : " are") + " still missing");
    std::size_t sizes = 0;
    if (from && to && *from > *to)
      refuse(fields.from, "there are no " + what + ": they begin at " + text(fields.from) +
                              ", above their end at " + text(fields.to));
    else if (from && to && step)
      reading(
          fields.step, [&] { sizes = shimwright::ladder(*from, *to, *step).size(); },
          "the " + what + ": ");
    request_.ladders.push_back(
        {series, text(fields.from), text(fields.to), text(fields.step), text(fields.price)});
    return sizes;
  }

  void price(Field field, const std::string& whose) {
    const std::string typed = text(field);
    if (typed.empty()) return;
    const auto amount = number_written(typed);
    if (!amount)
      return refuse(field, "the " + whose +
                               "price is not a number: " + shimwright::in_quotes(typed) +
                               "; the currency has a field of its own");
    reading(
        field, [&] { Money::of(*amount); }, whose.empty() ? "" : "the " + whose + "shims: ");
  }

  void currency() {
    request_.currency = word(Field::currency, "the currency");
    if (number_written(request_.currency))
      refuse(Field::currency, "the currency is a word or a sign, and " +
                                  shimwright::in_quotes(request_.currency) + " is a number");
  }

  const NewBookEntries& entries_;
  BookRequest request_;
  std::optional<Refusal> wrong_;
  std::optional<Refusal> missing_;
};

}  // namespace

std::string told_in(Unit unit, Length length) {
  if (unit != Unit::inch) return text_of(length);
  return text_of(std::round(length.mm() / 25.4 * 1e4) / 1e4) + " inch";
}

std::variant<BookRequest, Refusal> read_request(const NewBookEntries& entries) {
  return RequestReader(entries).read();
}

}  // namespace shimwright::commands
