// SPDX-License-Identifier: MIT

#include "model/exchange/typed/understood.h"

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"
#include "model/fluids/compatibility.h"

#include <algorithm>

namespace flarestock {

namespace {

std::vector<std::string> wordsIn(std::string_view text)
{
    std::vector<std::string> words;
    while (!(text = trimmed(text)).empty()) {
        const auto end = std::min(text.find(' '), text.size());
        words.push_back(folded(text.substr(0, end)));
        text.remove_prefix(end);
    }
    return words;
}

/// "swvl" of "swivel"; a size has to be the same but for its dash.
bool isShortFor(const std::string &typed, const std::string &whole)
{
    const auto bare = [](const std::string &word) {
        return word.starts_with('-') ? word.substr(1) : word;
    };
    if (whole.find_first_of("0123456789") != std::string::npos)
        return bare(typed) == bare(whole);
    std::size_t at = 0;
    for (const char letter : whole)
        at += at < typed.size() && typed[at] == letter ? 1 : 0;
    return !typed.empty() && at == typed.size() && typed.front() == whole.front();
}

/// So many of its first words stand for a port's, in their order.
bool isPort(const std::vector<std::string> &typed, const Port &port)
{
    const auto words = wordsIn(port.text());
    return words.size() == typed.size() &&
           std::equal(typed.begin(), typed.end(), words.begin(), isShortFor);
}

/// What a cell of this heading may be, where it is one of some words.
std::vector<std::string_view> wordsFor(const std::string &heading, const RowKnows &knows)
{
    static constexpr std::string_view YesNo[] = {"yes", "no"};
    std::vector<std::string_view> words;
    if (heading == "kind") {
        for (std::size_t at = 0; at < KindCount; ++at)
            words.push_back(text(static_cast<Kind>(at)));
    } else if (heading == "seal") {
        const auto seals = sealMaterials();
        words.assign(seals.begin(), seals.end());
    } else if (heading == "unit") {
        words = {"each", "in", "mm"};
    } else if (heading == "basis") {
        words = {"nominal", "absolute"};
    } else if (heading == "position") {
        words = {"in-line", "in-tank", "mechanical"};
    } else if (heading == "supplier") {
        for (const Supplier &supplier : knows.suppliers)
            words.push_back(supplier.id);
    } else if (heading == "suits") {
        words = {"gasoline", "E85",   "methanol", "diesel",  "engine oil",  "gear oil",
                 "DOT 3",    "DOT 4", "DOT 5",    "DOT 5.1", "water-glycol"};
    } else if (heading != "description") {
        words.assign(std::begin(YesNo), std::end(YesNo));
    }
    return words;
}

/// The item of a list cell in which a byte stands: its begin and length.
std::pair<std::size_t, std::size_t> itemAt(const std::string &cell, std::size_t byte)
{
    const std::size_t before = byte == 0 ? std::string::npos : cell.rfind(';', byte - 1);
    std::size_t begin = before == std::string::npos ? 0 : before + 1;
    while (begin < cell.size() && cell[begin] == ' ')
        ++begin;
    std::size_t end = std::min(cell.find(';', std::max(begin, byte)), cell.size());
    while (end > begin && cell[end - 1] == ' ')
        --end;
    return {begin, end - begin};
}

std::string with(const std::string &cell, const std::pair<std::size_t, std::size_t> &item,
                 const std::string &other)
{
    std::string changed = cell;
    return changed.replace(item.first, item.second, other);
}

/// Without that item and its semicolon.
std::string without(const std::string &cell, const std::pair<std::size_t, std::size_t> &item)
{
    std::string left = std::string(trimmed(cell.substr(0, item.first)));
    std::string right = std::string(trimmed(cell.substr(item.first + item.second)));
    if (right.starts_with(';'))
        right = std::string(trimmed(right.substr(1)));
    else if (left.ends_with(';'))
        left = std::string(trimmed(left.substr(0, left.size() - 1)));
    return left.empty() || right.empty() ? left + right : left + " " + right;
}

std::string portRepaired(const std::string &item)
{
    const std::size_t colon = item.find(':');
    const std::string name = colon == std::string::npos ? "a" : item.substr(0, colon);
    std::string words = colon == std::string::npos ? item : item.substr(colon + 1);
    const std::size_t open = std::min(words.find('['), words.size());
    const std::string role = words.substr(open);
    const std::string port = understoodPort(words.substr(0, open));
    if (port.empty())
        return {};
    return name + ": " + port + (role.empty() ? "" : " " + role);
}

/// What the cell could be instead, the likeliest first.
std::vector<std::string> instead(const std::string &cell, const CellFault &fault,
                                 const RowKnows &knows)
{
    std::vector<std::string> all;
    const auto item = itemAt(cell, std::min(fault.within, cell.size()));
    const std::string typed = cell.substr(item.first, item.second);
    if (fault.heading == "ports") {
        if (const std::string port = portRepaired(typed); !port.empty())
            all.push_back(with(cell, item, port));
        return all;
    }
    std::string points = cell;
    std::replace(points.begin(), points.end(), ',', '.');
    if (points != cell)
        all.push_back(points);
    const auto words = wordsFor(fault.heading, knows);
    if (const auto near = nearestWord(typed, words); !near.empty())
        all.push_back(with(cell, item, std::string(near)));
    if (typed != cell)
        all.push_back(without(cell, item));
    return all;
}

bool isWrong(const std::vector<CellFault> &faults, const std::string &heading)
{
    return std::any_of(faults.begin(), faults.end(),
                       [&](const CellFault &fault) { return fault.heading == heading; });
}

class Guess {
public:
    Guess(SheetKind kind, const RowCells &cells, const RowKnows &knows)
        : m_kind(kind), m_knows(knows), m_was(cells), m_cells(cells)
    {
    }

    /// Several things may be wrong with one cell, so each is looked at more than once.
    [[nodiscard]] bool settle()
    {
        constexpr int RoundsMost = 12;
        for (int round = 0; round < RoundsMost; ++round) {
            const auto faults = faultsOf(m_kind, m_cells, m_knows);
            if (faults.empty())
                return true;
            if (!mend(faults.front(), faults))
                return false;
        }
        return false;
    }
    [[nodiscard]] Understood result() const
    {
        Understood result{m_cells, {}};
        for (const auto &[heading, text] : m_was) {
            const std::string is = cellOf(m_cells, heading);
            if (is != text)
                result.changes.push_back({heading, text, is});
        }
        for (const auto &[heading, text] : m_cells) {
            if (!m_was.contains(heading))
                result.changes.push_back({heading, {}, text});
        }
        return result;
    }

private:
    [[nodiscard]] bool mend(const CellFault &fault, const std::vector<CellFault> &faults)
    {
        const std::string &heading = fault.heading;
        const std::string cell = cellOf(m_cells, heading);
        if (heading.empty() || cell.empty())
            return heading == "description" && describe();
        for (const std::string &other : instead(cell, fault, m_knows)) {
            RowCells tried = m_cells;
            tried[heading] = other;
            const auto left = faultsOf(m_kind, tried, m_knows);
            if (!isWrong(left, heading) || left.size() < faults.size()) {
                m_cells = std::move(tried);
                return true;
            }
        }
        const auto needed = neededHeadings(m_kind);
        if (std::find(needed.begin(), needed.end(), heading) != needed.end())
            return false;
        m_cells.erase(heading);
        return true;
    }
    /// What has no description is called by its kind and number.
    [[nodiscard]] bool describe()
    {
        if (m_kind != SheetKind::Parts || cellOf(m_cells, "part").empty())
            return false;
        m_cells["description"] = cellOf(m_cells, "kind") + " " + cellOf(m_cells, "part");
        return true;
    }

    SheetKind m_kind;
    const RowKnows &m_knows;
    const RowCells &m_was;
    RowCells m_cells;
};

} // namespace

bool Understood::leavesOut() const
{
    const auto items = [](const std::string &cell) {
        return cell.empty() ? 0 : 1 + std::count(cell.begin(), cell.end(), ';');
    };
    return std::any_of(changes.begin(), changes.end(),
                       [&](const Change &change) { return items(change.is) < items(change.was); });
}

std::string understoodPort(std::string_view typed)
{
    const auto words = wordsIn(typed);
    std::string found;
    std::size_t most = 0; // Words that are written in full count more: NPT is not short for NPTF.
    bool isAlone = false;
    for (const Port &port : everyPort()) {
        if (words.empty() || !isPort(words, port))
            continue;
        const auto whole = wordsIn(port.text());
        std::size_t same = 1;
        for (std::size_t at = 0; at < words.size(); ++at)
            same += words[at] == whole[at] ? 1 : 0;
        isAlone = same > most || (isAlone && same < most);
        if (same > most) {
            most = same;
            found = port.text();
        }
    }
    return isAlone ? found : std::string();
}

std::optional<Understood> understood(SheetKind kind, const RowCells &cells, const RowKnows &knows)
{
    Guess guess(kind, cells, knows);
    return guess.settle() ? std::optional(guess.result()) : std::nullopt;
}

} // namespace flarestock
