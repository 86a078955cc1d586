# What a stranger gets: the program, the headers, the profiles, the docs, and find_package(vowelway COMPONENTS ..), where a
# component is a layer.
include(CMakePackageConfigHelpers)
set(config_folder ${CMAKE_INSTALL_LIBDIR}/cmake/vowelway)

set(components "")
set(VOWELWAY_COMPONENT_NEEDS "")
foreach(name ${VOWELWAY_BUILT})
  get_property(program GLOBAL PROPERTY VOWELWAY_PROGRAM_OF_${name})
  if(program)
    install(TARGETS ${program} RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
    continue()
  endif()
  list(APPEND components ${name})
  get_property(arrows GLOBAL PROPERTY VOWELWAY_ARROWS_OF_${name})
  get_property(packages GLOBAL PROPERTY VOWELWAY_PACKAGES_OF_${name})
  string(APPEND VOWELWAY_COMPONENT_NEEDS
    "set(vowelway_arrows_of_${name} \"${arrows}\")\nset(vowelway_packages_of_${name} \"${packages}\")\n")
  install(TARGETS vowelway_${name} EXPORT vowelway_${name} ARCHIVE DESTINATION ${CMAKE_INSTALL_LIBDIR})
  install(EXPORT vowelway_${name} NAMESPACE vowelway:: FILE vowelway_${name}.cmake DESTINATION ${config_folder})
  if(EXISTS ${PROJECT_SOURCE_DIR}/include/vowelway/${name}) # yaml has no public headers
    install(DIRECTORY include/vowelway/${name} DESTINATION ${CMAKE_INSTALL_INCLUDEDIR}/vowelway)
  endif()
endforeach()
set(VOWELWAY_COMPONENTS "${components}")

configure_package_config_file(cmake/vowelway-config.cmake.in ${PROJECT_BINARY_DIR}/vowelway-config.cmake
        INSTALL_DESTINATION ${config_folder} NO_CHECK_REQUIRED_COMPONENTS_MACRO NO_SET_AND_CHECK_MACRO)
write_basic_package_version_file(${PROJECT_BINARY_DIR}/vowelway-config-version.cmake COMPATIBILITY SameMinorVersion)
install(FILES ${PROJECT_BINARY_DIR}/vowelway-config.cmake ${PROJECT_BINARY_DIR}/vowelway-config-version.cmake
        cmake/third_party.cmake DESTINATION ${config_folder})
install(DIRECTORY profiles/ DESTINATION ${CMAKE_INSTALL_DATADIR}/vowelway/profiles FILES_MATCHING PATTERN "*.yaml" PATTERN "README.md")
install(DIRECTORY build/page/out/ DESTINATION ${CMAKE_INSTALL_DATADIR}/vowelway/page OPTIONAL) # where src/page/make.sh has built it
install(DIRECTORY docs/ DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES README.md LICENSE SECURITY.md DESTINATION ${CMAKE_INSTALL_DOCDIR})
