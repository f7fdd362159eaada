// SPDX-License-Identifier: MPL-2.0
//
// What stands on the pages of a PDF, as poppler's pdftotext reads it.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace shimwright::tests {

struct PrintedWord {
  double left;  // in points, from the page's left upper corner
  double top;
  double bottom;
  std::string text;
};

struct PrintedPage {
  double width;  // in points
  double height;
  std::vector<PrintedWord> words;  // in reading order
  std::string text;                // laid out as on the page

  double smallest_letters_pt() const;
};

// Throws std::runtime_error where the file cannot be read.
std::vector<PrintedPage> printed_pages(const std::filesystem::path& pdf);

}  // namespace shimwright::tests
