// SPDX-License-Identifier: MIT
// The few algorithms on whole ranges that are used here, by the names they have in std::ranges: the standard
// library of the WebAssembly compiler (libc++ 14) has none of them yet. Private to the library.
#pragma once

#include <algorithm>
#include <functional>
#include <iterator>
#include <utility>

namespace vowelway::ranges {

/// `compare` of the projections of two elements.
template <class Compare, class Projection> auto by(Compare compare, Projection projection) {
    return [=](auto const& a, auto const& b) {
        return std::invoke(compare, std::invoke(projection, a), std::invoke(projection, b));
    };
}

template <class Range, class Test> bool any_of(Range const& range, Test test) {
    return std::any_of(std::begin(range), std::end(range),
                       [&](auto const& e) { return std::invoke(test, e); });
}
template <class Range, class Test> bool all_of(Range const& range, Test test) {
    return std::all_of(std::begin(range), std::end(range),
                       [&](auto const& e) { return std::invoke(test, e); });
}
template <class Range, class Test> bool none_of(Range const& range, Test test) {
    return !any_of(range, test);
}
template <class Range, class Test> auto count_if(Range const& range, Test test) {
    return std::count_if(std::begin(range), std::end(range),
                         [&](auto const& e) { return std::invoke(test, e); });
}

// An iterator into a range that ends with the expression would dangle: it must have a name.
template <class Range, class Test> auto find_if(Range& range, Test test) {
    return std::find_if(std::begin(range), std::end(range),
                        [&](auto const& e) { return std::invoke(test, e); });
}
template <class Range, class Value, class Projection = std::identity>
auto find(Range& range, Value const& value, Projection projection = {}) {
    return std::find_if(std::begin(range), std::end(range),
                        [&](auto const& e) { return std::invoke(projection, e) == value; });
}
template <class Range, class Compare = std::less<>, class Projection = std::identity>
auto min_element(Range& range, Compare compare = {}, Projection projection = {}) {
    return std::min_element(std::begin(range), std::end(range), by(compare, projection));
}
/// The greatest and the least value of a range that has one.
template <class Range> auto max(Range const& range) {
    return *std::max_element(std::begin(range), std::end(range));
}
template <class Range> auto min(Range const& range) {
    return *std::min_element(std::begin(range), std::end(range));
}
/// The first of the least and the last of the greatest.
template <class Range, class Compare = std::less<>, class Projection = std::identity>
auto minmax_element(Range& range, Compare compare = {}, Projection projection = {}) {
    return std::minmax_element(std::begin(range), std::end(range), by(compare, projection));
}

template <class Range, class Compare = std::less<>, class Projection = std::identity>
void sort(Range& range, Compare compare = {}, Projection projection = {}) {
    std::sort(std::begin(range), std::end(range), by(compare, projection));
}
template <class Range, class Compare = std::less<>, class Projection = std::identity>
void stable_sort(Range& range, Compare compare = {}, Projection projection = {}) {
    std::stable_sort(std::begin(range), std::end(range), by(compare, projection));
}
template <class Range, class Test> void stable_partition(Range& range, Test test) {
    std::stable_partition(std::begin(range), std::end(range),
                          [&](auto const& e) { return std::invoke(test, e); });
}
template <class Range> void reverse(Range& range) { std::reverse(std::begin(range), std::end(range)); }
template <class Range, class Test, class Value> void replace_if(Range& range, Test test, Value const& value) {
    std::replace_if(
        std::begin(range), std::end(range), [&](auto const& e) { return std::invoke(test, e); }, value);
}

} // namespace vowelway::ranges
