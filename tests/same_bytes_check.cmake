# SPDX-License-Identifier: MPL-2.0
# cmake -D zip=... -D make_books=PROGRAM -D functions=FOLDER -D stage=cells.oxt -D source=FOLDER
#       -D work=FOLDER -P same_bytes_check.cmake
cmake_minimum_required(VERSION 3.25)
# Makes a template and the package twice, in two folders at two times: not a byte may differ.
set(book "Valve service, single, 4 valves")
file(REMOVE_RECURSE ${work})
foreach(run 1 2)
  file(MAKE_DIRECTORY ${work}/${run})
  foreach(command
          "${make_books};${stage};${source}/templates/demo.txt;${work}/${run};${book}"
          "${CMAKE_COMMAND};-Dzip=${zip};-Dbooks=${work}/${run};-P;${source}/templates/settle.cmake"
          "${CMAKE_COMMAND};-Dzip=${zip};-Dbooks=${work}/${run};-Dfunctions=${functions};-Dout=${work}/${run}/package.oxt;-P;${source}/extension/pack.cmake")
    execute_process(COMMAND ${command} OUTPUT_QUIET COMMAND_ERROR_IS_FATAL ANY)
  endforeach()
  file(TOUCH ${functions}/description.txt)  # a new time, but the same file
endforeach()
foreach(file "${book}.ots" package.oxt)
  execute_process(COMMAND cmp ${work}/1/${file} ${work}/2/${file} RESULT_VARIABLE differ)
  if(differ)
    message(SEND_ERROR "${file} is not the same twice")
  endif()
endforeach()
