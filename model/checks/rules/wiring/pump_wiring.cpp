// SPDX-License-Identifier: MIT
//
// Wiring of electric pumps: the wire by what it carries and by what it loses, the fuse between the
// pump's current and its wire's limit, a relay for each pump. Wire, fuse and relay stand on the
// bill without a place, so the largest pump gets the thickest wire, the largest fuse and the
// largest relay; wire of one gauge is shared out evenly, there and back.

#include "model/checks/rules/rules.h"
#include "model/fluids/wiring/fuse.h"
#include "model/fluids/wiring/wire.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace flarestock::rules {

namespace {

constexpr double MostDropV = 0.5;
constexpr double InchM = 0.0254;
constexpr auto Limits = "FAA AC 43.13-1B, table 11-3, for wire and fuse; 1.25 × the running "
                        "current: common practice, no source";
constexpr auto Drop = "R = ρ L / A with the gauge of ASTM B258, or the resistance of FAA AC "
                      "43.13-1B, table 11-3; 0.5 V: common practice, no source";

/// "8.75", without needless noughts.
std::string number(double value)
{
    std::array<char, 32> digits{};
    const auto end =
        std::to_chars(digits.data(), digits.data() + digits.size(), std::round(value * 100) / 100);
    return std::string(digits.data(), end.ptr);
}

struct Fed {
    const PlacedStation *pump = nullptr;
    double amperes = 0;
};

std::vector<Fed> largestFirst(const Expansion &expansion)
{
    std::vector<Fed> pumps;
    for (const auto &station : expansion.stations) {
        const auto *facts = station.part ? station.part->as<PumpFacts>() : nullptr;
        if (facts != nullptr && facts->electric && facts->amps)
            pumps.push_back({&station, *facts->amps});
    }
    std::stable_sort(pumps.begin(), pumps.end(),
                     [](const Fed &a, const Fed &b) { return a.amperes > b.amperes; });
    return pumps;
}

struct Wire {
    int gauge = 0;
    double metres = 0;
};

/// What the bill has of them; nothing for what nobody says the size of.
struct OnBill {
    std::vector<Wire> wires;                   ///< Thickest first.
    std::vector<std::optional<double>> fuses;  ///< Largest first, unknown last.
    std::vector<std::optional<double>> relays; ///< The same.
    std::vector<std::string> unsaid;           ///< "the gauge of WR-10": what nobody has entered.
    bool any = false;
    bool anyWire = false;
};

void addEach(std::vector<std::optional<double>> &into, const BillLine &line)
{
    const auto *facts = line.part->as<CurrentFacts>();
    const auto count = static_cast<std::size_t>(std::max(0.0, line.need.amount.approximate()));
    into.insert(into.end(), std::min<std::size_t>(count, 100), facts ? facts->amps : std::nullopt);
}

void sizesUnsaid(const Part &part, OnBill &has)
{
    const auto *wire = part.as<WireFacts>();
    const auto *current = part.as<CurrentFacts>();
    if (part.kind == Kind::Wire && (wire == nullptr || !wire->gauge))
        has.unsaid.push_back("the gauge of " + part.number);
    if ((part.kind == Kind::Fuse || part.kind == Kind::Relay) &&
        (current == nullptr || !current->amps))
        has.unsaid.push_back("the amperes of " + part.number);
}

OnBill onBill(const Expansion &expansion)
{
    OnBill has;
    for (const auto &line : expansion.lines) {
        const Kind kind = line.part->kind;
        has.any |= kind == Kind::Wire || kind == Kind::Fuse || kind == Kind::Relay;
        has.anyWire |= kind == Kind::Wire;
        if (kind == Kind::Fuse)
            addEach(has.fuses, line);
        if (kind == Kind::Relay)
            addEach(has.relays, line);
        const auto *wire = line.part->as<WireFacts>();
        sizesUnsaid(*line.part, has);
        if (wire == nullptr || !wire->gauge || !isLength(line.need.unit))
            continue;
        const double each = line.need.unit == Unit::Inch ? InchM : 0.001;
        has.wires.push_back({*wire->gauge, line.need.amount.approximate() * each});
    }
    for (auto *sizes : {&has.fuses, &has.relays})
        std::stable_sort(sizes->begin(), sizes->end(),
                         [](const auto &a, const auto &b) { return a > b; });
    std::stable_sort(has.wires.begin(), has.wires.end(),
                     [](const Wire &a, const Wire &b) { return a.gauge < b.gauge; });
    return has;
}

/// The wire of the pump at that place in the order; those beyond the last share the last.
Wire wireOf(const OnBill &has, std::size_t place, std::size_t pumps)
{
    const std::size_t at = std::min(place, has.wires.size() - 1);
    Wire wire = has.wires[at];
    if (at + 1 == has.wires.size())
        wire.metres /= static_cast<double>(pumps - at);
    return wire;
}

/// Nothing where no figure is known for that gauge.
std::optional<double> dropV(const Wire &wire, double amperes)
{
    const auto limit = wireLimit(wire.gauge);
    if (limit && limit->ohmPerM) {
        const auto measured = measuredDropV({*limit->ohmPerM, wire.metres, amperes});
        return measured ? std::optional(*measured) : std::nullopt;
    }
    PumpWire copper;
    copper.areaM2 = gaugeAreaM2(wire.gauge).value_or(0);
    copper.thereM = wire.metres;
    copper.amperes = amperes;
    const auto drop = voltageDrop(copper);
    return drop ? std::optional(drop->volts) : std::nullopt;
}

/// The thinnest usual gauge that carries and delivers, with its fuse: "AWG 10 and a fuse of 25 A".
std::string enough(const Fed &fed, double metres)
{
    for (const int gauge : {18, 16, 14, 12, 10, 8, 6, 4}) {
        const auto window = fuseWindow(gauge, fed.amperes);
        const auto drop = dropV({gauge, metres}, fed.amperes);
        if (window && window->fuseA && drop && *drop <= MostDropV)
            return "AWG " + std::to_string(gauge) + " and a fuse of " + number(*window->fuseA) +
                   " A";
    }
    return "a shorter way and wire thicker than AWG 4";
}

Finding about(const Fed &fed, Severity severity, const std::string &what)
{
    return {.severity = severity,
            .matter = Matter::Assembly,
            .about = BuildUnderCheck::capital(BuildUnderCheck::named(*fed.pump)) + ": " + what,
            .where = fed.pump->id,
            .text = "It draws " + number(fed.amperes) + " A.",
            .source = Limits,
            .remedy = {},
            .mend = {}};
}

/// False where the wire is too thin for any fuse, so that the fuse is no cause of its own.
bool wireCarries(const Fed &fed, const Wire &wire, Findings &found)
{
    const auto limit = wireLimit(wire.gauge);
    const auto drop = dropV(wire, fed.amperes);
    const std::string gauge = "AWG " + std::to_string(wire.gauge);
    const bool tooThin = limit && 1.25 * fed.amperes > limit->fuseA;
    if (!tooThin && (!drop || *drop <= MostDropV))
        return true;
    const auto severity = limit && fed.amperes > limit->fuseA ? Severity::Stop : Severity::Caution;
    auto finding = about(fed, severity,
                         gauge + (tooThin ? " is too thin for it" : " loses too much on the way"));
    if (tooThin)
        finding.text += " " + gauge + " is guarded by " + number(limit->fuseA) +
                        " A at most, and a fuse for it begins at " + number(1.25 * fed.amperes) +
                        " A.";
    if (drop)
        finding.text += " Over " + number(wire.metres) + " m, there and back, the wire takes " +
                        number(*drop) + " V of its voltage; " + number(MostDropV) + " V is usual.";
    finding.source = tooThin ? std::string(Limits) + "; " + Drop : std::string(Drop);
    finding.remedy = "Use " + enough(fed, wire.metres) + ".";
    found.push_back(std::move(finding));
    return !tooThin;
}

void fuse(const Fed &fed, const std::optional<double> &amperes, const Wire &wire, Findings &found)
{
    const auto window = fuseWindow(wire.gauge, fed.amperes);
    if (!window || !amperes || (*amperes >= window->fromA && *amperes <= window->toA))
        return;
    const bool tooLarge = *amperes > window->toA;
    auto finding = about(fed, tooLarge ? Severity::Stop : Severity::Caution,
                         "a fuse of " + number(*amperes) +
                             (tooLarge ? " A does not guard its wire" : " A will blow"));
    finding.text += " Its fuse belongs between " + number(window->fromA) + " and " +
                    number(window->toA) + " A, the limit of AWG " + std::to_string(wire.gauge) +
                    (tooLarge ? "; with a larger one the wire burns first." : ".");
    finding.remedy = "Use " + enough(fed, wire.metres) + ".";
    found.push_back(std::move(finding));
}

void relay(const Fed &fed, const OnBill &has, std::size_t place, Findings &found)
{
    if (place >= has.relays.size()) {
        auto finding = about(fed, Severity::Caution, "no relay is on the bill for it");
        finding.text += " A switch or a control unit that carries it all burns its contacts.";
        finding.source = "common practice, no source";
        finding.remedy = "Switch each pump by a relay of its own, close to the battery.";
        found.push_back(std::move(finding));
        return;
    }
    const auto amperes = has.relays[place];
    if (!amperes || *amperes >= 1.25 * fed.amperes)
        return;
    auto finding =
        about(fed, Severity::Caution, "a relay of " + number(*amperes) + " A is too small for it");
    finding.source = "1.25 × the running current: common practice, no source";
    finding.remedy = "Use one of " + number(1.25 * fed.amperes) + " A or more.";
    found.push_back(std::move(finding));
}

/// Where the template leaves the wiring out: what it would take, without a length.
void notOnBill(const Fed &fed, Findings &found)
{
    auto finding = about(fed, Severity::Note, "its wiring is not on the bill");
    finding.text += " Over a short way that is " + enough(fed, 1) + ", and a relay of " +
                    number(1.25 * fed.amperes) + " A or more.";
    finding.remedy = "Measure the way there and back, and choose the gauge by its loss too.";
    found.push_back(std::move(finding));
}

/// What nobody has entered, once for the build.
void notKnown(const BuildUnderCheck &build, const OnBill &has, Findings &found)
{
    std::vector<std::string> unsaid;
    bool electric = false;
    for (const auto &station : build.expansion().stations) {
        const auto *facts = station.part ? station.part->as<PumpFacts>() : nullptr;
        if (facts == nullptr || !facts->electric)
            continue;
        electric = true;
        if (!facts->amps)
            unsaid.push_back("what " + BuildUnderCheck::named(station) + " draws");
    }
    if (!electric)
        return;
    unsaid.insert(unsaid.end(), has.unsaid.begin(), has.unsaid.end());
    if (has.any && !has.anyWire)
        unsaid.emplace_back("its wire, of which none is on the bill");
    if (unsaid.empty())
        return;
    found.push_back({.severity = Severity::Note,
                     .matter = Matter::Assembly,
                     .about = "The wiring could not be judged in full",
                     .where = {},
                     .text = "Not known: " + listed(unsaid) + ".",
                     .source = "the catalogue and the bill",
                     .remedy = "Enter what the makers publish, or measure the pump's current.",
                     .mend = {}});
}

} // namespace

void pumpWiring(const BuildUnderCheck &build, Findings &found)
{
    const auto pumps = largestFirst(build.expansion());
    const auto has = onBill(build.expansion());
    notKnown(build, has, found);
    for (std::size_t place = 0; place < pumps.size(); ++place) {
        const Fed &fed = pumps[place];
        if (!has.any) {
            notOnBill(fed, found);
            continue;
        }
        if (place >= has.fuses.size()) {
            auto finding = about(fed, Severity::Stop, "no fuse is on the bill for it");
            finding.text += " Without one a chafed wire burns.";
            finding.remedy = "Put a fuse into its feed, close to the battery.";
            found.push_back(std::move(finding));
        }
        if (!has.wires.empty()) {
            const Wire wire = wireOf(has, place, pumps.size());
            const bool carries = wireCarries(fed, wire, found);
            if (carries && place < has.fuses.size())
                fuse(fed, has.fuses[place], wire, found);
        }
        relay(fed, has, place, found);
    }
}

} // namespace flarestock::rules
