// SPDX-License-Identifier: MIT

#include "app/command/build/size_words.h"

#include "app/command/command.h"
#include "app/command/text_table.h"

#include <array>
#include <charconv>
#include <cmath>

namespace flarestock {

namespace {

constexpr double Psi = 6894.757293168361;
constexpr double LitreHour = 1 / 3.6e6;

/// In the C locale.
std::string decimals(double number, int places)
{
    std::array<char, 64> digits{};
    const auto end = std::to_chars(digits.data(), digits.data() + digits.size(), number,
                                   std::chars_format::fixed, places);
    return {digits.data(), end.ptr};
}

/// "12.3 kPa (1.8 psi)"
std::string pressure(double pascal)
{
    return decimals(pascal / 1e3, 1) + " kPa (" + decimals(pascal / Psi, 2) + " psi)";
}

std::string dashText(int dash)
{
    return "-" + std::to_string(dash);
}

/// "takes 3.1 kPa (0.45 psi) more than -8"
std::string cost(const WorkedAnswer::Sizes &sizes, const SizeTried &size)
{
    const double more = sizes.overWorkedPa(size);
    return "takes " + pressure(std::abs(more)) + (more < 0 ? " less than " : " more than ") +
           dashText(sizes.worked);
}

std::string sizeRemarks(const WorkedAnswer::Sizes &sizes)
{
    std::string said;
    const SizeTried *taken = sizes.of(sizes.taken);
    if (sizes.taken != sizes.worked && taken)
        said += "      your " + dashText(sizes.taken) + " " + cost(sizes, *taken) +
                (taken->keeps ? "" : ", beyond what it may") + "\n";
    if (const SizeTried *down = sizes.nextDown(); down && sizes.taken == sizes.worked)
        said +=
            "      a size down, " + dashText(down->size.dash) + ", " + cost(sizes, *down) + "\n";
    if (sizes.practice)
        said += "      common practice, no source: " + sizes.practice->text() + "\n";
    return said;
}

void addRow(TextTable &table, const WorkedAnswer &worked)
{
    std::vector<std::string> row = {
        worked.title, worked.worked, worked.own ? worked.answer : "", "", "", "", ""};
    const SizeTried *taken = worked.sizes ? worked.sizes->of(worked.sizes->taken) : nullptr;
    if (taken) {
        const LineAsked &line = worked.sizes->line;
        row[3] = decimals(line.flowM3S / LitreHour, 0) + " L/h";
        row[4] = decimals(taken->velocityMS, 2) + " m/s";
        row[5] = decimals(taken->dropPa / 1e3, 1) + " kPa";
        row[6] = line.mostPa ? decimals(*line.mostPa / 1e3, 1) + " kPa" : "";
    }
    table.add(row);
}

QJsonValue kilopascals(double pascal)
{
    return std::round(pascal / 10) / 100; // To 0.01 kPa.
}

QJsonObject triedDocument(const WorkedAnswer::Sizes &sizes, const SizeTried &one)
{
    return {
        {QStringLiteral("dash"), jsonText(dashText(one.size.dash))},
        {QStringLiteral("boreMm"), std::round(one.size.boreM * 1e5) / 100},
        {QStringLiteral("boreAssumed"), one.size.assumed},
        {QStringLiteral("inCatalogue"), one.size.offered},
        {QStringLiteral("lossKpa"), kilopascals(one.dropPa)},
        {QStringLiteral("velocityMS"), std::round(one.velocityMS * 100) / 100},
        {QStringLiteral("keeps"), one.keeps},
        {QStringLiteral("overWorkedKpa"), kilopascals(sizes.overWorkedPa(one))},
        {QStringLiteral("overWorkedPsi"), std::round(sizes.overWorkedPa(one) / Psi * 1000) / 1000},
    };
}

void addLine(QJsonObject &document, const WorkedAnswer::Sizes &sizes)
{
    QJsonArray tried;
    for (const SizeTried &one : sizes.tried)
        tried.append(triedDocument(sizes, one));
    const SizeTried *down = sizes.nextDown();
    document.insert(QStringLiteral("flowLh"), std::round(sizes.line.flowM3S / LitreHour * 10) / 10);
    document.insert(QStringLiteral("mostKpa"),
                    sizes.line.mostPa ? kilopascals(*sizes.line.mostPa) : QJsonValue());
    document.insert(QStringLiteral("mostMS"), sizes.line.mostMS);
    document.insert(QStringLiteral("tried"), tried);
    document.insert(QStringLiteral("sizeDown"),
                    down ? QJsonValue(jsonText(dashText(down->size.dash))) : QJsonValue());
    document.insert(QStringLiteral("practice"),
                    sizes.practice ? QJsonValue(jsonText("common practice, no source: " +
                                                         sizes.practice->text()))
                                   : QJsonValue());
    document.insert(QStringLiteral("source"), jsonText(sizes.budgetSource));
}

} // namespace

std::string sizesSheet(const Expansion &build)
{
    if (build.workedOut.empty())
        return {};
    TextTable table({{"sized", TextTable::Side::Left},
                     {"worked out", TextTable::Side::Right},
                     {"yours", TextTable::Side::Right, TextTable::Shown::WhereFilled},
                     {"carries", TextTable::Side::Right},
                     {"velocity", TextTable::Side::Right},
                     {"takes", TextTable::Side::Right},
                     {"may take", TextTable::Side::Right}});
    std::string remarks;
    for (const WorkedAnswer &worked : build.workedOut) {
        addRow(table, worked);
        std::string said = worked.why.empty() ? "" : "      " + worked.why + "\n";
        said += worked.sizes ? sizeRemarks(*worked.sizes) : "";
        remarks += said.empty() ? "" : "  " + worked.title + "\n" + said;
    }
    return "\nSIZES WORKED OUT\n" + table.text() + remarks;
}

QJsonArray sizesDocument(const Expansion &build)
{
    QJsonArray all;
    for (const WorkedAnswer &worked : build.workedOut) {
        QJsonObject document{
            {QStringLiteral("question"), jsonText(worked.question)},
            {QStringLiteral("title"), jsonText(worked.title)},
            {QStringLiteral("workedOut"), jsonText(worked.worked)},
            {QStringLiteral("answer"), jsonText(worked.answer)},
            {QStringLiteral("own"), worked.own},
            {QStringLiteral("why"), jsonText(worked.why)},
        };
        if (worked.sizes)
            addLine(document, *worked.sizes);
        all.append(document);
    }
    return all;
}

} // namespace flarestock
