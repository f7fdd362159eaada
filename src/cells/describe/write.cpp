// SPDX-License-Identifier: MPL-2.0
#include "cells/describe/write.hpp"

#include <map>
#include <set>
#include <sstream>
#include <string_view>

namespace shimwright::cells {
namespace {

std::string replaced(std::string_view text, char wanted, std::string_view by) {
  std::string out;
  for (const char c : text) {
    if (c == wanted)
      out += by;
    else
      out += c;
  }
  return out;
}

std::string escaped(std::string_view text) {
  return replaced(replaced(replaced(replaced(text, '&', "&amp;"), '<', "&lt;"), '>', "&gt;"), '"',
                  "&quot;");
}

// A property in English, which is what every other language falls back to.
void write_text(std::ostream& xml, std::string_view name, std::string_view value) {
  xml << "<prop oor:name=\"" << name << "\"><value xml:lang=\"en-US\">" << escaped(value)
      << "</value></prop>\n";
}

void write_function(std::ostream& xml, const Function& function) {
  xml << "<node oor:name=\"" << function.method << "\" oor:op=\"replace\">\n";
  write_text(xml, "DisplayName", function.name);
  write_text(xml, "Description", description_of(function));
  xml << "<prop oor:name=\"Category\"><value>Add-In</value></prop>\n";
  // Equal to the display name, or some ways into the sheet give #NAME?.
  write_text(xml, "CompatibilityName", function.name);
  xml << "<node oor:name=\"Parameters\">\n";
  for (const Parameter& parameter : function.parameters) {
    xml << "<node oor:name=\"" << parameter.name << "\" oor:op=\"replace\">\n";
    write_text(xml, "DisplayName", parameter.display);
    write_text(xml, "Description",
               (parameter.optional ? "May be left out: " : "") + parameter.text);
    xml << "</node>\n";
  }
  xml << "</node>\n</node>\n";
}

void write_paragraph(std::ostream& xml, std::string_view role, std::string_view text) {
  static int number = 0;
  xml << "<paragraph id=\"p" << ++number << "\" role=\"" << role << "\"";
  if (role == "heading") xml << " level=\"2\"";
  xml << " xml-lang=\"en-US\">" << escaped(text) << "</paragraph>\n";
}

std::string example_text(const Example& example) {
  return example.formula + " gives " + example.result;
}

void write_sheet(std::ostream& xml, const FunctionList& list) {
  write_paragraph(xml, "heading", "The sheet of the examples");
  for (const auto& [first, cells] : list.sheet) {
    std::string row = first + " and on: ";
    for (const std::string& cell : cells) row += (cell.empty() ? "(blank)" : cell) + "; ";
    row.resize(row.size() - 2);
    write_paragraph(xml, "paragraph", row);
  }
}

// As the office shows it: a letter above each column, a number before each row.
std::string sheet_of(const FunctionList& list) {
  std::map<std::string, std::map<char, std::string>> rows;
  std::set<char> columns;
  for (const auto& [first, cells] : list.sheet)
    for (std::size_t i = 0; i < cells.size(); ++i) {
      const auto column = static_cast<char>(first[0] + static_cast<int>(i));
      columns.insert(column);
      rows[first.substr(1)][column] = cells[i];
    }
  std::string head = "| |";
  std::string line = "|---|";
  for (const char column : columns) {
    head += std::string(" ") + column + " |";
    line += "---|";
  }
  std::string text = head + "\n" + line + "\n";
  for (const auto& [number, cells] : rows) {
    text += "| **" + number + "** |";
    for (const char column : columns) {
      const auto found = cells.find(column);
      text += (found == cells.end() || found->second.empty() ? "" : " " + found->second) + " |";
    }
    text += "\n";
  }
  return text;
}

}  // namespace

std::string configuration_of(const FunctionList& list) {
  std::ostringstream xml;
  xml << R"(<?xml version="1.0" encoding="UTF-8"?>
<oor:component-data xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" oor:name="CalcAddIns" oor:package="org.openoffice.Office">
<node oor:name="AddInInfo">
<node oor:name="org.shimwright.Cells" oor:op="replace">
<node oor:name="AddInFunctions">
)";
  for (const Function& function : list.functions) write_function(xml, function);
  xml << "</node>\n</node>\n</node>\n</oor:component-data>\n";
  return xml.str();
}

std::string help_of(const FunctionList& list) {
  constexpr std::string_view title = "Valve-clearance functions";
  std::ostringstream xml;
  xml << R"(<?xml version="1.0" encoding="UTF-8"?>
<helpdocument version="1.0">
<meta><topic id="functions" indexer="include" status="PUBLISH">
<title id="title" xml-lang="en-US">)"
      << title << R"(</title><filename>/org.shimwright/functions.xhp</filename>
</topic></meta>
<body>
)";
  write_paragraph(xml, "heading", title);
  write_paragraph(
      xml, "paragraph",
      "All lengths are in millimetres unless a unit is said. Text where a number is "
      "due, and a blank inside a range, count as not given. A single blank cell reaches "
      "a function as 0: a clearance of 0 is a reading (no blade goes), so guard it: "
      "=IF(A2=\"\";\"\";CLEARANCE.STATE(A2;B2;C2)). A range in place of a single value "
      "gives an answer for each of its cells.");
  for (const Function& function : list.functions) {
    write_paragraph(xml, "heading", usage_of(function));
    write_paragraph(xml, "paragraph", function.summary + " Gives " + function.gives + ".");
    for (const Parameter& parameter : function.parameters)
      write_paragraph(xml, "paragraph",
                      parameter.display + (parameter.optional ? " (may be left out): " : ": ") +
                          parameter.text);
    for (const Example& example : function.examples)
      write_paragraph(xml, "code", example_text(example));
  }
  write_sheet(xml, list);
  xml << "</body>\n</helpdocument>\n";
  return xml.str();
}

std::string table_of(const FunctionList& list) {
  std::ostringstream text;
  text << sheet_of(list) << '\n';
  text << "| In the sheet | What it gives | Example |\n|---|---|---|\n";
  for (const Function& function : list.functions) {
    const Example& example = function.examples.front();
    text << "| `" << replaced(usage_of(function), '|', "\\|") << "` | "
         << replaced(function.summary + " Gives " + function.gives + ".", '|', "\\|") << " | `"
         << replaced(example.formula, '|', "\\|") << "` → `" << replaced(example.result, '|', "\\|")
         << "` |\n";
  }
  return text.str();
}

}  // namespace shimwright::cells
