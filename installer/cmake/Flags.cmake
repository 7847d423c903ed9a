# SPDX-License-Identifier: MIT
#
# Compiler flags of our own code, as an interface library; nothing here touches generated code of
# other projects. -Wshadow=local: GCC 12 takes a scoped enumerator for a declaration that shadows a
# type of the same name; Clang, which does not, keeps the whole -Wshadow. -Wno-restrict: GCC 12 sees
# an overlap inside cpp_int::str() that is not there, and, where it optimizes, values of an optional
# that are read without being there, though they were asked for first.

add_library(flarestock_flags INTERFACE)
target_compile_options(flarestock_flags INTERFACE
  -Wall -Wextra -Wpedantic -Wconversion -Wnon-virtual-dtor -Woverloaded-virtual
  $<IF:$<CXX_COMPILER_ID:GNU>,-Wshadow=local,-Wshadow>
  $<$<AND:$<CXX_COMPILER_ID:GNU>,$<VERSION_LESS:$<CXX_COMPILER_VERSION>,13>>:-Wno-restrict>
  $<$<AND:$<CXX_COMPILER_ID:GNU>,$<VERSION_LESS:$<CXX_COMPILER_VERSION>,13>,$<NOT:$<CONFIG:Debug>>>:-Wno-maybe-uninitialized>
  $<$<BOOL:${FLARESTOCK_WERROR}>:-Werror>)
# A debug build is optimized as far as a debugger does not mind: that compiles as fast, and the suite, which
# starts the programs thousands of times, runs in half the time.
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU" AND NOT FLARESTOCK_SANITIZE AND NOT FLARESTOCK_COVERAGE)
  add_compile_options($<$<CONFIG:Debug>:-Og>)
endif()
target_compile_definitions(flarestock_flags INTERFACE
  QT_NO_CAST_FROM_ASCII QT_NO_CAST_TO_ASCII QT_NO_KEYWORDS
  QT_DISABLE_DEPRECATED_BEFORE=0x060400 QT_USE_QSTRINGBUILDER)
target_include_directories(flarestock_flags INTERFACE ${PROJECT_SOURCE_DIR})
# assert() stays on in every build: it states what the code relies on (DEVELOPERS.md, "Errors").
string(REPLACE "-DNDEBUG" "" CMAKE_CXX_FLAGS_RELEASE "${CMAKE_CXX_FLAGS_RELEASE}")
string(REPLACE "-DNDEBUG" "" CMAKE_CXX_FLAGS_RELWITHDEBINFO "${CMAKE_CXX_FLAGS_RELWITHDEBINFO}")

if(FLARESTOCK_SANITIZE)
  add_compile_options(-fsanitize=${FLARESTOCK_SANITIZE} -fno-omit-frame-pointer -g1
                      -fno-sanitize-recover=undefined)
  add_link_options(-fsanitize=${FLARESTOCK_SANITIZE})
endif()
if(FLARESTOCK_COVERAGE)
  add_compile_options(--coverage -O0 -fprofile-abs-path)
  add_link_options(--coverage)
endif()
find_program(CCACHE ccache)
if(CCACHE)
  set(CMAKE_C_COMPILER_LAUNCHER ${CCACHE})
  set(CMAKE_CXX_COMPILER_LAUNCHER ${CCACHE})
endif()

# Debug programs carry much that a linker has to copy: LLD, where it is there, takes a fifth of the time.
find_program(FLARESTOCK_LLD NAMES ld.lld)
if(FLARESTOCK_LLD AND CMAKE_BUILD_TYPE STREQUAL "Debug")
  add_link_options(-fuse-ld=lld)
endif()
