// SPDX-License-Identifier: MIT
//
// Aside: what was read of a shop is large, and to let go of it takes as long as many frames. So
// whoever is the last to hold it leaves that to another thread.

#pragma once

#include <memory>

namespace flarestock {

/// Lets go of it in a thread of the pool.
void letGoAside(std::shared_ptr<const void> last);

/// The same object, which is let go of aside wherever its last holder is. For any thread.
template <class T>
[[nodiscard]] std::shared_ptr<const T> goesAside(std::shared_ptr<const T> held)
{
    const T *object = held.get();
    return {object, [held = std::move(held)](const T *) mutable { letGoAside(std::move(held)); }};
}

} // namespace flarestock
