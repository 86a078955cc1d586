// SPDX-License-Identifier: MIT
#include "io/audio/audio_store.hpp"
#include "vowelway/files/pieces.hpp"
#include "vowelway/io/audio/write_audio.hpp"

namespace vowelway::io {

namespace {

class OnDisk : public Store {
  public:
    explicit OnDisk(files::Pieces& file) : file_(file) {}
    void write_at(std::uint64_t offset, std::string_view bytes) override { file_.write_at(offset, bytes); }
    std::size_t read_at(std::uint64_t offset, std::span<char> bytes) const override {
        return file_.read_at(offset, bytes);
    }
    std::uint64_t size() const override { return file_.size(); }

  private:
    files::Pieces& file_;
};

} // namespace

void write_audio(std::filesystem::path const& destination, AudioForm form, Frequency rate,
                 AudioMaker const& make) {
    files::Pieces file(destination);
    OnDisk store(file);
    encode(store, form, rate, make);
    file.keep();
}

} // namespace vowelway::io
