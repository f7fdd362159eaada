// SPDX-License-Identifier: MPL-2.0
#include "job.hpp"

namespace shimwright::tests {
namespace {

namespace engine_place = book::engine_place;
namespace shims_place = book::shims_place;
namespace card = book::card;

class Typist {
 public:
  Typist(OpenBook& book, const book::Places& places, Unit unit)
      : book_(book), places_(places), unit_(unit) {}

  void type(const Job& job) {
    engine(job);
    for (std::size_t i = 0; i < job.readings.size(); ++i)
      reading(places_.head.cards[i], job.readings[i]);
    int row = 0;
    for (const auto& [series, size, count] : job.spares) {
      const At first = below(shims_place::first_spare, row++);
      shims(first, series);
      length(book::sheet_name::shims, right_of(first), size);
      if (count) shims(right_of(first, 2), *count);
    }
    row = 0;
    for (const auto& [series, from, to, step, price] : job.ladders) {
      const At first = below(shims_place::first_ladder, row++);
      shims(first, series);
      int column = 0;
      for (const Length size : {from, to, step})
        length(book::sheet_name::shims, right_of(first, ++column), size);
      if (price) shims(right_of(first, 4), price->amount());
    }
    row = 0;
    for (const auto& [series, size, count, price] : job.singles) {
      const At first = below(shims_place::first_single, row++);
      shims(first, series);
      length(book::sheet_name::shims, right_of(first), size);
      if (count) shims(right_of(first, 2), *count);
      if (price) shims(right_of(first, 3), price->amount());
    }
    book_.recalculate();
  }

 private:
  void engine(const Job& job) {
    const auto words = [this](At at, std::string_view text) {
      book_.type(book::sheet_name::engine, at, text);
    };
    words(engine_place::unit, unit_ == Unit::inch ? "inch" : "mm");
    for (const Side side : {Side::exhaust, Side::inlet}) {
      const Job::SideLimits& own = job.of(side);
      const auto at = [side](int row) { return engine_place::of(side, row); };
      length(book::sheet_name::engine, at(engine_place::min_row), own.limits.min);
      length(book::sheet_name::engine, at(engine_place::max_row), own.limits.max);
      book_.type(book::sheet_name::engine, at(engine_place::bias_row), own.bias);
      words(at(engine_place::series_row), own.series);
    }
    length(book::sheet_name::engine, engine_place::doubt, job.doubt);
    words(engine_place::touch_good, job.rules.touch_good ? "yes" : "no");
    words(engine_place::use_doubt, job.rules.use_doubt ? "yes" : "no");
    words(engine_place::first, job.rules.aim_first ? "aim" : "cost");
    book_.type(book::sheet_name::engine, engine_place::work, job.rules.work.amount());
  }

  void reading(const book::Card& card, const Job::Reading& reading) {
    if (reading.gap) length(book::sheet_name::head, card.value(card::gap), *reading.gap);
    if (!reading.mark.empty())
      book_.type(book::sheet_name::head, card.value(card::mark), std::stod(reading.mark));
    if (reading.micrometer)
      length(book::sheet_name::head, card.value(card::micrometer), *reading.micrometer);
    if (reading.alone) book_.type(book::sheet_name::head, card.value(card::exception), "leave");
  }

  void length(std::string_view sheet, At at, Length size) {
    book_.type(sheet, at, unit_ == Unit::inch ? size.mm() / 25.4 : size.mm());
  }

  void shims(At at, std::string_view words) { book_.type(book::sheet_name::shims, at, words); }
  void shims(At at, double number) { book_.type(book::sheet_name::shims, at, number); }

  OpenBook& book_;
  const book::Places& places_;
  Unit unit_;
};

}  // namespace

void type_job(OpenBook& book, const Job& job, const book::Places& places, Unit unit) {
  Typist(book, places, unit).type(job);
}

}  // namespace shimwright::tests
