// SPDX-License-Identifier: MIT
#include "cli/today.hpp"

#include <fmt/format.h>

#include <ctime>

namespace vowelway::cli {

std::string today() {
    std::time_t const now = std::time(nullptr);
    std::tm parts{};
    localtime_r(&now, &parts);
    return fmt::format("{:04}-{:02}-{:02}", parts.tm_year + 1900, parts.tm_mon + 1, parts.tm_mday);
}

} // namespace vowelway::cli
