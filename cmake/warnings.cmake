# One target carries the flags; each has its reason.
add_library(vowelway_flags INTERFACE)
target_compile_options(vowelway_flags INTERFACE
  -Wall -Wextra -Wpedantic
  $<$<NOT:$<BOOL:${VOWELWAY_TOGETHER}>>:-Wshadow> # a shadowed name has fooled us into reading the wrong variable
  -Wconversion        # a silent narrowing is a wrong number on paper
  -Wno-sign-conversion  # containers count in size_t, music in int: the casts would hide the code
  $<$<CXX_COMPILER_ID:GNU>:-Wno-restrict>  # GCC 12 reports std::string concatenation falsely (GCC bug 105651)
  -Wnon-virtual-dtor -Woverloaded-virtual
  $<$<CXX_COMPILER_ID:GNU>:-Wduplicated-cond>
  $<$<CXX_COMPILER_ID:GNU>:-Wlogical-op>
  $<$<CONFIG:Debug>:-Og>)
if(VOWELWAY_SANITIZE STREQUAL "thread")
  target_compile_options(vowelway_flags INTERFACE -fsanitize=thread -fno-omit-frame-pointer)
  target_link_options(vowelway_flags INTERFACE -fsanitize=thread)
elseif(VOWELWAY_SANITIZE STREQUAL "fuzzer") # of clang: tests/fuzz
  set(fuzzed -fsanitize=fuzzer-no-link,address,undefined,float-cast-overflow)
  target_compile_options(vowelway_flags INTERFACE ${fuzzed} -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_link_options(vowelway_flags INTERFACE -fsanitize=address,undefined)
elseif(VOWELWAY_SANITIZE)
  target_compile_options(vowelway_flags INTERFACE
    -fsanitize=address,undefined -fno-sanitize-recover=all -fno-omit-frame-pointer)
  target_link_options(vowelway_flags INTERFACE -fsanitize=address,undefined)
endif()
