// SPDX-License-Identifier: MIT

#include "model/exchange/editing/toml_edit.h"

#include "model/exchange/editing/toml_literal.h"

#include <algorithm>

namespace flarestock {

namespace {

std::optional<std::size_t> numberOf(std::string_view step)
{
    if (step.empty() || step.size() > 6 || step.find_first_not_of("0123456789") != step.npos)
        return std::nullopt;
    std::size_t number = 0;
    for (const char digit : step)
        number = number * 10 + static_cast<std::size_t>(digit - '0');
    return number;
}

const TomlValue *below(const TomlValue &value, std::string_view step)
{
    if (value.form == TomlValue::Form::List) {
        const auto number = numberOf(step);
        return number && *number < value.items.size() ? &value.items[*number] : nullptr;
    }
    const TomlEntry *const entry = value.find(step);
    return entry == nullptr ? nullptr : &entry->value;
}

} // namespace

std::size_t rankIn(std::string_view key, KeyOrder order)
{
    return static_cast<std::size_t>(std::find(order.begin(), order.end(), key) - order.begin());
}

std::string edited(std::string_view text, const TextEdit &edit)
{
    std::string out(text.substr(0, edit.at));
    return out.append(edit.put).append(text.substr(edit.at + edit.removed));
}

const TomlValue *TomlEdit::find(std::string_view place) const
{
    const TomlValue *value = &m_document.root();
    while (value != nullptr && !place.empty()) {
        const std::size_t slash = std::min(place.find('/'), place.size());
        value = below(*value, place.substr(0, slash));
        place.remove_prefix(std::min(slash + 1, place.size()));
    }
    return value;
}

TomlEdit::Found TomlEdit::found(std::string_view place) const
{
    const std::size_t slash = place.rfind('/');
    Found found;
    found.last = slash == place.npos ? place : place.substr(slash + 1);
    found.parent = slash == place.npos ? &m_document.root() : find(place.substr(0, slash));
    if (found.parent == nullptr)
        return found;
    if (found.parent->form == TomlValue::Form::Table)
        found.entry = found.parent->find(found.last);
    else if (const auto number = numberOf(found.last);
             found.parent->form == TomlValue::Form::List && number)
        found.item = *number;
    else
        found.parent = nullptr;
    return found;
}

std::optional<TextEdit> TomlEdit::set(std::string_view place, std::string_view literal,
                                      KeyOrder order) const
{
    const TomlValue *const value = find(place);
    if (value == nullptr)
        return addKey(place, literal, order);
    if (m_places.isUnderHeader(*value))
        return std::nullopt;
    const TextStretch stretch = m_places.value(*value);
    return TextEdit{stretch.begin, stretch.end - stretch.begin, std::string(literal)};
}

std::optional<TextEdit> TomlEdit::setText(std::string_view place, std::string_view text,
                                          KeyOrder order) const
{
    const TomlValue *const value = find(place);
    if (value == nullptr || value->form != TomlValue::Form::Text)
        return set(place, tomlText(text), order);
    return set(place, tomlTextLike(m_places.value(*value).of(m_places.text()), text), order);
}

std::string TomlEdit::withLineEnds(std::string_view words) const
{
    std::string out;
    for (const char letter : words)
        out += letter == '\n' ? std::string(m_places.lineEnd()) : std::string(1, letter);
    return out;
}

/// Whole lines behind the line of a byte.
TextEdit TomlEdit::lines(std::size_t at, std::string_view words) const
{
    const std::size_t end = m_places.lineEndBefore(at);
    return {end, 0, std::string(m_places.lineEnd()) + withLineEnds(words)};
}

std::optional<TextEdit> TomlEdit::addKey(std::string_view place, std::string_view literal,
                                         KeyOrder order) const
{
    const Found at = found(place);
    if (at.parent == nullptr)
        return addSubTable(place, literal);
    const TomlValue &table = *at.parent;
    if (table.form != TomlValue::Form::Table)
        return std::nullopt;
    const std::string words = at.last + " = " + std::string(literal);
    const std::size_t rank = rankIn(at.last, order);
    if (m_places.isInline(table)) {
        const auto next =
            std::find_if(table.entries.begin(), table.entries.end(),
                         [&](const TomlEntry &entry) { return rankIn(entry.key, order) > rank; });
        return addInline(table, words, static_cast<std::size_t>(next - table.entries.begin()));
    }
    const TomlEntry *before = nullptr;
    const TomlEntry *any = nullptr; // Whose manner of being set in from the margin it follows.
    for (const TomlEntry &entry : table.entries) {
        if (m_places.isUnderHeader(entry.value))
            continue;
        any = any == nullptr ? &entry : any;
        const bool isLast = rank == order.size(); // A key that the order does not know.
        const bool isBefore =
            rankIn(entry.key, order) < rank &&
            (before == nullptr || rankIn(entry.key, order) >= rankIn(before->key, order));
        before = isLast || isBefore ? &entry : before;
    }
    std::string margin;
    if (any != nullptr) {
        const std::size_t key = m_places.key(*any);
        const std::size_t begin = m_places.lineBegin(key);
        margin = m_places.text().substr(begin, key - begin);
    }
    if (before != nullptr)
        return lines(m_places.contentEnd(before->value), margin + words);
    if (m_places.isUnderHeader(table))
        return lines(m_places.value(table).end, margin + words);
    const std::size_t first = any == nullptr ? 0 : m_places.lineBegin(m_places.key(*any));
    return TextEdit{first, 0, withLineEnds(margin + words + "\n")};
}

/// "module/0/answers/fluid" where the module has no answers yet: its keys, then a table of its own.
std::optional<TextEdit> TomlEdit::addSubTable(std::string_view place,
                                              std::string_view literal) const
{
    const std::size_t last = place.rfind('/');
    const Found at = found(place.substr(0, last == place.npos ? 0 : last));
    if (last == place.npos || at.parent == nullptr || at.entry != nullptr ||
        at.parent->form != TomlValue::Form::Table || !m_places.isUnderHeader(*at.parent))
        return std::nullopt;
    std::size_t end = m_places.value(*at.parent).end;
    for (const TomlEntry &entry : at.parent->entries) {
        if (!m_places.isUnderHeader(entry.value))
            end = std::max(end, m_places.contentEnd(entry.value));
    }
    std::string name;
    for (std::string_view rest = place.substr(0, last); !rest.empty();) {
        const std::size_t slash = std::min(rest.find('/'), rest.size());
        if (!numberOf(rest.substr(0, slash)))
            name.append(name.empty() ? "" : ".").append(rest.substr(0, slash));
        rest.remove_prefix(std::min(slash + 1, rest.size()));
    }
    return lines(end, '[' + name + "]\n" + std::string(place.substr(last + 1)) + " = " +
                          std::string(literal));
}

TextEdit TomlEdit::addInline(const TomlValue &table, std::string_view words,
                             std::size_t before) const
{
    if (table.entries.empty())
        return {m_places.value(table).begin + 1, 0, ' ' + std::string(words) + ' '};
    if (before < table.entries.size())
        return {m_places.key(table.entries[before]), 0, std::string(words) + ", "};
    return {m_places.value(table.entries.back().value).end, 0, ", " + std::string(words)};
}

std::optional<TextEdit> TomlEdit::drop(std::string_view place) const
{
    const Found at = found(place);
    if (at.parent == nullptr || find(place) == nullptr)
        return std::nullopt;
    if (at.parent->form == TomlValue::Form::List)
        return m_places.isUnderHeader(*at.parent)
                   ? std::nullopt
                   : std::optional(dropItems(*at.parent, at.item, at.item + 1));
    if (m_places.isUnderHeader(at.entry->value))
        return std::nullopt;
    if (m_places.isInline(*at.parent))
        return dropInline(*at.parent,
                          static_cast<std::size_t>(at.entry - at.parent->entries.data()));
    return dropLine(*at.parent, *at.entry);
}

TextEdit TomlEdit::dropInline(const TomlValue &table, std::size_t at) const
{
    const auto &entries = table.entries;
    const std::size_t end = m_places.value(entries[at].value).end;
    std::size_t from = m_places.key(entries[at]);
    std::size_t to = end;
    if (at + 1 < entries.size())
        to = m_places.key(entries[at + 1]);
    else if (at > 0)
        from = m_places.value(entries[at - 1].value).end;
    return {from, to - from, {}};
}

/// The last key of a table inside another takes the header of that with it.
TextEdit TomlEdit::dropLine(const TomlValue &table, const TomlEntry &entry) const
{
    std::size_t from = m_places.lineBegin(m_places.key(entry));
    std::size_t to = m_places.nextLine(m_places.contentEnd(entry.value));
    const std::size_t header = m_places.value(table).begin;
    const bool isInner = m_places.isUnderHeader(table) &&
                         m_places.text().substr(header, 2) != "[[" && table.entries.size() == 1;
    if (isInner && m_places.nextLine(header) == from)
        from = m_places.lineBegin(header);
    const bool isLast = to == m_places.text().size() && !m_places.text().ends_with('\n');
    if (isLast && from > 0)
        from = m_places.lineEndBefore(from - 1);
    return {from, to - from, {}};
}

} // namespace flarestock
