# Every foreign package a layer may link: where it is found and which headers are its own. The versions are the oldest
# we test, those of Debian 12. Read by the build, by the check of includes and by find_package(vowelway).

# vowelway_package(TARGET (PACKAGE name [version] | PKGCONFIG modules ..) HEADERS patterns ..): HEADERS are the
# beginnings of the names by which its headers are included.
function(vowelway_package target)
  cmake_parse_arguments(p "" "" "PACKAGE;PKGCONFIG;HEADERS" ${ARGN})
  foreach(part PACKAGE PKGCONFIG HEADERS)
    set_property(GLOBAL PROPERTY "VOWELWAY_${part}_OF_${target}" ${p_${part}})
  endforeach()
  set_property(GLOBAL APPEND PROPERTY VOWELWAY_PACKAGES ${target})
endfunction()

vowelway_package(Boost::headers               PACKAGE Boost 1.74         HEADERS boost/)
vowelway_package(Eigen3::Eigen                PACKAGE Eigen3 3.4         HEADERS Eigen/ unsupported/Eigen/)
vowelway_package(CLI11::CLI11                 PACKAGE CLI11 2.1          HEADERS CLI/)
vowelway_package(yaml-cpp                     PACKAGE yaml-cpp 0.7       HEADERS yaml-cpp/)
vowelway_package(pugixml::pugixml             PACKAGE pugixml 1.12       HEADERS pugixml.hpp pugiconfig.hpp)
vowelway_package(fmt::fmt                     PACKAGE fmt 9              HEADERS fmt/)
vowelway_package(nlohmann_json::nlohmann_json PACKAGE nlohmann_json 3.11 HEADERS nlohmann/)
vowelway_package(PkgConfig::vowelway_libzip   PKGCONFIG libzip>=1.7      HEADERS zip.h)
vowelway_package(PkgConfig::vowelway_espeak   PKGCONFIG espeak-ng        HEADERS espeak-ng/)
vowelway_package(PkgConfig::vowelway_ffmpeg   PKGCONFIG libavformat libavcodec libavutil libswresample
                                              HEADERS libav libsw)
vowelway_package(PkgConfig::vowelway_cairo    PKGCONFIG cairo>=1.16 cairo-pdf cairo-png pangocairo>=1.50 pangoft2 fontconfig
                                              HEADERS cairo pango/ fontconfig/ ft2build.h freetype/ glib)
vowelway_package(doctest::doctest             PACKAGE doctest 2.4        HEADERS doctest/)

# vowelway_find(TARGET MISSING): makes the target; MISSING is what was not found, in words, or empty.
function(vowelway_find target missing)
  set(${missing} "" PARENT_SCOPE)
  if(TARGET ${target})
    return()
  endif()
  get_property(package GLOBAL PROPERTY "VOWELWAY_PACKAGE_OF_${target}")
  get_property(modules GLOBAL PROPERTY "VOWELWAY_PKGCONFIG_OF_${target}")
  if(package)
    find_package(${package} QUIET)
    string(REPLACE ";" " " said "${package}")
  else()
    find_package(PkgConfig QUIET)
    string(REPLACE "PkgConfig::" "" prefix ${target})
    if(PkgConfig_FOUND)
      pkg_check_modules(${prefix} QUIET IMPORTED_TARGET ${modules})
    endif()
    string(REPLACE ";" ", " said "${modules}")
    string(APPEND said " (of pkg-config)")
  endif()
  if(NOT TARGET ${target})
    set(${missing} "${said}" PARENT_SCOPE)
  endif()
endfunction()
