// SPDX-License-Identifier: MIT
// Libraries that are loaded when they are first needed: a process that only plans does not pay for the
// hundred libraries behind a decoder. Private to the library.
#pragma once

#include "vowelway/core/error.hpp"
#include "vowelway/core/wording.hpp"

#include <dlfcn.h>

#include <string>

namespace vowelway {

/// A shared library, loaded when this is made and never unloaded. Copies are the same library.
class LateLibrary {
  public:
    static std::string from_package(std::string const& package) {
        return worded("install it (Debian: the package {0})", package);
    }

    /// `soname` is found where the system's loader looks. Throws InputError: it cannot be loaded, with
    /// `remedy` as the way out, for instance from_package.
    LateLibrary(std::string soname, std::string remedy)
        : soname_(std::move(soname)), remedy_(std::move(remedy)),
          handle_(dlopen(soname_.c_str(), RTLD_LAZY | RTLD_LOCAL)) {
        if (!handle_) fail();
    }

    /// The function `name`, as a pointer of the type that its header declares. Throws like the constructor.
    template <class Function> void bind(Function*& pointer, char const* name) const {
        void* const found = dlsym(handle_, name);
        if (!found) fail();
        pointer = reinterpret_cast<Function*>(found);
    }

  private:
    [[noreturn]] void fail() const {
        char const* const reason = dlerror();
        throw InputError(worded("the library {0} cannot be loaded: {1}", soname_,
                                reason ? std::string(reason) : worded("no reason given")),
                         remedy_, {});
    }
    std::string soname_, remedy_;
    void* handle_;
};

// For a table `f` of functions whose members have their names.
#define VOWELWAY_BIND(name) from.bind(f.name, #name)

} // namespace vowelway
