// SPDX-License-Identifier: MIT
//
// A place in a text: from a byte to line, column and excerpt, only when something is wrong there.

#pragma once

#include "model/exact/problem.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace flarestock {

struct TextFault {
    std::string wrong;  ///< Without a full stop.
    std::string remedy; ///< A sentence; may be empty.
};

/// A Problem at a byte of `text` (its length means the end). LF ends a line; a column counts code
/// points. The excerpt is the line, shortened behind the place where it is long, with tabs as
/// blanks; empty where the place lies too far to the right to be shown.
[[nodiscard]] Problem problemAt(std::string_view text, std::size_t byte, const std::string &file,
                                TextFault fault);

/// The byte of a 1-based line and column (in code points); the end of the line where it is shorter.
[[nodiscard]] std::size_t byteOf(std::string_view text, std::uint32_t line, std::uint32_t column);

/// The first byte that is no valid UTF-8 (RFC 3629) or is NUL; nothing where there is none.
[[nodiscard]] std::optional<std::size_t> firstBadByte(std::string_view text) noexcept;

/// Problems as they are met, up to a number; what comes after is not kept.
class Problems {
public:
    explicit Problems(std::size_t most) : m_most(most) {}

    void add(Problem problem)
    {
        if (!isFull())
            m_all.push_back(std::move(problem));
    }
    [[nodiscard]] bool isFull() const noexcept { return m_all.size() >= m_most; }
    [[nodiscard]] bool isEmpty() const noexcept { return m_all.empty(); }
    [[nodiscard]] std::size_t count() const noexcept { return m_all.size(); }
    [[nodiscard]] std::vector<Problem> &all() noexcept { return m_all; }

private:
    std::size_t m_most;
    std::vector<Problem> m_all;
};

} // namespace flarestock
