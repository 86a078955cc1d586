// SPDX-License-Identifier: MIT
#include "page/vocabulary.hpp"
