// SPDX-License-Identifier: MIT
#include "vowelway/survey/run.hpp"

#include <boost/crc.hpp>

#include <cstdint>
#include <cstdio>

namespace vowelway::survey {

std::string hash_of(std::string_view bytes) {
    boost::crc_optimal<64, 0x42F0E1EBA9EA3693u, 0, 0, false, false> crc; // ECMA-182
    crc.process_bytes(bytes.data(), bytes.size());
    char out[40];
    std::snprintf(out, sizeof out, "%016llx-%zx", static_cast<unsigned long long>(crc.checksum()),
                  bytes.size());
    return out;
}

} // namespace vowelway::survey
