// SPDX-License-Identifier: MPL-2.0
#include "cells/describe/functions.hpp"

#include <cctype>
#include <regex>
#include <sstream>
#include <stdexcept>

#include "core/values/text.hpp"

namespace shimwright::cells {
namespace {

[[noreturn]] void fail(std::string_view where, std::string_view what) {
  throw std::runtime_error(std::string(where) + ": " + std::string(what));
}

// The text before `mark`, trimmed; `rest` becomes the text behind it. Without a mark, everything.
std::string cut(std::string_view& rest, std::string_view mark) {
  const auto at = rest.find(mark);
  const std::string head(trimmed(rest.substr(0, at)));
  rest = at == std::string_view::npos ? std::string_view() : rest.substr(at + mark.size());
  return head;
}

std::vector<std::string> split(std::string_view text, std::string_view mark) {
  std::vector<std::string> parts;
  for (;;) {
    const bool last = text.find(mark) == std::string_view::npos;
    parts.push_back(cut(text, mark));
    if (last) return parts;
  }
}

// oldShim is read as `old shim`.
std::string words_of(std::string_view camel) {
  std::string words;
  for (const char c : camel) {
    if (std::isupper(static_cast<unsigned char>(c))) words += ' ';
    words += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  return words;
}

void read_tag(std::string_view tag, Function& function, FunctionList& list) {
  const std::string kind = cut(tag, " ");
  if (kind == "gives") {
    function.gives = trimmed(tag);
  } else if (kind == "param") {
    Parameter parameter;
    parameter.name = cut(tag, " ");
    parameter.display = words_of(parameter.name);
    constexpr std::string_view mark = "[optional]";
    parameter.optional = trimmed(tag).starts_with(mark);
    parameter.text = trimmed(parameter.optional ? trimmed(tag).substr(mark.size()) : tag);
    function.parameters.push_back(parameter);
  } else if (kind == "example") {
    Example example;
    example.formula = cut(tag, "->");
    example.result = trimmed(tag);
    function.examples.push_back(example);
  } else if (kind == "sheet") {
    std::string first = cut(tag, " ");
    list.sheet.emplace_back(first, split(tag, "|"));
  } else {
    fail("@" + kind, "is not a tag of this list");
  }
}

// Fills in what the comment says; the tags stand at the beginning of its lines.
Function read_comment(const std::string& comment, FunctionList& list) {
  Function function;
  std::istringstream lines(comment);
  std::string text;
  for (std::string line; std::getline(lines, line);) {
    const std::string_view plain = trimmed(line);
    if (plain.starts_with('@'))
      read_tag(plain.substr(1), function, list);
    else if (!plain.empty())
      text += (text.empty() ? "" : " ") + std::string(plain);
  }
  if (std::string_view rest = text; rest.find(": ") != std::string_view::npos) {
    function.name = cut(rest, ": ");
    function.summary = trimmed(rest);
  }
  return function;
}

void check(const Function& function, const std::vector<std::string>& declared) {
  if (function.name.empty()) fail(function.method, "has no comment with its name in the sheet");
  if (!function.summary.ends_with('.')) fail(function.name, "its summary is not a sentence");
  if (function.gives.empty()) fail(function.name, "does not say what it gives");
  if (function.examples.empty()) fail(function.name, "has no example");
  for (const Example& example : function.examples)
    if (!example.formula.starts_with('=')) fail(function.name, "an example is not a formula");
  std::vector<std::string> described;
  bool optional = false;
  for (const Parameter& parameter : function.parameters) {
    described.push_back(parameter.name);
    if (parameter.text.empty()) fail(function.name, parameter.name + " is not described");
    if (optional && !parameter.optional)
      fail(function.name, parameter.name + " cannot be asked for behind an optional argument");
    optional = parameter.optional;
  }
  if (described != declared)
    fail(function.name, "its comment does not describe its arguments in their order");
}

}  // namespace

FunctionList read_functions(std::string_view idl) {
  // A comment, and the method declared behind it if there is one.
  static const std::regex comment_form(R"(/\*\*((?:[^*]|\*(?!/))*)\*/)");
  static const std::regex method_form(R"((?:any|string)\s+(\w+)\s*\(([^)]*)\)\s*;)");
  static const std::regex argument_form(R"(\[in\]\s*any\s+(\w+))");
  const std::string text(idl);
  FunctionList list;
  auto from = text.cbegin();
  for (std::smatch comment; std::regex_search(from, text.cend(), comment, comment_form);) {
    Function function = read_comment(comment[1], list);
    from = comment[0].second;
    std::smatch next;
    const auto end =
        std::regex_search(from, text.cend(), next, comment_form) ? next[0].first : text.cend();
    std::smatch method;
    if (!std::regex_search(from, end, method, method_form)) continue;
    function.method = method[1];
    std::vector<std::string> declared;
    const std::string arguments = method[2];
    for (std::sregex_iterator it(arguments.begin(), arguments.end(), argument_form), none;
         it != none; ++it)
      declared.push_back((*it)[1]);
    check(function, declared);
    list.functions.push_back(function);
    if (std::regex_search(method[0].second, end, next, method_form))
      fail(std::string(next[1]), "has no comment");
  }
  if (list.functions.empty()) fail("the list", "holds no function");
  return list;
}

std::string usage_of(const Function& function) {
  std::string usage = function.name + "(";
  for (const Parameter& parameter : function.parameters) {
    if (!usage.ends_with('(')) usage += "; ";
    usage += parameter.optional ? "[" + parameter.display + "]" : parameter.display;
  }
  return usage + ")";
}

std::string description_of(const Function& function) {
  const Example& example = function.examples.front();
  return function.summary + " Gives " + function.gives + ". Example: " + example.formula +
         " gives " + example.result + ".";
}

}  // namespace shimwright::cells
