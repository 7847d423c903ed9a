// SPDX-License-Identifier: MIT
//
// Edits of whole tables that stand under a header of their own, `[[station]]`.

#include "model/exchange/editing/toml_edit.h"

#include <algorithm>

namespace flarestock {

const TomlValue *TomlEdit::tableOf(std::string_view list, std::size_t at) const
{
    const TomlValue *const tables = find(list);
    if (tables == nullptr || !m_places.isUnderHeader(*tables) || at >= tables->items.size())
        return nullptr;
    return &tables->items[at];
}

std::optional<TextEdit> TomlEdit::addTable(std::string_view list, std::string_view words,
                                           KeyOrder order, std::optional<std::size_t> behind) const
{
    const TomlValue *const tables = find(list);
    if (tables != nullptr && !m_places.isUnderHeader(*tables))
        return std::nullopt;
    std::size_t at = 0; // Behind the whole lines up to here.
    if (tables != nullptr) {
        const std::size_t last = tables->items.size() - 1;
        at = m_places.block(tables->items[std::min(behind.value_or(last), last)]).end;
    } else {
        for (const TomlEntry &entry : m_document.root().entries) {
            const bool isHeaded = m_places.isUnderHeader(entry.value);
            if (!isHeaded)
                at = std::max(at, m_places.nextLine(m_places.contentEnd(entry.value)));
            else if (rankIn(entry.key, order) < rankIn(list, order))
                for (const TomlValue &table : entry.value.items)
                    at = std::max(at, m_places.block(table).end);
        }
    }
    const std::string_view before = m_places.text().substr(0, at);
    const bool endsOpen = !before.empty() && !before.ends_with('\n');
    std::string put = endsOpen ? "\n" : "";
    put.append(before.empty() ? "" : "\n").append("[[").append(list).append("]]\n").append(words);
    if (!endsOpen)
        put += '\n';
    return TextEdit{at, 0, withLineEnds(put)};
}

std::optional<TextEdit> TomlEdit::dropTable(std::string_view list, std::size_t at) const
{
    const TomlValue *const table = tableOf(list, at);
    if (table == nullptr)
        return std::nullopt;
    TextStretch block = m_places.block(*table);
    const std::string_view text = m_places.text();
    const bool endsOpen = block.end == text.size() && !text.ends_with('\n');
    if (block.begin > 0) {
        const std::size_t above = m_places.lineBegin(block.begin - 1);
        if (m_places.lineEndBefore(above) == above) // The blank line above.
            block.begin = above;
    }
    if (endsOpen && block.begin > 0)
        block.begin = m_places.lineEndBefore(block.begin - 1);
    return TextEdit{block.begin, block.end - block.begin, {}};
}

std::optional<TextEdit> TomlEdit::swapWithNext(std::string_view list, std::size_t at) const
{
    const TomlValue *const one = tableOf(list, at);
    const TomlValue *const next = tableOf(list, at + 1);
    if (one == nullptr || next == nullptr)
        return std::nullopt;
    const TextStretch first = m_places.block(*one);
    const TextStretch second = m_places.block(*next);
    const std::string_view text = m_places.text();
    std::string upper(second.of(text));
    std::string lower(first.of(text));
    if (!upper.ends_with('\n')) { // The end of the text stays as it is.
        lower.resize(lower.size() - m_places.lineEnd().size());
        upper += m_places.lineEnd();
    }
    const std::string_view middle = text.substr(first.end, second.begin - first.end);
    return TextEdit{first.begin, second.end - first.begin, upper.append(middle).append(lower)};
}

} // namespace flarestock
