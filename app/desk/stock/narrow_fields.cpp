// SPDX-License-Identifier: MIT

#include "app/desk/stock/narrow_fields.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>

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

/// Numbers by their size, "-4" before "-10"; other texts as they sort.
bool isBefore(const std::string &a, const std::string &b)
{
    const auto number = [](const std::string &text) {
        bool isNumber = false;
        const double value = said(text).remove(u'-').toDouble(&isNumber);
        return isNumber ? std::optional(value) : std::nullopt;
    };
    const auto one = number(a);
    const auto other = number(b);
    return one && other ? *one < *other : a < b;
}

std::vector<Choice> listed(std::vector<std::string> all, const QString &form)
{
    std::sort(all.begin(), all.end(), isBefore);
    std::vector<Choice> choices{{{}, NarrowWords::tr("any")}};
    for (const std::string &one : all)
        choices.emplace_back(one, form.arg(localised(inWords(one))));
    return choices;
}

std::vector<Choice> places(const StockBook &book)
{
    std::vector<Choice> choices{
        {{}, NarrowWords::tr("wherever we have it")},
        {Narrowing::Shop, NarrowWords::tr("on shelves and in bins")},
        {Narrowing::Trailer, NarrowWords::tr("in the trailer")},
        {Narrowing::Away, NarrowWords::tr("lent or out for repair")},
        {Narrowing::Cars, NarrowWords::tr("in a car")},
        {Narrowing::Catalogue, NarrowWords::tr("also what we have none of")}};
    for (const std::string &place : book.places) {
        const Place *known = book.workshop->ledger.place(place);
        choices.emplace_back(place, known->title.empty() ? said(place) : said(known->title));
    }
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

QString saidNarrowing(const StockBook &book, const Narrowing &asked)
{
    QStringList all;
    for (const Field &field : fieldsOf(book, asked)) {
        if (const int at = placeOf(field); at > 0)
            all.append(field.key == std::string_view("below")
                           ? NarrowWords::tr("below what we keep")
                           : field.choices[static_cast<std::size_t>(at)].second);
    }
    return all.join(QStringLiteral(", "));
}

} // namespace flarestock
