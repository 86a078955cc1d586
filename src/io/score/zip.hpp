// SPDX-License-Identifier: MIT
// libzip's functions, found with the first compressed score: the program starts without it and the
// cryptography behind it. Private to the score folder.
#pragma once

#include <zip.h>

namespace vowelway::io {

/// The functions that are used, by their own names.
struct Zip {
    decltype(&::zip_close) zip_close;
    decltype(&::zip_discard) zip_discard;
    decltype(&::zip_error_fini) zip_error_fini;
    decltype(&::zip_error_init) zip_error_init;
    decltype(&::zip_error_strerror) zip_error_strerror;
    decltype(&::zip_fclose) zip_fclose;
    decltype(&::zip_file_add) zip_file_add;
    decltype(&::zip_file_replace) zip_file_replace;
    decltype(&::zip_file_set_mtime) zip_file_set_mtime;
    decltype(&::zip_fopen) zip_fopen;
    decltype(&::zip_fread) zip_fread;
    decltype(&::zip_name_locate) zip_name_locate;
    decltype(&::zip_open_from_source) zip_open_from_source;
    decltype(&::zip_source_buffer) zip_source_buffer;
    decltype(&::zip_source_buffer_create) zip_source_buffer_create;
    decltype(&::zip_source_close) zip_source_close;
    decltype(&::zip_source_free) zip_source_free;
    decltype(&::zip_source_keep) zip_source_keep;
    decltype(&::zip_source_open) zip_source_open;
    decltype(&::zip_source_read) zip_source_read;
    decltype(&::zip_source_seek) zip_source_seek;
    decltype(&::zip_source_tell) zip_source_tell;
    decltype(&::zip_stat_index) zip_stat_index;
    decltype(&::zip_stat_init) zip_stat_init;
    decltype(&::zip_strerror) zip_strerror;
};

/// Loads the library at the first call. Throws InputError when it is missing.
Zip const& zip();

} // namespace vowelway::io
