// SPDX-License-Identifier: MIT
//
// Places of a TOML text in bytes: where its values, its lines and the blocks of its tables begin
// and end. What stands where is known from the parsed document; here is only arithmetic on lines.

#pragma once

#include "model/exchange/toml/document.h"

namespace flarestock {

/// From the byte at `begin` up to that at `end`.
struct TextStretch {
    std::size_t begin = 0;
    std::size_t end = 0;

    [[nodiscard]] std::string_view of(std::string_view text) const
    {
        return text.substr(begin, end - begin);
    }
};

class TomlPlaces {
public:
    explicit TomlPlaces(const TomlDocument &document);

    [[nodiscard]] std::string_view text() const { return m_text; }
    [[nodiscard]] std::string_view lineEnd() const { return m_lineEnd; }

    [[nodiscard]] TextStretch value(const TomlValue &value) const;
    [[nodiscard]] std::size_t key(const TomlEntry &entry) const; ///< Its first byte.
    /// Whether it is written under a header of its own, `[…]` or `[[…]]`; a list of tables is where
    /// each of them is.
    [[nodiscard]] bool isUnderHeader(const TomlValue &value) const;
    [[nodiscard]] bool isInline(const TomlValue &table) const; ///< `{ … }`

    [[nodiscard]] std::size_t lineBegin(std::size_t at) const;
    /// Before its line feed or the two that end it.
    [[nodiscard]] std::size_t lineEndBefore(std::size_t at) const;
    [[nodiscard]] std::size_t nextLine(std::size_t at) const; ///< Or the end of the text.
    /// The last byte of what a value and all in it say.
    [[nodiscard]] std::size_t contentEnd(const TomlValue &value) const;
    /// A table under a header with the comment right above it and all that belongs to it.
    [[nodiscard]] TextStretch block(const TomlValue &table) const;

private:
    [[nodiscard]] bool isComment(std::size_t line) const;
    [[nodiscard]] bool isHeader(std::size_t line) const;

    std::string_view m_text;
    std::string_view m_lineEnd;
    std::vector<std::size_t> m_lines; ///< Where each begins.
};

} // namespace flarestock
