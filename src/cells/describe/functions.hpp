// SPDX-License-Identifier: MPL-2.0
//
// The one list of the cell functions, read from the IDL of their interface and its comments. What
// the form of a comment is, the IDL's opening lines say.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace shimwright::cells {

struct Parameter {
  std::string name;     // as in the IDL: oldShim
  std::string display;  // as people read it: old shim
  std::string text;
  bool optional = false;
};

struct Example {
  std::string formula;
  std::string result;  // cells of a row parted by ;, rows by |
};

struct Function {
  std::string method;   // in the IDL: shimPick
  std::string name;     // in the sheet: SHIM.PICK
  std::string summary;  // a sentence, with its full stop
  std::string gives;    // unit and sign of the result
  std::vector<Parameter> parameters;
  std::vector<Example> examples;
};

struct FunctionList {
  // The sheet the examples refer to: a row's first cell (A1) and the texts from there on.
  std::vector<std::pair<std::string, std::vector<std::string>>> sheet;
  std::vector<Function> functions;
};

// Throws std::runtime_error with the place where the text does not keep to the form: a method
// without description, an argument that is described out of order or not at all.
FunctionList read_functions(std::string_view idl);

// SHIM.PICK(clearance; shim; min; max; aim; sizes; [doubt])
std::string usage_of(const Function& function);

// The whole description in one text: summary, what it gives, the first example. It stands alone,
// as the function wizard shows nothing else.
std::string description_of(const Function& function);

}  // namespace shimwright::cells
