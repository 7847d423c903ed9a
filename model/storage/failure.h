// SPDX-License-Identifier: MIT
//
// How a problem travels inside this folder: thrown where it happens, caught at the public function,
// so that a transaction is rolled back on the way. No exception leaves the folder.

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <functional>
#include <new>
#include <type_traits>

namespace flarestock {

struct StorageFailure {
    Problem problem;
    int nativeCode = 0; ///< SQLite's extended code; 0 where it was not SQLite.
    /// What a server answered: that others were in the way and it may go well the next time; or
    /// nothing, so that nobody knows whether it was done.
    enum class Answer : std::uint8_t { Refused, InTheWay, Lost } answer = Answer::Refused;
};

/// Whether it says something of what the shop holds, and not only of this moment: that somebody
/// else holds it, that memory ran out, that the connection was lost.
[[nodiscard]] inline bool isOfTheShop(const StorageFailure &failure) noexcept
{
    const int code = failure.nativeCode & 0xff; // SQLITE_BUSY, LOCKED, NOMEM
    return failure.answer == StorageFailure::Answer::Refused && code != 5 && code != 6 && code != 7;
}

/// Runs `action` and turns a StorageFailure into its Problem, and memory that has run out into
/// one: a transaction is rolled back by then. (Where there is none for the sentence either,
/// std::bad_alloc goes on to whoever began.)
template <class Action>
[[nodiscard]] auto guarded(Action &&action) -> Result<std::invoke_result_t<Action>>
{
    try {
        if constexpr (std::is_void_v<std::invoke_result_t<Action>>) {
            std::invoke(action);
            return {};
        } else {
            return std::invoke(action);
        }
    } catch (StorageFailure &failure) {
        return tl::unexpected(std::move(failure.problem));
    } catch (const std::bad_alloc &) {
        return problem("the memory", "ran out, and what was being done is not confirmed",
                       "Close other programs, then say it again with the same id, which counts "
                       "once.");
    }
}

} // namespace flarestock
