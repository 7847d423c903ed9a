// SPDX-License-Identifier: MIT

#include "app/sheet/car_paper.h"

#include "app/buyer/whole_file.h"
#include "app/garage/cautions.h"
#include "app/garage/due_list.h"
#include "app/garage/due_words.h"
#include "app/workshop/made_up.h"

namespace flarestock {

namespace {

using Cells = std::vector<std::vector<std::string>>;

/// What a paper is made of.
struct CarPaper {
    const Speech &speech;
    std::string car;
    std::string today;
    std::vector<DueLine> due;
    const Event *event = nullptr;
};

void addTo(std::string &text, const std::string &line, std::string_view between)
{
    if (!line.empty())
        text.append(text.empty() ? "" : between).append(line);
}

std::string carPieceCell(const LotKey &piece, const Workshop &workshop)
{
    const Part *part = workshop.part(piece.part);
    return piece.part + (piece.lot.empty() ? "" : ", " + piece.lot) +
           (part ? "\n" + part->description : std::string());
}

std::string buildTitle(const std::string &id, const Workshop &workshop)
{
    const BuildPlan *build = workshop.build(id);
    return build && !build->title.empty() ? build->title : id;
}

/// A position as people say it, and below it the build that it belongs to.
std::string carPlaceCell(const std::string &said, const FittedPiece &piece,
                         const Workshop &workshop, const Speech &speech)
{
    std::string cell = speech.sentence(said);
    addTo(cell, buildTitle(piece.build, workshop), "\n");
    return cell;
}

/// "over", "soon, by 2026-12-12", "before 2026-12-12".
std::string standingText(const DueLine &line, const Speech &speech)
{
    const std::string standing = speech.word(text(line.work.standing));
    if (line.by.empty() || line.work.standing >= DueStanding::Now)
        return standing;
    return line.work.standing == DueStanding::Before
               ? speech.say("before %1", {speech.day(line.by)})
               : speech.say("%1, by %2", {standing, speech.day(line.by)});
}

/// "may be used until 2027-02-14; not to be used at: Test days at Millpond and 4 more".
std::string reasonText(const DueWork &work, const Season &season, const Speech &speech)
{
    std::string said;
    for (const std::string &why : work.why)
        addTo(said, speech.figures(speech.sentence(why)), "; ");
    if (work.stops.empty())
        return said;
    const Event *event = season.event(work.stops.front());
    std::string stops = event && !event->title.empty() ? event->title : work.stops.front();
    if (work.stops.size() > 1)
        stops = speech.say("%1 and %2 more", {stops, std::to_string(work.stops.size() - 1)});
    addTo(said, speech.say("not to be used at: %1", {stops}), "; ");
    return said;
}

/// "EC-100-L 1", "PT-8 2 ft, 1 ft short"
std::string takesText(const DueLine &line, const Speech &speech)
{
    std::string said;
    for (const DuePart &one : line.parts) {
        const auto much = [&](std::int64_t smallest) {
            return speech.amount(Quantity::ofSmallest(smallest, one.part->unit));
        };
        addTo(said, one.part->number + " " + much(one.need), "; ");
        if (one.shortBy() > 0)
            said += ", " + speech.say("%1 short", {much(one.shortBy())});
    }
    return said;
}

Cells cardRows(const CarPaper &words, const Garage &garage)
{
    Cells rows;
    const Speech &speech = words.speech;
    const Workshop &workshop = *garage.workshop;
    for (const DueLine &line : words.due)
        rows.push_back(
            {"[   ]", speech.word(doText(line.work.todo)),
             carPlaceCell(line.said, *line.work.piece, workshop, speech),
             carPieceCell(line.work.piece->piece, workshop),
             standingText(line, speech) + "\n" + reasonText(line.work, workshop.season, speech),
             takesText(line, speech)});
    if (rows.empty())
        rows.push_back({"", speech.say("nothing is due"), "", "", "", ""});
    return rows;
}

/// The last day on which a piece may be used; empty where no day counts.
std::string untilOf(const FittedPiece &piece, const Garage &garage, const std::string &car)
{
    std::string until = lastDayOf(piece, nullptr);
    for (const Interval *interval : garage.intervalsOf(piece, car)) {
        const std::string day = interval->todo == Work::Replaced ? lastDayOf(piece, interval) : "";
        if (!day.empty() && (until.empty() || day < until))
            until = day;
    }
    return until;
}

/// Until when it may be used; and where that is over, when.
std::string untilText(const FittedPiece &piece, const CarPaper &words, const Garage &garage)
{
    const std::string until = untilOf(piece, garage, words.car);
    const std::string &day = words.event ? words.event->lastDay : words.today;
    if (until.empty() || until >= day)
        return until.empty() ? until : words.speech.day(until);
    return words.speech.day(until) + "\n" +
           (words.event ? words.speech.say("over before the end of %1", {words.event->title})
                        : words.speech.say("over today"));
}

/// When it was washed last, and looked at.
std::string lastText(const FittedPiece &piece, const Speech &speech)
{
    std::string last;
    if (piece.washed == 1)
        last = speech.say("washed %1, once", {speech.day(piece.worked)});
    else if (piece.washed > 1)
        last = speech.say("washed %1, %2 times",
                          {speech.day(piece.worked), std::to_string(piece.washed)});
    if (piece.seen != piece.since && piece.seen != piece.worked)
        addTo(last, speech.say("looked at %1", {speech.day(piece.seen)}), "\n");
    return last;
}

Cells sheetRows(const CarPaper &words, const Garage &garage)
{
    Cells rows;
    const Speech &speech = words.speech;
    for (const FittedPiece &piece : garage.life(words.car).fitted) {
        const bool ring = piece.position.ends_with(".ring") || piece.position.ends_with(".washer");
        if (ring && piece.useBy.empty() && piece.made.empty())
            continue;
        std::string since = speech.day(piece.since);
        if (!piece.made.empty())
            since += "\n" + speech.say("made %1", {speech.day(piece.made)});
        std::string state = speech.word(stateOf(piece, garage, words.car));
        addTo(state, piece.damaged ? speech.say("damaged") : "", "\n");
        rows.push_back({carPlaceCell(garage.said(piece), piece, *garage.workshop, speech),
                        carPieceCell(piece.piece, *garage.workshop), since, lastText(piece, speech),
                        untilText(piece, words, garage), state});
    }
    return rows;
}

/// "2026-11-28: passed, 3 bar air, held 10 min, Kim"
std::string testText(const LeakTest &test, const Speech &speech)
{
    const std::string who =
        test.second.empty() ? test.who : speech.say("%1 and %2", {test.who, test.second});
    return speech.day(dayOf(test.at)) + ": " +
           (test.passed ? speech.say("passed") : speech.say("failed")) + ", " +
           speech.figures(test.pressure) + " " + test.medium + ", " +
           speech.say("held %1", {test.held}) + ", " + who;
}

/// Each build of the car that has something in it, and its last leak test.
std::vector<PaperWords::Pair> leakTests(const CarPaper &words, const Garage &garage)
{
    std::vector<PaperWords::Pair> facts;
    std::set<std::string> builds;
    for (const FittedPiece &piece : garage.life(words.car).fitted) {
        if (piece.build.empty() || !builds.insert(piece.build).second)
            continue;
        const auto tests = garage.workshop->notes.build(piece.build).testsNow();
        facts.emplace_back(
            words.speech.say("Leak test, %1", {buildTitle(piece.build, *garage.workshop)}),
            tests.empty() ? words.speech.say("none since its pieces changed last")
                          : testText(tests.back(), words.speech));
    }
    return facts;
}

std::string cautions(const Speech &speech)
{
    std::string all = speech.say("Where a system is opened:");
    for (const std::string_view one : OpeningCautions)
        all += "\n" + speech.sentence(one);
    return all;
}

/// "1 run, 0.5 h, 1 event"
std::string ranText(const Use &use, const Speech &speech)
{
    const std::string runs = std::to_string(use.runs);
    const std::string events = std::to_string(use.eventCount());
    return (use.runs == 1 ? speech.say("1 run") : speech.say("%1 runs", {runs})) + ", " +
           speech.number(use.hours.stripped()) + " h, " +
           (use.eventCount() == 1 ? speech.say("1 event") : speech.say("%1 events", {events}));
}

std::vector<PaperWords::Column> columnsOf(CarPaperKind kind, const Speech &speech)
{
    if (kind == CarPaperKind::Card)
        return {{speech.say("Done"), 6},   {speech.say("Do"), 9},   {speech.say("Where"), 22},
                {speech.say("Piece"), 22}, {speech.say("Why"), 25}, {speech.say("Takes"), 16}};
    return {{speech.say("Where"), 24}, {speech.say("Piece"), 26}, {speech.say("In since"), 13},
            {speech.say("Last"), 15},  {speech.say("Until"), 13}, {speech.say("State"), 9}};
}

PaperWords paperOf(CarPaperKind kind, const CarPaper &words, const Garage &garage, PaperWords paper)
{
    const Speech &speech = words.speech;
    const bool card = kind == CarPaperKind::Card;
    const Use use = garage.life(words.car).use();
    const Place *car = garage.workshop->ledger.place(words.car);
    paper.title = card ? speech.say("Service card") : speech.say("Inspection sheet");
    paper.number = words.car;
    paper.made = words.today;
    paper.facts = {{speech.say("Car"), car ? car->title : words.car},
                   {speech.say("Date"), speech.day(words.today)},
                   {speech.say("Ran"), ranText(use, speech)}};
    if (words.event)
        paper.facts.emplace_back(speech.say("For"),
                                 words.event->title + ", " +
                                     speech.say("%1 to %2", {speech.day(words.event->firstDay),
                                                             speech.day(words.event->lastDay)}));
    for (auto &one : leakTests(words, garage))
        paper.facts.push_back(std::move(one));
    paper.columns = columnsOf(kind, speech);
    paper.rows = card ? cardRows(words, garage) : sheetRows(words, garage);
    paper.note = card ? cautions(speech)
                      : speech.say("Looked at by:") + std::string(22, ' ') + speech.say("Signed:");
    paper.foot = speech.sentence(AdviceOnly);
    return paper;
}

} // namespace

Result<PaperWords> carPaper(CarPaperKind kind, const CarPaperAsked &asked, const CarPaperFrom &from)
{
    const Workshop &workshop = *from.garage.workshop;
    if (asked.size != "A4" && asked.size != "Letter")
        return problem("the paper " + asked.size, "is no size", "Say A4 or Letter.");
    const auto car = carAsked(asked.car, workshop.ledger);
    if (!car)
        return tl::unexpected(car.error());
    if (from.garage.life((*car)->id).fitted.empty())
        return problem((*car)->id, "has nothing in it that the shop knows of",
                       "Issue a build to it, or say what is in it: flarestock service " +
                           (*car)->id + " fit PART.");
    CarPaper words{*asked.speech, (*car)->id, from.today, {}, nullptr};
    auto due = dueList(from.garage, {words.car, asked.event, {}, words.today, false});
    if (!due)
        return tl::unexpected(due.error());
    words.due = std::move(*due);
    words.event = workshop.season.event(asked.event);
    const auto letterhead = letterheadOf(from.file);
    if (!letterhead)
        return tl::unexpected(letterhead.error());
    return paperOf(kind, words, from.garage, paperFrom(*letterhead, asked.size, asked.speech));
}

Result<void> writeCarPaper(const std::string &file, const PaperWords &paper)
{
    const auto pdf = printed(paperDocument(paper));
    if (!pdf)
        return tl::unexpected(pdf.error());
    return writeWhole(file, {pdf->constData(), static_cast<std::size_t>(pdf->size())});
}

} // namespace flarestock
