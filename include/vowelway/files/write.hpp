// SPDX-License-Identifier: MIT
// Files appear whole or not at all.
#pragma once

#include <filesystem>
#include <string_view>

namespace vowelway::files {

/// Writes the bytes to a temporary file beside `path`, waits until the disk has them, and renames it into
/// place. Whatever stood there stays untouched if anything fails, and no temporary is left.
///
/// - A file that is replaced keeps its mode, and its owner where the system lets us; a new one gets what the
///   umask leaves of 0666. Access lists and extended attributes are not kept.
/// - A symbolic link stays and what it points to is written, also when that does not exist yet.
/// - Refused: folders, devices and pipes, files that may not be written, and files with a second name (hard
///   link), which renaming would part from it.
/// - The temporary is called .vowelway-PID-RANDOM.part and is locked (flock) while its writer lives. When a
///   writer was killed, the next write into the same folder removes it: its process is gone and no one holds
///   its lock.
///
/// Throws InputError with the path and what the system said. Safe from many threads and processes at once;
/// of two writers to one path the later wins as a whole.
void write(std::filesystem::path const& path, std::string_view bytes);

/// The same for a new file. False, and nothing is touched, when there is one already, also when another
/// process makes it in the same moment.
[[nodiscard]] bool create(std::filesystem::path const& path, std::string_view bytes);

} // namespace vowelway::files
