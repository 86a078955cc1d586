// SPDX-License-Identifier: MIT
// A folder of its own for a test case, gone with it.
#pragma once

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <stdexcept>
#include <string>
#include <string_view>

namespace vowelway::test {

class ScratchFolder {
  public:
    ScratchFolder() {
        auto pattern = (std::filesystem::temp_directory_path() / "vowelway-test-XXXXXX").string();
        if (!mkdtemp(pattern.data())) throw std::runtime_error("no folder for tests");
        path_ = pattern;
    }
    ~ScratchFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }
    ScratchFolder(ScratchFolder const&) = delete;
    ScratchFolder& operator=(ScratchFolder const&) = delete;

    std::filesystem::path const& path() const { return path_; }
    std::filesystem::path operator/(std::string_view name) const { return path_ / name; }
    /// A file in it with these bytes.
    std::filesystem::path put(std::string_view name, std::string_view bytes) const {
        std::ofstream(path_ / name, std::ios::binary) << bytes;
        return path_ / name;
    }
    /// How many entries it has, hidden ones too.
    std::ptrdiff_t entries() const {
        return std::distance(std::filesystem::directory_iterator(path_),
                             std::filesystem::directory_iterator{});
    }

  private:
    std::filesystem::path path_;
};

/// The bytes of a file, read without the layer under test.
inline std::string bytes_of(std::filesystem::path const& file) {
    std::ifstream in(file, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

} // namespace vowelway::test
