# cpack -G DEB and cpack -G TGZ: what cmake --install puts in place, as a package.
set(CPACK_PACKAGE_NAME vowelway)
set(CPACK_PACKAGE_VENDOR vowelway)
set(CPACK_PACKAGE_CONTACT "the maintainers of vowelway <maintainers@vowelway.invalid>")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY "vowel plans for singers: what each note does to each vowel")
set(CPACK_PACKAGE_DESCRIPTION
"A singer's resonances, measured or typed, and a song with words go in; note by note, where the vowel may be left
 to migrate and where it needs modification comes out, as charts, a marked score, tables and JSON.")
set(CPACK_RESOURCE_FILE_LICENSE ${PROJECT_SOURCE_DIR}/LICENSE)
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_STRIP_FILES ON)
set(CPACK_VERBATIM_VARIABLES ON)
set(CPACK_DEBIAN_FILE_NAME DEB-DEFAULT)
set(CPACK_DEBIAN_PACKAGE_SECTION sound)
set(CPACK_DEBIAN_PACKAGE_SHLIBDEPS ON) # which libraries: read off the program itself
# What no link line tells: libraries loaded at first use, the data of the synthesiser, the faces of the charts.
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libespeak-ng1, libavformat59, libavcodec59, libavutil57, libswresample4, libsndfile1, libzip4, libsqlite3-0, espeak-ng-data, fonts-sil-charis, fonts-noto-core, fontconfig")
include(CPack)
