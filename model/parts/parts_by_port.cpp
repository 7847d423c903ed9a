// SPDX-License-Identifier: MIT

#include "model/parts/parts_by_port.h"

#include <algorithm>

namespace flarestock {

namespace {

std::string keyOf(const Port &port)
{
    return static_cast<char>(port.family) + (static_cast<char>(port.gender) + port.size);
}

} // namespace

PartsByPort::PartsByPort(std::span<const Part> parts)
{
    for (PartIndex at = 0; at < parts.size(); ++at) {
        for (const PartPort &port : parts[at].ports) {
            std::vector<PartIndex> &some = m_parts[keyOf(port.port)];
            if (some.empty() || some.back() != at)
                some.push_back(at);
        }
    }
}

std::vector<PartIndex> PartsByPort::ofAny(std::span<const Port> ports) const
{
    std::vector<PartIndex> all;
    for (const Port &port : ports) {
        if (const auto some = m_parts.find(keyOf(port)); some != m_parts.end())
            all.insert(all.end(), some->second.begin(), some->second.end());
    }
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    return all;
}

} // namespace flarestock
