# The average voices, the techniques, the themes and the wordings of other languages become texts within the library: no path is ever looked for.
function(list_texts folder entries)
  file(GLOB files CONFIGURE_DEPENDS ${folder}/*.yaml)
  set_property(DIRECTORY ${PROJECT_SOURCE_DIR} APPEND PROPERTY CMAKE_CONFIGURE_DEPENDS ${files})
  set(list "")
  foreach(file ${files})
    get_filename_component(name ${file} NAME_WE)
    file(READ ${file} content)
    string(APPEND list "    {\"${name}\", R\"yaml(${content})yaml\"},\n")
  endforeach()
  set(${entries} "${list}" PARENT_SCOPE)
endfunction()

if(NOT TARGET vowelway_io)
  return()
endif()
list_texts(${PROJECT_SOURCE_DIR}/profiles profile_entries)
list_texts(${PROJECT_SOURCE_DIR}/profiles/sung sung_entries)
list_texts(${PROJECT_SOURCE_DIR}/profiles/techniques technique_entries)
list_texts(${PROJECT_SOURCE_DIR}/profiles/themes theme_entries)
list_texts(${PROJECT_SOURCE_DIR}/profiles/wordings wording_entries)
file(CONFIGURE OUTPUT ${PROJECT_BINARY_DIR}/generated/built_in_texts.cpp @ONLY CONTENT [[
// Made by cmake/profiles.cmake from the YAML files of profiles, profiles/sung, profiles/techniques, profiles/themes and profiles/wordings.
#include "io/built_in_texts.hpp"

namespace vowelway::io {
namespace {
constexpr BuiltInText voices[] = {
@profile_entries@};
constexpr BuiltInText sung_voices[] = {
@sung_entries@};
constexpr BuiltInText techniques[] = {
@technique_entries@};
constexpr BuiltInText themes[] = {
@theme_entries@};
constexpr BuiltInText wordings[] = {
@wording_entries@};
}
std::span<BuiltInText const> built_in_voice_texts() { return voices; }
std::span<BuiltInText const> built_in_sung_voice_texts() { return sung_voices; }
std::span<BuiltInText const> built_in_technique_texts() { return techniques; }
std::span<BuiltInText const> built_in_theme_texts() { return themes; }
std::span<BuiltInText const> built_in_wording_texts() { return wordings; }
} // namespace vowelway::io
]])
target_sources(vowelway_io PRIVATE ${PROJECT_BINARY_DIR}/generated/built_in_texts.cpp)
