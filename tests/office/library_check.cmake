# SPDX-License-Identifier: MPL-2.0
# cmake -D library=shimwright.so -D package=shimwright.oxt -P library_check.cmake
cmake_minimum_required(VERSION 3.25)
# The library as shipped: what it needs, what it shows, how it is hardened. It has to run beside
# any LibreOffice, so it may need nothing that does not come with one.
function(inspect out)
  execute_process(COMMAND ${ARGN} OUTPUT_VARIABLE text COMMAND_ERROR_IS_FATAL ANY)
  set(${out} "${text}" PARENT_SCOPE)
endfunction()

set(allowed libuno_cppu.so.3 libuno_cppuhelpergcc3.so.3 libuno_sal.so.3 libuno_salhelpergcc3.so.3
            libstdc++.so.6 libm.so.6 libgcc_s.so.1 libc.so.6 ld-linux-x86-64.so.2)

inspect(dynamic readelf -d ${library})
string(REGEX MATCHALL "NEEDED[^\n]*\\[[^]]*" needed "${dynamic}")
if(NOT needed)
  message(SEND_ERROR "the library needs nothing: this check reads it wrong")
endif()
foreach(line ${needed})
  string(REGEX REPLACE ".*\\[" "" name "${line}")
  if(NOT name IN_LIST allowed)
    message(SEND_ERROR "the library needs ${name}, which LibreOffice does not bring")
  endif()
endforeach()
if(dynamic MATCHES "RPATH|RUNPATH")
  message(SEND_ERROR "the library looks for others in a folder of this machine")
endif()
if(NOT dynamic MATCHES "BIND_NOW|FLAGS.*NOW")
  message(SEND_ERROR "the library is not bound at its start (-z now)")
endif()

inspect(segments readelf -lW ${library})
if(NOT segments MATCHES "GNU_RELRO")
  message(SEND_ERROR "the library has no RELRO")
endif()
if(segments MATCHES "GNU_STACK[^\n]*RWE")
  message(SEND_ERROR "the library wants an executable stack")
endif()

inspect(shown nm -D --defined-only ${library})
string(STRIP "${shown}" shown)
if(NOT shown MATCHES "^[0-9a-f]+ T shimwright_cells\n[0-9a-f]+ T shimwright_commands$")
  message(SEND_ERROR "the library shows more than its constructors:\n${shown}")
endif()

inspect(undefined nm -D --undefined-only ${library})
if(NOT undefined MATCHES "__stack_chk_fail")
  message(SEND_ERROR "the library has no stack protector")
endif()

# Needed by name of version: GCC 11 brings these (to_chars and from_chars of a double).
set(newest_libstdcxx 3.4.29)
string(REGEX MATCHALL "@GLIBCXX_[0-9.]+" versions "${undefined}")
if(NOT versions)
  message(SEND_ERROR "the library needs no version of libstdc++: this check reads it wrong")
endif()
list(REMOVE_DUPLICATES versions)
foreach(version ${versions})
  string(REPLACE "@GLIBCXX_" "" version ${version})
  if(version VERSION_GREATER newest_libstdcxx)
    message(SEND_ERROR "the library needs libstdc++ with GLIBCXX_${version}, "
                       "newer than GLIBCXX_${newest_libstdcxx}")
  endif()
endforeach()

inspect(sections readelf -SW ${library})
if(sections MATCHES "\\.symtab|\\.debug_")
  message(SEND_ERROR "the library is not stripped")
endif()

inspect(listing cmake -E tar tf ${package})
foreach(part META-INF/manifest.xml description.xml shimwright.components shimwright.so cells.rdb
             CalcAddIns.xcu Paths.xcu Addons.xcu ProtocolHandler.xcu NewBook.xcs LICENSE
             help/en/org.shimwright/functions.xhp)
  if(NOT listing MATCHES "(^|\n)${part}(\n|$)")
    message(SEND_ERROR "the package lacks ${part}")
  endif()
endforeach()
