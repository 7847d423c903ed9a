// SPDX-License-Identifier: MIT

#include "bench_shop.h"

#include "bench_parts.h"
#include "model/joints/meeting.h"

#include <algorithm>

namespace flarestock {

namespace {

/// Everything that a worked-out bench build points to.
struct Bench {
    Catalogue catalogue = benchCatalogue();
    Shelf shelf = benchShelf();
    std::shared_ptr<const Template> form = benchTemplate();
    Expansion expansion;
    std::optional<PricedBill> bill;
    std::vector<Finding> findings;
};

Link linkOf(const Port &a, const Port &b)
{
    return {a, b, isCutEnd(b) ? holding(b) : meeting(a, b)};
}

/// The way through these pieces, each entered by its first port that the list leaves free.
Way wayThrough(const Bench &bench, const PlacedJoint &joint, const std::vector<std::string> &names)
{
    Way way;
    Port at = joint.from;
    for (const std::string &name : names) {
        const Part *part = bench.catalogue.find(name);
        const PartPort *in = &part->ports.front();
        const PartPort *out = &part->ports.back();
        if (part->kind == Kind::HoseEnd)
            std::swap(in, out);
        way.links.push_back(linkOf(at, in->port));
        for (const Need &need : way.links.back().mating.needs)
            way.aids.push_back({need, bench.catalogue.find("RI-908")});
        way.pieces.push_back({part, in->name, out->name});
        at = out->port;
        const auto stock = bench.shelf.find(name);
        const bool here = stock != bench.shelf.end();
        way.toBuy += here ? 0 : 1;
        way.cost += here ? Decimal::parse("7.500000").value() : Decimal::parse("12.34").value();
    }
    if (joint.id.rfind("plug:", 0) != 0)
        way.links.push_back(linkOf(at, joint.to));
    return way;
}

std::vector<std::string> numbersOf(const std::string &pick)
{
    std::vector<std::string> numbers;
    std::size_t at = 0;
    while (at < pick.size()) {
        const std::size_t plus = std::min(pick.find(" + ", at), pick.size());
        numbers.push_back(pick.substr(at, plus - at));
        at = plus + 3;
    }
    return numbers;
}

struct JointPlan {
    std::string id;
    std::string at;
    std::string station;
    std::vector<std::vector<std::string>> ways; ///< The first is in use.
};

class BenchWork {
public:
    BenchWork(std::shared_ptr<Bench> bench, const BuildPlan &plan)
        : m_bench(std::move(bench)), m_plan(plan)
    {
    }
    void stations();
    void run(const std::string &id, Level level, const std::string &places, int dash);
    void close(const JointPlan &joint);
    void lines();
    void findings();

private:
    Expansion &expansion() { return m_bench->expansion; }
    void need(const Part *part, const Decimal &count, const std::string &why,
              const std::string &station);

    std::shared_ptr<Bench> m_bench;
    const BuildPlan &m_plan;
};

void BenchWork::stations()
{
    const std::map<std::string, std::string> parts = {{"cell", "CL-60"},  {"prefilter", "PF-100"},
                                                      {"pump", "PU-460"}, {"postfilter", "MF-10"},
                                                      {"rail", "RA-6"},   {"regulator", "RG-43"}};
    for (const Station &station : m_bench->form->stations) {
        PlacedStation placed;
        placed.id = station.id;
        placed.station = &station;
        const auto pick = m_plan.picks.find(station.id);
        placed.picked = pick != m_plan.picks.end();
        placed.part = m_bench->catalogue.find(placed.picked ? pick->second : parts.at(station.id));
        placed.why = "the " + station.title + " of a bench build";
        if (station.id == "prefilter")
            placed.others = {m_bench->catalogue.find("MF-10")};
        expansion().stations.push_back(placed);
    }
}

void BenchWork::run(const std::string &id, Level level, const std::string &places, int dash)
{
    (void)level;
    PlacedRun run;
    run.id = id;
    run.from = places.substr(0, places.find('>'));
    run.to = places.substr(places.find('>') + 1);
    run.dash = dash;
    const Part *asked = m_bench->catalogue.find("HO-" + std::to_string(dash));
    const auto pick = m_plan.picks.find(id);
    run.picked = pick != m_plan.picks.end();
    run.line = run.picked ? m_bench->catalogue.find(pick->second) : asked;
    run.better = run.line == asked ? nullptr : asked;
    run.wanted = "hose -" + std::to_string(dash);
    for (const char *other : {"HO-6", "HO-8", "HO-10"}) {
        if (run.line->number != other)
            run.others.push_back(m_bench->catalogue.find(other));
    }
    run.length = {Decimal(id == "return" ? 144 : 66), Unit::Inch};
    run.joints = {id + ".start", id + ".end"};
    expansion().runs.push_back(run);
}

void BenchWork::close(const JointPlan &planned)
{
    PlacedJoint joint;
    joint.id = planned.id;
    joint.at = planned.at;
    joint.station = planned.station;
    joint.run = planned.id.substr(0, planned.id.find('.'));
    const PlacedRun *run = expansion().run(joint.run);
    const PlacedStation *station = expansion().station(planned.station);
    const std::string port = planned.at.substr(planned.at.find(' ') + 1);
    const PartPort *end = station->part->port(port);
    joint.from = end != nullptr ? end->port : Port{};
    if (run != nullptr)
        joint.to = run->line->ports.front().port;
    const auto pick = m_plan.picks.find(joint.id);
    joint.picked = pick != m_plan.picks.end();
    std::vector<std::vector<std::string>> ways = planned.ways;
    if (joint.picked) {
        joint.outdone = !ways.empty() && numbersOf(pick->second) != ways.front();
        ways.insert(ways.begin(), numbersOf(pick->second));
    }
    for (std::size_t at = 0; at < ways.size(); ++at) {
        const Way way = wayThrough(*m_bench, joint, ways[at]);
        if (at == 0)
            joint.way = way;
        else if (way.key() != joint.way->key())
            joint.others.push_back(way);
    }
    expansion().joints.push_back(joint);
}

void BenchWork::need(const Part *part, const Decimal &count, const std::string &why,
                     const std::string &station)
{
    auto &lines = expansion().lines;
    auto found = std::find_if(lines.begin(), lines.end(),
                              [part](const BillLine &line) { return line.part == part; });
    if (found == lines.end()) {
        BillLine line;
        line.part = part;
        line.need = {Decimal(0), part->unit};
        line.consumed = part->consumed;
        found = lines.insert(lines.end(), line);
    }
    found->need.amount += count;
    found->why.push_back(why);
    if (part->unit == Unit::Inch)
        found->cuts.push_back({count, Unit::Inch});
    if (!station.empty())
        found->stations.push_back(station);
}

void BenchWork::lines()
{
    for (const PlacedStation &station : expansion().stations)
        need(station.part, 1, station.station->title, station.id);
    for (const PlacedRun &run : expansion().runs)
        need(run.line, run.length.amount, run.id + " run", run.from);
    for (const PlacedJoint &joint : expansion().joints) {
        if (!joint.way)
            continue;
        for (const Piece &piece : joint.way->pieces)
            need(piece.part, 1, joint.at, joint.station);
        for (const WayAid &aid : joint.way->aids)
            need(aid.part, aid.need.count, joint.at, joint.station);
    }
    need(m_bench->catalogue.find("TL-37"), 1, "37° nuts", {});
    m_bench->bill =
        price(expansion(), m_bench->catalogue, m_bench->shelf, Currency::parse("USD").value());
}

void BenchWork::findings()
{
    if (!m_plan.picks.contains("feed.end"))
        m_bench->findings.push_back({Severity::Stop,
                                     Matter::Fit,
                                     "Rail in: a -6 flare in a -6 boss screws in and leaks",
                                     "feed.end",
                                     "The cone touches nothing and there is no ring.",
                                     "SAE J514, SAE J1926-1",
                                     "Put an adapter between them.",
                                     {{"feed.end", "AD-66 + HE-6"}}});
    m_bench->findings.push_back({Severity::Caution,
                                 Matter::Flow,
                                 "Return: the line is narrow for the whole pump flow",
                                 "return",
                                 "The regulator may lose its range.",
                                 "common practice, no source",
                                 "Measure the pressure at idle.",
                                 {}});
    m_bench->findings.push_back({Severity::Note,
                                 Matter::Stock,
                                 "Post-filter: none on the shelf",
                                 "postfilter",
                                 "One is needed.",
                                 "the stock of the shop",
                                 "Order MF-10.",
                                 {}});
}

} // namespace

BuildPlan benchPlan()
{
    BuildPlan plan;
    plan.id = "coupe-fuel";
    plan.title = "Coupe, hill-climb: fuel";
    plan.templateId = "injection-frame-rail";
    plan.car = "car-2";
    plan.by = "2026-12-12";
    return plan;
}

Result<WorkedOut> workOutBench(const BuildPlan &plan)
{
    auto bench = std::make_shared<Bench>();
    for (const auto &[slot, pick] : plan.picks) {
        for (const std::string &number : numbersOf(pick)) {
            if (bench->catalogue.find(number) == nullptr)
                return problem(number, "is no part of this shop", "Pick another.");
        }
    }
    bench->expansion.templateId = bench->form->id;
    bench->expansion.title = bench->form->title;
    for (const Question &question : bench->form->questions)
        bench->expansion.answers.emplace(question.id, question.standard);
    for (const auto &[question, answer] : plan.answers)
        bench->expansion.answers.insert_or_assign(question, answer);
    const double watts = Measure::parse(bench->expansion.answers.at("power")).value().si;
    const bool strong = watts > Measure::parse("500 hp").value().si;
    const std::string supplyEnd = strong ? "HE-10" : "HE-8";
    const std::string filterAdapter = strong ? "AD-1010" : "AD-108";
    const std::string pumpAdapter = strong ? "AD-810" : "AD-88";

    BenchWork work(bench, plan);
    work.stations();
    work.run("supply", Level::Suction, "cell>prefilter", 10);
    work.run("suction", Level::Suction, "prefilter>pump", strong ? 10 : 8);
    work.run("pressure", Level::Pressure, "pump>postfilter", 6);
    work.run("feed", Level::Pressure, "postfilter>rail", 6);
    work.run("bridge", Level::Pressure, "rail>regulator", 6);
    work.run("return", Level::Return, "regulator>cell", 6);
    work.close({"plug:cell.vent", "cell vent", "cell", {{"CP-8"}}});
    work.close({"supply.start", "cell out", "cell", {{"HE-10"}}});
    work.close({"supply.end", "pre-filter in", "prefilter", {{"AD-1010", "HE-10"}}});
    work.close({"suction.start", "pre-filter out", "prefilter", {{filterAdapter, supplyEnd}}});
    work.close({"suction.end",
                "pump in",
                "pump",
                {{pumpAdapter, supplyEnd}, {"AD-88", "HE-8"}, {"AD-810", "HE-10"}}});
    work.close({"pressure.start", "pump out", "pump", {{"AD-66", "HE-6"}}});
    work.close({"pressure.end", "post-filter in", "postfilter", {{"HE-6"}}});
    work.close({"feed.start", "post-filter out", "postfilter", {{"HE-6"}}});
    work.close({"feed.end", "rail in", "rail", {{"HE-6"}, {"AD-66", "HE-6"}}});
    work.close({"bridge.start", "rail out", "rail", {{"HE-6"}}});
    work.close({"bridge.end", "regulator in", "regulator", {{"AD-66", "HE-6"}}});
    work.close({"return.start", "regulator out", "regulator", {}});
    work.close({"return.end", "cell return", "cell", {{"HE-6"}}});
    work.lines();
    work.findings();
    return WorkedOut{bench,         bench->form.get(), &bench->expansion,
                     &*bench->bill, &bench->findings,  &bench->catalogue,
                     &bench->shelf};
}

Result<void> openBench(BuildDesk &desk)
{
    Result<void> said;
    desk.open(benchPlan(), QStringLiteral("Car 2"), workOutBench,
              [&said](const Result<void> &opened) { said = opened; });
    return said;
}

ShopOnDesk benchShop()
{
    ShopOnDesk shop;
    shop.title = "Bench shop";
    shop.file = "bench.flarestock";
    BuildPlan other = benchPlan();
    other.id = "saloon-fuel";
    other.title = "Saloon, endurance: fuel";
    other.answers = {{"power", "620 hp"}, {"fluid", "E85"}};
    shop.builds = {benchPlan(), other};
    shop.templates = {{"injection-frame-rail", benchTemplate()->title}};
    shop.workOut = workOutBench;
    shop.placeTitle = [](const std::string &) { return std::string("Car 2, coupe"); };
    return shop;
}

} // namespace flarestock
