// SPDX-License-Identifier: MIT
//
// PartsByPort: which parts of a list have a port. Family, size and gender make it, not how it turns
// or which hose it takes, since that is all that a caliper and a label tell.

#pragma once

#include "model/parts/part.h"

#include <span>
#include <unordered_map>

namespace flarestock {

using PartIndex = std::uint32_t;

class PartsByPort {
public:
    PartsByPort() = default;
    explicit PartsByPort(std::span<const Part> parts);
    /// The places of those that have any of the ports, in the order of the list, each once.
    [[nodiscard]] std::vector<PartIndex> ofAny(std::span<const Port> ports) const;

private:
    std::unordered_map<std::string, std::vector<PartIndex>> m_parts;
};

} // namespace flarestock
