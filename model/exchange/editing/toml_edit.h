// SPDX-License-Identifier: MIT
//
// Edits of a TOML text at one place. Each is one stretch that other bytes take the place of, so
// that an editor can do and undo it as one step; comments, order and spacing of all the rest stay
// as they are. Of what the parser knows nothing is worked out a second time.
//
// A place is named by the keys that lead there, and the number of an item where a list is passed:
// "station/2/title", "station/0/part/1/when", "module/0/answers/fluid".
//
//   const auto document = TomlDocument::read(text, "coolant.toml").value();
//   const TomlEdit edit(document);
//   text = edited(text, edit.set("station/0/title", tomlText("header tank"), StationKeys).value());

#pragma once

#include "model/exchange/editing/toml_places.h"

#include <optional>
#include <span>

namespace flarestock {

struct TextEdit {
    std::size_t at = 0;
    std::size_t removed = 0; ///< So many bytes from there …
    std::string put;         ///< … become these.

    friend bool operator==(const TextEdit &, const TextEdit &) = default;
};
[[nodiscard]] std::string edited(std::string_view text, const TextEdit &edit);

/// In which order keys are written, or lists of tables.
using KeyOrder = std::span<const std::string_view>;
/// How many come before it; all of them where it is none.
[[nodiscard]] std::size_t rankIn(std::string_view key, KeyOrder order);

/// Where something cannot be edited (the place is not there, or its list of tables stands in one
/// line), nothing is returned.
class TomlEdit {
public:
    explicit TomlEdit(const TomlDocument &document) : m_document(document), m_places(document) {}

    [[nodiscard]] const TomlPlaces &places() const { return m_places; }
    /// nullptr where nothing stands there.
    [[nodiscard]] const TomlValue *find(std::string_view place) const;

    /// A key's value, or an item of a list, becomes this literal. A key that is not there is
    /// written behind those that come before it in `order`; its table, where it is not there
    /// either, below.
    [[nodiscard]] std::optional<TextEdit> set(std::string_view place, std::string_view literal,
                                              KeyOrder order) const;
    /// The same of a text, in the manner of the one that stands there.
    [[nodiscard]] std::optional<TextEdit> setText(std::string_view place, std::string_view text,
                                                  KeyOrder order) const;
    /// A list of texts; of those that stay nothing is touched. An empty one is `[]`.
    [[nodiscard]] std::optional<TextEdit>
    setTexts(std::string_view place, const std::vector<std::string> &texts, KeyOrder order) const;
    /// A key with its line, or an item of a list.
    [[nodiscard]] std::optional<TextEdit> drop(std::string_view place) const;
    /// An item before that place of a list, or behind its last.
    [[nodiscard]] std::optional<TextEdit> addItem(std::string_view place,
                                                  std::string_view literal) const;

    /// `lines` ("id = …\ntitle = …") as a further table of a list: behind that one, or behind the
    /// last; the first of its list behind the lists that come before it in `order`.
    [[nodiscard]] std::optional<TextEdit> addTable(std::string_view list, std::string_view lines,
                                                   KeyOrder order,
                                                   std::optional<std::size_t> behind = {}) const;
    /// With its comment above, and a blank line.
    [[nodiscard]] std::optional<TextEdit> dropTable(std::string_view list, std::size_t at) const;
    /// The table and the next one of its list change places.
    [[nodiscard]] std::optional<TextEdit> swapWithNext(std::string_view list, std::size_t at) const;

private:
    struct Found {
        const TomlValue *parent = nullptr; ///< nullptr: not there.
        const TomlEntry *entry = nullptr;  ///< Of a table …
        std::size_t item = 0;              ///< … or of a list, where the parent is one.
        std::string last;
    };
    [[nodiscard]] Found found(std::string_view place) const;
    [[nodiscard]] std::optional<TextEdit> addKey(std::string_view place, std::string_view literal,
                                                 KeyOrder order) const;
    [[nodiscard]] std::optional<TextEdit> addSubTable(std::string_view place,
                                                      std::string_view literal) const;
    [[nodiscard]] TextEdit addInline(const TomlValue &table, std::string_view words,
                                     std::size_t before) const;
    [[nodiscard]] TextEdit dropInline(const TomlValue &table, std::size_t at) const;
    [[nodiscard]] TextEdit dropLine(const TomlValue &table, const TomlEntry &entry) const;
    [[nodiscard]] TextEdit dropItems(const TomlValue &list, std::size_t from, std::size_t to) const;
    [[nodiscard]] TextEdit putItems(const TomlValue &list, std::size_t before,
                                    std::string_view literals) const;
    [[nodiscard]] std::string between(const TomlValue &list) const;
    [[nodiscard]] const TomlValue *tableOf(std::string_view list, std::size_t at) const;
    [[nodiscard]] TextEdit lines(std::size_t at, std::string_view words) const;
    [[nodiscard]] std::string withLineEnds(std::string_view words) const;

    const TomlDocument &m_document;
    TomlPlaces m_places;
};

} // namespace flarestock
