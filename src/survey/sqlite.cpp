// SPDX-License-Identifier: MIT
#include "survey/sqlite.hpp"

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::survey {

Database::Database(std::filesystem::path const& file, Access access) : file_(file) {
    sqlite3* handle = nullptr;
    int const flags =
        (access == Access::read ? SQLITE_OPEN_READONLY : SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE) |
        SQLITE_OPEN_FULLMUTEX;
    int const result = sqlite3_open_v2(file.c_str(), &handle, flags, nullptr);
    handle_.reset(handle);
    if (result != SQLITE_OK) fail();
    sqlite3_busy_timeout(handle, 5000);
}

void Database::fail() const {
    int const code = handle_ ? sqlite3_errcode(handle_.get()) : SQLITE_NOMEM;
    auto remedy = worded("look whether the folder is there, may be written and has room");
    if (code == SQLITE_BUSY || code == SQLITE_LOCKED)
        remedy = worded("another program is writing into it; wait until it is done");
    if (code == SQLITE_NOTADB || code == SQLITE_CORRUPT)
        remedy = worded("it is no survey, or damaged; name another file");
    throw InputError(
        worded("this survey cannot be used: {0}", handle_ ? sqlite3_errmsg(handle_.get()) : "out of memory"),
        remedy, Place{file_.string(), 0, 0, {}});
}

void Database::run(std::string const& sql) {
    if (sqlite3_exec(handle_.get(), sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) fail();
}

std::int64_t Database::number(std::string const& sql) {
    Statement statement(*this, sql);
    return statement.step() ? statement.integer(0) : 0;
}

Statement::Statement(Database& database, std::string const& sql) : database_(&database) {
    sqlite3_stmt* statement = nullptr;
    if (sqlite3_prepare_v2(database.get(), sql.c_str(), static_cast<int>(sql.size()), &statement, nullptr) !=
        SQLITE_OK)
        database.fail();
    statement_.reset(statement);
}

void Statement::bind(int at, std::string_view text) {
    sqlite3_bind_text(statement_.get(), at + 1, text.data(), static_cast<int>(text.size()), SQLITE_TRANSIENT);
}

void Statement::bind(int at, std::int64_t number) { sqlite3_bind_int64(statement_.get(), at + 1, number); }

void Statement::bind(int at, std::optional<double> number) {
    if (number)
        sqlite3_bind_double(statement_.get(), at + 1, *number);
    else
        sqlite3_bind_null(statement_.get(), at + 1);
}

bool Statement::step() {
    int const result = sqlite3_step(statement_.get());
    if (result == SQLITE_ROW) return true;
    if (result != SQLITE_DONE) database_->fail();
    sqlite3_reset(statement_.get());
    return false;
}

std::string Statement::text(int column) const {
    auto const* bytes = reinterpret_cast<char const*>(sqlite3_column_text(statement_.get(), column));
    return bytes
               ? std::string(bytes, static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), column)))
               : "";
}

std::int64_t Statement::integer(int column) const { return sqlite3_column_int64(statement_.get(), column); }

std::optional<double> Statement::real(int column) const {
    if (sqlite3_column_type(statement_.get(), column) == SQLITE_NULL) return std::nullopt;
    return sqlite3_column_double(statement_.get(), column);
}

} // namespace vowelway::survey
