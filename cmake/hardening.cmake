# The files we read come from strangers. What compiler and linker can do against a fault that slips through, for our own
# targets alone: nobody who links the library gets these flags. The sanitizers do more, and do not go with FORTIFY.
# tests/package/run.sh reads the result off the program.
option(VOWELWAY_HARDEN "Stack protector, fortified functions, read-only relocations" OFF)
if(NOT VOWELWAY_HARDEN OR VOWELWAY_SANITIZE OR EMSCRIPTEN)
  return()
endif()
include(CheckPIESupported)
check_pie_supported(LANGUAGES CXX)
target_compile_options(vowelway_flags INTERFACE
  -fstack-protector-strong
  $<$<NOT:$<CONFIG:Debug>>:-U_FORTIFY_SOURCE>    # some compilers set another level
  $<$<NOT:$<CONFIG:Debug>>:-D_FORTIFY_SOURCE=2>) # only optimised code can be checked
target_link_options(vowelway_flags INTERFACE -Wl,-z,relro,-z,now,-z,noexecstack)
