// SPDX-License-Identifier: MPL-2.0
//
// The add-in Calc talks to: each function decodes its arguments, asks the core, encodes the
// answer. Whatever goes wrong leaves as one kind of exception, which Calc shows as Err:502.
#include <array>
#include <com/sun/star/lang/XServiceInfo.hpp>
#include <com/sun/star/uno/XComponentContext.hpp>
#include <cppuhelper/implbase2.hxx>
#include <cppuhelper/supportsservice.hxx>
#include <org/shimwright/XCells.hpp>

#include "cells/answer.hpp"
#include "cells/book.hpp"
#include "cells/each.hpp"
#include "cells/tables.hpp"
#include "core/drift/drift.hpp"
#include "core/drift/due.hpp"
#include "office/text.hpp"

namespace shimwright::cells {
namespace {

namespace css = com::sun::star;

// The core's functions where their arguments differ from the sheet's.

std::optional<Length> length_from(const Entry& entry, Unit unit) {
  if (const auto* text = std::get_if<std::string>(&entry)) return length_written(*text, unit);
  return Length::of(std::get<double>(entry), unit);
}

std::string_view trust_word(std::optional<Length> marked, std::optional<Length> measured,
                            Length allowed) {
  return word_for(trust_in(marked, measured, allowed));
}

std::string_view state_word(std::optional<Length> clearance, Length min, Length max, Length doubt) {
  return word_for(state_of(clearance, {min, max}, doubt));
}

Length margin(Length clearance, Length min, Length max) { return margin_of(clearance, {min, max}); }

Length aim_in(Length min, Length max, double bias) { return aim_between({min, max}, bias); }

std::optional<Length> ideal(Length clearance, Length shim, Length aim) {
  const Length thickness = ideal_shim(clearance, shim, aim);
  return thickness > Length() ? std::optional(thickness) : std::nullopt;
}

std::optional<ShimRange> range(Length clearance, Length shim, Length min, Length max,
                               Length doubt) {
  return serving_shims(clearance, shim, {min, max}, doubt);
}

Any ladder_column(std::optional<Length> from, std::optional<Length> to,
                  std::optional<Length> step) {
  if (!from || !to || !step) return single_result({});
  EntryTable rows;
  for (const Length size : ladder(*from, *to, *step)) rows.push_back({size.mm()});
  return number_range(rows);
}

Entry entry_of(std::optional<double> number) { return number ? Entry(*number) : Entry(); }

Any thickness_of_marks(const Values<std::string>& marks, Argument scheme) {
  if (scheme.shape().columns != 2)
    return each([](const std::string& mark, MarkScheme how) { return thickness_marked(mark, how); },
                marks, mark_scheme(std::move(scheme)));
  return each(
      [own = mark_table(scheme)](const std::string& mark) { return thickness_marked(mark, own); },
      marks);
}

History history(const Any& distance_range, const Any& clearance_range, const Any& shim_range) {
  const Numbers distance("distance", distance_range);
  const Numbers clearance("clearance", clearance_range);
  const Numbers shim("shim", shim_range, Zero::is_not_given);
  const std::array shapes{NamedShape{distance.name(), distance.shape()},
                          NamedShape{clearance.name(), clearance.shape()},
                          NamedShape{shim.name(), shim.shape()}};
  const Shape shape = common_shape(shapes);
  History checks;
  checks.reserve(shape.rows * shape.columns);
  for (std::size_t row = 0; row < shape.rows; ++row)
    for (std::size_t column = 0; column < shape.columns; ++column)
      checks.add(distance.at(row, column), clearance.at(row, column), shim.at(row, column));
  return checks;
}

Any drift_row(const std::optional<Drift>& drift) {
  if (!drift) return single_result({});
  return number_range({{drift->rate, drift->rate_error, drift->intercept, drift->scatter,
                        static_cast<double>(drift->checks), entry_of(drift->r2)}});
}

Any due_row(const std::optional<Due>& due) {
  if (!due) return single_result({});
  return number_range(
      {{entry_of(due->distance), entry_of(due->cautious), std::string(word_for(due->course))}});
}

Any due_within(const History& checks, std::optional<Length> fitted, std::optional<Length> min,
               std::optional<Length> max, std::optional<double> confidence) {
  if (!fitted || !min || !max) return single_result({});
  return due_row(due_after(checks, *fitted, {*min, *max}, confidence.value_or(default_confidence)));
}

Entries entries(const Any& valves, const Any& shims, const Any& rules) {
  return read_entries(table("valves", valves), table("shims", shims),
                      optional_table("rules", rules));
}

class AddIn : public cppu::WeakImplHelper2<org::shimwright::XCells, css::lang::XServiceInfo> {
 public:
  Any SAL_CALL lengthMm(const Any& value, const Any& unit_name) override {
    return answer(
        [&] { return each(length_from, entry("value", value), unit("unit", unit_name)); });
  }

  Any SAL_CALL shimMm(const Any& marks, const Any& scheme) override {
    return answer([&] {
      return thickness_of_marks(mark("mark", marks),
                                Argument("scheme", scheme, Argument::Rows::in_use));
    });
  }

  Any SAL_CALL shimTrust(const Any& marked, const Any& measured, const Any& allowed) override {
    return answer([&] {
      return each(trust_word, maybe_size("marked", marked), maybe_size("measured", measured),
                  length_or("allowed", allowed, default_allowed_difference));
    });
  }

  Any SAL_CALL clearanceState(const Any& clearance, const Any& min, const Any& max,
                              const Any& doubt) override {
    return answer([&] {
      return each(state_word, maybe_length("clearance", clearance), length("min", min),
                  size("max", max), length_or("doubt", doubt, Length()));
    });
  }

  Any SAL_CALL clearanceMargin(const Any& clearance, const Any& min, const Any& max) override {
    return answer([&] {
      return each(margin, length("clearance", clearance), length("min", min), size("max", max));
    });
  }

  Any SAL_CALL clearanceAim(const Any& min, const Any& max, const Any& bias) override {
    return answer([&] {
      return each(aim_in, length("min", min), size("max", max),
                  number_or("bias", bias, default_bias));
    });
  }

  Any SAL_CALL clearanceAfter(const Any& clearance, const Any& old_shim,
                              const Any& new_shim) override {
    return answer([&] {
      return each(clearance_after, length("clearance", clearance), size("old shim", old_shim),
                  size("new shim", new_shim));
    });
  }

  Any SAL_CALL shimIdeal(const Any& clearance, const Any& shim, const Any& aim) override {
    return answer([&] {
      return each(ideal, length("clearance", clearance), size("shim", shim), size("aim", aim));
    });
  }

  Any SAL_CALL shimRange(const Any& clearance, const Any& shim, const Any& min, const Any& max,
                         const Any& doubt) override {
    return answer([&] {
      return each(range, length("clearance", clearance), size("shim", shim), length("min", min),
                  size("max", max), length_or("doubt", doubt, Length()));
    });
  }

  Any SAL_CALL shimLadder(const Any& from, const Any& to, const Any& step) override {
    return answer([&] {
      return ladder_column(size("from", from).single(), size("to", to).single(),
                           size("step", step).single());
    });
  }

  Any SAL_CALL shimPick(const Any& clearance, const Any& shim, const Any& min, const Any& max,
                        const Any& aim, const Any& choices, const Any& doubt) override {
    return answer([&] {
      const auto pick = [from = sizes("sizes", choices)](Length gap, Length old_shim, Length low,
                                                         Length high, std::optional<Length> wanted,
                                                         Length unsure) {
        const Limits limits{low, high};
        return pick_shim(gap, old_shim, limits, wanted ? *wanted : aim_between(limits), from,
                         unsure);
      };
      return each(pick, length("clearance", clearance), size("shim", shim), length("min", min),
                  size("max", max), optional_size("aim", aim), length_or("doubt", doubt, Length()));
    });
  }

  Any SAL_CALL shimPlan(const Any& valves, const Any& shims, const Any& rules,
                        const Any& part) override {
    return answer([&] { return plan_table(entries(valves, shims, rules), word("part", part)); });
  }

  Any SAL_CALL shimOrder(const Any& valves, const Any& shims, const Any& rules,
                         const Any& part) override {
    return answer([&] { return order_table(entries(valves, shims, rules), word("part", part)); });
  }

  Any SAL_CALL shimSurplus(const Any& valves, const Any& shims, const Any& rules,
                           const Any& part) override {
    return answer([&] { return surplus_table(entries(valves, shims, rules), word("part", part)); });
  }

  Any SAL_CALL crankStops(const Any& firing, const Any& timing, const Any& margin_value,
                          const Any& part) override {
    return answer([&] {
      return stops_table(read_firing(table("firing", firing)),
                         read_timing(Argument("timing", timing).table()),  // a blank has a place
                         read_margin(optional_entry("margin", margin_value)), word("part", part));
    });
  }

  Any SAL_CALL shimSteps(const Any& valves, const Any& shims, const Any& stops, const Any& rules,
                         const Any& part) override {
    return answer([&] {
      return steps_table({table("valves", valves), table("shims", shims),
                          optional_table("stops", stops), optional_table("rules", rules)},
                         word("part", part));
    });
  }

  Any SAL_CALL shimCheck(const Any& valves, const Any& shims, const Any& rules,
                         const Any& part) override {
    return answer([&] { return check_table(entries(valves, shims, rules), word("part", part)); });
  }

  Any SAL_CALL clearanceDrift(const Any& distance, const Any& clearance, const Any& shim,
                              const Any& method_name) override {
    return answer([&] {
      return drift_row(drift_of(history(distance, clearance, shim), method("method", method_name)));
    });
  }

  Any SAL_CALL clearanceDue(const Any& distance, const Any& clearance, const Any& shim,
                            const Any& fitted, const Any& min, const Any& max,
                            const Any& confidence) override {
    return answer([&] {
      return due_within(history(distance, clearance, shim), size("fitted", fitted).single(),
                        length("min", min).single(), size("max", max).single(),
                        share("confidence", confidence).single());
    });
  }

  Any SAL_CALL bookTells(const Any& book_entries, const Any& name, const Any& log) override {
    return answer([&] {
      rtl::OUString as_one_text;
      if (book_entries >>= as_one_text) return Any(book_tells(as_one_text, word("table", name)));
      return Any(book_tells(table("entries", book_entries), word("table", name),
                            optional_table("log", log)));
    });
  }

  // Called for each cell of a book that shows something: its answer is not decoded.
  Any SAL_CALL bookShows(const Any& told, const Any& column, const Any& row) override {
    return answer([&] {
      rtl::OUString text;
      rtl::OUString name;
      double number = 1;
      told >>= text;
      const bool is_plain = (column >>= name) && (!row.hasValue() || (row >>= number));
      if (!is_plain) {
        name = office::to_office(word("column", column));
        number = number_or("row", row, 1).single().value_or(1);
      }
      return Any(book_shows(text, name, number));
    });
  }

  rtl::OUString SAL_CALL version() override { return office::to_office(SHIMWRIGHT_VERSION); }

  rtl::OUString SAL_CALL getImplementationName() override {
    return office::to_office("org.shimwright.Cells");
  }

  sal_Bool SAL_CALL supportsService(const rtl::OUString& name) override {
    return cppu::supportsService(this, name);
  }

  css::uno::Sequence<rtl::OUString> SAL_CALL getSupportedServiceNames() override {
    const rtl::OUString name = getImplementationName();
    return css::uno::Sequence<rtl::OUString>(&name, 1);
  }

 private:
  template <class Function>
  Any answer(Function function) {
    return cells::answer(std::move(function), static_cast<cppu::OWeakObject*>(this));
  }
};

}  // namespace
}  // namespace shimwright::cells

// The only symbol the office looks for; named in the package's .components file.
extern "C" SAL_DLLPUBLIC_EXPORT com::sun::star::uno::XInterface* shimwright_cells(
    com::sun::star::uno::XComponentContext*,
    const com::sun::star::uno::Sequence<com::sun::star::uno::Any>&) {
  return cppu::acquire(new shimwright::cells::AddIn);
}
