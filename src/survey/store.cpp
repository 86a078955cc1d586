// SPDX-License-Identifier: MIT
#include "vowelway/survey/store.hpp"

#include "survey/columns.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"
#include "vowelway/files/read.hpp"

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
        source.emplace(database, source_sql());
    }

    std::vector<plan::PlanRecord> all() {
        std::vector<plan::PlanRecord> out;
        Statement select(database, select_sql());
        while (select.step()) out.push_back(read(select));
        return out;
    }

    std::filesystem::path path;
    Database database;
    std::optional<Statement> insert, source;
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
    auto& asked = *open_->source;
    bind(asked, key);
    bool const same = asked.step() && read_source(asked) == source;
    asked.again();
    return same;
}

std::size_t Store::count() const {
    std::lock_guard const alone(open_->mutex);
    return static_cast<std::size_t>(open_->database.number("SELECT count(*) FROM plans"));
}

void Store::put(plan::PlanRecord const& record) {
    std::lock_guard const alone(open_->mutex);
    bind(*open_->insert, record);
    open_->insert->step();
}

void Store::take(std::filesystem::path const& other) {
    to_read(other); // refused here with its name, if it is none
    std::lock_guard const alone(open_->mutex);
    Statement attach(open_->database, "ATTACH ? AS other");
    attach.bind(0, std::string_view(other.string()));
    attach.step();
    open_->database.run(take_sql());
    open_->database.run("DETACH other");
}

std::vector<plan::PlanRecord> Store::all() const {
    std::lock_guard const alone(open_->mutex);
    return open_->all();
}

void Store::settle() {
    std::lock_guard const alone(open_->mutex);
    open_->insert.reset();
    open_->source.reset();
    open_->database.run("PRAGMA wal_checkpoint(TRUNCATE); PRAGMA journal_mode=DELETE");
}

} // namespace vowelway::survey
