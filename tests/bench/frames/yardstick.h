// SPDX-License-Identifier: MIT
//
// Yardstick: what it costs to come by as many things as the engine of the screens has alive, and no
// more: a walk through so many that lie about. After a pause it is the memory that a key waits for,
// and on a machine that others share, their use of it; what the desk takes is told beside it.

#pragma once

#include <cstdint>
#include <vector>

namespace flarestock {

class Yardstick {
public:
    /// Of 64 bytes each, 4 MiB: what the engine has alive once every area was looked at.
    static constexpr std::uint32_t Things = 65536;

    Yardstick();
    /// Goes to each once. Milliseconds of processor, of this thread.
    [[nodiscard]] double walk();

private:
    struct alignas(64) Thing {
        std::uint32_t next = 0;
    };
    std::vector<Thing> m_things;
    std::uint32_t m_at = 0;
};

} // namespace flarestock
