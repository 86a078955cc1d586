// SPDX-License-Identifier: MIT
// SQLite with owners and exceptions: a database, and a statement that is run again and again. The library is
// loaded with the first database. Private to the layer.
#pragma once

#include <sqlite3.h>

#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

namespace vowelway::survey {

class Database {
  public:
    enum class Access { read, write };
    /// Throws InputError.
    Database(std::filesystem::path const& file, Access access);

    /// One or more statements without parameters or answers. Throws InputError.
    void run(std::string const& sql);
    /// The number that a statement answers.
    std::int64_t number(std::string const& sql);
    /// What went wrong, with the file.
    [[noreturn]] void fail() const;
    sqlite3* get() const { return handle_.get(); }

  private:
    struct Close {
        void operator()(sqlite3* handle) const;
    };
    std::filesystem::path file_;
    std::unique_ptr<sqlite3, Close> handle_;
};

/// Parameters and columns count from 0.
class Statement {
  public:
    Statement(Database& database, std::string const& sql);
    void bind(int at, std::string_view text);
    void bind(int at, std::int64_t number);
    void bind(int at, std::optional<double> number); ///< nothing: NULL
    /// Whether there is a row. The parameters stay; after the last row it begins anew.
    bool step();
    /// Begins anew before the last row.
    void again();
    std::string text(int column) const;
    std::int64_t integer(int column) const;
    std::optional<double> real(int column) const;

  private:
    struct Finalize {
        void operator()(sqlite3_stmt* statement) const;
    };
    Database* database_;
    std::unique_ptr<sqlite3_stmt, Finalize> statement_;
};

} // namespace vowelway::survey
