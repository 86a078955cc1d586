#!/bin/sh
# Builds the layers that promise something to threads, and their test, with ThreadSanitizer, and runs it.
set -eu
cd "$(dirname "$0")/../.."
export CCACHE_SLOPPINESS="pch_defines,time_macros" # or ccache would not look at what includes a precompiled header
cmake --preset tsan >/dev/null
cmake --build --preset tsan
# The libraries beneath (Pango, Cairo, GLib, the synthesiser) are not compiled with the sanitizer, which sees the memory
# they touch but not how they keep order among themselves: what it finds inside them is not asked for.
TSAN_OPTIONS="halt_on_error=1 ignore_noninstrumented_modules=1" build/tsan/tests/threads/threads_test
