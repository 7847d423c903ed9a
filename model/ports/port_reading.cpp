// SPDX-License-Identifier: MIT
//
// Reading a port as people type it: family, size, gender, how it turns. Case, blanks, leading zeros
// and a handful of the trade's other spellings are forgiven; what is left over is not.

#include "model/exact/case_fold.h"
#include "model/exact/nearest_word.h"
#include "model/ports/size_table.h"

#include <algorithm>
#include <array>
#include <cctype>

namespace flarestock {

namespace {

struct Alias {
    std::string_view typed;
    Family family;
};
/// Longest first where one begins another.
constexpr std::array<Alias, 34> Aliases{{{"INVERTED FLARE", Family::InvertedFlare},
                                         {"QUICK CONNECT", Family::QuickConnect},
                                         {"ISO 6149", Family::Iso6149},
                                         {"ISO-6149", Family::Iso6149},
                                         {"ISO6149", Family::Iso6149},
                                         {"BUBBLE", Family::Bubble},
                                         {"BSPP 60", Family::Bspp60},
                                         {"BSPP60", Family::Bspp60},
                                         {"DIN 24L", Family::Din24L},
                                         {"DIN 24S", Family::Din24S},
                                         {"DIN24L", Family::Din24L},
                                         {"DIN24S", Family::Din24S},
                                         {"METRIC", Family::Metric},
                                         {"SAE 45", Family::Sae45},
                                         {"SAE-45", Family::Sae45},
                                         {"SAE45", Family::Sae45},
                                         {"BANJO", Family::Banjo},
                                         {"JIS 60", Family::Jis60},
                                         {"JIS 30", Family::Jis30},
                                         {"JIS60", Family::Jis60},
                                         {"JIS30", Family::Jis30},
                                         {"NPTF", Family::Nptf},
                                         {"ORFS", Family::Orfs},
                                         {"BSPP", Family::Bspp},
                                         {"BSPT", Family::Bspt},
                                         {"BARB", Family::Barb},
                                         {"TUBE", Family::Tube},
                                         {"HOSE", Family::Hose},
                                         {"WELD", Family::Weld},
                                         {"NPT", Family::Npt},
                                         {"JIC", Family::Jic},
                                         {"ORB", Family::Orb},
                                         {"INV", Family::InvertedFlare},
                                         {"QC", Family::QuickConnect}}};

std::string tidied(std::string_view typed)
{
    std::string tidy;
    for (const char letter : trimmed(typed)) {
        const bool blank = letter == ' ' || letter == '\t' || letter == '_';
        if (!blank)
            tidy += static_cast<char>(std::toupper(static_cast<unsigned char>(letter)));
        else if (!tidy.empty() && tidy.back() != ' ')
            tidy += ' ';
    }
    return tidy;
}

std::optional<Family> takeFamily(std::string &rest)
{
    for (const auto &alias : Aliases) {
        if (rest.starts_with(alias.typed)) {
            const bool whole =
                rest.size() == alias.typed.size() ||
                std::isalpha(static_cast<unsigned char>(rest[alias.typed.size()])) == 0;
            if (!whole && alias.family != Family::Metric)
                continue;
            rest.erase(0, alias.typed.size());
            return alias.family;
        }
    }
    if (rest.starts_with("AN") &&
        (rest.size() == 2 || std::isalpha(static_cast<unsigned char>(rest[2])) == 0)) {
        rest.erase(0, 2);
        return Family::An;
    }
    return {};
}

/// "-6 AN MALE" as "AN -6 MALE": the size first is how some people say it.
std::string familyFirst(const std::string &text)
{
    const auto blank = text.find(' ');
    if (blank == std::string::npos || text.empty() ||
        (text[0] != '-' && std::isdigit(static_cast<unsigned char>(text[0])) == 0))
        return text;
    std::string rest = text.substr(blank + 1);
    const auto before = rest;
    if (!takeFamily(rest))
        return text;
    return before.substr(0, before.size() - rest.size()) + " " + text.substr(0, blank) + rest;
}

bool takeWord(std::string &rest, std::string_view word)
{
    if (rest == word) {
        rest.clear();
        return true;
    }
    const std::string tail = " " + std::string(word);
    if (!rest.ends_with(tail))
        return false;
    rest.erase(rest.size() - tail.size());
    return true;
}

void takeWords(std::string &rest, Port &port)
{
    static constexpr std::array<std::pair<std::string_view, Gender>, 4> Genders{
        {{"FEMALE", Gender::Female},
         {"MALE", Gender::Male},
         {"F", Gender::Female},
         {"M", Gender::Male}}};
    static constexpr std::array<std::pair<std::string_view, Turning>, 5> Turnings{
        {{"SWIVEL", Turning::Swivel},
         {"ADJUSTABLE", Turning::Adjustable},
         {"NUT", Turning::Nut},
         {"FIXED", Turning::Fixed},
         {"PORT", Turning::Fixed}}};
    for (bool taken = true; taken;) {
        taken = false;
        for (const auto &[word, gender] : Genders) {
            if (port.gender == Gender::None && takeWord(rest, word)) {
                port.gender = gender;
                taken = true;
            }
        }
        for (const auto &[word, turning] : Turnings) {
            if (takeWord(rest, word)) {
                port.turning = turning;
                taken = true;
            }
        }
    }
}

bool isNumberedByDash(Family family)
{
    return family == Family::An || family == Family::Jic || family == Family::Orb ||
           family == Family::Orfs || family == Family::Sae45 || family == Family::Hose ||
           family == Family::Weld;
}

/// "-06", "6", "#6" as "-6"; "3/8" of a tube as the dash of its sixteenths; else as it is.
std::string dashSpelt(std::string text)
{
    std::erase(text, ' ');
    const auto digits = text.find_first_not_of("-#");
    if (digits == std::string::npos)
        return text;
    std::string number = text.substr(digits);
    if (number.find('/') != std::string::npos) {
        const auto inches = inchesOf(number);
        const double sixteenths = inches ? *inches * 16 : 0;
        if (sixteenths > 0 && sixteenths == static_cast<int>(sixteenths))
            return "-" + std::to_string(static_cast<int>(sixteenths));
        return text;
    }
    number.erase(0, std::min(number.find_first_not_of('0'), number.size()));
    return "-" + number;
}

/// "1-1/4" and "1 1/4 IN" as "1 1/4"; "8MM" as "8 mm".
std::string fractionSpelt(std::string text)
{
    for (const std::string_view unit : {" INCH", " IN", "\"", "INCH"}) {
        if (text.ends_with(unit))
            text.erase(text.size() - unit.size());
    }
    if (text.ends_with("MM")) {
        text.erase(text.size() - 2);
        std::erase(text, ' ');
        return text + " mm";
    }
    if (text.find('/') != std::string::npos)
        std::replace(text.begin(), text.end(), '-', ' ');
    return text;
}

std::string invertedSpelt(const std::string &text)
{
    const auto blank = text.find(' ');
    const auto tube = text.substr(0, blank);
    if (blank == std::string::npos)
        return tube;
    const auto thread = threadSpelt(text.substr(blank + 1));
    const auto *usual = findSize(Family::InvertedFlare, tube);
    if (!thread || usual == nullptr)
        return text;
    return *thread == usual->thread->name ? tube : tube + " " + *thread;
}

std::string sizeSpelt(Family family, std::string text)
{
    if (isNumberedByDash(family))
        return dashSpelt(std::move(text));
    if (family == Family::InvertedFlare)
        return invertedSpelt(text);
    const bool pipe = family == Family::Npt || family == Family::Nptf || family == Family::Bspp ||
                      family == Family::Bspp60 || family == Family::Bspt ||
                      family == Family::Jis30 || family == Family::Jis60;
    if (pipe && !text.empty() && (text[0] == 'G' || text[0] == 'R'))
        text.erase(0, text.size() > 1 && (text[1] == 'C' || text[1] == 'P') ? 2 : 1);
    if ((family == Family::Din24L || family == Family::Din24S) && !text.empty() &&
        (text.back() == 'L' || text.back() == 'S'))
        text.pop_back();
    if (const auto thread = threadSpelt(text); thread && !pipe)
        return *thread;
    return fractionSpelt(std::string(trimmed(text)));
}

bool hasNoGender(Family family)
{
    return family == Family::Barb || family == Family::Tube || family == Family::Hose ||
           family == Family::Banjo || family == Family::Weld;
}

tl::unexpected<Problem> sizeUnknown(const Port &port, std::string_view typed)
{
    std::string sizes;
    int count = 0;
    for (const auto &row : sizeRows()) {
        if (row.family == port.family && ++count <= 16)
            sizes += (sizes.empty() ? "" : ", ") + row.size;
    }
    return problem("port \"" + std::string(trimmed(typed)) + "\"",
                   port.size.empty() ? "has no size"
                                     : std::string(text(port.family)) + " has no size " + port.size,
                   "Its sizes are " + sizes + (count > 16 ? " and larger." : "."));
}

} // namespace

Result<Port> Port::parse(std::string_view typed)
{
    const auto thing = "port \"" + std::string(trimmed(typed)) + "\"";
    std::string rest = familyFirst(tidied(typed));
    Port port;
    const auto family = takeFamily(rest);
    if (!family)
        return problem(thing, "begins with no family of ports",
                       "Write one like AN -6 male, ORB -8 female, NPT 1/4 male, BARB 3/8.");
    port.family = *family;
    rest = trimmed(rest);
    takeWords(rest, port);
    if (port.family == Family::Hose) {
        const auto last = rest.rfind(' ');
        if (last == std::string::npos)
            return problem(thing, "lacks its construction or its dash",
                           "Write it like HOSE PTFE-S -8.");
        port.construction = rest.substr(0, last);
        rest.erase(0, last + 1);
    }
    port.size = sizeSpelt(port.family, rest);
    if (sizeOf(port) == nullptr)
        return sizeUnknown(port, typed);
    if (hasNoGender(port.family) != (port.gender == Gender::None))
        return problem(thing,
                       hasNoGender(port.family) ? "has a gender, which this form has not"
                                                : "has no gender",
                       hasNoGender(port.family) ? "Leave male or female out."
                                                : "Write male or female behind the size.");
    return port;
}

} // namespace flarestock
