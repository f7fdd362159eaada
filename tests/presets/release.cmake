# SPDX-License-Identifier: MPL-2.0
# cmake -C tests/presets/release.cmake -B build-release
# The package as shipped, without the tests.
set(CMAKE_BUILD_TYPE Release CACHE STRING "")
set(SHIMWRIGHT_TESTS OFF CACHE BOOL "")
