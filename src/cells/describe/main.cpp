// SPDX-License-Identifier: MPL-2.0
//
// describe xcu|help|table FILE.idl: prints what is made from the list of functions.
#include <fstream>
#include <iostream>
#include <sstream>
#include <stdexcept>

#include "cells/describe/write.hpp"

int main(int count, char** words) try {
  if (count != 3) throw std::runtime_error("usage: describe xcu|help|table FILE.idl");
  std::ifstream file(words[2]);
  if (!file) throw std::runtime_error(std::string("cannot read ") + words[2]);
  std::ostringstream idl;
  idl << file.rdbuf();
  const auto list = shimwright::cells::read_functions(idl.str());
  const std::string what = words[1];
  if (what == "xcu")
    std::cout << shimwright::cells::configuration_of(list);
  else if (what == "help")
    std::cout << shimwright::cells::help_of(list);
  else if (what == "table")
    std::cout << shimwright::cells::table_of(list);
  else
    throw std::runtime_error("no such output: " + what);
  return 0;
} catch (const std::exception& failure) {
  std::cerr << "describe: " << failure.what() << "\n";
  return 1;
}
