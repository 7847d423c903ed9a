// SPDX-License-Identifier: MIT
//
// Edits of the items of a list that stands as one value: `["-6", "-8"]`, or one item a line.

#include "model/exchange/editing/toml_edit.h"
#include "model/exchange/editing/toml_literal.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Behind the comma that follows a byte at once, or that byte.
std::size_t behindComma(std::string_view text, std::size_t at)
{
    const std::size_t comma = text.find_first_not_of(" \t\r\n", at);
    return comma != text.npos && text[comma] == ',' ? comma + 1 : at;
}

} // namespace

/// What stands between two items of the list, as it is written there.
std::string TomlEdit::between(const TomlValue &list) const
{
    const std::string_view text = m_places.text();
    const std::size_t first = m_places.value(list.items.front()).begin;
    if (list.items.size() > 1) {
        const std::size_t end = m_places.value(list.items[0]).end;
        const std::string_view gap = text.substr(end, m_places.value(list.items[1]).begin - end);
        if (gap.find('#') == gap.npos)
            return std::string(gap);
    }
    const std::size_t open = m_places.value(list).begin + 1;
    const std::string_view head = text.substr(open, first - open);
    const bool isALineEach = head.find('\n') != head.npos && head.find('#') == head.npos;
    return isALineEach ? ',' + std::string(head) : ", ";
}

/// Before that item, or behind the last. The list has one at least.
TextEdit TomlEdit::putItems(const TomlValue &list, std::size_t before,
                            std::string_view literals) const
{
    const std::string gap = between(list);
    if (before < list.items.size())
        return {m_places.value(list.items[before]).begin, 0, std::string(literals) + gap};
    return {m_places.value(list.items.back()).end, 0, gap + std::string(literals)};
}

/// Not all of them. A comment between two stays.
TextEdit TomlEdit::dropItems(const TomlValue &list, std::size_t from, std::size_t to) const
{
    const std::string_view text = m_places.text();
    std::size_t begin = m_places.value(list.items[from]).begin;
    std::size_t end = m_places.value(list.items[to - 1]).end;
    const auto isBare = [&text](std::size_t a, std::size_t b) {
        return text.substr(a, b - a).find('#') == text.npos;
    };
    if (to < list.items.size()) {
        const std::size_t next = m_places.value(list.items[to]).begin;
        end = isBare(end, next) ? next : behindComma(text, end);
    } else if (from > 0) {
        const std::size_t last = m_places.value(list.items[from - 1]).end;
        if (isBare(last, begin))
            begin = last;
        else
            end = behindComma(text, end); // The comma before it may end a list.
    }
    return {begin, end - begin, {}};
}

std::optional<TextEdit> TomlEdit::addItem(std::string_view place, std::string_view literal) const
{
    const Found at = found(place);
    if (at.parent == nullptr || at.parent->form != TomlValue::Form::List ||
        m_places.isUnderHeader(*at.parent))
        return std::nullopt;
    if (at.parent->items.empty()) {
        const TextStretch list = m_places.value(*at.parent);
        return TextEdit{list.begin + 1, 0, std::string(literal)};
    }
    return putItems(*at.parent, at.item, literal);
}

std::optional<TextEdit> TomlEdit::setTexts(std::string_view place,
                                           const std::vector<std::string> &texts,
                                           KeyOrder order) const
{
    const TomlValue *const list = find(place);
    if (list == nullptr || list->form != TomlValue::Form::List || list->items.empty() ||
        texts.empty())
        return set(place, tomlTexts(texts), order);
    const auto &items = list->items;
    const std::size_t most = std::min(items.size(), texts.size());
    std::size_t head = 0;
    while (head < most && items[head].text == texts[head])
        ++head;
    std::size_t tail = 0;
    while (tail < most - head &&
           items[items.size() - 1 - tail].text == texts[texts.size() - 1 - tail])
        ++tail;
    std::string literals;
    for (std::size_t at = head; at + tail < texts.size(); ++at)
        literals.append(literals.empty() ? "" : between(*list)).append(tomlText(texts[at]));
    const std::size_t to = items.size() - tail;
    if (head == to)
        return literals.empty() ? std::nullopt : std::optional(putItems(*list, head, literals));
    if (literals.empty())
        return dropItems(*list, head, to);
    const std::size_t begin = m_places.value(items[head]).begin;
    return TextEdit{begin, m_places.value(items[to - 1]).end - begin, literals};
}

} // namespace flarestock
