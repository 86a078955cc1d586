// SPDX-License-Identifier: MIT
// libsndfile's functions, found with the first sound: the program starts without its codecs. Private to the
// audio folder.
#pragma once

#include <sndfile.h>

namespace vowelway::io {

/// The functions that are used, by their own names.
struct Sndfile {
    decltype(&::sf_open) sf_open;
    decltype(&::sf_open_virtual) sf_open_virtual;
    decltype(&::sf_close) sf_close;
    decltype(&::sf_readf_float) sf_readf_float;
    decltype(&::sf_write_short) sf_write_short;
    decltype(&::sf_command) sf_command;
    decltype(&::sf_strerror) sf_strerror;
};

/// Loads the library at the first call. Throws InputError when it is missing.
Sndfile const& sndfile();

} // namespace vowelway::io
