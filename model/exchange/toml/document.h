// SPDX-License-Identifier: MIT
//
// A TOML text as a tree of plain values, each knowing where it stands. Only document.cpp sees the
// library that parses it, because that library takes seconds to compile.

#pragma once

#include "model/exchange/text_place.h"

#include <cstdint>

namespace flarestock {

struct TomlEntry;

struct TomlValue {
    enum class Form : std::uint8_t { Text, Whole, Fraction, YesNo, Date, List, Table };
    Form form = Form::Table;
    std::string text;       ///< For Text, and for Date as ISO 8601 writes it.
    std::int64_t whole = 0; ///< For Whole.
    bool yes = false;       ///< For YesNo.
    std::vector<TomlValue> items;
    std::vector<TomlEntry> entries; ///< In the order of the text.
    std::uint32_t line = 0;         ///< 1-based, as is the column, in code points.
    std::uint32_t column = 0;
    std::uint32_t endLine =
        0; ///< Behind its last character; of a table under a header, the header's.
    std::uint32_t endColumn = 0;

    [[nodiscard]] const TomlEntry *find(std::string_view key) const noexcept;
};

/// What a form is called: "a text", "a whole number" …
[[nodiscard]] std::string_view text(TomlValue::Form form) noexcept;

struct TomlEntry {
    std::string key;
    TomlValue value;
    std::uint32_t line = 0; ///< Of the key.
    std::uint32_t column = 0;
};

/// A parsed file, which can point into itself. The whole text must outlive it.
class TomlDocument {
public:
    static constexpr std::size_t BytesMax = 4U * 1024 * 1024;

    /// Problem: over 4 MB, not UTF-8, not TOML, or nested too deep to be meant.
    [[nodiscard]] static Result<TomlDocument> read(std::string_view whole, std::string file);

    [[nodiscard]] const TomlValue &root() const noexcept { return m_root; }
    [[nodiscard]] const std::string &file() const noexcept { return m_file; }
    [[nodiscard]] std::string_view whole() const noexcept { return m_whole; }
    [[nodiscard]] Problem at(const TomlValue &value, TextFault fault) const;
    [[nodiscard]] Problem at(const TomlEntry &entry, TextFault fault) const;
    /// At a character of a text, counted from 0, behind its quotes and escapes.
    [[nodiscard]] Problem inside(const TomlValue &value, std::size_t character,
                                 TextFault fault) const;

private:
    TomlDocument(std::string_view whole, std::string file) : m_whole(whole), m_file(std::move(file))
    {
    }

    std::string_view m_whole;
    std::string m_file;
    TomlValue m_root;
};

} // namespace flarestock
