include(doctest)
# A name that CTest cuts short (a semicolon does) finds no case: that is no success.
set(VOWELWAY_CASE_RAN FAIL_REGULAR_EXPRESSION "test cases:  *0 ")

# vowelway_layer_tests(NAME): one test program from tests/unit/NAME/*_test.cpp; every
# doctest case becomes a CTest test of its own.
function(vowelway_layer_tests name)
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/tests/unit/${name}/*_test.cpp)
  if(NOT sources)
    return()
  endif()
  add_executable(${name}_test ${sources} ${PROJECT_SOURCE_DIR}/tests/support/doctest_main.cpp)
  target_include_directories(${name}_test PRIVATE ${PROJECT_SOURCE_DIR}/tests ${PROJECT_SOURCE_DIR}/src)
  set_source_files_properties(${PROJECT_SOURCE_DIR}/tests/support/doctest_main.cpp PROPERTIES
    SKIP_PRECOMPILE_HEADERS ON SKIP_UNITY_BUILD_INCLUSION ON COMPILE_DEFINITIONS VOWELWAY_SOURCE_DIR="${PROJECT_SOURCE_DIR}")
  target_link_libraries(${name}_test PRIVATE vowelway::${name} doctest::doctest vowelway_flags)
  get_property(packages GLOBAL PROPERTY VOWELWAY_HEADERS_OF_${name}) # of which the layer's private headers speak
  foreach(package ${packages})
    target_include_directories(${name}_test SYSTEM PRIVATE $<TARGET_PROPERTY:${package},INTERFACE_INCLUDE_DIRECTORIES>)
  endforeach()
  if(NOT name MATCHES "^(acoustics|io)$") # their tests have helpers of one name
    vowelway_together(${name}_test)
  endif()
  vowelway_precompile(${name}_test <doctest/doctest.h>)
  doctest_discover_tests(${name}_test TEST_PREFIX "${name}: " PROPERTIES ${VOWELWAY_CASE_RAN})
endfunction()
