# SPDX-License-Identifier: MPL-2.0
# cmake -C tests/presets/sanitize.cmake -B build-sanitize
# src/core and its tests under the address and undefined-behaviour sanitizers: an office that was
# built without them cannot load a library built with them.
set(CMAKE_BUILD_TYPE RelWithDebInfo CACHE STRING "")
set(SHIMWRIGHT_SANITIZE ON CACHE BOOL "")
set(SHIMWRIGHT_OFFICE OFF CACHE BOOL "")
