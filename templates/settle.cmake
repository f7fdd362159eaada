# SPDX-License-Identifier: MPL-2.0
# cmake -D zip=... -D books=FOLDER -P settle.cmake
# Takes out of each book in the folder what differs each time the office saves the same book: when
# and how long it was made, how far the window happened to be laid out by then. No reader misses it.
include(${CMAKE_CURRENT_LIST_DIR}/../extension/same_bytes.cmake)

function(take_out file pattern)
  file(READ ${file} text)
  string(REGEX REPLACE "${pattern}" "" text "${text}")
  file(WRITE ${file} "${text}")
endfunction()

file(GLOB all ${books}/*.ots ${books}/*.ods)
foreach(book ${all})
  set(folder ${book}.folder)
  file(REMOVE_RECURSE ${folder})
  file(ARCHIVE_EXTRACT INPUT ${book} DESTINATION ${folder})
  file(REMOVE_RECURSE ${folder}/Configurations2)  # folders of toolbars, all empty
  take_out(${folder}/META-INF/manifest.xml "[ \n]*<manifest:file-entry manifest:full-path=\"Configurations2/\"[^>]*/>")
  foreach(name meta:creation-date dc:date meta:editing-duration)
    take_out(${folder}/meta.xml "<${name}>[^<]*</${name}>")
  endforeach()
  take_out(${folder}/settings.xml
           "<config:config-item config:name=\"HorizontalScrollbarWidth\"[^>]*>[^<]*</config:config-item>")
  pack(${book} ${folder} mimetype)  # whose place in the file is at its beginning, not compressed
  file(REMOVE_RECURSE ${folder})
endforeach()
