# SPDX-License-Identifier: MPL-2.0
# cmake -D zip=... -D functions=FOLDER [-D books=FOLDER] -D out=FILE.oxt -P pack.cmake
# The package: what stands in the folder `functions`, with the books in it: templates where
# Paths.xcu leads, filled books beside them.
include(${CMAKE_CURRENT_LIST_DIR}/same_bytes.cmake)
set(all ${out}.folder)
file(REMOVE_RECURSE ${all})
file(COPY ${functions}/ DESTINATION ${all})
if(books)
  file(GLOB templates ${books}/*.ots)
  file(GLOB filled ${books}/*.ods)
  file(COPY ${templates} DESTINATION ${all}/templates)
  file(COPY ${filled} DESTINATION ${all}/demo)
endif()
pack(${out} ${all})
file(REMOVE_RECURSE ${all})
