// SPDX-License-Identifier: MIT
#include "vowelway/survey/store.hpp"

#include "survey/columns.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"

#include <map>
#include <mutex>

namespace vowelway::survey {

namespace {

constexpr std::int64_t form = 1; // of the tables

} // namespace

struct Store::Open {
    explicit Open(std::filesystem::path const& file, Database::Access access)
        : path(file), database(file, access) {
        auto const found = database.number("PRAGMA user_version");
        auto const tables = database.number("SELECT count(*) FROM sqlite_master");
        if (found != form && (found != 0 || tables != 0))
            throw InputError(worded("this is no survey of ours, or of a later form"),
                             worded("name another file, or use the program that wrote it"),
                             Place{file.string(), 0, 0, {}});
        if (access == Database::Access::write) {
            // Each record is with the system at once, and with the disk a little later; the file is whole at
            // any moment.
            database.run("PRAGMA journal_mode=WAL; PRAGMA synchronous=NORMAL");
            database.run(table_sql());
            database.run("PRAGMA user_version=" + std::to_string(form));
            insert.emplace(database, insert_sql());
        } else if (tables == 0) {
            throw InputError(worded("this survey is empty"), worded("run vowelway survey first"),
                             Place{file.string(), 0, 0, {}});
        }
        for (auto& record : all()) known.insert_or_assign(std::move(record.key), std::move(record.source));
    }

    std::vector<plan::PlanRecord> all() {
        std::vector<plan::PlanRecord> out;
        Statement select(database, select_sql());
        while (select.step()) out.push_back(read(select));
        return out;
    }

    std::filesystem::path path;
    Database database;
    std::optional<Statement> insert;
    std::map<plan::RecordKey, plan::RecordSource> known;
    mutable std::mutex mutex;
};

Store::Store(std::unique_ptr<Open> open) : open_(std::move(open)) {}
Store::Store(std::filesystem::path const& file)
    : open_(std::make_unique<Open>(file, Database::Access::write)) {}
Store::Store() : Store(":memory:") {}
Store::Store(Store&&) noexcept = default;
Store& Store::operator=(Store&&) noexcept = default;
Store::~Store() = default;

Store Store::to_read(std::filesystem::path const& file) {
    files::require_readable(file);
    return Store(std::make_unique<Open>(file, Database::Access::read));
}

bool Store::has(plan::RecordKey const& key, plan::RecordSource const& source) const {
    std::lock_guard const alone(open_->mutex);
    auto const at = open_->known.find(key);
    return at != open_->known.end() && at->second == source;
}

std::size_t Store::count() const {
    std::lock_guard const alone(open_->mutex);
    return open_->known.size();
}

void Store::put(plan::PlanRecord const& record) {
    std::lock_guard const alone(open_->mutex);
    bind(*open_->insert, record);
    open_->insert->step();
    open_->known.insert_or_assign(record.key, record.source);
}

void Store::take(std::filesystem::path const& other) {
    auto const theirs = to_read(other).all();
    open_->database.run("BEGIN");
    for (auto const& record : theirs) put(record);
    open_->database.run("COMMIT");
}

std::vector<plan::PlanRecord> Store::all() const {
    std::lock_guard const alone(open_->mutex);
    return open_->all();
}

void Store::settle() {
    std::lock_guard const alone(open_->mutex);
    open_->insert.reset();
    open_->database.run("PRAGMA wal_checkpoint(TRUNCATE); PRAGMA journal_mode=DELETE");
}

} // namespace vowelway::survey
