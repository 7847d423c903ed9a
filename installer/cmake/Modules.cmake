# SPDX-License-Identifier: MIT
#
# flarestock_module(ports fluids exact): the library flarestock_ports out of the .cpp files of this
# folder and below, linked to the folders that it may include. A wrong include direction therefore does not
# link either; the tidy test says it in words.
function(flarestock_module name)
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${CMAKE_CURRENT_SOURCE_DIR}/*.cpp)
  if(NOT sources)
    add_library(flarestock_${name} INTERFACE)
    target_link_libraries(flarestock_${name} INTERFACE flarestock_flags)
    foreach(left IN LISTS ARGN)
      target_link_libraries(flarestock_${name} INTERFACE flarestock_${left})
    endforeach()
    return()
  endif()
  add_library(flarestock_${name} STATIC ${sources})
  target_link_libraries(flarestock_${name} PUBLIC flarestock_flags)
  foreach(left IN LISTS ARGN)
    target_link_libraries(flarestock_${name} PUBLIC flarestock_${left})
  endforeach()
endfunction()

# flarestock_embed(target constant file): the text of a data file as
# `namespace flarestock::embedded { extern const std::string_view constant; }`,
# to be declared by hand where it is used. The file is read again when it changes.
function(flarestock_embed target constant file)
  set(path ${CMAKE_CURRENT_SOURCE_DIR}/${file})
  set_property(DIRECTORY APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${path})
  file(READ ${path} text)
  set(out ${CMAKE_CURRENT_BINARY_DIR}/embedded_${constant}.cpp)
  file(CONFIGURE OUTPUT ${out} @ONLY CONTENT "// made from ${file}
#include <string_view>
namespace flarestock::embedded {
extern const std::string_view ${constant};
const std::string_view ${constant} = R\"__csv__(@text@)__csv__\";
}
")
  target_sources(${target} PRIVATE ${out})
endfunction()

# flarestock_at_once(command): eight files of a module are one to the compiler, because what they include takes
# it far longer than what they say. What two of them define for themselves must not have one name.
function(flarestock_at_once name)
  set_target_properties(flarestock_${name} PROPERTIES UNITY_BUILD ON UNITY_BUILD_BATCH_SIZE 8)
endfunction()
