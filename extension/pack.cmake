# SPDX-License-Identifier: MPL-2.0
# cmake -D zip=... -D stage=cells.oxt -D books=FOLDER -D out=shimwright.oxt -P pack.cmake
# The package with the books in it: templates where Paths.xcu leads, filled books beside them.
cmake_path(GET out PARENT_PATH folder)
set(extra ${folder}/stage/books)
file(REMOVE_RECURSE ${extra})
file(GLOB templates ${books}/*.ots)
file(GLOB filled ${books}/*.ods)
foreach(kind templates demo)
  file(MAKE_DIRECTORY ${extra}/${kind})
endforeach()
if(templates)
  file(COPY ${templates} DESTINATION ${extra}/templates)
endif()
if(filled)
  file(COPY ${filled} DESTINATION ${extra}/demo)
endif()
file(COPY_FILE ${stage} ${out}.new)
execute_process(COMMAND ${zip} -q -X -r ${out}.new templates demo WORKING_DIRECTORY ${extra}
                COMMAND_ERROR_IS_FATAL ANY)
file(RENAME ${out}.new ${out})
