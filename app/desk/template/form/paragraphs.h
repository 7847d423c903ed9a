// SPDX-License-Identifier: MIT
//
// Paragraphs: what a template's text consists of, as a list to choose from: its top, then each
// question, station, run, module and extra, by name and with a mark where something is wrong.

#pragma once

#include "app/desk/rows/rows.h"
#include "model/exchange/templates/template_words.h"
#include "model/exchange/toml/document.h"

#include <optional>
#include <string>

namespace flarestock {

/// Named by its place in the text: "station/2"; the top is "top".
struct ParagraphAt {
    Paragraph kind = Paragraph::Top;
    std::size_t index = 0;

    /// Nothing: it is none.
    [[nodiscard]] static std::optional<ParagraphAt> of(std::string_view name);
    [[nodiscard]] std::string name() const;
    /// The place of a key in it, "station/2/title".
    [[nodiscard]] std::string place(std::string_view key) const;
    /// Its table; nullptr where it is not there.
    [[nodiscard]] const TomlValue *in(const TomlValue &root) const;

    friend bool operator==(const ParagraphAt &, const ParagraphAt &) = default;
};

/// How many of that kind there are.
[[nodiscard]] std::size_t countOf(Paragraph kind, const TomlValue &root);
/// The first and, where there is a next paragraph, the line behind the last of its lines.
struct LinesOf {
    std::uint32_t first = 0;
    std::uint32_t behind = 0; ///< 0: all the rest.
    [[nodiscard]] bool has(std::uint32_t line) const
    {
        return line >= first && (behind == 0 || line < behind);
    }
};
[[nodiscard]] LinesOf linesOf(const ParagraphAt &at, const TomlValue &root);

/// title detail section wrong
[[nodiscard]] QStringList paragraphCells();
[[nodiscard]] std::vector<Row> paragraphRows(const TomlValue &root,
                                             const std::vector<Problem> &faults);

} // namespace flarestock
