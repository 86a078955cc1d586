// SPDX-License-Identifier: MIT
// The Fourier transform of real sequences. Private to the analysis layer.
#pragma once

#include <unsupported/Eigen/FFT>

#include <complex>
#include <cstddef>
#include <vector>

namespace vowelway {

/// Keeps the tables of the lengths it has seen; not to be shared between threads.
class RealFft {
  public:
    RealFft() { fft_.SetFlag(Eigen::FFT<double>::HalfSpectrum); }
    /// The bins 0..n/2 of n samples, n even.
    std::vector<std::complex<double>> const& forward(std::vector<double> const& samples) {
        fft_.fwd(spectrum_, samples);
        return spectrum_;
    }
    /// n samples (n even) from the bins 0..n/2.
    std::vector<double> const& inverse(std::vector<std::complex<double>> const& bins, std::size_t n) {
        samples_.resize(n);
        fft_.inv(samples_, bins, static_cast<Eigen::Index>(n));
        return samples_;
    }

  private:
    Eigen::FFT<double> fft_;
    std::vector<std::complex<double>> spectrum_;
    std::vector<double> samples_;
};

/// One for each thread, for the few lengths of frames.
inline RealFft& frame_fft() {
    thread_local RealFft fft;
    return fft;
}

/// The next number >= n made of the factors 2, 3 and 5, and even: transforms of such lengths are fast.
inline std::size_t fast_length(std::size_t n) {
    for (std::size_t m = n + n % 2;; m += 2) {
        std::size_t rest = m;
        for (std::size_t factor : {2U, 3U, 5U})
            while (rest % factor == 0) rest /= factor;
        if (rest == 1) return m;
    }
}

} // namespace vowelway
