// SPDX-License-Identifier: MIT

#include "app/stockroom/stock_line.h"

#include "app/stockroom/asked.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

bool answers(const StockLine &line, std::string_view wanted)
{
    std::string all = line.part->number + " " + line.part->description + " " +
                      std::string(text(line.part->kind)) + " " + line.key.place + " " +
                      line.key.lot;
    for (const auto &port : line.part->ports)
        all += " " + port.port.text();
    return holdsWords(all, wanted);
}

void addLotFacts(StockLine &line, const LotBook &lots, std::string_view day)
{
    const auto found = lots.find(LotKey{line.key.part, line.key.lot});
    if (found == lots.end())
        return;
    line.forCar = found->second.owner;
    for (const std::string &last : {found->second.useBy, found->second.certified}) {
        if (!day.empty() && !last.empty() && last < day) // Days sort as they follow each other.
            line.useBy = last;
    }
}

StockLine lineOf(const Part &part, const std::pair<const BalanceKey, Balance> &held,
                 const PromisedTo &promised)
{
    StockLine line{&part, held.first, held.second.quantity, 0, {}, {}, {}};
    if (const auto there = promised.find(held.first); there != promised.end())
        line.promisedTo = there->second;
    std::erase_if(line.promisedTo, [](const auto &one) { return one.second == 0; });
    return line;
}

} // namespace

bool holdsWords(const std::string &said, std::string_view wanted)
{
    const std::string all = folded(said);
    while (!(wanted = trimmed(wanted)).empty()) {
        const auto blank = std::min(wanted.find(' '), wanted.size());
        if (all.find(folded(wanted.substr(0, blank))) == std::string::npos)
            return false;
        wanted.remove_prefix(blank);
    }
    return true;
}

std::int64_t StockLine::promised() const noexcept
{
    std::int64_t sum = 0;
    for (const auto &[build, quantity] : promisedTo)
        sum += quantity;
    return sum;
}

std::string StockLine::notFreeBecause() const
{
    std::string why;
    const auto add = [&why](const std::string &more) { why += (why.empty() ? "" : "; ") + more; };
    if (!isFree(key.condition))
        add(std::string(text(key.condition)));
    if (!forCar.empty())
        add(forCar + "'s");
    if (!useBy.empty())
        add("past its day " + useBy);
    for (const auto &[build, quantity] : promisedTo)
        add(spoken(quantity, *part) + " promised to " + build);
    return why;
}

std::vector<StockLine> stockLines(const Workshop &workshop, std::string_view find,
                                  std::string_view day)
{
    std::vector<StockLine> lines;
    const Part *before = nullptr;
    PromisedTo promised;
    for (const auto &held : workshop.ledger.balances()) {
        const auto &key = held.first;
        const Part *part = workshop.part(key.part);
        const Place *place = workshop.ledger.place(key.place);
        if (!part || !place || !isStock(place->kind) || held.second.quantity <= 0)
            continue;
        if (part != before)
            promised = workshop.ledger.promisedTo(*part, workshop.bars);
        before = part;
        StockLine line = lineOf(*part, held, promised);
        addLotFacts(line, workshop.notes.lots, day);
        if (isFree(key.condition) && line.forCar.empty() && line.useBy.empty())
            line.free = line.onHand - line.promised();
        if (answers(line, find))
            lines.push_back(std::move(line));
    }
    return lines;
}

} // namespace flarestock
