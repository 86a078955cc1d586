# Everything comes from the system's packages; nothing is fetched. The versions
# are the oldest we test: those of Debian 12.
find_package(Boost 1.74 REQUIRED)             # Boost.Units: headers only
find_package(Eigen3 3.4 REQUIRED NO_MODULE)
find_package(CLI11 2.1 REQUIRED)
find_package(yaml-cpp 0.7 REQUIRED)
find_package(pugixml 1.12 REQUIRED)
find_package(fmt 9 REQUIRED)
find_package(nlohmann_json 3.11 REQUIRED)
find_package(PkgConfig REQUIRED)
pkg_check_modules(cairo  REQUIRED IMPORTED_TARGET cairo>=1.16 cairo-pdf cairo-png pangocairo>=1.50 pangoft2 fontconfig)
pkg_check_modules(libzip REQUIRED IMPORTED_TARGET libzip>=1.7)
pkg_check_modules(espeak REQUIRED IMPORTED_TARGET espeak-ng)
pkg_check_modules(ffmpeg REQUIRED IMPORTED_TARGET libavformat libavcodec libavutil libswresample)
if(VOWELWAY_TESTS)
  find_package(doctest 2.4 REQUIRED)
endif()

# A compiler cache is used where there is one: a clean build then costs seconds.
find_program(CCACHE_PROGRAM ccache)
if(CCACHE_PROGRAM AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  set(CMAKE_CXX_COMPILER_LAUNCHER ${CCACHE_PROGRAM})
endif()
