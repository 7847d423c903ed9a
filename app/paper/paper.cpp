// SPDX-License-Identifier: MIT

#include "app/paper/paper.h"

#include <QDate>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace flarestock {

namespace {

QString textIn(const QJsonObject &object, const char *key)
{
    return object.value(QLatin1String(key)).toString();
}

QStringList textsOf(const QJsonValue &value)
{
    QStringList texts;
    for (const auto &one : value.toArray())
        texts << one.toString();
    return texts;
}

QVector<Paper::Pair> pairsOf(const QJsonValue &value)
{
    QVector<Paper::Pair> pairs;
    for (const auto &one : value.toArray())
        pairs.append({one.toArray().at(0).toString(), one.toArray().at(1).toString()});
    return pairs;
}

Paper::Words wordsIn(const QJsonObject &said)
{
    Paper::Words words;
    const auto take = [&said](const char *key, QString &word) {
        if (said.contains(QLatin1String(key)))
            word = textIn(said, key);
    };
    take("to", words.to);
    take("note", words.note);
    take("continued", words.continued);
    take("page", words.page);
    return words;
}

} // namespace

Result<Paper> Paper::read(const QByteArray &json)
{
    const QJsonObject object = QJsonDocument::fromJson(json).object();
    Paper paper;
    const QString size = textIn(object, "paper");
    if (size != QLatin1String("A4") && size != QLatin1String("Letter"))
        return problem("the paper " + size.toStdString(), "is no size", "Say A4 or Letter.");
    paper.size = QPageSize(size == QLatin1String("A4") ? QPageSize::A4 : QPageSize::Letter);
    paper.title = textIn(object, "title");
    paper.number = textIn(object, "number");
    paper.made = textIn(object, "made");
    if (!QDate::fromString(paper.made, Qt::ISODate).isValid())
        return problem("the paper", "does not say when it was made", "Say \"made\": a day.");
    paper.from = textsOf(object.value(QLatin1String("from")));
    paper.to = textsOf(object.value(QLatin1String("to")));
    paper.facts = pairsOf(object.value(QLatin1String("facts")));
    paper.sums = pairsOf(object.value(QLatin1String("sums")));
    paper.note = textIn(object, "note");
    paper.foot = textIn(object, "foot");
    paper.words = wordsIn(object.value(QLatin1String("words")).toObject());
    for (const auto &one : object.value(QLatin1String("columns")).toArray()) {
        const QJsonObject column = one.toObject();
        paper.columns.append({textIn(column, "title"),
                              column.value(QLatin1String("right")).toBool(),
                              column.value(QLatin1String("width")).toDouble(1)});
    }
    for (const auto &one : object.value(QLatin1String("rows")).toArray()) {
        paper.rows.append(textsOf(one));
        if (paper.rows.back().size() != paper.columns.size())
            return problem("the paper", "has a row of another width", "Say a cell a column.");
    }
    if (paper.columns.isEmpty() || paper.rows.isEmpty())
        return problem("the paper", "has no rows", "Say \"columns\" and \"rows\".");
    return paper;
}

} // namespace flarestock
