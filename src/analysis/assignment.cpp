// SPDX-License-Identifier: MIT
#include "analysis/assignment.hpp"

#include <limits>

namespace vowelway::analysis {
namespace {

constexpr auto nobody = static_cast<std::size_t>(-1);

/// Rows are added one by one; a shortest path of exchanges makes room for the next.
class Exchange {
  public:
    explicit Exchange(std::vector<std::vector<double>> const& cost)
        : cost_(cost), size_(cost.size()), of_row_(size_, 0.0), of_column_(size_, 0.0),
          holder_(size_, nobody) {}

    void add(std::size_t row) {
        std::vector<double> distance(size_, std::numeric_limits<double>::infinity());
        std::vector<std::size_t> before(size_, nobody);
        std::vector<bool> done(size_, false);
        std::size_t here = row, column = nobody;
        while (true) {
            std::size_t const from = column;
            std::size_t next = nobody;
            for (std::size_t c = 0; c < size_; ++c) {
                if (done[c]) continue;
                double const way = so_far_ + cost_[here][c] - of_row_[here] - of_column_[c];
                if (way < distance[c]) distance[c] = way, before[c] = from;
                if (next == nobody || distance[c] < distance[next]) next = c;
            }
            so_far_ = distance[next];
            done[next] = true;
            column = next;
            if (holder_[column] == nobody) break;
            here = holder_[column];
        }
        raise_potentials(row, distance, done);
        while (column != nobody) {
            auto const from = before[column];
            holder_[column] = from == nobody ? row : holder_[from];
            column = from;
        }
        so_far_ = 0;
    }

    std::vector<std::size_t> columns() const {
        std::vector<std::size_t> found(size_);
        for (std::size_t c = 0; c < size_; ++c) found[holder_[c]] = c;
        return found;
    }

  private:
    void raise_potentials(std::size_t row, std::vector<double> const& distance,
                          std::vector<bool> const& done) {
        of_row_[row] += so_far_;
        for (std::size_t c = 0; c < size_; ++c)
            if (done[c]) {
                of_column_[c] -= so_far_ - distance[c];
                if (holder_[c] != nobody) of_row_[holder_[c]] += so_far_ - distance[c];
            }
    }

    std::vector<std::vector<double>> const& cost_;
    std::size_t size_;
    std::vector<double> of_row_, of_column_;
    std::vector<std::size_t> holder_; // row of each column
    double so_far_ = 0;
};

} // namespace

std::vector<std::size_t> cheapest_assignment(std::vector<std::vector<double>> const& cost) {
    Exchange exchange(cost);
    for (std::size_t row = 0; row < cost.size(); ++row) exchange.add(row);
    return exchange.columns();
}

} // namespace vowelway::analysis
