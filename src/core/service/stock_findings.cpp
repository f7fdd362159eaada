// SPDX-License-Identifier: MPL-2.0
#include "core/service/stock_findings.hpp"

#include <map>
#include <utility>

#include "core/entries/entry_row.hpp"
#include "core/service/entered.hpp"
#include "core/values/bad_input.hpp"
#include "core/values/choice.hpp"
#include "core/values/text.hpp"

namespace shimwright {
namespace {

constexpr std::size_t most_sizes = longest_ladder;  // all rows of sizes together

using Origin = StockFindings::Origin;

class Lister {
 public:
  Lister(const Service& service, Unit unit, const std::string& one_series,
         const std::vector<ArrivalFindings>& arrivals)
      : service_(service), unit_(unit), one_series_(one_series), arrivals_(arrivals) {}

  StockFindings list() && {
    for (const auto& spare : service_.spares) single(spare, "spare", Origin::List::spare);
    for (const auto& size : service_.singles) single(size, "sale", Origin::List::single);
    for (const auto& row : service_.sizes) found_.sizes.push_back(sizes_in(row));
    offer_each_size_once();
    found_.nothing_listed = found_.table.empty();
    add_arrivals();
    return std::move(found_);
  }

 private:
  std::string series_of(const Entry& series) const {
    return not_given(series) ? one_series_ : word_in(series);
  }

  void single(const Service::ShimEntries& shim, const char* kind, Origin::List list) {
    if (not_given(shim.series) && not_given(shim.size) && not_given(shim.count) &&
        not_given(shim.price))
      return;
    if (is_length_as_text(shim.size, unit_)) found_.sizes_as_text.push_back(shim.row);
    found_.table.push_back({std::string(kind), series_of(shim.series), in_mm(shim.size, unit_),
                            not_given(shim.count) ? Entry() : shim.count,
                            not_given(shim.price) ? Entry() : shim.price});
    found_.origins.push_back({list, shim.row});
  }

  SizesFindings sizes_in(const Service::SizesEntries& row) {
    SizesFindings sizes{.row = row.row, .series = series_of(row.series), .sizes = {}, .step = {}};
    sizes.entered = !not_given(row.from) || !not_given(row.to) || !not_given(row.step);
    const auto from = length_entered(row.from, unit_);
    const auto to = length_entered(row.to, unit_);
    const auto step = length_entered(row.step, unit_);
    if (!from || !to || !step || *from <= Length()) return sizes;
    sizes.step = *step;
    try {
      sizes.sizes = ladder(*from, *to, *step);
    } catch (const BadInput&) {
      // Likely a slip of the step. Else it gives no size; either is told.
      sizes.too_many = *from <= *to && *step > Length();
      return sizes;
    }
    listed_ += sizes.sizes.size();
    if (listed_ > most_sizes) {
      sizes.too_many = true;
      const std::size_t beyond = std::min(listed_ - most_sizes, sizes.sizes.size());
      sizes.sizes.resize(sizes.sizes.size() - beyond);
    }
    return sizes;
  }

  void add_arrivals() {
    for (std::size_t i = 0; i < arrivals_.size(); ++i) {
      if (!arrivals_[i].size) continue;
      found_.table.push_back({std::string("spare"), arrivals_[i].series, arrivals_[i].size->mm(),
                              Entry(1.0), Entry()});
      found_.origins.push_back({Origin::List::arrival, service_.arrivals[i].row});
    }
  }

  // A price that is not given counts as nothing.
  static double price_of(const Entry& price) { return number_entered(price).value_or(0); }

  void offer_each_size_once() {
    struct Offer {
      std::size_t row;
      double price;
    };
    std::map<std::pair<std::string, Length>, Offer> best;
    for (std::size_t i = 0; i < found_.sizes.size(); ++i)
      for (const Length size : found_.sizes[i].sizes) {
        const double price = price_of(service_.sizes[i].price);
        const auto [offer, is_new] =
            best.try_emplace({lower_case(found_.sizes[i].series), size}, Offer{i, price});
        if (is_new) continue;
        const bool less = price < offer->second.price;
        ++found_.sizes[less ? offer->second.row : i].cheaper;
        if (less) offer->second = {i, price};
      }
    for (std::size_t i = 0; i < found_.sizes.size(); ++i)
      for (const Length size : found_.sizes[i].sizes)
        if (best.at({lower_case(found_.sizes[i].series), size}).row == i) {
          const Entry& price = service_.sizes[i].price;
          found_.table.push_back({std::string("sale"), found_.sizes[i].series, size.mm(), Entry(),
                                  not_given(price) ? Entry() : price});
          found_.origins.push_back({Origin::List::row_of_sizes, found_.sizes[i].row});
        }
  }

  const Service& service_;
  Unit unit_;
  const std::string& one_series_;
  const std::vector<ArrivalFindings>& arrivals_;
  StockFindings found_;
  std::size_t listed_ = 0;
};

}  // namespace

StockFindings stock_findings(const Service& service, Unit unit, const std::string& one_series,
                             const std::vector<ArrivalFindings>& arrivals) {
  return Lister(service, unit, one_series, arrivals).list();
}

}  // namespace shimwright
