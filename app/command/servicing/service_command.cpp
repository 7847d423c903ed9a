// SPDX-License-Identifier: MIT
//
// `flarestock service`: what is in a car, since when and how far it ran; and what is done to it.

#include "app/command/servicing/car_papers.h"
#include "app/command/servicing/car_sheet.h"
#include "app/workshop/made_up.h"

#include <CLI/CLI.hpp>
#include <QJsonArray>

#include <memory>

namespace flarestock {

namespace {

struct ServiceAsked : ShopAsked {
    WorkWords words;
    OutingWords outing;
    CarPaperAsked paper;
    bool all = false;
    /// What is done; nothing: it is only looked at.
    std::function<void(ServiceAsked &, OpenShop &)> deed;
};

void answerCars(const ServiceAsked &asked, OpenShop &shop)
{
    const auto garage = Garage::of(*shop.workshop, shop.file);
    if (!garage)
        return shop.outcome.refuse(garage.error());
    std::vector<std::string> cars;
    for (const Place &place : shop.workshop->ledger.places()) {
        if (place.kind == PlaceKind::Car)
            cars.push_back(place.id);
    }
    if (!asked.words.car.empty()) {
        const auto car = carAsked(asked.words.car, shop.workshop->ledger);
        if (!car)
            return shop.outcome.refuse(car.error());
        cars = {(*car)->id};
    }
    QJsonArray all;
    for (const std::string &car : cars) {
        if (asked.json)
            all.append(carDocument(car, *garage));
        else
            shop.outcome.out += carSheet(car, *garage, asked.all);
    }
    if (asked.json)
        shop.outcome.print(QJsonObject{{QStringLiteral("cars"), all}});
}

/// Said where somebody wrote a day that is still to come: what is done before it does not count.
std::string aheadOf(const std::string &day, const By &by)
{
    return day > dayOf(by.at) ? "; " + day + " is still to come: take it back if that was a slip"
                              : "";
}

void answerRan(ServiceAsked &asked, OpenShop &shop)
{
    asked.outing.car = asked.words.car;
    asked.outing.day = asked.words.day;
    if (wasWritten(shop, [](const Record &one) { return one.kind == RecordKind::Outing; }))
        return;
    const auto outing = ran(asked.outing, *shop.workshop, shop.by);
    if (!outing)
        return shop.outcome.refuse(outing.error());
    appendAction(shop, Action{{outing->asRecord()}, {}},
                 outing->car + " ran " + counted(static_cast<std::size_t>(outing->runs), "run") +
                     ", " + outing->hours.stripped().text() + " h at " + outing->event +
                     aheadOf(outing->day, shop.by),
                 {{QStringLiteral("car"), jsonText(outing->car)},
                  {QStringLiteral("event"), jsonText(outing->event)},
                  {QStringLiteral("day"), jsonText(outing->day)}});
}

using Working = Result<WorkDone> (*)(const WorkWords &, const Garage &, const By &);

void answerWork(ServiceAsked &asked, OpenShop &shop, Working work)
{
    // Of an action with movements its first id is a movement's, else its record's.
    if (wasWritten(shop, [](const Record &one) { return one.kind != RecordKind::Outing; }) ||
        wasDone(shop, [](const Movement &one) {
            return one.deed == Deed::Renew || one.deed == Deed::Move;
        }))
        return;
    const auto garage = Garage::of(*shop.workshop, shop.file);
    if (!garage)
        return shop.outcome.refuse(garage.error());
    const auto done = work(asked.words, *garage, shop.by);
    if (!done)
        return shop.outcome.refuse(done.error());
    appendAction(shop, done->action, saidOf(*done) + aheadOf(done->serviced.day, shop.by),
                 documentOf(*done, *shop.workshop));
}

Result<WorkDone> inspected(const WorkWords &asked, const Garage &garage, const By &by)
{
    return lookedAt(Work::Inspected, asked, garage, by);
}

Result<WorkDone> foundDamaged(const WorkWords &asked, const Garage &garage, const By &by)
{
    return lookedAt(Work::Damaged, asked, garage, by);
}

/// The frame of all that is done.
class Deeds {
public:
    Deeds(CLI::App &service, std::shared_ptr<ServiceAsked> asked)
        : m_service(service), m_asked(std::move(asked))
    {
    }
    CLI::App &add(const char *name, const char *what,
                  std::function<void(ServiceAsked &, OpenShop &)> deed)
    {
        CLI::App *command = m_service.add_subcommand(name, what);
        command->footer("Also --shop, --who, --why, --id and --json, as flarestock service.");
        command->parse_complete_callback(
            [asked = m_asked, deed = std::move(deed)] { asked->deed = deed; });
        return *command;
    }
    CLI::App &work(const char *name, const char *what, Working work)
    {
        CLI::App &command = add(name, what, [work](ServiceAsked &asked, OpenShop &shop) {
            answerWork(asked, shop, work);
        });
        command.add_option("--day", m_asked->words.day, "when it was done; else today");
        return command;
    }
    void position(CLI::App &command)
    {
        command
            .add_option("POSITION", m_asked->words.position,
                        "as the list says it, its end (prefilter.element), or its part's number")
            ->required();
    }
    void opened(CLI::App &command)
    {
        command
            .add_option("--joint", m_asked->words.joints,
                        "a joint that is opened for it besides: its rings are renewed")
            ->allow_extra_args(false);
        command.add_flag("--keep-rings", m_asked->words.keepRings, "no ring is renewed");
    }
    void facts(CLI::App &command)
    {
        WorkWords &words = m_asked->words;
        command.add_option("--lot", words.lot, "lot or serial of what goes in");
        command.add_option("--from", words.from, "where it is taken; a spare in the car: the car");
        command.add_option("--length", words.length, "of a hose: \"24 in\"");
        command.add_option("--made", words.made, "the day it was made, cured, its bottle opened");
        command.add_option("--use-by", words.useBy, "the last day of it or its certificate");
        command.add_option("--washed", words.washed, "how often it was washed before");
        command.add_option("--had-runs", words.hadRuns, "what it ran before");
        command.add_option("--had-hours", words.hadHours, "the same, in hours");
    }
    void leaving(CLI::App &command)
    {
        command.add_option("--old-to", m_asked->words.oldTo,
                           "where the old one goes; else scrap, or to be checked where the other "
                           "came from");
        command.add_option("--old-is", m_asked->words.oldIs, "what it is then: used and good");
        command.add_option("--tag", m_asked->words.tag,
                           "what it is called then, so that its "
                           "washes and runs stay known");
    }

private:
    CLI::App &m_service;
    std::shared_ptr<ServiceAsked> m_asked;
};

void addDeeds(CLI::App &service, const std::shared_ptr<ServiceAsked> &asked)
{
    Deeds deeds(service, asked);
    CLI::App &outing = deeds.add("ran", "How far the car ran at an event.", answerRan);
    outing.add_option("--event", asked->outing.event, "as the season calls it")->required();
    outing.add_option("--runs", asked->outing.runs, "how many runs");
    outing.add_option("--hours", asked->outing.hours, "how many hours: 2.5");
    outing.add_option("--day", asked->words.day, "when; else today");
    CLI::App &fit = deeds.work("fit", "Says what is at a position, or puts it there.", fitted);
    fit.add_option("PART", asked->words.part, "its number")->required();
    fit.add_option("--at", asked->words.position, "the position; a new one may have any name");
    fit.add_option("--since", asked->words.day, "the day it was fitted; else today");
    deeds.facts(fit);
    CLI::App &wash = deeds.work("wash", "Opened, washed, back in.", washed);
    deeds.position(wash);
    deeds.opened(wash);
    CLI::App &replace = deeds.work("replace", "The old one out, another in.", replaced);
    deeds.position(replace);
    replace.add_option("--with", asked->words.part, "another part than the old one's");
    deeds.facts(replace);
    deeds.leaving(replace);
    deeds.opened(replace);
    deeds.position(deeds.work("inspect", "Looked at, found good.", inspected));
    deeds.position(deeds.work("damaged", "Looked at, found damaged: it is spent.", foundDamaged));
    CLI::App &out = deeds.work("take-out", "Out of the car; the position stays empty.", takenOut);
    deeds.position(out);
    deeds.leaving(out);
    deeds.opened(out);
}

/// A paper of the car.
void addPaper(CLI::App &paper, const std::shared_ptr<ServiceAsked> &asked)
{
    paper.add_option("--pdf", asked->paper.pdf, "the file to write");
    paper.add_option("--paper", asked->paper.size, "A4 (if not said) or Letter");
    paper.add_option("--event", asked->paper.event, "the event that it is for");
}

void answerPaper(CarPaperKind kind, ServiceAsked &asked, OpenShop &shop)
{
    asked.paper.car = asked.words.car;
    answerCarPaper(kind, asked.paper, shop);
}

void addPapers(CLI::App &service, const std::shared_ptr<ServiceAsked> &asked)
{
    Deeds deeds(service, asked);
    addPaper(deeds.add("card", "The service card: what is due, with its parts and cautions.",
                       [](ServiceAsked &one, OpenShop &shop) {
                           answerPaper(CarPaperKind::Card, one, shop);
                       }),
             asked);
    addPaper(deeds.add("sheet",
                       "The inspection sheet: the fluid parts with lots, days and leak tests.",
                       [](ServiceAsked &one, OpenShop &shop) {
                           answerPaper(CarPaperKind::Sheet, one, shop);
                       }),
             asked);
}

} // namespace

void addServiceCommand(CLI::App &app, CommandOutcome &outcome)
{
    const auto asked = std::make_shared<ServiceAsked>();
    CLI::App *service = app.add_subcommand(
        "service", "What is in the cars, since when, how far it ran; and what is done to it.");
    service->add_option("CAR", asked->words.car, "a car; not said: all of them");
    service->add_flag("--all", asked->all, "also rings and washers of which nothing else is known");
    addShopOptions(*service, *asked);
    service->require_subcommand(0, 1);
    addDeeds(*service, asked);
    addPapers(*service, asked);
    service->callback([asked, &outcome] {
        if (asked->deed && asked->words.car.empty())
            return outcome.refuse({"flarestock service", "does not say of which car",
                                   "Name it first: flarestock service CAR ran …"});
        const bool writes = static_cast<bool>(asked->deed);
        withShop(
            *asked, writes ? OpenMode::ReadWrite : OpenMode::ReadOnly, outcome,
            [&](OpenShop &shop) { writes ? asked->deed(*asked, shop) : answerCars(*asked, shop); });
    });
}

} // namespace flarestock
