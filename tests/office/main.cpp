// SPDX-License-Identifier: MPL-2.0
//
// program PACKAGE.oxt [LOCALE]: runs the tests in an office of their own with the package in it.
#include <gtest/gtest.h>

#include <iostream>

#include "sheet.hpp"

int main(int count, char** words) {
  ::testing::InitGoogleTest(&count, words);
  if (count < 2) {
    std::cerr << "usage: " << words[0] << " PACKAGE.oxt [LOCALE]\n";
    return 2;
  }
  try {
    shimwright::office::Settings settings;
    settings.extension = words[1];
    settings.sparing = true;
    if (count > 2) settings.locale = words[2];
    shimwright::tests::start_office(settings);
    const int verdict = RUN_ALL_TESTS();
    shimwright::tests::end_office();
    return verdict;
  } catch (const std::exception& failure) {
    std::cerr << failure.what() << "\n";
  } catch (const com::sun::star::uno::Exception& failure) {
    std::cerr << "the office: " << shimwright::office::from_office(failure.Message) << "\n";
  }
  return 1;
}
