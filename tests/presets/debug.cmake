# SPDX-License-Identifier: MPL-2.0
# cmake -C tests/presets/debug.cmake -B build-debug
# To step through; the package is built and tested as it is, unoptimized.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
