// SPDX-License-Identifier: MIT

#include "app/command/servicing/car_papers.h"

#include "app/buyer/order_paper.h"
#include "app/buyer/whole_file.h"
#include "app/command/servicing/car_sheet.h"
#include "app/command/servicing/due_words.h"
#include "app/garage/cautions.h"
#include "app/workshop/made_up.h"

#include <QJsonArray>
#include <QJsonDocument>

namespace flarestock {

namespace {

/// What a paper is made of.
struct PaperWords {
    std::string car;
    std::string today;
    std::vector<DueLine> due;
    const Event *event = nullptr;
};

QJsonObject column(const char *title, double width)
{
    return {{QStringLiteral("title"), QString::fromUtf8(title)},
            {QStringLiteral("width"), width},
            {QStringLiteral("right"), false}};
}

QJsonArray fact(const std::string &name, const std::string &value)
{
    return {jsonText(name), jsonText(value)};
}

std::string pieceCell(const LotKey &piece, const Workshop &workshop)
{
    const Part *part = workshop.part(piece.part);
    return piece.part + (piece.lot.empty() ? "" : ", " + piece.lot) +
           (part ? "\n" + part->description : std::string());
}

QJsonArray cardRows(const PaperWords &words, const Garage &garage)
{
    QJsonArray rows;
    for (const DueLine &line : words.due)
        rows.append(QJsonArray{QStringLiteral("[   ]"), jsonText(doText(line.work.todo)),
                               jsonText(line.said + "\n" + line.work.piece->position),
                               jsonText(pieceCell(line.work.piece->piece, *garage.workshop)),
                               jsonText(std::string(text(line.work.standing)) +
                                        (line.by.empty() ? "" : ", by " + line.by) + "\n" +
                                        whyText(line.work)),
                               jsonText(partsText(line))});
    if (rows.isEmpty())
        rows.append(QJsonArray{QString(), QStringLiteral("nothing is due"), QString(), QString(),
                               QString(), QString()});
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

QJsonArray sheetRows(const PaperWords &words, const Garage &garage)
{
    QJsonArray rows;
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
        rows.append(QJsonArray{
            jsonText(garage.said(piece) + "\n" + piece.position),
            jsonText(pieceCell(piece.piece, *garage.workshop)),
            jsonText(piece.since + (piece.made.empty() ? "" : "\nmade " + piece.made)),
            jsonText(last), jsonText(until),
            jsonText(stateOf(piece, garage, words.car) + (piece.damaged ? "\ndamaged" : ""))});
    }
    return rows;
}

/// Each build of the car that has something in it, and its last leak test.
QJsonArray leakTests(const PaperWords &words, const Garage &garage)
{
    QJsonArray facts;
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
        facts.append(fact("Leak test, " + piece.build, said));
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

QJsonObject paperOf(CarPaperKind kind, const PaperWords &words, const Garage &garage,
                    const Letterhead &from)
{
    const bool card = kind == CarPaperKind::Card;
    const Use use = garage.life(words.car).use();
    const Place *car = garage.workshop->ledger.place(words.car);
    QJsonArray facts{fact("Date", words.today),
                     fact("Ran", std::to_string(use.runs) + " runs, " +
                                     use.hours.stripped().text() + " h, " +
                                     std::to_string(use.eventCount()) + " events")};
    if (words.event)
        facts.append(fact("For", words.event->title + ", " + words.event->firstDay + " to " +
                                     words.event->lastDay));
    for (const auto &one : leakTests(words, garage))
        facts.append(one);
    QJsonArray sender{jsonText(from.name)};
    for (const std::string &line : from.lines)
        sender.append(jsonText(line));
    const QJsonArray cardColumns{column("Done", 6),   column("Do", 9),   column("Where", 22),
                                 column("Piece", 22), column("Why", 25), column("Takes", 16)};
    const QJsonArray sheetColumns{column("Where", 24), column("Piece", 26), column("In since", 13),
                                  column("Last", 15),  column("Until", 13), column("State", 9)};
    return {{QStringLiteral("title"),
             card ? QStringLiteral("Service card") : QStringLiteral("Inspection sheet")},
            {QStringLiteral("number"), jsonText(words.car)},
            {QStringLiteral("made"), jsonText(words.today)},
            {QStringLiteral("from"), sender},
            {QStringLiteral("to"), QJsonArray{jsonText(car ? car->title : words.car)}},
            {QStringLiteral("facts"), facts},
            {QStringLiteral("columns"), card ? cardColumns : sheetColumns},
            {QStringLiteral("rows"), card ? cardRows(words, garage) : sheetRows(words, garage)},
            {QStringLiteral("sums"), QJsonArray()},
            {QStringLiteral("note"),
             jsonText(card ? cautions() : "Looked at by:                      Signed:")},
            {QStringLiteral("foot"), jsonText(AdviceOnly)}};
}

Result<void> writePdf(const CarPaperAsked &asked, QJsonObject paper)
{
    paper.insert(QStringLiteral("paper"), jsonText(asked.size));
    const auto pdf = printed(QJsonDocument(paper).toJson(QJsonDocument::Compact));
    if (!pdf)
        return tl::unexpected(pdf.error());
    return writeWhole(asked.pdf, {pdf->constData(), static_cast<std::size_t>(pdf->size())});
}

/// What would stand on it, for a terminal.
std::string toldOf(const QJsonObject &paper)
{
    std::string told;
    for (const auto &row : paper.value(QStringLiteral("rows")).toArray()) {
        std::string line;
        for (const auto &cell : row.toArray())
            line += "  " +
                    cell.toString().replace(QLatin1Char('\n'), QStringLiteral(": ")).toStdString();
        told += line + "\n";
    }
    return told + paper.value(QStringLiteral("note")).toString().toStdString() + "\n" +
           paper.value(QStringLiteral("foot")).toString().toStdString() + "\n";
}

Result<QJsonObject> paperAsked(CarPaperKind kind, const CarPaperAsked &asked, OpenShop &shop,
                               const Garage &garage)
{
    if (asked.size != "A4" && asked.size != "Letter")
        return problem("the paper " + asked.size, "is no size", "Say A4 or Letter.");
    const auto car = carAsked(asked.car, shop.workshop->ledger);
    if (!car)
        return tl::unexpected(car.error());
    if (garage.life((*car)->id).fitted.empty())
        return problem((*car)->id, "has nothing in it that the shop knows of",
                       "Issue a build to it, or say what is in it: flarestock service " +
                           (*car)->id + " fit PART.");
    PaperWords words{(*car)->id, dayOf(shop.by.at), {}, nullptr};
    auto due = dueList(garage, {words.car, asked.event, {}, words.today, false});
    if (!due)
        return tl::unexpected(due.error());
    words.due = std::move(*due);
    words.event = shop.workshop->season.event(asked.event);
    const auto from = letterheadOf(shop.file);
    if (!from)
        return tl::unexpected(from.error());
    return paperOf(kind, words, garage, *from);
}

} // namespace

void answerCarPaper(CarPaperKind kind, const CarPaperAsked &asked, OpenShop &shop)
{
    const auto garage = Garage::of(*shop.workshop, shop.file);
    if (!garage)
        return shop.outcome.refuse(garage.error());
    const auto paper = paperAsked(kind, asked, shop, *garage);
    if (!paper)
        return shop.outcome.refuse(paper.error());
    if (!asked.pdf.empty()) {
        if (const auto written = writePdf(asked, *paper); !written)
            return shop.outcome.refuse(written.error());
    }
    if (shop.asked.json)
        return shop.outcome.print(*paper);
    shop.outcome.out += asked.pdf.empty() ? toldOf(*paper) : "written: " + asked.pdf + "\n";
}

} // namespace flarestock
