// SPDX-License-Identifier: MIT

#include "model/buying/late_cost.h"

#include "model/exact/rational.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <charconv>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, 5> KindTexts = {"freight", "duty", "tax", "credit", "other"};

/// The next text up to a tab, or the rest; it is cut off.
std::string_view cutOff(std::string_view &line)
{
    const auto tab = line.find('\t');
    const std::string_view cell = line.substr(0, tab);
    line.remove_prefix(tab == std::string_view::npos ? line.size() : tab + 1);
    return cell;
}

bool readWhole(std::string_view &line, std::int64_t &number)
{
    const std::string_view cell = cutOff(line);
    const auto read = std::from_chars(cell.data(), cell.data() + cell.size(), number);
    return read.ec == std::errc{} && read.ptr == cell.data() + cell.size();
}

/// "part, lot, quantity, here, value, in stock", a tab between; neither part nor lot holds one.
std::string lineOf(const LateShare &share)
{
    std::string line = share.part + '\t' + share.lot;
    for (const std::int64_t number : {share.quantity, share.here, share.value, share.inStock})
        line += '\t' + std::to_string(number);
    return line;
}

std::optional<LateShare> shareIn(std::string_view line)
{
    LateShare share;
    share.part = cutOff(line);
    share.lot = cutOff(line);
    const bool reads = readWhole(line, share.quantity) && readWhole(line, share.here) &&
                       readWhole(line, share.value) && readWhole(line, share.inStock);
    return reads && line.empty() ? std::optional(share) : std::nullopt;
}

std::optional<std::vector<LateShare>> sharesIn(std::string_view lines)
{
    std::vector<LateShare> shares;
    while (!lines.empty()) {
        const auto end = lines.find('\n');
        const auto share = shareIn(lines.substr(0, end));
        if (!share)
            return std::nullopt;
        shares.push_back(*share);
        lines.remove_prefix(end == std::string_view::npos ? lines.size() : end + 1);
    }
    return shares;
}

} // namespace

std::string_view text(LateKind kind) noexcept
{
    return KindTexts[static_cast<std::size_t>(kind)];
}

Result<LateKind> parseLateKind(std::string_view text)
{
    const auto *const at = std::find(KindTexts.begin(), KindTexts.end(), text);
    if (at == KindTexts.end())
        return problem(std::string(text), "is nothing that comes late",
                       "Say freight, duty, tax, credit or other.");
    return static_cast<LateKind>(at - KindTexts.begin());
}

Record LateCost::asRecord() const
{
    std::string lines;
    for (const LateShare &share : shares)
        lines += (lines.empty() ? "" : "\n") + lineOf(share);
    return {id,
            RecordKind::LateCost,
            order,
            {{"kind", std::string(text(kind))},
             {"amount", std::to_string(amount)},
             {"shared by", sharedBy},
             {"shares", lines},
             {"claim", claim},
             {"document", document},
             {"action", action}},
            who,
            at};
}

Result<LateCost> LateCost::read(const Record &record)
{
    const auto kind = parseLateKind(record.field("kind"));
    const auto shares = sharesIn(record.field("shares"));
    const auto amount = record.number("amount");
    if (record.kind != RecordKind::LateCost || record.subject.empty() || !kind || !shares ||
        !amount)
        return problem("record " + record.id.text(), "is not a late cost",
                       "Run flarestock verify on the shop.");
    return LateCost{record.id,
                    record.subject,
                    *kind,
                    *amount,
                    record.field("shared by"),
                    *shares,
                    record.field("claim"),
                    record.field("document"),
                    record.field("action"),
                    record.who,
                    record.at};
}

std::int64_t stockPart(std::int64_t share, std::int64_t here, std::int64_t came)
{
    assert(here >= 0 && here <= came && came > 0);
    // Half-even is the same for both signs; not more than the share, so that it fits.
    return Rational(Decimal(here), Decimal(came))
        .times(Decimal(share))
        .toDecimal(0, Rounding::HalfEven)
        .toInt64()
        .value_or(0);
}

} // namespace flarestock
