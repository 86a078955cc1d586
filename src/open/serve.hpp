// SPDX-License-Identifier: MIT
// The page's folder, served to this machine alone.
#pragma once

#include <httplib.h>

#include <filesystem>

namespace vowelway::open {

/// Makes `server` answer for the folder, and listen at 127.0.0.1; `port` 0 takes any free one. Answers the
/// port, or 0 when it is taken.
///
/// Only requests that name this very host are answered (421 otherwise): a page from elsewhere whose name was
/// turned to 127.0.0.1 names its own. Only GET and HEAD; only files of the folder.
int prepare(httplib::Server& server, std::filesystem::path const& folder, int port);

} // namespace vowelway::open
