// SPDX-License-Identifier: MIT
#include "survey/sqlite.hpp"

#include "core/late_library.hpp"
#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

namespace vowelway::survey {
namespace {

/// The functions that are used, by their own names.
struct Sqlite {
    decltype(&::sqlite3_bind_double) sqlite3_bind_double;
    decltype(&::sqlite3_bind_int64) sqlite3_bind_int64;
    decltype(&::sqlite3_bind_null) sqlite3_bind_null;
    decltype(&::sqlite3_bind_text) sqlite3_bind_text;
    decltype(&::sqlite3_busy_timeout) sqlite3_busy_timeout;
    decltype(&::sqlite3_close_v2) sqlite3_close_v2;
    decltype(&::sqlite3_column_bytes) sqlite3_column_bytes;
    decltype(&::sqlite3_column_double) sqlite3_column_double;
    decltype(&::sqlite3_column_int64) sqlite3_column_int64;
    decltype(&::sqlite3_column_text) sqlite3_column_text;
    decltype(&::sqlite3_column_type) sqlite3_column_type;
    decltype(&::sqlite3_errcode) sqlite3_errcode;
    decltype(&::sqlite3_errmsg) sqlite3_errmsg;
    decltype(&::sqlite3_exec) sqlite3_exec;
    decltype(&::sqlite3_finalize) sqlite3_finalize;
    decltype(&::sqlite3_open_v2) sqlite3_open_v2;
    decltype(&::sqlite3_prepare_v2) sqlite3_prepare_v2;
    decltype(&::sqlite3_reset) sqlite3_reset;
    decltype(&::sqlite3_step) sqlite3_step;
};

Sqlite const& sqlite() {
    static Sqlite const functions = [] {
        LateLibrary const from("libsqlite3.so.0", LateLibrary::from_package("libsqlite3-0"));
        Sqlite f{};
        VOWELWAY_BIND(sqlite3_bind_double);
        VOWELWAY_BIND(sqlite3_bind_int64);
        VOWELWAY_BIND(sqlite3_bind_null);
        VOWELWAY_BIND(sqlite3_bind_text);
        VOWELWAY_BIND(sqlite3_busy_timeout);
        VOWELWAY_BIND(sqlite3_close_v2);
        VOWELWAY_BIND(sqlite3_column_bytes);
        VOWELWAY_BIND(sqlite3_column_double);
        VOWELWAY_BIND(sqlite3_column_int64);
        VOWELWAY_BIND(sqlite3_column_text);
        VOWELWAY_BIND(sqlite3_column_type);
        VOWELWAY_BIND(sqlite3_errcode);
        VOWELWAY_BIND(sqlite3_errmsg);
        VOWELWAY_BIND(sqlite3_exec);
        VOWELWAY_BIND(sqlite3_finalize);
        VOWELWAY_BIND(sqlite3_open_v2);
        VOWELWAY_BIND(sqlite3_prepare_v2);
        VOWELWAY_BIND(sqlite3_reset);
        VOWELWAY_BIND(sqlite3_step);
        return f;
    }();
    return functions;
}

} // namespace

void Database::Close::operator()(sqlite3* handle) const { sqlite().sqlite3_close_v2(handle); }
void Statement::Finalize::operator()(sqlite3_stmt* statement) const { sqlite().sqlite3_finalize(statement); }

Database::Database(std::filesystem::path const& file, Access access) : file_(file) {
    sqlite3* handle = nullptr;
    int const flags =
        (access == Access::read ? SQLITE_OPEN_READONLY : SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE) |
        SQLITE_OPEN_FULLMUTEX;
    int const result = sqlite().sqlite3_open_v2(file.c_str(), &handle, flags, nullptr);
    handle_.reset(handle);
    if (result != SQLITE_OK) fail();
    sqlite().sqlite3_busy_timeout(handle, 5000);
}

void Database::fail() const {
    int const code = handle_ ? sqlite().sqlite3_errcode(handle_.get()) : SQLITE_NOMEM;
    auto remedy = worded("look whether the folder is there, may be written and has room");
    if (code == SQLITE_BUSY || code == SQLITE_LOCKED)
        remedy = worded("another program is writing into it; wait until it is done");
    if (code == SQLITE_NOTADB || code == SQLITE_CORRUPT)
        remedy = worded("it is no survey, or damaged; name another file");
    throw InputError(worded("this survey cannot be used: {0}",
                            handle_ ? sqlite().sqlite3_errmsg(handle_.get()) : "out of memory"),
                     remedy, Place{file_.string(), 0, 0, {}});
}

void Database::run(std::string const& sql) {
    if (sqlite().sqlite3_exec(handle_.get(), sql.c_str(), nullptr, nullptr, nullptr) != SQLITE_OK) fail();
}

std::int64_t Database::number(std::string const& sql) {
    Statement statement(*this, sql);
    return statement.step() ? statement.integer(0) : 0;
}

Statement::Statement(Database& database, std::string const& sql) : database_(&database) {
    sqlite3_stmt* statement = nullptr;
    if (sqlite().sqlite3_prepare_v2(database.get(), sql.c_str(), static_cast<int>(sql.size()), &statement,
                                    nullptr) != SQLITE_OK)
        database.fail();
    statement_.reset(statement);
}

void Statement::bind(int at, std::string_view text) {
    sqlite().sqlite3_bind_text(statement_.get(), at + 1, text.data(), static_cast<int>(text.size()),
                               SQLITE_TRANSIENT);
}

void Statement::bind(int at, std::int64_t number) {
    sqlite().sqlite3_bind_int64(statement_.get(), at + 1, number);
}

void Statement::bind(int at, std::optional<double> number) {
    if (number)
        sqlite().sqlite3_bind_double(statement_.get(), at + 1, *number);
    else
        sqlite().sqlite3_bind_null(statement_.get(), at + 1);
}

void Statement::again() { sqlite().sqlite3_reset(statement_.get()); }

bool Statement::step() {
    int const result = sqlite().sqlite3_step(statement_.get());
    if (result == SQLITE_ROW) return true;
    if (result != SQLITE_DONE) database_->fail();
    sqlite().sqlite3_reset(statement_.get());
    return false;
}

std::string Statement::text(int column) const {
    auto const* bytes = reinterpret_cast<char const*>(sqlite().sqlite3_column_text(statement_.get(), column));
    return bytes ? std::string(bytes, static_cast<std::size_t>(
                                          sqlite().sqlite3_column_bytes(statement_.get(), column)))
                 : "";
}

std::int64_t Statement::integer(int column) const {
    return sqlite().sqlite3_column_int64(statement_.get(), column);
}

std::optional<double> Statement::real(int column) const {
    if (sqlite().sqlite3_column_type(statement_.get(), column) == SQLITE_NULL) return std::nullopt;
    return sqlite().sqlite3_column_double(statement_.get(), column);
}

} // namespace vowelway::survey
