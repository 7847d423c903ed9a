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
    std::string car;
    std::string today;
    std::vector<DueLine> due;
    const Event *event = nullptr;
};

std::string carPieceCell(const LotKey &piece, const Workshop &workshop)
{
    const Part *part = workshop.part(piece.part);
    return piece.part + (piece.lot.empty() ? "" : ", " + piece.lot) +
           (part ? "\n" + part->description : std::string());
}

/// "over", "soon, by 2026-12-12", "before 2026-12-12".
std::string standingText(const DueLine &line)
{
    const std::string standing(text(line.work.standing));
    if (line.by.empty())
        return standing;
    return standing + (line.work.standing == DueStanding::Before ? " " : ", by ") + line.by;
}

Cells cardRows(const CarPaper &words, const Garage &garage)
{
    Cells rows;
    for (const DueLine &line : words.due)
        rows.push_back({"[   ]", std::string(doText(line.work.todo)),
                        line.said + "\n" + line.work.piece->position,
                        carPieceCell(line.work.piece->piece, *garage.workshop),
                        standingText(line) + "\n" + whyText(line.work), partsText(line)});
    if (rows.empty())
        rows.push_back({"", "nothing is due", "", "", "", ""});
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

Cells sheetRows(const CarPaper &words, const Garage &garage)
{
    Cells rows;
    const CarLife &life = garage.life(words.car);
    for (const FittedPiece &piece : life.fitted) {
        const bool ring = piece.position.ends_with(".ring") || piece.position.ends_with(".washer");
        if (ring && piece.useBy.empty() && piece.made.empty())
            continue;
        std::string until = untilOf(piece, garage, words.car);
        const std::string &day = words.event ? words.event->lastDay : words.today;
        if (!until.empty() && until < day)
            until += "\nover " +
                     (words.event ? "before the end of " + words.event->id : std::string("today"));
        std::string last = piece.washed > 0 ? "washed " + piece.worked + ", " +
                                                  std::to_string(piece.washed) + " times"
                                            : "";
        if (piece.seen != piece.since && piece.seen != piece.worked)
            last += (last.empty() ? "" : "\n") + ("looked at " + piece.seen);
        rows.push_back({garage.said(piece) + "\n" + piece.position,
                        carPieceCell(piece.piece, *garage.workshop),
                        piece.since + (piece.made.empty() ? "" : "\nmade " + piece.made), last,
                        until,
                        stateOf(piece, garage, words.car) + (piece.damaged ? "\ndamaged" : "")});
    }
    return rows;
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
        std::string said = "none since its pieces changed last";
        if (!tests.empty()) {
            const LeakTest &test = tests.back();
            said = dayOf(test.at) + ": " + (test.passed ? "passed" : "failed") + ", " +
                   test.pressure + " " + test.medium + ", held " + test.held + ", " + test.who +
                   (test.second.empty() ? "" : " and " + test.second);
        }
        facts.emplace_back("Leak test, " + piece.build, said);
    }
    return facts;
}

std::string cautions()
{
    std::string all = "Where a system is opened:";
    for (const std::string_view one : OpeningCautions)
        all += "\n" + std::string(one);
    return all;
}

/// "1 run, 0.5 h, 1 event"
std::string ranText(const Use &use)
{
    return std::to_string(use.runs) + (use.runs == 1 ? " run, " : " runs, ") +
           use.hours.stripped().text() + " h, " + std::to_string(use.eventCount()) +
           (use.eventCount() == 1 ? " event" : " events");
}

PaperWords paperOf(CarPaperKind kind, const CarPaper &words, const Garage &garage, PaperWords paper)
{
    const bool card = kind == CarPaperKind::Card;
    const Use use = garage.life(words.car).use();
    const Place *car = garage.workshop->ledger.place(words.car);
    paper.title = card ? "Service card" : "Inspection sheet";
    paper.number = words.car;
    paper.made = words.today;
    paper.facts = {
        {"Car", car ? car->title : words.car}, {"Date", words.today}, {"Ran", ranText(use)}};
    if (words.event)
        paper.facts.emplace_back("For", words.event->title + ", " + words.event->firstDay + " to " +
                                            words.event->lastDay);
    for (auto &one : leakTests(words, garage))
        paper.facts.push_back(std::move(one));
    if (card)
        paper.columns = {{"Done", 6},   {"Do", 9},   {"Where", 22},
                         {"Piece", 22}, {"Why", 25}, {"Takes", 16}};
    else
        paper.columns = {{"Where", 24}, {"Piece", 26}, {"In since", 13},
                         {"Last", 15},  {"Until", 13}, {"State", 9}};
    paper.rows = card ? cardRows(words, garage) : sheetRows(words, garage);
    paper.note = card ? cautions() : "Looked at by:                      Signed:";
    paper.foot = AdviceOnly;
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
    CarPaper words{(*car)->id, from.today, {}, nullptr};
    auto due = dueList(from.garage, {words.car, asked.event, {}, words.today, false});
    if (!due)
        return tl::unexpected(due.error());
    words.due = std::move(*due);
    words.event = workshop.season.event(asked.event);
    const auto letterhead = letterheadOf(from.file);
    if (!letterhead)
        return tl::unexpected(letterhead.error());
    return paperOf(kind, words, from.garage, paperFrom(*letterhead, asked.size));
}

Result<void> writeCarPaper(const std::string &file, const PaperWords &paper)
{
    const auto pdf = printed(paperDocument(paper));
    if (!pdf)
        return tl::unexpected(pdf.error());
    return writeWhole(file, {pdf->constData(), static_cast<std::size_t>(pdf->size())});
}

} // namespace flarestock
