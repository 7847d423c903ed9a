// SPDX-License-Identifier: MIT

#include "app/desk/stock/narrow_fields.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>
#include <tuple>

namespace flarestock {

namespace {

struct NarrowWords {
    Q_DECLARE_TR_FUNCTIONS(Narrowing)
};

/// A choice by what it stands for and what it says.
using Choice = std::pair<std::string, QString>;

struct Field {
    const char *key;
    QString title;
    std::vector<Choice> choices; ///< The first is any.
    std::string now;
};

/// Numbers by their size, "-4" before "-10", and before other texts; those as they sort.
std::vector<Choice> listed(const std::vector<std::string> &all, const QString &form)
{
    std::vector<std::tuple<bool, double, std::string>> sorted;
    for (const std::string &one : all) {
        bool isNumber = false;
        const double value = said(one).remove(u'-').toDouble(&isNumber);
        sorted.emplace_back(!isNumber, isNumber ? value : 0, one);
    }
    std::sort(sorted.begin(), sorted.end());
    std::vector<Choice> choices{{{}, NarrowWords::tr("any")}};
    for (const auto &[isText, value, one] : sorted)
        choices.emplace_back(one, form.arg(localised(inWords(one))));
    return choices;
}

/// A place by its title, or by its id where it has none.
QString placeSaid(const StockBook &book, const std::string &place)
{
    const Place *known = book.workshop->ledger.place(place);
    return known == nullptr || known->title.empty() ? said(place) : said(known->title);
}

/// Not one place.
std::vector<Choice> wide()
{
    return {
        {{}, NarrowWords::tr("wherever we have it")},
        {Narrowing::Shop, NarrowWords::tr("on shelves and in bins")},
        {Narrowing::Trailer, NarrowWords::tr("in the trailer")},
        {Narrowing::Away, NarrowWords::tr("lent or out for repair")},
        {Narrowing::Cars, NarrowWords::tr("in a car")},
        {Narrowing::Catalogue, NarrowWords::tr("also what we have none of")},
    };
}

std::vector<Choice> places(const StockBook &book)
{
    std::vector<Choice> choices = wide();
    for (const std::string &place : book.places)
        choices.emplace_back(place, placeSaid(book, place));
    return choices;
}

std::vector<Choice> states()
{
    std::vector<Choice> choices{{{}, NarrowWords::tr("any")}};
    const QStringList conditions = allConditions();
    for (int at = 0; at < conditions.size(); ++at)
        choices.emplace_back(std::string(text(static_cast<PieceCondition>(at))), conditions.at(at));
    choices.emplace_back("past", NarrowWords::tr("past its day"));
    return choices;
}

std::vector<Field> fieldsOf(const StockBook &book, const Narrowing &asked)
{
    const std::string state = asked.pastDay     ? "past"
                              : asked.condition ? std::string(text(*asked.condition))
                                                : std::string();
    const QString plain = QStringLiteral("%1");
    return {{"kind", NarrowWords::tr("kind"), listed(book.kinds, plain), asked.kind},
            {"dash", NarrowWords::tr("dash"), listed(book.dashes, plain), asked.dash},
            {"thread", NarrowWords::tr("thread"), listed(book.threads, plain), asked.thread},
            {"micron", NarrowWords::tr("micron"), listed(book.microns, NarrowWords::tr("%1 µm")),
             asked.micron},
            {"where", NarrowWords::tr("where"), places(book), asked.where},
            {"condition", NarrowWords::tr("condition"), states(), state},
            {"below",
             NarrowWords::tr("what we keep"),
             {{{}, NarrowWords::tr("any")}, {"below", NarrowWords::tr("below it only")}},
             asked.below ? "below" : std::string()}};
}

int placeOf(const Field &field)
{
    for (std::size_t at = 0; at < field.choices.size(); ++at) {
        if (field.choices[at].first == field.now)
            return static_cast<int>(at);
    }
    return 0;
}

void set(Narrowing &asked, const char *key, const std::string &value)
{
    const std::string_view field = key;
    if (field == "kind")
        asked.kind = value;
    else if (field == "dash")
        asked.dash = value;
    else if (field == "thread")
        asked.thread = value;
    else if (field == "micron")
        asked.micron = value;
    else if (field == "where")
        asked.where = value;
    else if (field == "below")
        asked.below = !value.empty();
    else {
        asked.pastDay = value == "past";
        const auto condition = parsePieceCondition(value);
        asked.condition = condition ? std::optional(*condition) : std::nullopt;
    }
}

} // namespace

QStringList narrowCells()
{
    return {QStringLiteral("title"), QStringLiteral("choices"), QStringLiteral("answer")};
}

std::vector<Row> narrowRows(const StockBook &book, const Narrowing &asked)
{
    std::vector<Row> rows;
    for (const Field &field : fieldsOf(book, asked)) {
        QStringList choices;
        for (const auto &[value, said] : field.choices)
            choices.append(said);
        rows.push_back(
            {QString::fromLatin1(field.key), {field.title, choices, choices.at(placeOf(field))}});
    }
    return rows;
}

Narrowing narrowed(const StockBook &book, Narrowing asked, const std::pair<QString, int> &choice)
{
    for (const Field &field : fieldsOf(book, asked)) {
        if (choice.first == QLatin1String(field.key) && choice.second >= 0 &&
            choice.second < static_cast<int>(field.choices.size())) {
            const std::string value = field.choices[static_cast<std::size_t>(choice.second)].first;
            set(asked, field.key, value);
            break;
        }
    }
    return asked;
}

/// It is asked for with each key: so no list of choices is made for it.
QString saidNarrowing(const StockBook &book, const Narrowing &asked)
{
    QStringList all;
    for (const std::string &one : {asked.kind, asked.dash, asked.thread}) {
        if (!one.empty())
            all.append(localised(inWords(one)));
    }
    if (!asked.micron.empty())
        all.append(NarrowWords::tr("%1 µm").arg(localised(inWords(asked.micron))));
    if (!asked.where.empty()) {
        const std::vector<Choice> some = wide();
        const auto known = std::find_if(
            some.begin(), some.end(), [&](const Choice &one) { return one.first == asked.where; });
        all.append(known != some.end() ? known->second : placeSaid(book, asked.where));
    }
    if (asked.pastDay)
        all.append(NarrowWords::tr("past its day"));
    else if (asked.condition)
        all.append(allConditions().at(static_cast<int>(*asked.condition)));
    if (asked.below)
        all.append(NarrowWords::tr("below what we keep"));
    return all.join(QStringLiteral(", "));
}

} // namespace flarestock
