// SPDX-License-Identifier: MIT

#include "app/desk/parts/editing/card_fields.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"
#include "model/exact/case_fold.h"
#include "model/exchange/catalogue/part_columns.h"
#include "model/fluids/compatibility.h"

#include <QCoreApplication>

#include <algorithm>
#include <set>

namespace flarestock {

namespace {

struct FieldWords {
    Q_DECLARE_TR_FUNCTIONS(CardFields)
};

/// Kind and unit always stand for something; all else may be left out.
bool isAlwaysSaid(const std::string &heading)
{
    return heading == "kind" || heading == "unit";
}

/// What is measured or counted; names, lists of numbers and threads are not.
bool isFigure(const std::string &heading)
{
    static const std::set<std::string, std::less<>> All = {
        "rated",  "lowest",    "highest", "dash",   "bore",       "bend radius", "angle", "tube",
        "micron", "allowance", "beta",    "flow",   "clean loss", "bypass",      "curve", "amps",
        "low",    "high",      "passage", "volume", "gauge",      "wide open"};
    return All.contains(heading);
}

struct Named {
    QString title;
    QString hint;
};

using NamedFields = std::map<std::string, Named, std::less<>>;

/// Titles and examples; the examples are in the catalogue's own spelling. Of what all parts have …
NamedFields namedOfAll()
{
    return {
        {"part", {FieldWords::tr("part number"), QStringLiteral("AD-66")}},
        {"kind", {FieldWords::tr("kind"), {}}},
        {"description",
         {FieldWords::tr("description"), FieldWords::tr("a few words, as on its bin")}},
        {"unit", {FieldWords::tr("counted in"), {}}},
        {"material", {FieldWords::tr("body"), QStringLiteral("aluminium")}},
        {"seal", {FieldWords::tr("seal"), {}}},
        {"suits", {FieldWords::tr("goes with"), QStringLiteral("gasoline; E85; methanol")}},
        {"words", {FieldWords::tr("further words"), QStringLiteral("bypass; in-line")}},
        {"rated", {FieldWords::tr("rated pressure"), QStringLiteral("500 psi")}},
        {"lowest", {FieldWords::tr("not colder than"), QStringLiteral("-40 C")}},
        {"highest", {FieldWords::tr("not hotter than"), QStringLiteral("150 C")}},
        {"box", {FieldWords::tr("in the box besides it"), QStringLiteral("2 x CL-10; BR-460")}},
        {"fitting", {FieldWords::tr("fitting it uses up"), QStringLiteral("1 x BK-R")}},
        {"substitutes", {FieldWords::tr("can be replaced by"), QStringLiteral("AD-67; AD-68")}}};
}

/// … and of what some kinds have.
NamedFields namedOfSome()
{
    return {{"construction", {FieldWords::tr("series"), QStringLiteral("PTFE-S")}},
            {"dash", {FieldWords::tr("hose size"), QStringLiteral("8")}},
            {"bore", {FieldWords::tr("inside"), QStringLiteral("10.4 mm")}},
            {"bend radius", {FieldWords::tr("bends to"), QStringLiteral("3 in")}},
            {"liner", {FieldWords::tr("inside lining"), QStringLiteral("PTFE")}},
            {"conductive", {FieldWords::tr("conducts"), {}}},
            {"clamped", {FieldWords::tr("under a clamp"), {}}},
            {"fits", {FieldWords::tr("for hose series"), QStringLiteral("PTFE-S; PTFE-C")}},
            {"angle", {FieldWords::tr("bend, degrees"), QStringLiteral("45")}},
            {"allowance", {FieldWords::tr("takes up of the length"), QStringLiteral("22 mm")}},
            {"tube", {FieldWords::tr("outside"), QStringLiteral("3/8")}},
            {"micron", {FieldWords::tr("holds back, µm"), QStringLiteral("10")}},
            {"basis", {FieldWords::tr("micron basis"), {}}},
            {"beta", {FieldWords::tr("beta"), QStringLiteral("75")}},
            {"medium", {FieldWords::tr("made of"), QStringLiteral("stainless mesh")}},
            {"element", {FieldWords::tr("its element"), QStringLiteral("EG-10")}},
            {"serviceable", {FieldWords::tr("can be opened"), {}}},
            {"flow", {FieldWords::tr("flow"), QStringLiteral("600 L/h")}},
            {"clean loss", {FieldWords::tr("loses when clean"), QStringLiteral("9 kPa")}},
            {"washable", {FieldWords::tr("can be washed"), {}}},
            {"curve", {FieldWords::tr("pump curve"), QStringLiteral("3 bar @ 13.5 V = 255 L/h")}},
            {"amps", {FieldWords::tr("amperes"), QStringLiteral("12")}},
            {"electric", {FieldWords::tr("electric"), {}}},
            {"position", {FieldWords::tr("sits"), {}}},
            {"low", {FieldWords::tr("pressure from"), QStringLiteral("35 psi")}},
            {"high", {FieldWords::tr("pressure to"), QStringLiteral("75 psi")}},
            {"designation", {FieldWords::tr("ring"), QStringLiteral("AS568-906")}},
            {"crush", {FieldWords::tr("crush washer"), {}}},
            {"thread", {FieldWords::tr("goes over"), QStringLiteral("M10x1.0")}},
            {"passage", {FieldWords::tr("passes dirt up to, µm"), QStringLiteral("10")}},
            {"volume", {FieldWords::tr("holds"), QStringLiteral("60 L")}},
            {"sock", {FieldWords::tr("strainer inside"), {}}},
            {"gauge", {FieldWords::tr("gauge, AWG"), QStringLiteral("12")}},
            {"wide open", {FieldWords::tr("takes wide open"), QStringLiteral("0.5 psi")}}};
}

/// A bypass is a pressure of a filter, and yes or no of a regulator.
bool isYesNo(const std::string &heading, Kind kind)
{
    static const std::vector<std::string> All = {"conductive", "clamped", "serviceable", "washable",
                                                 "electric",   "crush",   "sock"};
    return (heading == "bypass" && kind == Kind::Regulator) ||
           std::find(All.begin(), All.end(), heading) != All.end();
}

Named namedOf(const std::string &heading, Kind kind)
{
    if (heading == "bypass")
        return kind == Kind::Regulator
                   ? Named{FieldWords::tr("surplus goes back"), {}}
                   : Named{FieldWords::tr("bypass opens at"), QStringLiteral("2 bar")};
    for (const NamedFields &named : {namedOfAll(), namedOfSome()}) {
        if (const auto found = named.find(heading); found != named.end())
            return found->second;
    }
    return {said(heading), {}};
}

Row fieldRow(const std::string &heading, const CardFields &card)
{
    const Named is = namedOf(heading, card.kind);
    const std::string text = cellOf(card.cells, heading);
    std::vector<std::string> words =
        isYesNo(heading, card.kind) ? std::vector<std::string>{"no", "yes"} : wordsOf(heading);
    QStringList choices;
    int chosen = 0;
    if (!words.empty() && !isAlwaysSaid(heading))
        words.insert(words.begin(), std::string());
    for (const std::string &word : words) {
        if (sameFolded(word, text))
            chosen = static_cast<int>(choices.size());
        choices.append(word.empty() ? FieldWords::tr("not said") : inWords(word));
    }
    const auto wrong = card.wrong.find(heading);
    return {said(heading),
            {is.title, words.empty() ? QStringLiteral("typed") : QStringLiteral("choice"), choices,
             words.empty() ? said(text) : QString::number(chosen),
             isFigure(heading) ? localised(is.hint) : is.hint,
             wrong == card.wrong.end() ? QString() : wrong->second}};
}

} // namespace

QStringList cardFieldCells()
{
    return {QStringLiteral("title"), QStringLiteral("form"), QStringLiteral("choices"),
            QStringLiteral("value"), QStringLiteral("hint"), QStringLiteral("problem")};
}

QString cellAsTyped(const std::string &heading, const std::string &cell)
{
    return isFigure(heading) ? localised(said(cell)) : said(cell);
}

Result<std::string> cellOfTyped(const std::string &heading, const std::string &typed)
{
    if (heading == "thread") // M10x1.250: its pitch is no thousands.
        return unlocalised(said(typed)).toStdString();
    return isFigure(heading) ? figuresTyped(said(typed)) : typed;
}

std::vector<std::string> wordsOf(const std::string &heading)
{
    std::vector<std::string> words;
    if (heading == "kind") {
        for (std::size_t at = 0; at < KindCount; ++at)
            words.emplace_back(text(static_cast<Kind>(at)));
    } else if (heading == "seal") {
        for (const std::string_view seal : sealMaterials())
            words.emplace_back(seal);
    } else if (heading == "unit") {
        words = {"each", "in", "mm"};
    } else if (heading == "basis") {
        words = {"nominal", "absolute"};
    } else if (heading == "position") {
        words = {"in-line", "in-tank", "mechanical"};
    }
    return words;
}

std::string chosenText(const std::string &heading, int choice)
{
    std::vector<std::string> words = wordsOf(heading);
    if (words.empty())
        words = {"no", "yes"};
    const int at = isAlwaysSaid(heading) ? choice : choice - 1;
    return at < 0 || at >= static_cast<int>(words.size()) ? std::string()
                                                          : words[static_cast<std::size_t>(at)];
}

QString fieldTitle(const std::string &heading)
{
    return heading == "ports" ? FieldWords::tr("ports") : namedOf(heading, Kind::Filter).title;
}

std::vector<Row> cardFieldRows(const CardFields &card)
{
    std::vector<Row> rows;
    const auto headings = partHeadings();
    for (std::size_t at = 0; at < headings.size(); ++at) {
        if (at == column::Ports || (at == column::Part && !card.isNew) || !hasColumn(card.kind, at))
            continue;
        rows.push_back(fieldRow(std::string(headings[at]), card));
    }
    return rows;
}

} // namespace flarestock
