# What a stranger gets: the program, the headers, find_package(vowelway), the profiles, the docs.
include(CMakePackageConfigHelpers)

set(layers core files acoustics plan analysis io diction report chart)
list(TRANSFORM layers PREPEND vowelway_ OUTPUT_VARIABLE layer_targets)
install(TARGETS vowelway RUNTIME DESTINATION ${CMAKE_INSTALL_BINDIR})
install(TARGETS ${layer_targets} EXPORT vowelway_targets ARCHIVE DESTINATION ${CMAKE_INSTALL_LIBDIR})
install(DIRECTORY include/vowelway DESTINATION ${CMAKE_INSTALL_INCLUDEDIR})
install(EXPORT vowelway_targets NAMESPACE vowelway:: FILE vowelway_targets.cmake
        DESTINATION ${CMAKE_INSTALL_LIBDIR}/cmake/vowelway)
configure_package_config_file(cmake/vowelway-config.cmake.in ${PROJECT_BINARY_DIR}/vowelway-config.cmake
        INSTALL_DESTINATION ${CMAKE_INSTALL_LIBDIR}/cmake/vowelway)
write_basic_package_version_file(${PROJECT_BINARY_DIR}/vowelway-config-version.cmake COMPATIBILITY SameMinorVersion)
install(FILES ${PROJECT_BINARY_DIR}/vowelway-config.cmake ${PROJECT_BINARY_DIR}/vowelway-config-version.cmake
        DESTINATION ${CMAKE_INSTALL_LIBDIR}/cmake/vowelway)
install(DIRECTORY profiles/ DESTINATION ${CMAKE_INSTALL_DATADIR}/vowelway/profiles FILES_MATCHING PATTERN "*.yaml" PATTERN "README.md")
install(DIRECTORY docs/ DESTINATION ${CMAKE_INSTALL_DOCDIR})
install(FILES README.md LICENSE DESTINATION ${CMAKE_INSTALL_DOCDIR})
