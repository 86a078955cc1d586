# What the program is made of: one table, from which come `vowelway --version` and the SPDX bill of materials.
#   vowelway_material(NAME TARGET LICENCE USE)
set_property(GLOBAL PROPERTY vowelway_materials "")
function(vowelway_material name target licence use)
  get_property(version GLOBAL PROPERTY "VOWELWAY_VERSION_OF_${target}")
  if(NOT version)
    set(version "unknown")
  endif()
  set_property(GLOBAL APPEND PROPERTY vowelway_materials "${name}|${version}|${licence}|${use}")
endfunction()

# Versions as found; licences as in Debian's copyright files of these packages.
vowelway_material(boost Boost::headers BSL-1.0 "units")
vowelway_material(eigen Eigen3::Eigen MPL-2.0 "linear algebra")
vowelway_material(yaml-cpp yaml-cpp MIT "profiles, techniques, themes, word lists")
vowelway_material(pugixml pugixml::pugixml MIT "MusicXML")
vowelway_material(libzip PkgConfig::vowelway_libzip BSD-3-Clause "compressed MusicXML")
vowelway_material(sqlite PkgConfig::vowelway_sqlite blessing "surveys")
vowelway_material(fmt fmt::fmt MIT "text")
vowelway_material(nlohmann-json nlohmann_json::nlohmann_json MIT "JSON")
vowelway_material(CLI11 CLI11::CLI11 BSD-3-Clause "command line")
vowelway_material(cairo PkgConfig::vowelway_cairo "LGPL-2.1-only OR MPL-1.1" "PDF and PNG, with pango (LGPL-2.0-or-later) and fontconfig (HPND-sell-variant)")
vowelway_material(espeak-ng PkgConfig::vowelway_espeak GPL-3.0-or-later "sounds of words where rules have none")
vowelway_material(ffmpeg PkgConfig::vowelway_ffmpeg GPL-2.0-or-later "reading recordings")
vowelway_material(libsndfile PkgConfig::vowelway_sndfile LGPL-2.1-or-later "reading plain recordings, writing sound")
if(TARGET PkgConfig::vowelway_httplib)
  vowelway_material(cpp-httplib PkgConfig::vowelway_httplib MIT "serving the page (vowelway-open)")
endif()

get_property(materials GLOBAL PROPERTY vowelway_materials)
set(lines "")
set(packages "")
set(relations "")
foreach(material ${materials})
  string(REPLACE "|" ";" fields "${material}")
  list(GET fields 0 name)
  list(GET fields 1 version)
  list(GET fields 2 licence)
  list(GET fields 3 use)
  string(APPEND lines "    {\"${name}\", \"${version}\", \"${licence}\", \"${use}\"},\n")
  string(APPEND packages ",
    {\"SPDXID\": \"SPDXRef-${name}\", \"name\": \"${name}\", \"versionInfo\": \"${version}\", \"licenseConcluded\": \"${licence}\",
     \"licenseDeclared\": \"${licence}\", \"copyrightText\": \"NOASSERTION\", \"downloadLocation\": \"NOASSERTION\", \"filesAnalyzed\": false}")
  string(APPEND relations ",
    {\"spdxElementId\": \"SPDXRef-vowelway\", \"relationshipType\": \"DEPENDS_ON\", \"relatedSpdxElement\": \"SPDXRef-${name}\"}")
endforeach()
string(TIMESTAMP created "%Y-%m-%dT%H:%M:%SZ" UTC) # SOURCE_DATE_EPOCH makes it repeatable
file(CONFIGURE OUTPUT ${PROJECT_BINARY_DIR}/generated/built_with.cpp @ONLY CONTENT [[
// Made by cmake/bill_of_materials.cmake.
#include "cli/built_with.hpp"

namespace vowelway::cli {
namespace {
constexpr Material materials[] = {
@lines@};
}
std::span<Material const> built_with() { return materials; }
} // namespace vowelway::cli
]])
file(CONFIGURE OUTPUT ${PROJECT_BINARY_DIR}/vowelway.spdx.json @ONLY CONTENT [[
{ "spdxVersion": "SPDX-2.3", "dataLicense": "CC0-1.0", "SPDXID": "SPDXRef-DOCUMENT", "name": "vowelway-@PROJECT_VERSION@",
  "documentNamespace": "urn:vowelway:spdx:@PROJECT_VERSION@",
  "creationInfo": {"created": "@created@", "creators": ["Tool: vowelway-cmake"]},
  "packages": [
    {"SPDXID": "SPDXRef-vowelway", "name": "vowelway", "versionInfo": "@PROJECT_VERSION@", "licenseConcluded": "MIT",
     "licenseDeclared": "MIT", "copyrightText": "NOASSERTION", "downloadLocation": "NOASSERTION", "filesAnalyzed": false}@packages@
  ],
  "relationships": [
    {"spdxElementId": "SPDXRef-DOCUMENT", "relationshipType": "DESCRIBES", "relatedSpdxElement": "SPDXRef-vowelway"}@relations@
  ] }
]])
install(FILES ${PROJECT_BINARY_DIR}/vowelway.spdx.json DESTINATION ${CMAKE_INSTALL_DOCDIR})
target_sources(vowelway PRIVATE ${PROJECT_BINARY_DIR}/generated/built_with.cpp)
