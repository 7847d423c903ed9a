// SPDX-License-Identifier: MIT

#include "app/buyer/papers/paper_words.h"

#include "app/workshop/suppliers.h"

#include <QCoreApplication>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>

namespace flarestock {

namespace {

QString said(std::string_view text)
{
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

QJsonArray pairs(const std::vector<PaperWords::Pair> &all)
{
    QJsonArray array;
    for (const auto &[name, text] : all)
        array.append(QJsonArray{said(name), said(text)});
    return array;
}

QJsonArray columns(const std::vector<PaperWords::Column> &all)
{
    QJsonArray array;
    for (const PaperWords::Column &one : all)
        array.append(QJsonObject{{QStringLiteral("title"), said(one.title)},
                                 {QStringLiteral("width"), one.width},
                                 {QStringLiteral("right"), one.right}});
    return array;
}

/// Those that the program itself puts on each paper.
QJsonObject wordsOf(const Speech &speech)
{
    return {{QStringLiteral("to"), said(speech.say("To"))},
            {QStringLiteral("note"), said(speech.say("Note"))},
            {QStringLiteral("continued"), said(speech.say("%1, continued"))},
            {QStringLiteral("page"), said(speech.say("page %1 of %2"))}};
}

/// What the program says; what its libraries say stands before it.
QByteArray lastLine(const QByteArray &said)
{
    return said.trimmed().split('\n').constLast();
}

} // namespace

QJsonArray textArray(const std::vector<std::string> &texts)
{
    QJsonArray array;
    for (const std::string &one : texts)
        array.append(said(one));
    return array;
}

Result<Letterhead> letterheadOf(const ShopFile &file)
{
    const auto documents = file.documents();
    if (!documents)
        return tl::unexpected(documents.error());
    const auto found = documents->find("letterhead.toml");
    if (found == documents->end())
        return Letterhead{file.settings().title, {}, {}};
    return readLetterhead(found->second, "letterhead.toml");
}

PaperWords paperFrom(const Letterhead &from, const std::string &size, const Speaking &speech)
{
    PaperWords paper;
    paper.size = size;
    paper.speech = speech;
    paper.from.push_back(from.name);
    paper.from.insert(paper.from.end(), from.lines.begin(), from.lines.end());
    paper.foot = from.foot;
    return paper;
}

void putPlan(PaperWords &paper, const BuildPlan &plan, const std::string &day)
{
    const Speech &speech = *paper.speech;
    paper.facts = {{speech.say("Build"), plan.title.empty() ? plan.id : plan.title},
                   {speech.say("As of"), speech.day(day)}};
    if (!plan.car.empty())
        paper.facts.emplace_back(speech.say("For"), plan.car);
    if (!plan.by.empty())
        paper.facts.emplace_back(speech.say("By"), speech.day(plan.by));
}

std::vector<std::string> addressOf(std::string_view supplier, const Catalogue &catalogue)
{
    if (const Supplier *one = supplierById(supplier, catalogue)) {
        std::vector<std::string> lines{one->name};
        lines.insert(lines.end(), one->address.begin(), one->address.end());
        return lines;
    }
    return {std::string(supplier)};
}

QByteArray paperDocument(const PaperWords &paper)
{
    QJsonArray rows;
    for (const auto &row : paper.rows)
        rows.append(textArray(row));
    QJsonObject document{{QStringLiteral("paper"), said(paper.size)},
                         {QStringLiteral("title"), said(paper.title)},
                         {QStringLiteral("number"), said(paper.number)},
                         {QStringLiteral("made"), said(paper.made)},
                         {QStringLiteral("from"), textArray(paper.from)},
                         {QStringLiteral("to"), textArray(paper.to)},
                         {QStringLiteral("facts"), pairs(paper.facts)},
                         {QStringLiteral("columns"), columns(paper.columns)},
                         {QStringLiteral("rows"), rows},
                         {QStringLiteral("sums"), pairs(paper.sums)},
                         {QStringLiteral("note"), said(paper.note)},
                         {QStringLiteral("foot"), said(paper.foot)}};
    if (paper.speech != plainSpeech()) // Else the program's own words are right.
        document.insert(QStringLiteral("words"), wordsOf(*paper.speech));
    return QJsonDocument(document).toJson(QJsonDocument::Compact);
}

Result<QByteArray> printed(const QByteArray &document)
{
    const QString program =
        QCoreApplication::applicationDirPath() + QStringLiteral("/flarestock-paper");
    QProcess process;
    process.start(program, QStringList());
    if (!process.waitForStarted())
        return problem("flarestock-paper", "does not lie beside this program, or cannot be started",
                       "Install it again.");
    process.write(document);
    process.closeWriteChannel();
    const bool ended = process.waitForFinished(60'000);
    if (!ended || process.exitStatus() != QProcess::NormalExit || process.exitCode() != 0)
        return problem("the paper",
                       "was not made: " + lastLine(process.readAllStandardError()).toStdString(),
                       "Correct that, then ask for it again.");
    return process.readAllStandardOutput();
}

} // namespace flarestock
