// SPDX-License-Identifier: MIT

#include "app/desk/template/form/fresh_paragraph.h"

#include "model/exchange/editing/toml_literal.h"

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

std::string saidBy(const TomlValue *table, std::string_view key)
{
    const TomlEntry *const entry = table == nullptr ? nullptr : table->find(key);
    return entry == nullptr ? std::string() : entry->value.text;
}

std::string line(std::string_view key, const std::string &text)
{
    return std::string(key) + " = " + tomlText(text);
}

/// "station", or "station-2" where that is taken: stations and modules share their names.
std::string freeName(const FreshFrom &from, Paragraph kind)
{
    std::set<std::string> taken;
    for (const Paragraph one :
         {Paragraph::Station, Paragraph::Module, Paragraph::Run, Paragraph::Question}) {
        for (std::size_t at = 0; at < countOf(one, from.root); ++at)
            taken.insert(saidBy(ParagraphAt{one, at}.in(from.root), "id"));
    }
    const std::string name(headerOf(kind));
    for (int number = 2;; ++number) {
        const std::string tried = name + '-' + std::to_string(number);
        if (!taken.contains(name))
            return name;
        if (!taken.contains(tried))
            return tried;
    }
}

std::string stationAt(const FreshFrom &from, std::size_t at)
{
    return saidBy(ParagraphAt{Paragraph::Station, at}.in(from.root), "id");
}

/// A port of what stands there that no run has yet; "out" or "in" where nothing is known of it.
std::string freePort(const FreshFrom &from, const std::string &station, PortRole wanted)
{
    std::set<std::string> used;
    for (std::size_t at = 0; at < countOf(Paragraph::Run, from.root); ++at) {
        const TomlValue *const run = ParagraphAt{Paragraph::Run, at}.in(from.root);
        used.insert(saidBy(run, "from"));
        used.insert(saidBy(run, "to"));
    }
    const PlacedStation *const placed =
        from.drawn == nullptr ? nullptr : from.drawn->station(station);
    if (placed != nullptr && placed->part != nullptr) {
        for (const bool asWanted : {true, false}) {
            for (const PartPort &port : placed->part->ports)
                if ((port.role == wanted) == asWanted && !used.contains(station + '.' + port.name))
                    return station + '.' + port.name;
        }
    }
    return station + (wanted == PortRole::Out ? ".out" : ".in");
}

/// From the station in hand, or the last but one, to the next.
std::string freshRun(const FreshFrom &from)
{
    const std::size_t count = countOf(Paragraph::Station, from.root);
    std::size_t begin =
        from.behind.kind == Paragraph::Station ? from.behind.index : (count > 1 ? count - 2 : 0);
    if (begin + 1 >= count && begin > 0)
        --begin;
    const std::size_t end = count > 1 ? begin + 1 : begin;
    const std::string level = saidBy(ParagraphAt{Paragraph::Station, end}.in(from.root), "level");
    return line("level", level.empty() ? "pressure" : level) + '\n' +
           line("from", freePort(from, stationAt(from, begin), PortRole::Out)) + '\n' +
           line("to", freePort(from, stationAt(from, end), PortRole::In)) + '\n' +
           line("length", "2 ft") + '\n' + line("dash", "-8");
}

std::string freshStation(const FreshFrom &from)
{
    const std::string level = saidBy(
        from.behind.kind == Paragraph::Station ? from.behind.in(from.root) : nullptr, "level");
    return line("title", "new station") + '\n' + line("kind", "filter") + '\n' +
           line("level", level.empty() ? "pressure" : level);
}

std::string freshModule(const FreshFrom &from)
{
    const std::string own = saidBy(&from.root, "id");
    std::string inside;
    for (std::size_t at = 0;
         from.workshop != nullptr && inside.empty() && at < from.workshop->templates->size();
         ++at) {
        const auto one =
            std::next(from.workshop->templates->begin(), static_cast<std::ptrdiff_t>(at));
        if (one->first != own && one->second->modules.empty())
            inside = one->first;
    }
    return line("template", inside);
}

std::string freshExtra(const FreshFrom &from)
{
    std::string number;
    if (from.workshop != nullptr) {
        for (const Part &part : from.workshop->catalogue.parts())
            if (part.kind == Kind::Tool && (number.empty() || part.number < number))
                number = part.number;
    }
    return line("part", number) + "\ncount = 1\n" + line("why", "what it is for");
}

} // namespace

std::string freshParagraph(Paragraph kind, const FreshFrom &from)
{
    const std::string id = line("id", freeName(from, kind)) + '\n';
    switch (kind) {
    case Paragraph::Question:
        return id + line("title", "new question") + '\n' + line("form", "yes/no") + '\n' +
               line("default", "no");
    case Paragraph::Station:
        return id + freshStation(from);
    case Paragraph::Run:
        return id + freshRun(from);
    case Paragraph::Module:
        return id + freshModule(from);
    default:
        return freshExtra(from);
    }
}

std::string likelyCondition(const TomlValue &root, const ParagraphAt &at)
{
    const std::size_t questions =
        at.kind == Paragraph::Question ? at.index : countOf(Paragraph::Question, root);
    std::string yesNo;
    for (std::size_t i = questions; i-- > 0;) {
        const TomlValue *const asked = ParagraphAt{Paragraph::Question, i}.in(root);
        const TomlEntry *const choices = asked == nullptr ? nullptr : asked->find("choices");
        const std::string id = saidBy(asked, "id");
        if (saidBy(asked, "form") == "choice" && choices != nullptr &&
            !choices->value.items.empty())
            return id + " is " + choices->value.items.front().text;
        if (saidBy(asked, "form") == "yes/no" && yesNo.empty())
            yesNo = id + " is yes";
    }
    return yesNo.empty() ? "question is answer" : yesNo;
}

} // namespace flarestock
