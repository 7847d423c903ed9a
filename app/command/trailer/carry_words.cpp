// SPDX-License-Identifier: MIT

#include "app/command/trailer/carry_words.h"

#include "app/command/command.h"
#include "app/command/text_table.h"

#include <QJsonArray>

#include <algorithm>

namespace flarestock {

namespace {

/// So many further rows of the table behind what is carried.
constexpr std::int64_t RowsBehind = 2;
constexpr std::int64_t RowsMost = 400;

std::string moneyText(std::int64_t micros)
{
    const Decimal exact = Decimal::scaled(micros, 6).stripped();
    return (exact.scale() < 2 ? exact.rescaled(2, Rounding::HalfEven) : exact).text();
}

/// From none (or from where it begins to tell) to two more than are carried.
QJsonArray tableDocument(const CarryLine &line)
{
    QJsonArray table;
    const std::int64_t uses = line.carry / line.perUse;
    for (auto at = std::max<std::int64_t>(0, uses - RowsMost); at <= uses + RowsBehind; ++at)
        table.append(QJsonObject{
            {QStringLiteral("carry"), static_cast<qint64>(at * line.perUse)},
            {QStringLiteral("covered"), jsonText(probabilityText(line.demand->covered(at)))}});
    return table;
}

void addChance(const CarryLine &line, QJsonObject &said)
{
    const std::int64_t uses = line.carry / line.perUse;
    said.insert(QStringLiteral("mean"), jsonText(line.mean));
    said.insert(QStringLiteral("model"), jsonText(text(line.demand->form())));
    said.insert(QStringLiteral("fillRate"), jsonText(probabilityText(line.demand->met(uses))));
    said.insert(QStringLiteral("table"), tableDocument(line));
    if (line.other) {
        const std::int64_t others = line.other->fewest(line.certainty);
        said.insert(QStringLiteral("otherModel"),
                    QJsonObject{{QStringLiteral("model"), jsonText(text(line.other->form()))},
                                {QStringLiteral("carry"), static_cast<qint64>(others)},
                                {QStringLiteral("covered"),
                                 jsonText(probabilityText(line.other->covered(others)))}});
    }
}

std::string chanceSentence(const CarryLine &line)
{
    const std::int64_t uses = line.carry / line.perUse;
    std::string said = "nothing lacks with " + percentText(*line.covered) + " (" +
                       percentText(line.certainty) + " asked for)";
    if (uses > 0)
        said += "; with " + std::to_string(line.carry - line.perUse) + " it would be " +
                percentText(line.demand->covered(uses - 1));
    return said;
}

std::string wearSentence(const CarryLine &line)
{
    std::string said = "so many are due before the running is over";
    if (line.due.after > 0)
        said += "; " + std::to_string(line.due.after) + " more when it is";
    return said;
}

/// To a hundredth, as a table says it; the document has all of it.
std::string roundedText(const std::string &number)
{
    const auto exact = Decimal::parse(number);
    return exact ? exact->rescaled(2, Rounding::HalfEven).stripped().text() : number;
}

} // namespace

QJsonObject carryDocument(const CarryLine &line)
{
    QJsonObject said{{QStringLiteral("carry"), static_cast<qint64>(line.carry)},
                     {QStringLiteral("covered"),
                      line.covered ? jsonText(probabilityText(*line.covered)) : QJsonValue()},
                     {QStringLiteral("spentBy"), jsonText(text(line.spending))},
                     {QStringLiteral("per"), jsonText(text(line.per))},
                     {QStringLiteral("coming"), jsonText(line.coming.text())},
                     {QStringLiteral("sum"), jsonText(line.sum)},
                     {QStringLiteral("why"), jsonText(line.why)}};
    if (!line.part.empty())
        said.insert(QStringLiteral("part"), jsonText(line.part));
    if (line.demand)
        addChance(line, said);
    if (line.covered)
        said.insert(QStringLiteral("certainty"), jsonText(probabilityText(line.certainty)));
    if (line.spending == Spending::Wear)
        said.insert(QStringLiteral("dueAfter"), static_cast<qint64>(line.due.after));
    if (line.spending == Spending::Crash)
        said.insert(QStringLiteral("perCrash"), static_cast<qint64>(line.perUse));
    if (line.uses) {
        said.insert(QStringLiteral("uses"), jsonText(line.uses->text()));
        said.insert(QStringLiteral("seen"), jsonText(line.seen->text()));
    }
    return said;
}

std::string carrySentences(const CarryLine &line)
{
    std::string said =
        (line.part.empty() ? "carry " : line.part + ": carry ") + std::to_string(line.carry);
    if (line.spending == Spending::Wear)
        said += ": " + wearSentence(line);
    else if (line.covered)
        said += ": " + chanceSentence(line);
    said += "\n  " + line.sum;
    if (line.demand)
        said +=
            (line.spending == Spending::Crash ? " crashes to be expected; " : " to be expected; ") +
            std::string(text(line.demand->form())) + ": " + line.why;
    else
        said += "; " + line.why;
    said += "\n";
    if (line.demand && line.spending == Spending::Chance)
        said += "  of all that will be wanted " + percentText(line.demand->met(line.carry)) +
                " is there (the fill rate, which is another measure)\n";
    if (line.other)
        said += "  " + std::string(text(line.other->form())) + " would say " +
                std::to_string(line.other->fewest(line.certainty)) + "\n";
    return said;
}

QJsonObject kitDocument(const SaidKit &kit)
{
    QJsonArray parts;
    for (std::size_t i = 0; i < kit.parts.size(); ++i) {
        const std::int64_t carried = kit.plan.best.carried[i];
        QJsonObject part = carryDocument(kit.lines[i]);
        for (const char *ofItAlone : {"table", "otherModel", "certainty"})
            part.remove(QLatin1String(ofItAlone));
        part.insert(QStringLiteral("carry"), static_cast<qint64>(carried));
        part.insert(QStringLiteral("covered"),
                    jsonText(probabilityText(kit.parts[i].demand.covered(carried))));
        part.insert(QStringLiteral("fillRate"),
                    jsonText(probabilityText(kit.parts[i].demand.met(carried))));
        part.insert(QStringLiteral("priceEach"), jsonText(moneyText(kit.parts[i].priceEach)));
        part.insert(QStringLiteral("cost"), jsonText(moneyText(carried * kit.parts[i].priceEach)));
        parts.append(part);
    }
    QJsonArray way;
    for (const KitStep &step : kit.plan.way)
        way.append(
            QJsonObject{{QStringLiteral("oneMore"), jsonText(kit.parts[step.part].part)},
                        {QStringLiteral("cost"), jsonText(moneyText(step.then.cost))},
                        {QStringLiteral("covered"), jsonText(probabilityText(step.then.covered))}});
    QJsonObject said{
        {QStringLiteral("kit"), parts},
        {QStringLiteral("cost"), jsonText(moneyText(kit.plan.best.cost + kit.besides))},
        {QStringLiteral("covered"), jsonText(probabilityText(kit.plan.best.covered))},
        {QStringLiteral("certainty"), jsonText(probabilityText(kit.certainty))},
        {QStringLiteral("proven"), kit.plan.isProven},
        {QStringLiteral("noLess"), jsonText(moneyText(kit.plan.noLess + kit.besides))},
        {QStringLiteral("marginal"), way}};
    if (!kit.currency.empty())
        said.insert(QStringLiteral("currency"), jsonText(kit.currency));
    return said;
}

std::string kitSentences(const SaidKit &kit)
{
    using Side = TextTable::Side;
    TextTable table({{"part", Side::Left},
                     {"carry", Side::Right},
                     {"each", Side::Right},
                     {"cost", Side::Right},
                     {"to be expected", Side::Right},
                     {"covers", Side::Right},
                     {"by", Side::Left}});
    for (std::size_t i = 0; i < kit.parts.size(); ++i) {
        const std::int64_t carried = kit.plan.best.carried[i];
        table.add({kit.parts[i].part, std::to_string(carried), moneyText(kit.parts[i].priceEach),
                   moneyText(carried * kit.parts[i].priceEach), roundedText(kit.lines[i].mean),
                   percentText(kit.parts[i].demand.covered(carried)),
                   std::string(text(kit.parts[i].demand.form()))});
    }
    const std::string money = kit.currency.empty() ? "" : " " + kit.currency;
    std::string said = table.text();
    said += "nothing of all of them lacks with " + percentText(kit.plan.best.covered) + " (" +
            percentText(kit.certainty) + " asked for), for " + moneyText(kit.plan.best.cost) +
            money + "; ";
    said += kit.plan.isProven ? "no kit of that certainty costs less\n"
                              : "it is not proven that no other costs less; none costs less than " +
                                    moneyText(kit.plan.noLess) + money + "\n";
    if (!kit.plan.way.empty() && kit.plan.way.back().then.cost > kit.plan.best.cost)
        said += "one more at a time of what covers most for its money comes to " +
                moneyText(kit.plan.way.back().then.cost) + money + "\n";
    return said;
}

} // namespace flarestock
