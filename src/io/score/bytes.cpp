// SPDX-License-Identifier: MIT
#include "io/score/bytes.hpp"

#include "vowelway/core/error.hpp"

#include <fstream>
#include <system_error>

namespace vowelway::io {

std::string mebibytes(std::uintmax_t bytes) { return std::to_string(bytes >> 20) + " MiB"; }

std::string read_bytes(std::filesystem::path const& file, std::uintmax_t bound) {
    Place const place{file.string(), 0, 0, {}};
    std::error_code error;
    auto const status = std::filesystem::status(file, error);
    if (status.type() == std::filesystem::file_type::not_found)
        throw InputError("there is no such file", "check the name and the folder", place);
    if (status.type() == std::filesystem::file_type::directory)
        throw InputError("this is a folder, not a file", "name a file in it", place);
    if (status.type() != std::filesystem::file_type::regular)
        throw InputError("this is not a regular file", "copy it to a file on the disk first", place);
    auto const size = std::filesystem::file_size(file, error);
    if (!error && size > bound)
        throw InputError("the file is larger than " + mebibytes(bound),
                         "is it the right file? Longer ones are not read", place);
    std::ifstream in(file, std::ios::binary);
    if (!in) throw InputError("the file cannot be opened", "check that you may read it", place);
    std::string bytes(error ? 0 : static_cast<std::size_t>(size), '\0');
    in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(in.gcount()));
    if (bytes.empty()) throw InputError("the file is empty", "export or save it again", place);
    return bytes;
}

} // namespace vowelway::io
