# Emscripten instead of the system's compiler: the layers that a page has, without files, audio, archives,
# synthesiser and screen. cmake/wasm_sources.sh has fetched the foreign sources. `cmake --preset wasm`.
set(VOWELWAY_WASM_SOURCES ${PROJECT_SOURCE_DIR}/build/wasm-sources CACHE PATH "What cmake/wasm_sources.sh made")
if(NOT EXISTS ${VOWELWAY_WASM_SOURCES}/headers/boost)
  message(FATAL_ERROR "no foreign sources in ${VOWELWAY_WASM_SOURCES}: run sh cmake/wasm_sources.sh ${VOWELWAY_WASM_SOURCES}")
endif()
add_compile_options(-fwasm-exceptions) # InputError is thrown and caught; JavaScript's exceptions cost 7 times the time
add_link_options(-fwasm-exceptions)

function(vowelway_headers_only name)
  add_library(${name} INTERFACE IMPORTED GLOBAL)
  target_include_directories(${name} SYSTEM INTERFACE ${VOWELWAY_WASM_SOURCES}/headers)
endfunction()
vowelway_headers_only(Boost::headers)
vowelway_headers_only(Eigen3::Eigen)
vowelway_headers_only(nlohmann_json::nlohmann_json)
vowelway_headers_only(fmt::fmt)
target_compile_definitions(fmt::fmt INTERFACE FMT_HEADER_ONLY)

file(GLOB yaml_cpp_sources ${VOWELWAY_WASM_SOURCES}/yaml-cpp/src/*.cpp)
list(FILTER yaml_cpp_sources EXCLUDE REGEX "/(emit|node|convert|graph|memory|ostream|binary|parse\\.cpp)") # reading alone
add_library(yaml-cpp STATIC ${yaml_cpp_sources})
target_include_directories(yaml-cpp SYSTEM PUBLIC ${VOWELWAY_WASM_SOURCES}/yaml-cpp/include)
target_compile_definitions(yaml-cpp PUBLIC YAML_CPP_STATIC_DEFINE)
add_library(pugixml STATIC ${VOWELWAY_WASM_SOURCES}/pugixml/src/pugixml.cpp)
target_include_directories(pugixml SYSTEM PUBLIC ${VOWELWAY_WASM_SOURCES}/pugixml/src)
add_library(pugixml::pugixml ALIAS pugixml)

# What a page does not have; src/page answers in place of it.
foreach(name libzip ffmpeg sndfile espeak cairo)
  add_library(PkgConfig::vowelway_${name} INTERFACE IMPORTED GLOBAL)
endforeach()
set(VOWELWAY_LEFT_OUT "src/io/audio/(read_audio|read_with_ffmpeg|plain_wave|converter|sndfile|write_audio|ffmpeg|mono_mixer)|src/io/score/(archive|zip)|src/chart/cairo/|diction/synthesis/synthesiser|_file\\.cpp$")

# The headers that nearly every source reads are read once: half the time of the build.
add_library(vowelway_vocabulary STATIC ${PROJECT_SOURCE_DIR}/src/page/vocabulary.cpp)
target_include_directories(vowelway_vocabulary PUBLIC ${PROJECT_SOURCE_DIR}/include ${PROJECT_SOURCE_DIR}/src)
target_link_libraries(vowelway_vocabulary PRIVATE Boost::headers vowelway_flags)
target_precompile_headers(vowelway_vocabulary PRIVATE ${PROJECT_SOURCE_DIR}/src/page/vocabulary.hpp)
