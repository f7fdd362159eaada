# SPDX-License-Identifier: MPL-2.0
# cmake -D source=FOLDER -D programs=FILE;... -P locale_check.cmake
cmake_minimum_required(VERSION 3.25)
# Under a window the office runs in the user's locale, where the C library and the streams write a
# decimal comma: such a number in a formula is another formula. So nothing in the sources names a
# function that follows the locale, and nothing in the built programs calls one: the second finds
# std::to_string of a double, which looks as that of an integer does.

# The describe program, which the build runs, reads and writes texts and whole numbers.
set(may_use_streams ${source}/src/cells/describe/)
set(banned "sto[dfl]d?|strto(d|f|ld)|atof|v?f?s?n?w?(print|scan)f|setlocale|uselocale|std::locale|imbue")
file(GLOB_RECURSE files ${source}/src/*.?pp ${source}/extension/*.?pp ${source}/templates/*.?pp)
if(NOT files)
  message(SEND_ERROR "no sources under ${source}: this check reads nothing")
endif()
foreach(file ${files})
  file(STRINGS ${file} lines REGEX "(^|[^A-Za-z0-9_])(${banned})([^A-Za-z0-9_]|$)")
  string(FIND ${file} ${may_use_streams} at)
  if(NOT at EQUAL 0)
    file(STRINGS ${file} streams REGEX "stringstream")
    list(APPEND lines ${streams})
  endif()
  foreach(line ${lines})
    message(SEND_ERROR "${file} follows the locale: ${line}")
  endforeach()
endforeach()

# vsnprintf is what std::to_string(double) calls; the others are what streams and std::stod call.
set(calls "_*v?s?n?printf(_chk)?|strto(d|f|ld)(_l)?|_*sscanf(_chk)?|setlocale|newlocale|uselocale")
set(streams "_ZNSo9_M_insertI[def]E|_ZNSolsE[def]|_ZNSi10_M_extractI[def]E|_ZNSirsER[def]")
if(NOT programs)
  message(SEND_ERROR "no programs: this check reads nothing")
endif()
foreach(program ${programs})
  execute_process(COMMAND nm -D --undefined-only ${program} OUTPUT_VARIABLE wanted
                  COMMAND_ERROR_IS_FATAL ANY)
  if(NOT wanted MATCHES "_ZNS")
    message(SEND_ERROR "${program} calls nothing of libstdc++: this check reads it wrong")
  endif()
  string(REGEX MATCHALL " (${calls}|${streams})[^\n]*" found "${wanted}")
  foreach(name ${found})
    message(SEND_ERROR "${program} calls${name}, which follows the locale")
  endforeach()
endforeach()
