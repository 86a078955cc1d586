# vowelway_layer(NAME PUBLIC .. PRIVATE ..): the library of the folder src/NAME, with
# its public headers in include/vowelway/NAME.
function(vowelway_layer name)
  cmake_parse_arguments(layer "" "" "PUBLIC;PRIVATE" ${ARGN})
  file(GLOB_RECURSE sources CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/src/${name}/*.cpp)
  add_library(vowelway_${name} STATIC ${sources})
  add_library(vowelway::${name} ALIAS vowelway_${name})
  set_target_properties(vowelway_${name} PROPERTIES LINKER_LANGUAGE CXX EXPORT_NAME ${name})
  target_include_directories(vowelway_${name}
    PUBLIC $<BUILD_INTERFACE:${PROJECT_SOURCE_DIR}/include> $<INSTALL_INTERFACE:${CMAKE_INSTALL_INCLUDEDIR}>
    PRIVATE ${PROJECT_SOURCE_DIR}/src)
  target_compile_features(vowelway_${name} PUBLIC cxx_std_20)
  target_link_libraries(vowelway_${name} PUBLIC ${layer_PUBLIC}
    PRIVATE ${layer_PRIVATE} $<BUILD_INTERFACE:vowelway_flags>)
endfunction()
