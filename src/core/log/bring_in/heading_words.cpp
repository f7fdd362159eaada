// SPDX-License-Identifier: MPL-2.0
#include "core/log/bring_in/heading_words.hpp"

#include <algorithm>
#include <array>
#include <string>

#include "core/values/text.hpp"

namespace shimwright {
namespace {

enum class Hint {
  gap,
  shim,
  after,
  before,
  predicted,
  date,
  valve,
  distance,
  temperature,
  who,
  note,
  check,
  round,
  state
};

// The words of a heading that give a hint, with a blank between them: English, then German, French,
// Spanish and Italian, all in plain letters (common practice, no source).
struct HintWords {
  Hint hint;
  std::string_view words;
};
constexpr std::array hint_words{
    HintWords{Hint::gap,
              "gap gaps clearance clearances lash "
              "spiel spiele ventilspiel ventilspiele spalt spaltmass "
              "jeu jeux juego juegos holgura holguras huelgo gioco giochi"},
    HintWords{Hint::shim,
              "shim shims thickness "
              "scheibe scheiben plattchen plaettchen einstellscheibe einstellscheiben "
              "einstellplattchen einstellplaettchen shimdicke shimstarke shimstaerke dicke starke "
              "staerke pastille pastilles cale cales epaisseur pastilla pastillas calce calces "
              "espesor grosor spessore spessori pastiglia pastiglie"},
    HintWords{Hint::after,
              "after left new fitted final set "
              "nach nachher danach neu neue neues neuer eingebaut "
              "apres nouveau nouvelle neuf pose monte montee despues nuevo nueva montado montada "
              "colocado colocada dopo nuovo nuova montato montata"},
    HintWords{Hint::before,
              "before found old measured present "
              "vor vorher alt alte altes gefunden gemessen "
              "avant ancien ancienne trouve mesure releve antes viejo vieja medido medida "
              "encontrado prima vecchio vecchia misurato trovato attuale"},
    HintWords{Hint::predicted,
              "predicted expected erwartet berechnet vorhergesagt "
              "prevu calcule attendu previsto calculado esperado calcolato atteso"},
    HintWords{Hint::date, "date day when datum tag wann jour fecha dia data giorno"},
    HintWords{Hint::valve,
              "valve valves position cylinder cyl side "
              "ventil ventile zylinder zyl seite lage "
              "soupape soupapes cylindre cote valvula valvulas cilindro posicion lado "
              "valvola valvole posizione lato"},
    HintWords{Hint::distance,
              "distance odometer odo mileage km kms kilometres kilometers miles mi hours hrs h "
              "kilometer kilometerstand tachostand tacho laufleistung meilen stunden "
              "betriebsstunden std kilometrage compteur heures kilometraje odometro kilometros "
              "distancia millas horas chilometri chilometraggio contachilometri distanza miglia "
              "ore"},
    HintWords{Hint::temperature, "temperature temp temperatur temperatura"},
    HintWords{Hint::who,
              "who by mechanic wer von mechaniker monteur "
              "qui par mecanicien quien por mecanico chi da meccanico"},
    HintWords{Hint::note,
              "note notes remark remarks comment comments "
              "bemerkung bemerkungen notiz notizen anmerkung anmerkungen kommentar kommentare "
              "hinweis hinweise remarque remarques commentaire commentaires observation "
              "observations nota notas observacion observaciones comentario comentarios "
              "osservazione osservazioni commento commenti"},
    HintWords{Hint::check,
              "check service no nr inspection "
              "prufung pruefung kontrolle wartung nummer "
              "controle revision entretien numero control controllo revisione tagliando"},
    HintWords{Hint::round, "round runde durchgang ronda"},
    HintWords{Hint::state,
              "state verdict status zustand befund urteil etat estado veredicto stato esito "
              "giudizio"},
};

struct UnitWords {
  ColumnUnit unit;
  std::string_view words;
};
constexpr std::array unit_words{
    UnitWords{ColumnUnit::mm, "mm millimeter millimetre millimetres milimetros millimetri"},
    UnitWords{ColumnUnit::inch,
              "in inch inches \" zoll pouce pouces pulgada pulgadas pollice pollici"},
    UnitWords{ColumnUnit::thou, "thou"},
    UnitWords{ColumnUnit::mark,
              "mark marks marked markierung kennzeichnung aufdruck marquage marque marca marcado "
              "marcatura sigla"},
    UnitWords{ColumnUnit::hundredths, "hundredths hundertstel centiemes centesimas centesimi"},
    UnitWords{ColumnUnit::km,
              "km kms kilometres kilometers kilometer kilometerstand kilometrage kilometraje "
              "kilometros chilometri chilometraggio"},
    UnitWords{ColumnUnit::miles, "miles mi mileage meilen millas miglia"},
    UnitWords{ColumnUnit::hours, "hours hrs h stunden betriebsstunden std heures horas ore"},
};

// `word` as a whole, among words with a blank between them.
constexpr bool is_among(std::string_view words, std::string_view word) {
  while (!words.empty()) {
    const std::size_t end = std::min(words.find(' '), words.size());
    if (words.substr(0, end) == word) return true;
    words.remove_prefix(std::min(end + 1, words.size()));
  }
  return false;
}

ColumnUnit unit_named_by(std::string_view word) {
  const auto found = std::ranges::find_if(
      unit_words, [word](const UnitWords& unit) { return is_among(unit.words, word); });
  return found == unit_words.end() ? ColumnUnit::none : found->unit;
}

// `in` is a unit only where no other follows it: `clearance in mm`.
void hear_unit(ColumnUnit& unit, bool& by_in, std::string_view word) {
  const ColumnUnit named = unit_named_by(word);
  if (named == ColumnUnit::none || (unit != ColumnUnit::none && !by_in)) return;
  unit = named;
  by_in = word == "in";
}

class Hints {
 public:
  void add(std::string_view word) {
    for (const HintWords& some : hint_words)
      if (is_among(some.words, word)) given_[static_cast<std::size_t>(some.hint)] = true;
  }
  bool has(Hint hint) const { return given_[static_cast<std::size_t>(hint)]; }

  // The first that holds: `measured by` is who measured, `check date` a date.
  std::optional<LogColumn> what() const {
    if (has(Hint::predicted)) return LogColumn::predicted;
    if (has(Hint::state)) return LogColumn::state;
    if (has(Hint::gap)) return has(Hint::after) ? LogColumn::gap_left : LogColumn::gap_found;
    if (has(Hint::shim)) return has(Hint::after) ? LogColumn::shim_fitted : LogColumn::shim_found;
    static constexpr std::array<std::pair<Hint, LogColumn>, 8> plain{
        {{Hint::date, LogColumn::date},
         {Hint::temperature, LogColumn::temperature},
         {Hint::who, LogColumn::who},
         {Hint::note, LogColumn::note},
         {Hint::distance, LogColumn::distance},
         {Hint::valve, LogColumn::valve},
         {Hint::round, LogColumn::round},
         {Hint::check, LogColumn::check}}};
    for (const auto& [hint, column] : plain)
      if (has(hint)) return column;
    return std::nullopt;
  }

 private:
  std::array<bool, 14> given_{};
};

// Words of letters, and `"`, in plain letters.
std::vector<std::string> words_in(std::string_view text) {
  std::vector<std::string> words;
  bool open = false;
  for (const char c : plain_letters(text)) {
    const bool letter = (c >= 'a' && c <= 'z') || (static_cast<unsigned char>(c) & 0x80) != 0;
    if (c == '"') words.emplace_back(1, c);
    if (letter && !open) words.emplace_back();
    if (letter) words.back() += c;
    open = letter;
  }
  return words;
}

// Takes what stands in brackets out of the heading: units stand there.
std::string bracketed_in(std::string& heading) {
  const std::size_t open = heading.find_first_of("([");
  if (open == std::string::npos) return {};
  const std::size_t close = std::min(heading.find_first_of(")]", open), heading.size());
  const std::string inside = heading.substr(open + 1, close - open - 1);
  heading.erase(open, close - open + (close < heading.size() ? 1 : 0));
  return inside;
}

}  // namespace

HeadingWords heading_words_in(std::string_view heading, const ValveNames& names) {
  HeadingWords said;
  std::string open(heading);
  Hints hints;
  bool by_in = false;
  for (const std::string& word : words_in(bracketed_in(open))) {
    hear_unit(said.unit, by_in, word);
    hints.add(word);
  }
  // A valve has a number, or is the only one of its side; without either `in` is a unit and `left`
  // no place.
  const ValveWords valve = valve_words_in(open);
  if (valve.side || valve.cylinder)
    if (const auto fits = names.fitting(valve); fits.size() == 1) said.valve = fits.front();
  for (const std::string& word : said.valve ? valve.rest : words_in(open)) {
    hints.add(word);
    hear_unit(said.unit, by_in, word);
  }
  said.what = hints.what();
  said.after = hints.has(Hint::after);
  return said;
}

}  // namespace shimwright
