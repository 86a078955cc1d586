# Manual pages and completions: written by the program itself, from the tables that --help reads.
set(manual ${PROJECT_BINARY_DIR}/manual)
add_custom_command(OUTPUT ${manual}/vowelway.1 COMMAND vowelway --write-manual ${manual} DEPENDS vowelway
  COMMENT "Writing the manual pages and completions")
add_custom_target(vowelway_manual ALL DEPENDS ${manual}/vowelway.1)
install(DIRECTORY ${manual}/ DESTINATION ${CMAKE_INSTALL_MANDIR}/man1 FILES_MATCHING PATTERN "*.1")
install(FILES ${manual}/vowelway.bash DESTINATION ${CMAKE_INSTALL_DATADIR}/bash-completion/completions RENAME vowelway)
install(FILES ${manual}/_vowelway DESTINATION ${CMAKE_INSTALL_DATADIR}/zsh/vendor-completions)
install(FILES ${manual}/vowelway.fish DESTINATION ${CMAKE_INSTALL_DATADIR}/fish/vendor_completions.d)
