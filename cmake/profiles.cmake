# The average voices of profiles/*.yaml become texts within the library: no path is ever looked for.
file(GLOB profile_files CONFIGURE_DEPENDS ${PROJECT_SOURCE_DIR}/profiles/*.yaml)
set_property(DIRECTORY ${PROJECT_SOURCE_DIR} APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${profile_files})
set(profile_entries "")
foreach(file ${profile_files})
  get_filename_component(name ${file} NAME_WE)
  file(READ ${file} content)
  string(APPEND profile_entries "    {\"${name}\", R\"yaml(${content})yaml\"},\n")
endforeach()
file(CONFIGURE OUTPUT ${PROJECT_BINARY_DIR}/generated/built_in_texts.cpp @ONLY CONTENT [[
// Made by cmake/profiles.cmake from profiles/*.yaml.
#include "io/profile/built_in_texts.hpp"

namespace vowelway::profile {
namespace {
constexpr BuiltInText texts[] = {
@profile_entries@};
}
std::span<BuiltInText const> built_in_texts() { return texts; }
} // namespace vowelway::profile
]])
target_sources(vowelway_io PRIVATE ${PROJECT_BINARY_DIR}/generated/built_in_texts.cpp)
