// SPDX-License-Identifier: MIT

#include "app/buyer/papers/label_words.h"

#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>

namespace flarestock {

namespace {

constexpr double Least = 10;
constexpr double Most = 300;

} // namespace

Result<LabelSize> labelSizeAsked(const std::string &typed)
{
    static const QRegularExpression form(QStringLiteral(
        "^\\s*(\\d+(?:\\.\\d+)?)\\s*(?:mm)?\\s*[xX×]\\s*(\\d+(?:\\.\\d+)?)\\s*(?:mm)?\\s*$"));
    const auto match = form.match(QString::fromStdString(typed));
    if (!match.hasMatch())
        return problem("the size \"" + typed + '"', "is no width and height",
                       "Write them in mm: 50x25.");
    const LabelSize size{match.captured(1).toDouble(), match.captured(2).toDouble()};
    for (const double side : {size.width, size.height}) {
        if (side < Least || side > Most)
            return problem("the size \"" + typed + '"', "is no label's",
                           "Say sides of 10 to 300 mm: 50x25.");
    }
    return size;
}

std::string lyingIn(const std::string &part, const std::string &lot, const Ledger &ledger)
{
    std::string found;
    for (const auto &[key, balance] : ledger.balancesOf(part)) {
        const Place *place = ledger.place(key.place);
        if (!place || !isStock(place->kind) || (!lot.empty() && key.lot != lot))
            continue;
        if (!found.empty() && found != place->id)
            return {};
        found = place->id;
    }
    return found;
}

Label partLabel(const Part &part, const std::string &place, const Speech &speech)
{
    Label label{part.number, {part.number, part.description}};
    if (!place.empty())
        label.lines.push_back(speech.say("in %1", {place}));
    return label;
}

Label lotLabel(const Part &part, const std::string &lot, const std::string &place,
               const LotSource &source)
{
    const auto &[workshop, speech] = source;
    if (lot == part.number) // A made-up hose: its tag is both.
        return partLabel(part, place, speech);
    Label label{part.number + '=' + lot, {part.number, speech.say("lot %1", {lot})}};
    std::string last = place.empty() ? std::string() : speech.say("in %1", {place});
    const auto known = workshop.notes.lots.find({part.number, lot});
    if (known != workshop.notes.lots.end()) {
        const LotFacts &facts = known->second;
        if (!facts.useBy.empty()) // A line of its own: it must not be cut short.
            label.lines.push_back(speech.say("use by %1", {speech.day(facts.useBy)}));
        if (!facts.owner.empty())
            last += (last.empty() ? "" : ", ") + speech.say("for %1", {facts.owner});
    }
    label.lines.push_back(part.description);
    if (!last.empty())
        label.lines.push_back(last);
    return label;
}

Label placeLabel(const Place &place)
{
    Label label{place.id, {place.id}};
    if (place.title != place.id)
        label.lines.push_back(place.title);
    return label;
}

QByteArray labelDocument(const std::vector<Label> &labels, const LabelSize &size,
                         const std::string &made)
{
    QJsonArray all;
    for (const Label &label : labels)
        all.append(QJsonObject{{QStringLiteral("code"), QString::fromStdString(label.code)},
                               {QStringLiteral("lines"), textArray(label.lines)}});
    return QJsonDocument(QJsonObject{{QStringLiteral("labels"), all},
                                     {QStringLiteral("width"), size.width},
                                     {QStringLiteral("height"), size.height},
                                     {QStringLiteral("made"), QString::fromStdString(made)}})
        .toJson(QJsonDocument::Compact);
}

} // namespace flarestock
