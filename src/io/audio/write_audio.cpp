// SPDX-License-Identifier: MIT
#include "vowelway/io/audio/write_audio.hpp"

#include "io/audio/audio_store.hpp"
#include "io/audio/sndfile.hpp"
#include "vowelway/core/error.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <cstring>
#include <exception>
#include <stdexcept>
#include <vector>

namespace vowelway::io {
namespace {

class InMemory : public Store {
  public:
    void write_at(std::uint64_t offset, std::string_view bytes) override {
        if (bytes_.size() < offset + bytes.size()) bytes_.resize(offset + bytes.size());
        std::copy(bytes.begin(), bytes.end(), bytes_.begin() + static_cast<std::ptrdiff_t>(offset));
    }
    std::size_t read_at(std::uint64_t offset, std::span<char> bytes) const override {
        if (offset >= bytes_.size()) return 0;
        return bytes_.copy(bytes.data(), bytes.size(), offset);
    }
    std::uint64_t size() const override { return bytes_.size(); }
    std::string take() { return std::move(bytes_); }

  private:
    std::string bytes_;
};

// What libsndfile calls back. No exception may pass through it: the first one waits until it has returned.
struct Stream {
    Store& store;
    sf_count_t at = 0;
    std::exception_ptr error = nullptr;

    template <class Work> sf_count_t guarded(Work&& work) {
        if (error) return 0;
        try {
            return work();
        } catch (...) {
            error = std::current_exception();
            return 0;
        }
    }
    static Stream& of(void* user) { return *static_cast<Stream*>(user); }
};

sf_count_t length(void* user) { return static_cast<sf_count_t>(Stream::of(user).store.size()); }
sf_count_t seek(sf_count_t offset, int whence, void* user) {
    auto& s = Stream::of(user);
    return s.at = offset + (whence == SEEK_CUR ? s.at : whence == SEEK_END ? length(user) : 0);
}
sf_count_t tell(void* user) { return Stream::of(user).at; }
sf_count_t read(void* bytes, sf_count_t count, void* user) {
    auto& s = Stream::of(user);
    return s.guarded([&] {
        auto const got = static_cast<sf_count_t>(s.store.read_at(
            static_cast<std::uint64_t>(s.at), {static_cast<char*>(bytes), static_cast<std::size_t>(count)}));
        s.at += got;
        return got;
    });
}
sf_count_t write(void const* bytes, sf_count_t count, void* user) {
    auto& s = Stream::of(user);
    return s.guarded([&] {
        s.store.write_at(static_cast<std::uint64_t>(s.at),
                         {static_cast<char const*>(bytes), static_cast<std::size_t>(count)});
        s.at += count;
        return count;
    });
}

} // namespace

void encode(Store& store, AudioForm form, Frequency rate, AudioMaker const& make) {
    auto const& lib = sndfile();
    SF_VIRTUAL_IO calls{length, seek, read, write, tell};
    SF_INFO info{};
    info.samplerate = static_cast<int>(std::lround(in_hertz(rate)));
    info.channels = 1;
    info.format = (form == AudioForm::flac ? SF_FORMAT_FLAC : SF_FORMAT_WAV) | SF_FORMAT_PCM_16;
    Stream stream{store};
    std::unique_ptr<SNDFILE, decltype(lib.sf_close)> file(
        lib.sf_open_virtual(&calls, SFM_WRITE, &info, &stream), lib.sf_close);
    auto const check = [&] {
        if (stream.error) std::rethrow_exception(stream.error);
    };
    check();
    if (!file) throw std::runtime_error(std::string("libsndfile: ") + lib.sf_strerror(nullptr));
    double level = 1; // of compression: the smallest file
    lib.sf_command(file.get(), SFC_SET_COMPRESSION_LEVEL, &level, sizeof level);
    std::vector<short> whole;
    make([&](std::span<float const> samples) {
        whole.clear();
        for (float x : samples)
            whole.push_back(static_cast<short>(std::lround(std::clamp(x, -1.0F, 1.0F) * 32767.0F)));
        auto const count = static_cast<sf_count_t>(whole.size());
        bool const ok = lib.sf_write_short(file.get(), whole.data(), count) == count;
        check();
        if (!ok) throw std::runtime_error(std::string("libsndfile: ") + lib.sf_strerror(file.get()));
    });
    lib.sf_close(file.release());
    check();
}

std::optional<AudioForm> audio_form(std::string_view ending) {
    if (ending == ".wav") return AudioForm::wav;
    if (ending == ".flac") return AudioForm::flac;
    return std::nullopt;
}

std::string audio_bytes(AudioForm form, Frequency rate, AudioMaker const& make) {
    InMemory store;
    encode(store, form, rate, make);
    return store.take();
}

} // namespace vowelway::io
