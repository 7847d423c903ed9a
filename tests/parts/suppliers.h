// SPDX-License-Identifier: MIT
//
// A supplier of whom a test needs to know no more than his name and how long he takes.

#pragma once

#include "model/parts/part.h"

namespace flarestock::tests {

inline Supplier supplierOf(std::string id, std::string name, int leadDays)
{
    Supplier supplier;
    supplier.id = std::move(id);
    supplier.name = std::move(name);
    supplier.leadDays = leadDays;
    return supplier;
}

} // namespace flarestock::tests
