// SPDX-License-Identifier: MIT
//
// A bench for the tests of systems: a small catalogue, a shelf and templates, made in code.

#pragma once

#include "model/exact/case_fold.h"
#include "model/systems/expand.h"
#include "tests/parts/suppliers.h"

#include <algorithm>
#include <cassert>
#include <random>

namespace flarestock {

inline Varying said(const std::string &text)
{
    return {{{Condition(), text}}};
}

inline Varying eitherOr(const std::string &when, const std::string &is, const std::string &other)
{
    return {{{*Condition::parse(when), is}, {Condition(), other}}};
}

inline Question choice(const std::string &id, std::vector<std::string> choices)
{
    Question question;
    question.id = question.title = id;
    question.standard = choices.front();
    question.choices = std::move(choices);
    return question;
}

inline Question measure(const std::string &id, Dimension dimension, const std::string &standard)
{
    Question question;
    question.id = question.title = id;
    question.form = Question::Form::Measured;
    question.dimension = dimension;
    question.standard = standard;
    return question;
}

inline Station station(const std::string &id, Kind kind)
{
    Station made;
    made.id = made.title = id;
    made.demand.kind = kind;
    return made;
}

/// "cell.out" to "pump.in"; without a length the two ports join directly.
inline Run run(const std::string &id, const std::string &from, const std::string &to,
               const std::string &dash = {}, const std::string &length = {})
{
    const auto place = [](const std::string &text) {
        const auto point = text.rfind('.');
        return Run::Place{text.substr(0, point), text.substr(point + 1)};
    };
    Run made;
    made.id = id;
    made.from = place(from);
    made.to = place(to);
    if (!dash.empty())
        made.dash = said(dash);
    if (!length.empty())
        made.length = said(length);
    return made;
}

struct Bench {
    std::vector<Part> parts;
    std::vector<Offer> offers;
    Shelf shelf;
    TemplateBook book;
    mutable std::optional<Catalogue> catalogue;
    mutable std::optional<JointCloser> closer;

    /// Ports as "in: ORB -8 female; out: ORB -6 female".
    Part &part(const std::string &number, Kind kind, const std::string &ports = {})
    {
        Part made;
        made.number = made.description = number;
        made.kind = kind;
        made.consumed = kind != Kind::Tool;
        std::string_view rest = ports;
        while (!rest.empty()) {
            const auto end = rest.find(';');
            const std::string_view one = rest.substr(0, end);
            const auto colon = one.find(':');
            const auto port = Port::parse(trimmed(one.substr(colon + 1)));
            assert(port && "a port of the tables");
            made.ports.push_back(
                {std::string(trimmed(one.substr(0, colon))), *port, PortRole::Either});
            rest.remove_prefix(end == std::string_view::npos ? rest.size() : end + 1);
        }
        parts.push_back(std::move(made));
        return parts.back();
    }

    void offer(const std::string &number, const std::string &price)
    {
        Offer made{number, "s1", "", 1, 1, 1, *Currency::parse("USD"), {}, 3};
        made.breaks.push_back({1, *Decimal::parse(price)});
        offers.push_back(std::move(made));
    }

    void stock(const std::string &number, int free, const std::string &value = "0")
    {
        FreeStock &on = shelf[number];
        on.onHand = on.free = {Decimal(free), Unit::Each};
        on.value = *Decimal::parse(value);
    }

    void hose(const std::string &series, const std::string &liner = "PTFE")
    {
        for (const int dash : {6, 8, 10}) {
            const std::string size = "-" + std::to_string(dash);
            Part &line = part(series + size, Kind::Hose, "cut: HOSE " + series + " " + size);
            line.unit = Unit::Inch;
            line.facts = HoseFacts{series, dash, {}, {}, liner, true};
            offer(series + size, "1." + std::to_string(10 + dash));
            const std::string number = "HE-" + series + size;
            Part &end =
                part(number, Kind::HoseEnd,
                     "hose: HOSE " + series + " " + size + "; end: AN " + size + " female swivel");
            end.facts = HoseEndFacts{{series}, dash, 0, {}, {}};
            offer(number, "2" + std::to_string(dash) + ".00");
        }
    }

    /// Boss adapters of every size to flares of every size, with their rings.
    void adapters()
    {
        for (const int boss : {6, 8, 10}) {
            for (const int flare : {6, 8, 10}) {
                const std::string sizes = std::to_string(boss) + "-" + std::to_string(flare);
                part("AD-" + sizes, Kind::Adapter,
                     "boss: ORB -" + std::to_string(boss) + " male; flare: AN -" +
                         std::to_string(flare) + " male");
                offer("AD-" + sizes, std::to_string(8 + boss) + ".50");
            }
            const std::string size = (boss < 10 ? "90" : "9") + std::to_string(boss);
            part("OR-" + size, Kind::Ring).facts = RingFacts{"AS568-" + size};
            offer("OR-" + size, "0.475");
        }
    }

    void add(const Template &form) { book[form.id] = std::make_shared<const Template>(form); }

    /// Once all parts are there; the order of parts and offers is drawn by `random`, if given.
    void close(std::mt19937_64 *random = nullptr) const
    {
        auto partsThen = parts;
        auto offersThen = offers;
        if (random) {
            std::shuffle(partsThen.begin(), partsThen.end(), *random);
            std::shuffle(offersThen.begin(), offersThen.end(), *random);
        }
        auto made =
            Catalogue::of(std::move(partsThen), {tests::supplierOf("s1", "North Supply", 3)},
                          std::move(offersThen));
        assert(made && "a good catalogue");
        closer.reset();
        catalogue.emplace(std::move(*made));
        closer.emplace(*catalogue);
    }

    [[nodiscard]] ExpandRequest request(const std::string &form, Answers answers = {},
                                        Picks picks = {}) const
    {
        if (!closer)
            close();
        ExpandRequest made;
        made.templateId = form;
        made.book = std::make_shared<const TemplateBook>(book);
        made.catalogue = &*catalogue;
        made.closer = &*closer;
        made.shelf = &shelf;
        made.answers = std::move(answers);
        made.picks = std::move(picks);
        return made;
    }
};

/// Everything that an expansion says, for comparing two.
inline std::string saidBy(const Expansion &build)
{
    const auto number = [](const Part *part) { return part ? part->number : std::string("none"); };
    std::string all = build.templateId;
    for (const auto &[question, answer] : build.answers)
        all += "\n" + question + " = " + answer;
    for (const PlacedStation &one : build.stations) {
        all += "\nstation " + one.id + " " + number(one.part) + " " + one.why + " better " +
               number(one.better);
        for (const Part *other : one.others)
            all += " or " + other->number;
    }
    for (const PlacedRun &one : build.runs) {
        all += "\nrun " + one.id + " " + number(one.line) + " " + one.length.text();
        for (const Part *other : one.others)
            all += " or " + other->number;
    }
    for (const PlacedJoint &one : build.joints) {
        all += "\njoint " + one.id + " at " + one.at + " " + (one.way ? one.way->key() : "open");
        for (const Way &other : one.others)
            all += " or " + other.key();
    }
    for (const BillLine &line : build.lines) {
        all += "\n" + number(line.part) + " " + line.need.text();
        for (const Quantity &cut : line.cuts)
            all += " cut " + cut.text();
        for (const std::string &why : line.why)
            all += " | " + why;
    }
    for (const std::string &note : build.notes)
        all += "\n" + note;
    return all;
}

inline const BillLine *lineOf(const Expansion &build, std::string_view number)
{
    const auto found =
        std::find_if(build.lines.begin(), build.lines.end(),
                     [&](const BillLine &line) { return line.part->number == number; });
    return found == build.lines.end() ? nullptr : &*found;
}

inline std::string needOf(const Expansion &build, std::string_view number)
{
    const BillLine *line = lineOf(build, number);
    return line ? line->need.amount.text() : "none";
}

} // namespace flarestock
