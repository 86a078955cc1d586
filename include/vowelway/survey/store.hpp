// SPDX-License-Identifier: MIT
// The records of a survey in one SQLite file. docs/survey.md tells its tables.
#pragma once

#include "vowelway/plan/record.hpp"

#include <filesystem>
#include <memory>
#include <vector>

namespace vowelway::survey {

/// Threads  any number at once.
class Store {
  public:
    /// Opens the file or begins it. Throws InputError for one that is no survey, or of a later form, and for
    /// what the system refuses. Each record put is in the file when put() returns: a killed program loses
    /// none.
    explicit Store(std::filesystem::path const& file);
    /// One that is never in a file.
    Store();
    /// An existing file, to read. Throws InputError where there is none.
    static Store to_read(std::filesystem::path const& file);
    Store(Store&&) noexcept;
    Store& operator=(Store&&) noexcept;
    ~Store();

    /// Whether this record is there and was computed from the same.
    bool has(plan::RecordKey const& key, plan::RecordSource const& source) const;
    std::size_t count() const;

    /// Replaces the record with the same key.
    void put(plan::PlanRecord const& record);

    /// Puts all records of another survey; of two with the same key the other's stays.
    void take(std::filesystem::path const& other);

    /// In the order of their keys.
    std::vector<plan::PlanRecord> all() const;

    /// All in one file again, without the logs that SQLite keeps beside it. Call it when done.
    void settle();

  private:
    struct Open;
    explicit Store(std::unique_ptr<Open> open);
    std::unique_ptr<Open> open_;
};

} // namespace vowelway::survey
