// SPDX-License-Identifier: MIT

#include "app/desk/buying/box/ticks.h"

#include "app/stockroom/byhand/serials.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

/// More pieces than that are ticked off as a heap.
constexpr std::int64_t PiecesMax = 24;

TickMark marksOf(const Part &part)
{
    if (isLength(part.unit))
        return TickMark::PieceName;
    return isKeptBySerial(part)         ? TickMark::Serial
           : part.kind == Kind::Element ? TickMark::Batch
                                        : TickMark::None;
}

/// One after the other, because each bears a mark or has a box of its own.
bool isOneByOne(const Part &part, std::int64_t count)
{
    return count <= PiecesMax && !isLength(part.unit) &&
           (part.kind == Kind::Pump || !part.box.empty());
}

std::string amountTyped(const Tick &tick, std::int64_t amount)
{
    return Quantity::ofSmallest(amount, tick.part->unit).text();
}

} // namespace

Ticks::Ticks(const BookedOrder &order, const Workshop &workshop)
{
    for (const OrderLine &line : order.now().lines)
        addLine(line, order, workshop);
}

void Ticks::addLine(const OrderLine &line, const BookedOrder &order, const Workshop &workshop)
{
    const Part *part = workshop.part(line.part);
    if (part == nullptr)
        return;
    const std::int64_t count = Quantity{order.awaited(line), part->unit}.smallest().value_or(0);
    const std::string to = whereItLies(*part, workshop.ledger);
    if (count <= 0)
        return;
    if (!isOneByOne(*part, count)) {
        m_ticks.push_back({part, {}, count, 0, 1, marksOf(*part), {}, to});
        addContents(m_ticks.size() - 1, workshop);
        return;
    }
    for (std::int64_t piece = 0; piece < count; ++piece) {
        m_ticks.push_back({part, {}, 1, 0, 1, marksOf(*part), {}, to});
        addContents(m_ticks.size() - 1, workshop);
    }
}

void Ticks::addContents(std::size_t piece, const Workshop &workshop)
{
    const Part &part = *m_ticks[piece].part;
    const std::int64_t boxes = m_ticks[piece].count;
    if (isLength(part.unit))
        return;
    for (const PartCount &one : part.box) {
        const Part *content = workshop.part(one.part);
        const auto count = one.count.rescaled(0, Rounding::Ceiling).toInt64().value_or(0);
        if (content && count > 0)
            m_ticks.push_back({content, piece, count * boxes, 0, boxes});
    }
}

void Ticks::toggle(std::size_t row)
{
    Tick &tick = m_ticks.at(row);
    setCame(row, tick.came == tick.count ? 0 : tick.count);
}

void Ticks::setCame(std::size_t row, std::int64_t came)
{
    Tick &tick = m_ticks.at(row);
    tick.came = std::max<std::int64_t>(0, came);
    if (tick.isContent()) {
        tick.came = std::min(tick.came, tick.count);
        Tick &piece = m_ticks[*tick.inBoxOf];
        if (tick.came > 0 && piece.came == 0)
            piece.came = piece.count;
        return;
    }
    if (tick.came > 0)
        return;
    for (Tick &other : m_ticks) // Nothing is in a box that is not there.
        if (other.inBoxOf == row)
            other.came = 0;
}

std::optional<std::size_t> Ticks::scanned(const std::string &part)
{
    std::optional<std::size_t> last;
    for (std::size_t row = 0; row < m_ticks.size(); ++row) {
        if (!sameFolded(m_ticks[row].part->number, part))
            continue;
        last = row;
        if (m_ticks[row].came < m_ticks[row].count)
            break;
    }
    if (last && !isLength(m_ticks[*last].part->unit))
        setCame(*last, m_ticks[*last].came + 1);
    return last;
}

void Ticks::isNotThere(const Part &part, std::int64_t amount)
{
    std::int64_t most = -amount;
    for (const Tick &tick : m_ticks)
        most += tick.isContent() || tick.part != &part ? 0 : tick.count;
    for (std::size_t row = 0; row < m_ticks.size(); ++row) {
        const Tick &tick = m_ticks[row];
        if (tick.isContent() || tick.part != &part)
            continue;
        if (tick.came > std::max<std::int64_t>(0, most))
            setCame(row, most);
        most -= m_ticks[row].came;
    }
}

std::optional<std::size_t> Ticks::wantsMark(std::size_t row) const
{
    if (row >= m_ticks.size())
        return std::nullopt;
    if (m_ticks[row].isContent() && m_ticks[row].marks == TickMark::None)
        row = *m_ticks[row].inBoxOf;
    const auto wants = [this, row](std::size_t at) {
        return m_ticks[at].part == m_ticks[row].part && m_ticks[at].marks != TickMark::None &&
               m_ticks[at].mark.empty();
    };
    for (std::size_t step = 0; step < m_ticks.size(); ++step)
        if (const std::size_t at = (row + step) % m_ticks.size(); wants(at))
            return at;
    return std::nullopt;
}

void Ticks::setMark(std::size_t row, const std::string &mark)
{
    m_ticks.at(row).mark = mark;
    if (m_ticks[row].marks == TickMark::Serial && m_ticks[row].came == 0)
        setCame(row, 1);
}

bool Ticks::isLookedInto(std::size_t piece) const
{
    return m_ticks.at(piece).came > 0 &&
           std::any_of(m_ticks.begin(), m_ticks.end(), [piece](const Tick &tick) {
               return tick.inBoxOf == piece && tick.came > 0;
           });
}

std::int64_t Ticks::lacks(std::size_t content) const
{
    const Tick &tick = m_ticks.at(content);
    if (!tick.isContent() || !isLookedInto(*tick.inBoxOf))
        return 0;
    const std::int64_t there = tick.count / tick.boxes * m_ticks[*tick.inBoxOf].came;
    return std::max<std::int64_t>(0, there - tick.came);
}

std::pair<int, int> Ticks::ticked() const
{
    const auto there = std::count_if(m_ticks.begin(), m_ticks.end(),
                                     [](const Tick &tick) { return tick.came >= tick.count; });
    return {static_cast<int>(there), static_cast<int>(m_ticks.size())};
}

void Ticks::tell(ReceivingWords &words) const
{
    std::map<const Part *, std::int64_t> came;
    for (std::size_t row = 0; row < m_ticks.size(); ++row) {
        const Tick &tick = m_ticks[row];
        if (tick.isContent() || tick.came == 0)
            continue;
        came[tick.part] += tick.came;
        tellMark(words, tick);
        if (!tick.to.empty())
            words.to.push_back(tick.part->number + '=' + tick.to);
        tellBox(words, row);
    }
    std::map<const Part *, std::int64_t> awaited;
    for (const Tick &tick : m_ticks)
        if (!tick.isContent())
            awaited[tick.part] += tick.count;
    for (const auto &[part, much] : came) {
        words.lines.push_back(part->number + ' ' + Quantity::ofSmallest(much, part->unit).text());
        words.over = words.over || much > awaited[part];
    }
    const auto lookedAll = [this](const Part *part) {
        for (std::size_t row = 0; row < m_ticks.size(); ++row)
            if (!m_ticks[row].isContent() && m_ticks[row].part == part && m_ticks[row].came > 0 &&
                !isLookedInto(row))
                return false;
        return true;
    };
    for (const auto &[part, much] : came)
        if (!part->box.empty() && lookedAll(part))
            words.complete.push_back(part->number);
}

void Ticks::tellMark(ReceivingWords &words, const Tick &tick) const
{
    const std::string &number = tick.part->number;
    if (tick.mark.empty())
        return;
    if (tick.mark == "-")
        words.unmarked.push_back(number);
    else if (tick.marks == TickMark::Serial)
        words.serials.push_back(number + '=' + tick.mark);
    else
        words.lots.push_back(number + '=' + tick.mark + '=' + amountTyped(tick, tick.came));
}

void Ticks::tellBox(ReceivingWords &words, std::size_t piece) const
{
    const Tick &of = m_ticks[piece];
    for (std::size_t row = 0; row < m_ticks.size(); ++row) {
        if (m_ticks[row].inBoxOf != piece)
            continue;
        std::string said = of.part->number + '=' + m_ticks[row].part->number;
        if (!of.mark.empty() && of.mark != "-")
            said += '=' + of.mark;
        for (std::int64_t one = lacks(row); one > 0; --one)
            words.missing.push_back(said);
    }
}

} // namespace flarestock
