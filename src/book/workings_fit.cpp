// SPDX-License-Identifier: MPL-2.0
//
// Workings of the checklist on Fit: what ticks a step, what the ticks come to, and what Fit says of
// them and of the steps.
#include "book/fit_map.hpp"
#include "book/formula.hpp"
#include "book/sheets.hpp"
#include "book/steps_map.hpp"
#include "book/workings_parts.hpp"

namespace shimwright::book::workings {
namespace {

using Map = StepsMap;

// No I and no O, which a hand writes like figures.
constexpr std::string_view code_letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
constexpr int letters_in_code = 4;
constexpr int most_codes = 331769;                // the largest prime that so many letters can tell
constexpr int code_length = letters_in_code + 2;  // in brackets, as it ends a tick

constexpr std::string_view words_of_changed_steps =
    "The steps have changed since some were ticked, so no tick holds. Best undo the last entry, or "
    "type back what stood there: the ticks hold again. Finish this list first";
constexpr std::string_view words_of_measuring_on =
    ", measuring each gap over its new shim before you turn on,";
constexpr std::string_view words_of_mending_later =
    " and mend the reading once every gap is measured again.";
constexpr std::string_view words_of_no_way_back =
    " If you cannot, keep the ticks for now: they alone say what was fitted.";
constexpr std::string_view words_before_shims_missing =
    " If you cannot: before you turn the crank, put the camshafts back or clear a tick, fill ";
constexpr std::string_view words_after_shims_missing =
    " from the spares or the shims that lie loose, with one no thicker than came out; failing "
    "that, take steps back until every valve has a shim.";
constexpr std::string_view words_of_measuring =
    " Type on Head, for each valve ticked or filled, the shim now in it and the gap measured over "
    "it.";
constexpr std::string_view words_of_working_out =
    " Type on Head, for each valve ticked or filled, the shim now in it and, as none can be "
    "measured yet, the gap that comes of it: old gap + old shim - new shim.";
constexpr std::string_view words_of_beginning_again =
    " On Shims, strike off the spares fitted and list all that lie loose, the bought ones too. "
    "Last, clear all ticks and begin again at step 1.";
constexpr std::string_view words_of_done_before =
    "All steps of another list were ticked, and an entry has changed since. If that fitting is "
    "done and every gap measured again, clear all ticks: what stands here now is new. If not, undo "
    "the entry: the ticks hold again.";

constexpr std::string_view words_where_all_is_well =
    "After the last step every gap is measured again: type the new readings into a copy of this "
    "book. Ticks hold for this list of steps: when an entry changes one of them, all ticks turn "
    "dark.";
constexpr std::string_view words_where_all_is_done =
    "All steps are ticked. Measure every gap again. Then, in a copy of this book: clear all ticks "
    "here; on Head, type every new gap, and the mark and micrometer size of the shim now in that "
    "valve;";
constexpr std::string_view words_of_the_drawer =
    " on Shims, strike off the spares that went in and add the shims left over.";

class FitFacts {
 public:
  FitFacts(Sheet& sheet, const Places& places)
      : sheet_(sheet),
        map_(places),
        valves_(places.count()),
        fit_(places),
        done_(on(sheet_name::fit, fit_.all(FitMap::done))) {}

  void make() {
    step_words();
    list_code();
    ticks();
    done_before();
    emptied();
    ticks_wrong();
    steps_said();
    fit_said();
  }

 private:
  void fact(Map::Fact which, std::string_view name, std::string_view formula) {
    write_fact(sheet_, map_.fact(which), name, formula);
  }

  void matrix_fact(Map::Fact which, std::string_view name, std::string_view formula) {
    write_matrix_fact(sheet_, map_.fact(which), name, formula);
  }

  std::string all(Map::Steps column) const { return absolute(map_.steps(column)); }

  // As on Fit. A point in every locale: the book may be opened in another.
  static std::string size(const std::string& x) {
    return written("SUBSTITUTE(FIXED({x}/mm_each;decimals;TRUE());\",\";\".\")", {{"x", x}});
  }

  // As one matrix, and not a formula filled down: those the office works out in threads, and a cell
  // that they all need, such as the code, it then takes from steps as they were.
  void column(Map::Steps which, const std::string& formula) {
    sheet_.matrix(map_.steps(which), formula);
  }

  // A tick says which step, which valve and which shim, and of which list of steps: where one step
  // has changed, neither the shims nor the crank are where the others take them to be, so no tick
  // holds.
  void step_words() {
    column(
        Map::brief,
        written("=IF(NOT(ISNUMBER({step}));\"\";{step}&\": \"&IF({valve}=\"\";IF(ISNUMBER({stop});"
                "\"turn to \"&{stop};\"turn twice\");{valve}&IF(ISNUMBER({in});\" \"&{in_size};"
                "IF(ISNUMBER({out});\" out \"&{out_size};\"\"))))",
                {{"step", all(Map::step)},
                 {"valve", all(Map::step_valve)},
                 {"stop", all(Map::step_stop)},
                 {"in", all(Map::in)},
                 {"in_size", size(all(Map::in))},
                 {"out", all(Map::out)},
                 {"out_size", size(all(Map::out))}}));
    column(Map::whole, written("=IF({brief}=\"\";\"\";{brief}&\"/\"&{stop}&\"/\"&{from}&\"/\"&"
                               "IF(ISNUMBER({out});{out_size};\"\"))",
                               {{"brief", all(Map::brief)},
                                {"stop", all(Map::step_stop)},
                                {"from", all(Map::from)},
                                {"out", all(Map::out)},
                                {"out_size", size(all(Map::out))}}));
    column(Map::tick,
           written("=IF({brief}=\"\";\"\";SUBSTITUTE({brief};\": \";\"/\"&{count}&\": \";1)"
                   "&\" (\"&{code}&\")\")",
                   {{"brief", all(Map::brief)},
                    {"count", map_.fact(Map::steps_count)},
                    {"code", map_.fact(Map::list_code)}}));
  }

  // Letters and rows weigh by their place, so that what changes places counts too.
  void list_code() {
    constexpr int letters = 48;
    constexpr auto base = static_cast<int>(code_letters.size());
    fact(Map::list_sum, "sum of the steps",
         written("=MOD(SUMPRODUCT(UNICODE(MID({steps}&REPT(\" \";{letters});COLUMN({places});1))"
                 "*MOD(31*COLUMN({places})^2;997)*MOD(31*ROW({steps})^2;9973));{most})",
                 {{"steps", block(map_.steps(Map::whole).from, 1, fit_.rows)},
                  {"letters", letters},
                  {"places", block({0, 0}, letters, 1)},
                  {"most", most_codes}}));
    std::string code;
    for (int each = 1, place = 0; place < letters_in_code; ++place, each *= base)
      code += written("{and}MID(\"{letters}\";1+MOD(INT({sum}/{each});{base});1)",
                      {{"and", place == 0 ? "=" : "&"},
                       {"letters", code_letters},
                       {"sum", map_.fact(Map::list_sum)},
                       {"each", each},
                       {"base", base}});
    fact(Map::list_code, "code of the steps", code);
  }

  void ticks() {
    const Area ticks = block(map_.steps(Map::tick).from, 1, fit_.rows);
    fact(Map::steps_ticked, "steps ticked",
         written("=SUMPRODUCT(({done}<>\"\")*({done}={ticks}))",
                 {{"done", done_}, {"ticks", ticks}}));
    fact(Map::all_ticked, "all ticked",
         written("=AND({count}>0;{ticked}={count})", {{"count", map_.fact(Map::steps_count)},
                                                      {"ticked", map_.fact(Map::steps_ticked)}}));
    fact(Map::ticks_astray, "ticks astray",
         written("=SUMPRODUCT(({done}<>\"\")*({done}<>{ticks}))",
                 {{"done", done_}, {"ticks", ticks}}));
    matrix_fact(Map::left_out, "first not ticked",
                written("=MIN(IF({done}=\"\";ROW({done})-{before};\"\"))",
                        {{"done", done_}, {"before", FitMap::first_row}}));
  }

  // Each tick says how many steps its list had.
  void done_before() {
    matrix_fact(
        Map::first_tick, "first tick",
        written("=IFERROR(INDEX({done};MATCH(TRUE();{done}<>\"\";0));\"\")", {{"done", done_}}));
    fact(Map::done_before, "all of another list",
         written("=IFERROR(AND({astray}>0;{ticks}=SUMPRODUCT(({done}<>\"\")*1);"
                 "{ticks}=VALUE(REGEX({first};\"(?<=/)[0-9]+(?=:)\")));FALSE())",
                 {{"astray", map_.fact(Map::ticks_astray)},
                  {"ticks", written("SUMPRODUCT((RIGHT({done};{code})=RIGHT({first};{code}))*1)",
                                    {{"done", done_},
                                     {"code", code_length},
                                     {"first", map_.fact(Map::first_tick)}})},
                  {"done", done_},
                  {"first", map_.fact(Map::first_tick)}}));
  }

  // A shim that is ticked as taken out, and none after it as put in.
  void emptied() {
    const std::string valve =
        written("MID({done};FIND(\": \";{done})+2;FIND(\" out \";{done})-FIND(\": \";{done})-2)",
                {{"done", done_}});
    matrix_fact(
        Map::emptied, "without a shim",
        written("=TEXTJOIN(\", \";TRUE();IF(ISNUMBER(FIND(\" out \";{done}));IF(ISERROR(REGEX("
                "TEXTJOIN(\"|\";TRUE();{done});\": \"&{valve}&\" out [^|]*\\|.*: \"&{valve}&\" "
                "[0-9]\"));{valve}&\" (\"&MID({done};FIND(\" out \";{done})+5;"
                "FIND(\" (\";{done})-FIND(\" out \";{done})-5)&\" came out)\";\"\");\"\"))",
                {{"done", done_}, {"valve", valve}}));
  }

  // A valve that stands empty is filled before anything else: once the ticks are gone, nothing
  // tells of it.
  std::string changed() const {
    return written(
        "IF({done_before};\"{done}\";\"{changed}\"&IF({out};\"\";\"{on}\")&\"{later}\"&IF({emptied}"
        "=\"\";\"{no_way_back}\";"
        "\"{fill}\"&{emptied}&\"{filled}\")&IF({out};\"{working_out}\";\"{measuring}\")&"
        "\"{again}\")",
        {{"done_before", map_.fact(Map::done_before)},
         {"done", words_of_done_before},
         {"changed", words_of_changed_steps},
         {"on", words_of_measuring_on},
         {"later", words_of_mending_later},
         {"no_way_back", words_of_no_way_back},
         {"fill", words_before_shims_missing},
         {"emptied", map_.fact(Map::emptied)},
         {"filled", words_after_shims_missing},
         {"out", map_.fact(Map::cams_out)},
         {"working_out", words_of_working_out},
         {"measuring", words_of_measuring},
         {"again", words_of_beginning_again}});
  }

  void ticks_wrong() {
    fact(
        Map::ticks_wrong, "of the ticks",
        written(
            "=IF(NOT(add_in_there);\"\";IF({astray}>0;IF({old}>0;{changed};\"A tick stands "
            "in a row that is not its own: clear it.\");"
            "IF(SUMPRODUCT(MAX(({done}<>\"\")*(ROW({done})-{before})))>{ticked};\"Step \"&"
            "{left}&\" is not ticked and a later one is. If it is done, tick it. If not: see that "
            "every valve has a shim, \"&IF(ISNUMBER({stop});\"turn the crank forwards to stop "
            "\"&{stop}&\" again, \";\"\")&\"clear the ticks below it and go on from there.\";"
            "\"\")))",
            {{"done", done_},
             {"astray", map_.fact(Map::ticks_astray)},
             {"old",
              written(
                  "SUMPRODUCT(({done}<>\"\")*(RIGHT({done};{length})<>\"(\"&{code}&\")\"))",
                  {{"done", done_}, {"length", code_length}, {"code", map_.fact(Map::list_code)}})},
             {"changed", changed()},
             {"before", FitMap::first_row},
             {"left", map_.fact(Map::left_out)},
             {"stop", written("INDEX({stops};{left})", {{"stops", map_.steps(Map::step_stop)},
                                                        {"left", map_.fact(Map::left_out)}})},
             {"ticked", map_.fact(Map::steps_ticked)}}));
  }

  void steps_said() {
    const std::string unread = "IFERROR(actions=\"unread\";FALSE())";
    const std::string waiting = written("SUMPRODUCT(({valve}<>\"\")*({in}=\"\")*({out}=\"\"))",
                                        {{"valve", map_.steps(Map::step_valve)},
                                         {"in", map_.steps(Map::in)},
                                         {"out", map_.steps(Map::out)}});
    fact(Map::unread, "still to be measured", "=IFERROR(SUMPRODUCT((actions=\"unread\")*1);0)");
    matrix_fact(Map::unread_told, "which",
                "=" + named(unread, valves_) + "&" + one_or_more(unread, " is", " are") +
                    "&\" still to be measured\"");
    fact(Map::steps_wrong, "what is wrong with the steps",
         written(
             "=IF(NOT(add_in_there);\"No steps: the Shimwright add-in is missing.\";"
             "IF(NOT(plan_stands);\"No steps yet: mend the entries first, as Plan says.\";"
             "IF(AND(NOT({out});{wrong}<>\"\");{wrong};"
             "IF({rows}=0;\"No steps: a valve whose shim is to be changed is clear of its cam at "
             "none of the stops.\";"
             "IF({count}>{room};\"More steps than this sheet has rows: read them all on Workings "
             "before you begin.\";"
             "IF({waiting}>0;\"Some shims change places in a ring and need a stand-in that is not "
             "there: see the framed row.\";\"\"))))))",
             {{"out", map_.fact(Map::cams_out)},
              {"wrong", map_.fact(Map::crank_wrong)},
              {"rows", map_.fact(Map::step_rows)},
              {"count", map_.fact(Map::steps_count)},
              {"room", fit_.rows},
              {"waiting", waiting}}));
    fact(Map::steps_noted, "of the steps",
         written("=IF({wrong}<>\"\";\"\";IF({count}=0;IF({unread}=0;\"Nothing to fit: the plan "
                 "changes no shim.\";\"Nothing to fit yet: \"&{measure}&\".\");"
                 "IF(ISNUMBER(SEARCH(\"fewer turns\";INDEX({notes};{count})));\"These steps are "
                 "safe, but there may be a way with fewer turns.\";\"\")))",
                 {{"wrong", map_.fact(Map::steps_wrong)},
                  {"count", map_.fact(Map::steps_count)},
                  {"unread", map_.fact(Map::unread)},
                  {"measure", map_.fact(Map::unread_told)},
                  {"notes", map_.steps(Map::note)}}));
  }

  // Where no tick holds, that comes before all else.
  void fit_said() {
    fact(Map::fit_loud, "loud on Fit",
         written(
             "=TEXTJOIN(CHAR(10);TRUE();{ticks};{steps};IF({ticks}<>\"\";\"\";"
             "TEXTJOIN(CHAR(10);TRUE();{stay};IF(OR({count}=0;{all});\"\";TEXTJOIN(CHAR(10);"
             "TRUE();{near};{unmeasured};IF({n}>0;{n}&IF({n}=1;\" remark on the entries: read it\";"
             "\" remarks on the entries: read them\")&\" on Plan before you fit.\";\"\")));"
             "IF(AND({count}>0;{unread}>0);{measure}&\" and may want a shim that comes out here: "
             "keep them all until then.\";\"\"))))",
             {{"ticks", map_.fact(Map::ticks_wrong)},
              {"steps", map_.fact(Map::steps_wrong)},
              {"stay", valves_.fact(WorkingsMap::stays_told)},
              {"near", valves_.fact(WorkingsMap::near_told)},
              {"unmeasured", valves_.fact(WorkingsMap::unmeasured_told)},
              {"count", map_.fact(Map::steps_count)},
              {"unread", map_.fact(Map::unread)},
              {"measure", map_.fact(Map::unread_told)},
              {"all", map_.fact(Map::all_ticked)},
              {"n", valves_.trouble_lines(WorkingsMap::all_count)}}));
    fact(Map::fit_next, "next on Fit",
         written("=IF({all};\"{done}\"&\"{drawer}\";IF(OR({noted}<>\"\";{loud}<>\"\");{noted};"
                 "\"{calm}\"))",
                 {{"all", map_.fact(Map::all_ticked)},
                  {"done", words_where_all_is_done},
                  {"drawer", words_of_the_drawer},
                  {"noted", map_.fact(Map::steps_noted)},
                  {"loud", map_.fact(Map::fit_loud)},
                  {"calm", words_where_all_is_well}}));
  }

  Sheet& sheet_;
  Map map_;
  WorkingsMap valves_;
  FitMap fit_;
  std::string done_;
};

}  // namespace

void make_fit_facts(Sheet& sheet, const Places& places) { FitFacts(sheet, places).make(); }

}  // namespace shimwright::book::workings
