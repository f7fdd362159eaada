# SPDX-License-Identifier: MPL-2.0
# Zip files that are the same bytes whenever, wherever and by whomever they are packed.
#
# pack(OUT FOLDER [FIRST]) packs all files under FOLDER into OUT, FIRST before the others and not
# compressed, and no entries for folders. The files get one time (SOURCE_DATE_EPOCH, or a fixed one) and one mode.
function(pack out folder)
  file(GLOB_RECURSE names LIST_DIRECTORIES false RELATIVE ${folder} ${folder}/*)
  list(SORT names)
  if(ARGN)
    list(REMOVE_ITEM names ${ARGN})
  endif()
  set(time 1767225600)  # 2026-01-01
  if(DEFINED ENV{SOURCE_DATE_EPOCH})
    set(time $ENV{SOURCE_DATE_EPOCH})
  endif()
  file(CHMOD_RECURSE ${folder}
       FILE_PERMISSIONS OWNER_READ OWNER_WRITE GROUP_READ WORLD_READ
       DIRECTORY_PERMISSIONS OWNER_READ OWNER_WRITE OWNER_EXECUTE GROUP_READ GROUP_EXECUTE
                             WORLD_READ WORLD_EXECUTE)
  set(ENV{TZ} UTC)  # a zip file holds local times
  execute_process(COMMAND touch -d @${time} ${ARGN} ${names} WORKING_DIRECTORY ${folder}
                  COMMAND_ERROR_IS_FATAL ANY)
  file(REMOVE ${out}.new)
  if(ARGN)
    execute_process(COMMAND ${zip} -q -X -0 ${out}.new ${ARGN} WORKING_DIRECTORY ${folder}
                    COMMAND_ERROR_IS_FATAL ANY)
  endif()
  execute_process(COMMAND ${zip} -q -X -9 ${out}.new ${names} WORKING_DIRECTORY ${folder}
                  COMMAND_ERROR_IS_FATAL ANY)
  file(RENAME ${out}.new ${out})
endfunction()
