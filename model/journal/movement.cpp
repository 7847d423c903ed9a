// SPDX-License-Identifier: MIT

#include "model/journal/movement.h"

#include <algorithm>
#include <cassert>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 13> PlaceKindTexts = {
    "shelf",   "bin",     "drawer", "car",        "supplier", "scrap", "in transit",
    "used up", "opening", "bench",  "difference", "borrower", "repair"};
constexpr std::array<std::string_view, 13> DeedTexts = {
    "move", "receive", "count", "scrap",   "cut",   "issue", "return",
    "lend", "judge",   "open",  "make up", "renew", "settle"};
constexpr std::array<std::string_view, 4> ConditionTexts = {"new", "used and good", "to be checked",
                                                            "not to be used"};
constexpr std::string_view HexDigits = "0123456789abcdef";

/// Case, hyphens and underscores forgiven.
std::string foldedWords(std::string_view text)
{
    std::string folded(text);
    for (char &c : folded) {
        if (c >= 'A' && c <= 'Z')
            c = static_cast<char>(c - 'A' + 'a');
        else if (c == '-' || c == '_')
            c = ' ';
    }
    return folded;
}

template <class T, std::size_t N>
Result<T> parseOneOf(std::string_view text, const std::array<std::string_view, N> &texts,
                     std::string wrong)
{
    const auto at = std::find(texts.begin(), texts.end(), foldedWords(text));
    if (at != texts.end())
        return static_cast<T>(at - texts.begin());
    std::string all;
    for (const std::string_view one : texts)
        all += (all.empty() ? "" : ", ") + std::string(one);
    return problem(std::string(text), std::move(wrong), "Write one of: " + all + ".");
}

bool standsHyphenAt(std::size_t position) noexcept
{
    return position == 8 || position == 13 || position == 18 || position == 23;
}

/// 0 to 15, or nothing.
std::optional<std::uint8_t> hexValue(char c) noexcept
{
    const char lower = c >= 'A' && c <= 'F' ? static_cast<char>(c - 'A' + 'a') : c;
    const auto at = HexDigits.find(lower);
    if (at == std::string_view::npos)
        return std::nullopt;
    return static_cast<std::uint8_t>(at);
}

} // namespace

MovementId MovementId::make(std::int64_t milliseconds, const std::array<std::uint8_t, 10> &random)
{
    assert(milliseconds >= 0 && milliseconds < (std::int64_t{1} << 48));
    MovementId id;
    for (std::size_t i = 0; i < 6; ++i)
        id.m_bytes[i] = static_cast<std::uint8_t>(milliseconds >> (40 - 8 * i));
    std::copy(random.begin(), random.end(), id.m_bytes.begin() + 6);
    id.m_bytes[6] = static_cast<std::uint8_t>((id.m_bytes[6] & 0x0F) | 0x70); // version 7
    id.m_bytes[8] = static_cast<std::uint8_t>((id.m_bytes[8] & 0x3F) | 0x80); // variant 10
    return id;
}

Result<MovementId> MovementId::parse(std::string_view text)
{
    const auto notOne = [&] {
        return problem(std::string(text), "is not an id",
                       "An id has the form 0190b3c4-5d6e-7f80-9123-456789abcdef.");
    };
    if (text.size() != 36)
        return notOne();
    MovementId id;
    std::size_t digits = 0;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (standsHyphenAt(i)) {
            if (text[i] != '-')
                return notOne();
            continue;
        }
        const auto value = hexValue(text[i]);
        if (!value)
            return notOne();
        id.m_bytes[digits / 2] = static_cast<std::uint8_t>(id.m_bytes[digits / 2] << 4 | *value);
        ++digits;
    }
    return id;
}

MovementId MovementId::ofBytes(const std::array<std::uint8_t, 16> &bytes) noexcept
{
    MovementId id;
    id.m_bytes = bytes;
    return id;
}

std::string MovementId::text() const
{
    std::string text;
    for (const std::uint8_t byte : m_bytes) {
        if (standsHyphenAt(text.size()))
            text += '-';
        text += HexDigits[byte >> 4];
        text += HexDigits[byte & 0x0F];
    }
    return text;
}

std::string_view text(PlaceKind kind) noexcept
{
    return PlaceKindTexts[static_cast<std::size_t>(kind)];
}

Result<PlaceKind> parsePlaceKind(std::string_view text)
{
    return parseOneOf<PlaceKind>(text, PlaceKindTexts, "is not a kind of place");
}

bool isStock(PlaceKind kind) noexcept
{
    return kind == PlaceKind::Shelf || kind == PlaceKind::Bin || kind == PlaceKind::Drawer;
}

bool bringsValue(PlaceKind kind) noexcept
{
    return kind == PlaceKind::Supplier || kind == PlaceKind::Opening || kind == PlaceKind::Bench ||
           kind == PlaceKind::Difference;
}

std::string_view text(PieceCondition condition) noexcept
{
    return ConditionTexts[static_cast<std::size_t>(condition)];
}

Result<PieceCondition> parsePieceCondition(std::string_view text)
{
    return parseOneOf<PieceCondition>(text, ConditionTexts, "is not a condition");
}

std::string_view text(Deed deed) noexcept
{
    return DeedTexts[static_cast<std::size_t>(deed)];
}

Result<Deed> parseDeed(std::string_view text)
{
    return parseOneOf<Deed>(text, DeedTexts, "is not a deed of the journal");
}

bool isFree(PieceCondition condition) noexcept
{
    return condition == PieceCondition::New || condition == PieceCondition::UsedAndGood;
}

} // namespace flarestock
