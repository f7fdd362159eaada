// SPDX-License-Identifier: MPL-2.0
#include "office_bench.hpp"

#include <com/sun/star/uno/Exception.hpp>
#include <cstdio>
#include <cstdlib>
#include <exception>
#include <string_view>

#include "office/text.hpp"

namespace shimwright::bench {

int run_in_office(const char* name, int argc, char** argv,
                  const std::function<bool(const office::Office&, bool quick)>& work) {
  if (argc < 2) {
    std::fprintf(stderr, "%s package.oxt [quick]\n", name);
    return 2;
  }
  const bool quick = argc > 2 && std::string_view(argv[2]) == "quick";
  try {
    office::Settings settings;
    settings.extension = argv[1];
    const office::Office office(settings);
    return work(office, quick) ? EXIT_SUCCESS : EXIT_FAILURE;
  } catch (const com::sun::star::uno::Exception& failure) {
    std::fprintf(stderr, "%s: %s\n", name, office::from_office(failure.Message).c_str());
  } catch (const std::exception& failure) {
    std::fprintf(stderr, "%s: %s\n", name, failure.what());
  }
  return EXIT_FAILURE;
}

void print_load() {
  double load[1] = {};
  getloadavg(load, 1);
  std::printf("In ms, middle of several runs; load of the machine at the start %.1f.\n", load[0]);
}

}  // namespace shimwright::bench
