// SPDX-License-Identifier: MIT
#include "io/audio/sndfile.hpp"

#include "core/late_library.hpp"

namespace vowelway::io {

Sndfile const& sndfile() {
    static Sndfile const functions = [] {
        LateLibrary const from(
            "libsndfile.so.1",
            "sound is written with libsndfile: install it (Debian: the package libsndfile1)");
        Sndfile f{};
        from.bind(f.sf_open, "sf_open");
        from.bind(f.sf_open_virtual, "sf_open_virtual");
        from.bind(f.sf_close, "sf_close");
        from.bind(f.sf_readf_float, "sf_readf_float");
        from.bind(f.sf_write_short, "sf_write_short");
        from.bind(f.sf_command, "sf_command");
        from.bind(f.sf_strerror, "sf_strerror");
        return f;
    }();
    return functions;
}

} // namespace vowelway::io
