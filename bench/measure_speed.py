# SPDX-License-Identifier: MIT
# The analysis of a whispered minute as bench/measure_speed.cpp times it, done with numpy and scipy: levels, averaged spectra of each
# steady second in eight blocks, prediction for five ceilings and four orders, roots, poles of the blocks. Without decoding of
# compressed sound, cutting, matching and judging. Usage: python3 bench/measure_speed.py [file.wav [--once]]
import sys
import time

import numpy as np
from scipy.io import wavfile
from scipy.linalg import solve_toeplitz
from scipy.signal import lfilter, resample_poly

RATE, SPACING = 16000, 1040


def minute(rate=44100):
    rng = np.random.default_rng(1)
    parts = [np.zeros(rate // 2)]
    for f in 8 * [(545, 2335, 3065), (630, 2205, 2795), (975, 1425, 2605), (665, 965, 2565), (575, 915, 2435)]:
        x = rng.standard_normal(rate)
        for hz in f:
            r = np.exp(-np.pi * 100 / rate)
            a = [1, -2 * r * np.cos(2 * np.pi * hz / rate), r * r]
            x = lfilter([sum(a)], a, x)
        parts += [x / np.std(x), np.zeros(rate // 2)]
    x = np.concatenate(parts)
    return rate, x + 0.02 * rng.standard_normal(len(x))


def band_autocorrelation(power, ceiling, lags):
    last = round(ceiling / (RATE / 2) * (len(power) - 1))
    weights = power[: last + 1].copy()
    weights[[0, last]] *= 0.5
    return np.cos(np.pi * np.outer(np.arange(lags + 1), np.arange(last + 1)) / last) @ weights / last


def poles(a, rate):
    z = np.roots(a)
    z = z[z.imag > 1e-9]
    return np.angle(z) * rate / (2 * np.pi), -np.log(np.abs(z)) * rate / np.pi


def measure(rate, x):
    x = resample_poly(x, 160, 441) if rate == 44100 else x
    step = RATE // 100
    levels = 10 * np.log10(np.mean(x[: len(x) // step * step].reshape(-1, step) ** 2, axis=1) + 1e-12)
    sounding = levels > np.percentile(levels, 10) + 10
    edges = np.flatnonzero(np.diff(np.concatenate([[0], sounding, [0]])))
    results = []
    for start, end in edges.reshape(-1, 2):
        if end - start < 12:
            continue
        y = x[(start + 12) * step : (end - 12) * step]
        n, hop = 640, 320
        frames = np.lib.stride_tricks.sliding_window_view(y, n)[::hop] * np.hamming(n)
        power = np.abs(np.fft.rfft(frames, 1280)) ** 2
        blocks = [b.mean(axis=0) for b in np.array_split(power, 8)]
        for count in (3.5, 4.0, 4.5, 5.0, 5.5):
            ceiling = count * SPACING
            all_r = [band_autocorrelation(p, ceiling, 2 * round(count) + 4) for p in [power.mean(axis=0)] + blocks]
            for extra in (0, 1, 2, 4):
                order = 2 * round(count) + extra
                found = []
                for r in all_r:
                    a = np.concatenate([[1], -solve_toeplitz(r[:order], r[1 : order + 1])])
                    found.append(poles(a, 2 * ceiling))
                results.append(found)
    return results


if __name__ == "__main__":
    rate, x = minute() if len(sys.argv) < 2 else wavfile.read(sys.argv[1])
    best = 1e9
    for _ in range(1 if "--once" in sys.argv else 2):
        start = time.process_time()
        found = measure(rate, np.asarray(x, dtype=float))
        best = min(best, time.process_time() - start)
    print(f"numpy/scipy, whisper, {len(x) / rate:.1f} s in {1000 * best:.0f} ms: {len(x) / rate / best:.0f} times real time, {len(found) // 20} takes")
