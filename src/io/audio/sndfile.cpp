// SPDX-License-Identifier: MIT
#include "io/audio/sndfile.hpp"

#include "core/late_library.hpp"

namespace vowelway::io {

Sndfile const& sndfile() {
    static Sndfile const functions = [] {
        LateLibrary const from("libsndfile.so.1", LateLibrary::from_package("libsndfile1"));
        Sndfile f{};
        VOWELWAY_BIND(sf_open);
        VOWELWAY_BIND(sf_open_virtual);
        VOWELWAY_BIND(sf_close);
        VOWELWAY_BIND(sf_readf_float);
        VOWELWAY_BIND(sf_write_short);
        VOWELWAY_BIND(sf_command);
        VOWELWAY_BIND(sf_strerror);
        return f;
    }();
    return functions;
}

} // namespace vowelway::io
