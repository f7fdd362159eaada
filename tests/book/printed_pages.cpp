// SPDX-License-Identifier: MPL-2.0
#include "printed_pages.hpp"

#include <algorithm>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string_view>

#include "office/process.hpp"

namespace shimwright::tests {
namespace {

// What a command prints. Throws where it fails.
std::string printed_by(const std::vector<std::string>& command, const std::filesystem::path& file) {
  office::Process process(command, {}, file);
  if (process.wait_for(std::chrono::seconds(60)) != 0)
    throw std::runtime_error("failed: " + command.front());
  std::ostringstream text;
  text << std::ifstream(file).rdbuf();
  std::filesystem::remove(file);
  return text.str();
}

// Of an element's first line: <page width="595.3" height="841.9">.
double attribute(std::string_view line, std::string_view name) {
  const auto at = line.find(std::string(name) + "=\"");
  if (at == std::string_view::npos) throw std::runtime_error("not told: " + std::string(name));
  return std::stod(std::string(line.substr(at + name.size() + 2, 20)));
}

}  // namespace

double PrintedPage::smallest_letters_pt() const {
  // Boxes of words are given from 0.95 above the line to 0.35 below it.
  constexpr double box_of_one_pt = 1.3;
  double smallest = 1000;
  for (const PrintedWord& word : words) smallest = std::min(smallest, word.bottom - word.top);
  return smallest / box_of_one_pt;
}

std::vector<PrintedPage> printed_pages(const std::filesystem::path& pdf) {
  std::filesystem::path out = pdf;
  out.replace_extension(".txt");
  std::vector<PrintedPage> pages;
  std::istringstream boxes(printed_by({"pdftotext", "-bbox", pdf.string(), "-"}, out));
  for (std::string line; std::getline(boxes, line);) {
    if (line.find("<page ") != std::string::npos)
      pages.push_back({attribute(line, "width"), attribute(line, "height"), {}, {}});
    if (line.find("<word ") == std::string::npos) continue;
    const auto begin = line.find('>') + 1;
    pages.back().words.push_back({attribute(line, "xMin"), attribute(line, "yMin"),
                                  attribute(line, "yMax"),
                                  line.substr(begin, line.rfind('<') - begin)});
  }
  std::istringstream texts(printed_by({"pdftotext", "-layout", pdf.string(), "-"}, out));
  for (PrintedPage& page : pages) std::getline(texts, page.text, '\f');
  return pages;
}

}  // namespace shimwright::tests
