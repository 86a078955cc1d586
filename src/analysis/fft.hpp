// SPDX-License-Identifier: MIT
// The Fourier transform of real sequences. Private to the analysis layer.
#pragma once

#include <unsupported/Eigen/FFT>

#include <algorithm>
#include <complex>
#include <cstddef>
#include <vector>

namespace vowelway::analysis {

/// Keeps the tables of the lengths it has seen (the last `most_lengths` at most); not to be shared between
/// threads.
class RealFft {
  public:
    RealFft() { fft_.SetFlag(Eigen::FFT<double>::HalfSpectrum); }
    /// The bins 0..n/2 of n samples, n even.
    std::vector<std::complex<double>> const& forward(std::vector<double> const& samples) {
        know(samples.size());
        fft_.fwd(spectrum_, samples);
        return spectrum_;
    }
    /// n samples (n even) from the bins 0..n/2.
    std::vector<double> const& inverse(std::vector<std::complex<double>> const& bins, std::size_t n) {
        know(n);
        samples_.resize(n);
        fft_.inv(samples_, bins, static_cast<Eigen::Index>(n));
        return samples_;
    }

  private:
    static constexpr std::size_t most_lengths = 64;
    void know(std::size_t n) {
        if (std::find(lengths_.begin(), lengths_.end(), n) != lengths_.end()) return;
        if (lengths_.size() == most_lengths) {
            lengths_.clear();
            fft_.impl().clear();
        }
        lengths_.push_back(n);
    }
    Eigen::FFT<double> fft_;
    std::vector<std::size_t> lengths_;
    std::vector<std::complex<double>> spectrum_;
    std::vector<double> samples_;
};

/// One for each thread, for the few lengths of frames.
inline RealFft& frame_fft() {
    thread_local RealFft fft;
    return fft;
}

/// One for each thread, for whole sounds.
inline RealFft& long_fft() {
    thread_local RealFft fft;
    return fft;
}

/// The next multiple of four >= n made of the factors 2, 3 and 5: transforms of such lengths are fast, and
/// halved, as those of real sequences are.
inline std::size_t fast_length(std::size_t n) {
    for (std::size_t m = (n + 3) / 4 * 4;; m += 4) {
        std::size_t rest = m;
        for (std::size_t factor : {2U, 3U, 5U})
            while (rest % factor == 0) rest /= factor;
        if (rest == 1) return m;
    }
}

} // namespace vowelway::analysis
