// SPDX-License-Identifier: MIT
#include "io/score/zip.hpp"

#include "core/late_library.hpp"

namespace vowelway::io {

Zip const& zip() {
    static Zip const functions = [] {
        LateLibrary const from("libzip.so.4", LateLibrary::from_package("libzip4"));
        Zip f{};
        VOWELWAY_BIND(zip_close);
        VOWELWAY_BIND(zip_discard);
        VOWELWAY_BIND(zip_error_fini);
        VOWELWAY_BIND(zip_error_init);
        VOWELWAY_BIND(zip_error_strerror);
        VOWELWAY_BIND(zip_fclose);
        VOWELWAY_BIND(zip_file_add);
        VOWELWAY_BIND(zip_file_replace);
        VOWELWAY_BIND(zip_file_set_mtime);
        VOWELWAY_BIND(zip_fopen);
        VOWELWAY_BIND(zip_fread);
        VOWELWAY_BIND(zip_name_locate);
        VOWELWAY_BIND(zip_open_from_source);
        VOWELWAY_BIND(zip_source_buffer);
        VOWELWAY_BIND(zip_source_buffer_create);
        VOWELWAY_BIND(zip_source_close);
        VOWELWAY_BIND(zip_source_free);
        VOWELWAY_BIND(zip_source_keep);
        VOWELWAY_BIND(zip_source_open);
        VOWELWAY_BIND(zip_source_read);
        VOWELWAY_BIND(zip_source_seek);
        VOWELWAY_BIND(zip_source_tell);
        VOWELWAY_BIND(zip_stat_index);
        VOWELWAY_BIND(zip_stat_init);
        VOWELWAY_BIND(zip_strerror);
        return f;
    }();
    return functions;
}

} // namespace vowelway::io
