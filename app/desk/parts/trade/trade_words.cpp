// SPDX-License-Identifier: MIT

#include "app/desk/parts/trade/trade_words.h"

#include "app/desk/form/form.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"
#include "model/exact/case_fold.h"

#include <QCoreApplication>

namespace flarestock {

namespace {

struct TradeWords {
    Q_DECLARE_TR_FUNCTIONS(TradeForm)
};

/// The catalogue's words of a choice, and how the screen says them; none where it is typed.
std::vector<std::pair<std::string, QString>> choicesOf(const std::string &heading,
                                                       const TradeOf &of)
{
    if (heading == "supplier" && of.kind == SheetKind::Offers) {
        std::vector<std::pair<std::string, QString>> all;
        for (const Supplier &supplier : of.suppliers)
            all.emplace_back(supplier.id, said(supplier.name));
        return all;
    }
    if (heading == "tax by")
        return {{{}, TradeWords::tr("not said")},
                {"item", TradeWords::tr("each line")},
                {"document", TradeWords::tr("the whole order")}};
    if (heading == "tax rounding")
        return {{{}, TradeWords::tr("not said")},
                {"half up", TradeWords::tr("a half goes up")},
                {"half even", TradeWords::tr("a half goes to the even cent")}};
    if (heading == "tax recovered")
        return {{{}, TradeWords::tr("not said")},
                {"yes", TradeWords::tr("the shop gets it back")},
                {"no", TradeWords::tr("the shop bears it")}};
    return {};
}

bool isFigure(const std::string &heading)
{
    return heading == "prices" || heading == "pack" || heading == "minimum" ||
           heading == "multiple" || heading == "lead days" || heading == "freight" ||
           heading == "minimum order" || heading == "tax percent";
}

QString hintOf(const std::string &heading, SheetKind kind)
{
    if (heading == "lead days" && kind == SheetKind::Offers)
        return TradeWords::tr("empty: as the supplier has it");
    static const std::map<std::string, QString> All = {
        {"currency", QStringLiteral("USD")},
        {"freight", QStringLiteral("0: 12.00; 250: 0")},
        {"minimum order", QStringLiteral("50")},
        {"lead days", QStringLiteral("5")},
        {"tax percent", QStringLiteral("8")},
        {"address", QStringLiteral("Unit 7; Northeaves Yard")},
        {"pack", QStringLiteral("1")},
        {"minimum", QStringLiteral("1")},
        {"multiple", QStringLiteral("1")},
        {"prices", QStringLiteral("1: 12.50; 10: 11.00")}};
    const auto found = All.find(heading);
    return found == All.end() ? QString() : found->second;
}

} // namespace

std::vector<std::string> tradeHeadings(SheetKind kind)
{
    if (kind == SheetKind::Offers)
        return {"supplier", "supplier part", "prices",   "currency",
                "pack",     "minimum",       "multiple", "lead days"};
    return {"supplier",    "name",   "currency",     "lead days",     "freight", "minimum order",
            "tax percent", "tax by", "tax rounding", "tax recovered", "address"};
}

QString tradeTitle(SheetKind kind, const std::string &heading)
{
    if (heading == "supplier")
        return kind == SheetKind::Offers ? TradeWords::tr("supplier")
                                         : TradeWords::tr("short name");
    const std::map<std::string, QString> All = {
        {"name", TradeWords::tr("name")},
        {"supplier part", TradeWords::tr("the supplier's own number")},
        {"prices", TradeWords::tr("prices, from a quantity on")},
        {"currency", TradeWords::tr("currency")},
        {"pack", TradeWords::tr("in packs of")},
        {"minimum", TradeWords::tr("at least")},
        {"multiple", TradeWords::tr("packs in steps of")},
        {"lead days", TradeWords::tr("here in, days")},
        {"freight", TradeWords::tr("freight, by the goods' value")},
        {"minimum order", TradeWords::tr("least order, in goods")},
        {"tax percent", TradeWords::tr("tax, percent")},
        {"tax by", TradeWords::tr("tax is reckoned by")},
        {"tax rounding", TradeWords::tr("tax is rounded so")},
        {"tax recovered", TradeWords::tr("who bears the tax")},
        {"address", TradeWords::tr("address, lines apart by ;")}};
    const auto found = All.find(heading);
    return found == All.end() ? said(heading) : found->second;
}

Row tradeField(const std::string &heading, const std::string &text, const TradeOf &of)
{
    const auto choices = choicesOf(heading, of);
    QStringList words;
    int chosen = 0;
    for (const auto &[word, shown] : choices) {
        if (sameFolded(word, text))
            chosen = static_cast<int>(words.size());
        words.append(shown);
    }
    const QByteArray key = QByteArray::fromStdString(heading);
    const QString title = tradeTitle(of.kind, heading);
    if (!choices.empty())
        return choiceField(key, title, words, chosen);
    const QString hint = hintOf(heading, of.kind);
    return isFigure(heading) ? figureField(key, title, localised(said(text)), localised(hint))
                             : typedField(key, title, said(text), hint);
}

std::string tradeText(const std::string &heading, const QVariant &filled, const TradeOf &of)
{
    const auto choices = choicesOf(heading, of);
    const QString typed = filled.toString().trimmed();
    if (choices.empty())
        return isFigure(heading) ? figuresTyped(typed).value_or(typed.toStdString())
                                 : typed.toStdString();
    const auto at = static_cast<std::size_t>(std::max(0, filled.toInt()));
    return at < choices.size() ? choices[at].first : std::string();
}

} // namespace flarestock
