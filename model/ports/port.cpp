// SPDX-License-Identifier: MIT

#include "model/ports/port.h"

#include "model/exact/case_fold.h"
#include "model/ports/size_table.h"

#include <array>
#include <charconv>

namespace flarestock {

namespace {

constexpr std::array<std::string_view, FamilyCount> FamilyWords{
    "AN",     "JIC",    "ORB",    "ORFS",  "SAE45", "INV",  "BUBBLE",  "NPT",
    "NPTF",   "BSPP",   "BSPP60", "JIS60", "JIS30", "BSPT", "ISO6149", "METRIC",
    "DIN24L", "DIN24S", "QC",     "BARB",  "TUBE",  "HOSE", "BANJO",   "WELD"};
static_assert(static_cast<std::size_t>(Family::Weld) + 1 == FamilyCount,
              "FamilyCount counts the families");
static_assert(!FamilyWords.back().empty(), "every family has a word");

constexpr std::array<std::string_view, 6> AidWords{"o-ring",       "sealant", "washer",
                                                   "crush washer", "sleeve",  "clamp"};
static_assert(AidWords.size() == static_cast<std::size_t>(Aid::Clamp) + 1, "every aid has a word");

std::string_view genderWord(Gender gender)
{
    return gender == Gender::Male ? " male" : gender == Gender::Female ? " female" : "";
}

std::string_view turningWord(Turning turning)
{
    switch (turning) {
    case Turning::Swivel:
        return " swivel";
    case Turning::Adjustable:
        return " adjustable";
    case Turning::Nut:
        return " nut";
    case Turning::Fixed:
        break;
    }
    return "";
}

/// The ways in which ports of a family are made, for sweeps.
std::vector<std::pair<Gender, Turning>> waysOf(Family family)
{
    switch (family) {
    case Family::Barb:
    case Family::Tube:
    case Family::Banjo:
    case Family::Weld:
        return {{Gender::None, Turning::Fixed}};
    case Family::InvertedFlare:
    case Family::Bubble:
        return {{Gender::Male, Turning::Fixed},
                {Gender::Male, Turning::Nut},
                {Gender::Female, Turning::Fixed}};
    case Family::An:
    case Family::Jic:
    case Family::Sae45:
    case Family::Din24L:
    case Family::Din24S:
        return {{Gender::Male, Turning::Fixed},
                {Gender::Female, Turning::Fixed},
                {Gender::Female, Turning::Swivel},
                {Gender::Female, Turning::Nut}};
    case Family::Orb:
    case Family::Iso6149:
        return {{Gender::Male, Turning::Fixed},
                {Gender::Male, Turning::Adjustable},
                {Gender::Female, Turning::Fixed}};
    case Family::Orfs:
    case Family::Npt:
    case Family::Nptf:
    case Family::Bspp:
    case Family::Bspp60:
    case Family::Jis60:
    case Family::Jis30:
    case Family::Bspt:
    case Family::Metric:
    case Family::QuickConnect:
    case Family::Hose: // Left out of sweeps: see everyPort().
        break;
    }
    return {{Gender::Male, Turning::Fixed},
            {Gender::Female, Turning::Fixed},
            {Gender::Female, Turning::Swivel}};
}

} // namespace

std::string_view text(Aid aid) noexcept
{
    return AidWords[static_cast<std::size_t>(aid)];
}

Result<Aid> parseAid(std::string_view typed)
{
    std::string word = folded(trimmed(typed));
    if (word == "oring" || word == "o ring" || word == "ring")
        word = "o-ring";
    if (word == "bonded washer")
        word = "washer";
    if (word == "crush washers" || word == "copper washer" || word == "crush washer x 2")
        word = "crush washer";
    for (std::size_t i = 0; i < AidWords.size(); ++i) {
        if (AidWords[i] == word)
            return static_cast<Aid>(i);
    }
    return problem("aid \"" + std::string(trimmed(typed)) + "\"", "is not known",
                   "Write o-ring, sealant, washer, crush washer, sleeve or clamp.");
}

std::string_view text(Family family) noexcept
{
    return FamilyWords[static_cast<std::size_t>(family)];
}

std::string Port::text() const
{
    std::string said(flarestock::text(family));
    if (!construction.empty())
        said += " " + construction;
    said += " " + size;
    said += genderWord(gender);
    said += turningWord(turning);
    return said;
}

Result<End> parseEnd(std::string_view typed)
{
    const auto plus = typed.find('+');
    auto port = Port::parse(typed.substr(0, plus));
    if (!port)
        return tl::unexpected(port.error());
    End end{std::move(*port), {}};
    while (!typed.empty()) {
        const auto next = typed.find('+');
        if (next == std::string_view::npos)
            break;
        typed.remove_prefix(next + 1);
        auto aid = parseAid(typed.substr(0, typed.find('+')));
        if (!aid)
            return tl::unexpected(aid.error());
        end.aids.push_back(*aid);
    }
    return end;
}

int dash(const Port &port) noexcept
{
    if (port.size.size() < 2 || port.size.front() != '-')
        return 0;
    int value = 0;
    std::from_chars(port.size.data() + 1, port.size.data() + port.size.size(), value);
    return value;
}

const std::vector<Port> &everyPort()
{
    static const std::vector<Port> all = [] {
        std::vector<Port> ports;
        for (const auto &row : sizeRows()) {
            if (row.family == Family::Hose)
                continue;
            for (const auto &[gender, turning] : waysOf(row.family))
                ports.push_back({row.family, row.size, {}, gender, turning});
        }
        return ports;
    }();
    return all;
}

} // namespace flarestock
