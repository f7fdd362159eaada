// SPDX-License-Identifier: MPL-2.0
//
// Workings of the crank and of the fitting: where to stop, which valve is open where, and the steps
// in order.
#include "book/formula.hpp"
#include "book/sheets.hpp"
#include "book/steps_map.hpp"
#include "book/workings_parts.hpp"

namespace shimwright::book::workings {
namespace {

using Map = StepsMap;

class StepsMaker {
 public:
  StepsMaker(Sheet& sheet, const Places& places) : sheet_(sheet), places_(places), map_(places) {}

  void make() {
    heads(sheet_, {0, map_.first_row()}, {"crank and steps", ""});
    entries();
    stops();
    open();
    steps();
    write_matrix_fact(sheet_, map_.fact(Map::crank_wrong), "crank entries", crank_wrong());
  }

 private:
  void fact(Map::Fact which, std::string_view name, std::string_view formula) {
    write_fact(sheet_, map_.fact(which), name, formula);
  }

  void entries() {
    namespace place = engine_place;
    const auto timing = [](Side side, int row) { return entered(on_engine(place::of(side, row))); };
    fact(Map::firing, "firing", entered(on_engine(place::firing)));
    fact(Map::inlet_opens, "inlet opens", timing(Side::inlet, place::opens_row));
    fact(Map::inlet_closes, "inlet closes", timing(Side::inlet, place::closes_row));
    fact(Map::exhaust_opens, "exhaust opens", timing(Side::exhaust, place::opens_row));
    fact(Map::exhaust_closes, "exhaust closes", timing(Side::exhaust, place::closes_row));
    fact(Map::margin, "margin", entered(on_engine(place::margin)));
    fact(Map::cams_out, "camshafts out",
         written("={x}=\"{word}\"", {{"x", on_engine(place::opened)}, {"word", place::cams_out}}));
    fact(Map::stop_rows, "rows of STOPS", "=IFERROR(ROWS(" + asked_stops("stop") + ");0)");
  }

  std::string asked_stops(std::string_view part) const {
    return written("CRANK.STOPS({firing};{timing};{margin};\"{part}\")",
                   {{"firing", map_.fact(Map::firing)},
                    {"timing", map_.timing()},
                    {"margin", map_.fact(Map::margin)},
                    {"part", part}});
  }

  std::string asked_steps(std::string_view part) const {
    return written("SHIM.STEPS(valves;shims;IF({out};1;{open});rules;\"{part}\")",
                   {{"out", map_.fact(Map::cams_out)}, {"open", map_.open_at()}, {"part", part}});
  }

  // One column of an answer, blank beyond its end and where there is none.
  void answer(const Area& area, const std::string& asked, At rows) {
    sheet_.matrix(
        area,
        written("=IFERROR(IF(ROW({area})-{before}<={rows};{asked};\"\");\"\")",
                {{"area", area}, {"before", area.from.row}, {"rows", rows}, {"asked", asked}}));
  }

  void stops() {
    heads(sheet_, {0, map_.stops(Map::stop).from.row - 1},
          {"stop", "angle", "cylinder", "side", "words", "", "stop", "in words"});
    const std::pair<Map::Stops, const char*> parts[] = {{Map::stop, "stop"},
                                                        {Map::angle, "angle"},
                                                        {Map::cylinder, "cylinder"},
                                                        {Map::side, "side"},
                                                        {Map::words, "words"}};
    for (const auto& [column, part] : parts)
      answer(map_.stops(column), asked_stops(part), map_.fact(Map::stop_rows));
    // So that a long text ends here.
    const Area beside{right_of(map_.stops(Map::words).from), right_of(map_.stops(Map::words).to)};
    sheet_.formula(beside.from, "=\"\"");
    sheet_.fill_down(beside);
    for (int i = 0; i < map_.most_stops(); ++i) {
      const At number = map_.stop_line(i, Map::line_stop);
      sheet_.formula(number, written("=IF({n}<=MAX({stops});{n};\"\")",
                                     {{"n", i + 1}, {"stops", map_.stops(Map::stop)}}));
      sheet_.formula(map_.stop_line(i, Map::line_words),
                     written("=IFERROR(INDEX({words};MATCH({n};{stops};0));\"\")",
                             {{"n", number},
                              {"words", map_.stops(Map::words)},
                              {"stops", map_.stops(Map::stop)}}));
    }
    write_matrix_fact(
        sheet_, map_.fact(Map::stops_said), "stops in words",
        written("=TEXTJOIN(CHAR(10);TRUE();IF(ISNUMBER({n});\"Stop \"&{n}&\": \"&{words}&\".\";"
                "\"\");IF({rows}=0;\"\";\"{manual}\"&IF(COUNT({timing})=4;\"\";\"{usual}\")))",
                {{"rows", map_.fact(Map::stop_rows)},
                 {"timing", map_.timing()},
                 {"usual", words_of_usual_timing},
                 {"manual", words_of_manual_first},
                 {"n", map_.stop_lines(Map::line_stop)},
                 {"words", map_.stop_lines(Map::line_words)}}));
  }

  // Columns: valve, stop where it is open there, cylinder, side, number of the stop.
  void open() {
    const Area open = map_.open_at();
    heads(sheet_, {0, open.from.row - 1},
          {"valve", "open at", "cylinder", "side", "stop", "", "first stop"});
    std::vector<std::vector<std::string>> names;
    std::vector<std::vector<std::string>> places;
    for (int stop = 1; stop <= map_.most_stops(); ++stop) {
      for (const ValveId& valve : places_.valves) {
        names.push_back({name_of(valve, places_.layout)});
        places.push_back(
            {std::to_string(valve.cylinder), word_for(valve.side), std::to_string(stop)});
      }
    }
    sheet_.formulas(open.from, names);
    sheet_.formulas(right_of(open.from, 2), places);
    const auto own = [&open](int column) { return "$" + relative(right_of(open.from, column)); };
    const Area at{right_of(open.from), open.to};
    sheet_.formula(at.from, written("=IF(SUMPRODUCT(({stops}={n})*({cylinders}={cylinder})*"
                                    "({sides}={side}))>0;{n};\"\")",
                                    {{"stops", map_.stops(Map::stop)},
                                     {"n", own(4)},
                                     {"cylinders", map_.stops(Map::cylinder)},
                                     {"cylinder", own(2)},
                                     {"sides", map_.stops(Map::side)},
                                     {"side", own(3)}}));
    sheet_.fill_down(at);

    std::string all;
    for (int stop = 0; stop < map_.most_stops(); ++stop)
      all += (stop == 0 ? "" : ";") + relative(map_.open_at(0, stop));
    const At first = map_.first_stop(0);
    sheet_.formula(first, written("=IF(COUNT({all})=0;\"\";MIN({all}))", {{"all", all}}));
    sheet_.fill_down(block(first, 1, places_.count()));
  }

  void steps() {
    heads(sheet_, {0, map_.steps(Map::step).from.row - 1},
          {"step", "stop", "valve", "out", "in", "from", "note", "tick", "in short", "whole"});
    fact(Map::step_rows, "rows of STEPS", "=IFERROR(ROWS(" + asked_steps("step") + ");0)");
    const std::pair<Map::Steps, const char*> parts[] = {
        {Map::step, "step"}, {Map::step_stop, "stop"}, {Map::step_valve, "valve"},
        {Map::out, "out"},   {Map::in, "in"},          {Map::from, "from"},
        {Map::note, "note"}};
    for (const auto& [column, part] : parts)
      answer(map_.steps(column), asked_steps(part), map_.fact(Map::step_rows));
    fact(Map::steps_count, "steps", written("=COUNT({x})", {{"x", map_.steps(Map::step)}}));
  }

  std::string crank_wrong() const {
    return written(
        "=IF(NOT(add_in_there);\"\";IF({firing}=\"\";\"Firing order: it is not entered, and "
        "without it nothing tells where to stop the crank.\";"
        "IF(ISERROR(ROWS(CRANK.STOPS({firing})));\"Firing order: name each cylinder once, as "
        "1-3-4-2; or give the degrees at which each fires, from 0 to below 720, as 1 at 0, 2 at "
        "270.\";"
        "IF(MAX(CRANK.STOPS({firing};;;\"cylinder\"))<>{n};\"Firing order: the engine has {n} "
        "cylinders, the order another number.\";"
        "IF({rows}=0;\"Valve timing: with these degrees a valve is never clear of its lobe, or "
        "never opens.\";IF(MAX({stops})>{most};\"Valve timing: with these degrees more than {most} "
        "stops would be due.\";\"\"))))))",
        {{"firing", map_.fact(Map::firing)},
         {"n", cylinders_of(places_.layout)},
         {"rows", map_.fact(Map::stop_rows)},
         {"stops", map_.stops(Map::stop)},
         {"most", map_.most_stops()}});
  }

  Sheet& sheet_;
  const Places& places_;
  Map map_;
};

}  // namespace

void make_steps(Sheet& sheet, const Places& places) { StepsMaker(sheet, places).make(); }

}  // namespace shimwright::book::workings
