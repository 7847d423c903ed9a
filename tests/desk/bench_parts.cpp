// SPDX-License-Identifier: MIT

#include "bench_parts.h"
#include "tests/parts/suppliers.h"

namespace flarestock {

namespace {

Part part(const char *number, Kind kind, const char *what,
          const std::vector<std::pair<const char *, const char *>> &ports = {})
{
    Part made;
    made.number = number;
    made.kind = kind;
    made.description = what;
    for (const auto &[name, port] : ports)
        made.ports.push_back({name, Port::parse(port).value(), PortRole::Either});
    return made;
}

Part hose(const char *number, int dash, double boreMm)
{
    const std::string cut = "HOSE PTFE-S -" + std::to_string(dash);
    Part made = part(number, Kind::Hose, "hose, PTFE with a steel braid", {{"cut", cut.c_str()}});
    made.unit = Unit::Inch;
    made.facts = HoseFacts{"PTFE-S", dash, boreMm, std::nullopt, "PTFE", true};
    return made;
}

Part hoseEnd(const char *number, int dash)
{
    const std::string cut = "HOSE PTFE-S -" + std::to_string(dash);
    const std::string end = "AN -" + std::to_string(dash) + " female swivel";
    return part(number, Kind::HoseEnd, "hose end, straight",
                {{"hose", cut.c_str()}, {"end", end.c_str()}});
}

std::vector<Part> components()
{
    Part cell = part("CL-60", Kind::Tank, "cell, rear, with foam",
                     {{"out", "AN -10 male"}, {"return", "AN -6 male"}, {"vent", "AN -8 male"}});
    cell.facts = VesselFacts{60.0, false, std::nullopt};
    Part before = part("PF-100", Kind::Filter, "pre-filter, washable mesh",
                       {{"in", "ORB -10 female"}, {"out", "ORB -10 female"}});
    before.facts = FilterFacts{MicronRating{100, RatingBasis::Nominal, std::nullopt},
                               "stainless mesh",
                               "",
                               true,
                               900,
                               2,
                               std::nullopt};
    Part pump = part("PU-460", Kind::Pump, "fuel pump, 460 L/h at 3 bar",
                     {{"in", "ORB -8 female"}, {"out", "ORB -6 female"}});
    pump.facts = PumpFacts{{{300, 13.5, 460}}, 14.0, true, false, "in-line"};
    Part after = part("MF-10", Kind::Filter, "post-filter, microglass",
                      {{"in", "AN -6 male"}, {"out", "AN -6 male"}});
    after.facts = FilterFacts{MicronRating{10, RatingBasis::Absolute, Decimal(75)},
                              "microglass",
                              "",
                              true,
                              600,
                              5,
                              std::nullopt};
    Part rail = part("RA-6", Kind::Rail, "rail for six injectors",
                     {{"in", "ORB -6 female"}, {"out", "AN -6 male"}});
    rail.facts = FuelUserFacts{250.0, 500.0, 20.0};
    Part regulator = part("RG-43", Kind::Regulator, "bypass regulator",
                          {{"in", "ORB -6 female"}, {"out", "ORB -6 female"}});
    regulator.facts = RegulatorFacts{200.0, 500.0, true, 700.0, {}};
    return {cell, before, pump, after, rail, regulator};
}

Offer offer(const char *number, const char *price)
{
    Offer made{number, "north", number, 1, 1, 1, Currency::parse("USD").value(), {}, 3};
    made.breaks.push_back({1, Decimal::parse(price).value()});
    return made;
}

Question measured(const char *id, const char *title, Dimension dimension, const char *standard)
{
    Question made;
    made.id = id;
    made.title = title;
    made.form = Question::Form::Measured;
    made.dimension = dimension;
    made.standard = standard;
    return made;
}

Question choice(const char *id, const char *title, std::vector<std::string> choices)
{
    Question made;
    made.id = id;
    made.title = title;
    made.standard = choices.front();
    made.choices = std::move(choices);
    return made;
}

Station station(const char *id, const char *title, Level level)
{
    Station made;
    made.id = id;
    made.title = title;
    made.level = level;
    return made;
}

} // namespace

Catalogue benchCatalogue()
{
    std::vector<Part> parts = components();
    parts.push_back(hose("HO-10", 10, 14.2));
    parts.push_back(hose("HO-8", 8, 11.1));
    parts.push_back(hose("HO-6", 6, 8.7));
    parts.push_back(hoseEnd("HE-10", 10));
    parts.push_back(hoseEnd("HE-8", 8));
    parts.push_back(hoseEnd("HE-6", 6));
    parts.push_back(
        part("AD-1010", Kind::Adapter, "adapter", {{"a", "ORB -10 male"}, {"b", "AN -10 male"}}));
    parts.push_back(
        part("AD-108", Kind::Adapter, "adapter", {{"a", "ORB -10 male"}, {"b", "AN -8 male"}}));
    parts.push_back(
        part("AD-810", Kind::Adapter, "adapter", {{"a", "ORB -8 male"}, {"b", "AN -10 male"}}));
    parts.push_back(
        part("AD-88", Kind::Adapter, "adapter", {{"a", "ORB -8 male"}, {"b", "AN -8 male"}}));
    parts.push_back(
        part("AD-66", Kind::Adapter, "adapter", {{"a", "ORB -6 male"}, {"b", "AN -6 male"}}));
    parts.push_back(part("RI-908", Kind::Ring, "ring AS568-908, FKM"));
    parts.push_back(part("CP-8", Kind::Cap, "cap", {{"a", "AN -8 female"}}));
    parts.push_back(part("TL-37", Kind::Tool, "37° nuts without marks, a set of wrenches"));
    parts.back().consumed = false;
    std::vector<Offer> offers;
    for (const Part &made : parts) {
        if (made.number != "CP-8")
            offers.push_back(
                offer(made.number.c_str(), made.unit == Unit::Inch ? "0.574" : "12.3400"));
    }
    return Catalogue::of(std::move(parts), {tests::supplierOf("north", "North Yard Supply", 3)},
                         std::move(offers))
        .value();
}

Shelf benchShelf()
{
    Shelf shelf;
    const auto lies = [&shelf](const char *number, int count, const char *value, Unit unit) {
        FreeStock stock;
        stock.onHand = stock.free = {Decimal(count), unit};
        stock.value = Decimal::parse(value).value();
        if (unit == Unit::Inch)
            stock.pieces = {stock.free};
        stock.places = {{"C4", stock.free}};
        shelf.emplace(number, stock);
    };
    for (const char *number : {"CL-60", "PF-100", "PU-460", "RA-6", "RG-43", "AD-810", "AD-88"})
        lies(number, 1, "61.20", Unit::Each);
    lies("AD-108", 2, "15.00", Unit::Each);
    lies("AD-1010", 4, "30.00", Unit::Each);
    lies("HE-10", 3, "42.75", Unit::Each);
    lies("HE-8", 3, "39.00", Unit::Each);
    lies("HE-6", 4, "57.00", Unit::Each);
    lies("RI-908", 6, "2.85", Unit::Each);
    lies("TL-37", 1, "88.00", Unit::Each);
    lies("HO-10", 140, "80.36", Unit::Inch);
    lies("HO-8", 140, "70.00", Unit::Inch);
    lies("HO-6", 240, "120.00", Unit::Inch);
    return shelf;
}

std::shared_ptr<const Template> benchTemplate()
{
    auto form = std::make_shared<Template>();
    form->id = "injection-frame-rail";
    form->title = "Injection, pump on the frame rail, return loop";
    form->system = "fuel";
    form->questions = {
        choice("fluid", "fluid", {"gasoline", "E85", "methanol"}),
        measured("power", "power", Dimension::Power, "450 hp"),
        choice("delivery", "delivery", {"port injection", "carburettor"}),
        measured("rail-pressure", "rail pressure", Dimension::Pressure, "43.5 psi"),
        measured("supply", "supply line", Dimension::Length, "5 ft 6 in"),
        measured("return", "return line", Dimension::Length, "12 ft"),
    };
    form->questions[1].least = Measure::parse("50 hp").value();
    form->questions[1].most = Measure::parse("2000 hp").value();
    Question sock = choice("sock", "sock in the cell", {"no", "yes"});
    sock.form = Question::Form::YesNo;
    form->questions.push_back(sock);
    form->stations = {station("cell", "cell", Level::Suction),
                      station("prefilter", "pre-filter", Level::Suction),
                      station("pump", "pump", Level::Suction),
                      station("postfilter", "post-filter", Level::Pressure),
                      station("rail", "rail", Level::Pressure),
                      station("regulator", "regulator", Level::Pressure)};
    return form;
}

} // namespace flarestock
