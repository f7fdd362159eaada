# SPDX-License-Identifier: MPL-2.0
# cmake -C tests/presets/debug.cmake -B build-debug
# To step through; the package is built and tested as it is, unoptimized, and each file compiled by
# itself, which shows where one lacks an #include.
set(CMAKE_BUILD_TYPE Debug CACHE STRING "")
set(CMAKE_UNITY_BUILD OFF CACHE BOOL "")
