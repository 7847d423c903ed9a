// SPDX-License-Identifier: MIT
//
// Fields of one TOML table, read by name as what each should hold. What is wrong becomes a Problem
// that points at it; reading goes on with the fallback.

#pragma once

#include "model/exchange/toml/document.h"

#include <span>

namespace flarestock {

class TomlFields {
public:
    /// Where problems go, and the document that they point into.
    struct Source {
        const TomlDocument *document = nullptr;
        Problems *problems = nullptr;

        void wrong(const TomlValue &value, TextFault fault) const
        {
            problems->add(document->at(value, std::move(fault)));
        }
    };
    /// `name` is what the table is called: "station". Adds a problem for each key that is not in
    /// `keys`, with a near one.
    TomlFields(const Source &source, const TomlValue &table, std::string name,
               std::span<const std::string_view> keys);

    [[nodiscard]] const Source &source() const noexcept { return m_source; }
    [[nodiscard]] const TomlValue &table() const noexcept { return *m_table; }
    [[nodiscard]] const std::string &name() const noexcept { return m_name; }
    /// nullptr where the key is not there.
    [[nodiscard]] const TomlValue *find(std::string_view key) const noexcept;
    /// The same, of one form; a problem where it is of another.
    [[nodiscard]] const TomlValue *find(std::string_view key, TomlValue::Form wanted) const;

    /// Empty where it is not there or no text; a Date is a text where one is wanted.
    [[nodiscard]] std::string text(std::string_view key) const;
    /// The same, with a problem where it is not there or empty.
    [[nodiscard]] std::string required(std::string_view key) const;
    [[nodiscard]] bool yesNo(std::string_view key, bool fallback) const;
    /// A whole number from 0 to `most`.
    [[nodiscard]] int whole(std::string_view key, int most, int fallback) const;
    [[nodiscard]] std::vector<std::string> texts(std::string_view key) const;
    /// One of some words by its index; `fallback` where it is not there or wrong.
    [[nodiscard]] std::size_t word(std::string_view key, std::span<const std::string_view> words,
                                   std::size_t fallback) const;
    /// The tables of an array of tables, `[[key]]`.
    [[nodiscard]] std::vector<const TomlValue *> tables(std::string_view key) const;

    /// A required name: lower case letters, digits and hyphens.
    [[nodiscard]] std::string id(std::string_view key) const;

    /// Adds a problem at a key's value, or at the table where the key is not there.
    void wrong(std::string_view key, TextFault fault) const;

private:
    Source m_source;
    const TomlValue *m_table;
    std::string m_name;
};

} // namespace flarestock
