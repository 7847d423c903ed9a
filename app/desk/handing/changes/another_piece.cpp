// SPDX-License-Identifier: MIT

#include "app/desk/handing/changes/another_piece.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "app/desk/words/typed_figures.h"
#include "model/exact/case_fold.h"

namespace flarestock {

namespace {

QString saidJoint(const OtherJoint &joint)
{
    const QString now = saidVerdict(joint.after);
    return joint.isWorse()
               ? AnotherPiece::tr("! %1: %2 (before: %3). %4")
                     .arg(said(joint.at), now, saidVerdict(joint.before), inWords(joint.why))
               : AnotherPiece::tr("%1: %2").arg(said(joint.at), now);
}

QStringList saidInstead(const InsteadWords &words, const Workshop &shop, const By &by)
{
    const auto made = builtInstead(words, shop, {}, by);
    if (!made)
        return {saidProblem(made.error())};
    QStringList says;
    for (const OtherJoint &joint : made->joints)
        says.append(saidJoint(joint));
    if (says.isEmpty())
        says.append(AnotherPiece::tr("No joint of the build is another one with it."));
    return says;
}

} // namespace

void AnotherPiece::begin(const OnDesk &onDesk, const HandedOut::InCar &planned, const QString &home)
{
    pen().hear();
    forget();
    m_onDesk = onDesk;
    m_planned = planned;
    QStringList conditions{tr("as it was")};
    conditions += allConditions();
    ask({typedField("used", tr("what went in"), {}, tr("type or scan its part number or tag")),
         figureField("quantity", tr("how many"), QStringLiteral("1"), {}),
         typedField("usedLot", tr("its lot or serial"), {}, tr("where it has one")),
         typedField("from", tr("taken from"), {}, tr("the nearest that is free")),
         typedField("backTo", tr("the planned one goes to"), home, tr("type or scan the bin")),
         {QStringLiteral("now"),
          {tr("the planned one is, from now on"), QStringLiteral("choice"), conditions,
           QStringLiteral("0"), QString()}}});
    Q_EMIT changed();
}

QString AnotherPiece::title() const
{
    return m_planned ? tr("Another piece than %1").arg(said(m_planned->part->number)) : QString();
}

QString AnotherPiece::about() const
{
    return m_planned ? tr("%1. What was really put in stays with the car, with its lot.")
                           .arg(said(m_planned->part->description))
                     : QString();
}

QString AnotherPiece::caution() const
{
    return tr("Look whether it is made for the fluid and the pressure before it is closed; "
              "leak-test it afterwards.");
}

QString AnotherPiece::fieldOf(const QString &code) const
{
    if (!m_planned || m_onDesk.worked.workshop == nullptr)
        return {};
    const std::string wanted = code.trimmed().toStdString();
    const Workshop &shop = *m_onDesk.worked.workshop;
    for (const Place &place : shop.ledger.places()) {
        if (sameFolded(place.id, wanted))
            return QStringLiteral("backTo");
    }
    return shop.part(wanted) == nullptr ? QString() : QStringLiteral("used");
}

InsteadWords AnotherPiece::wordsOf(const QVariantMap &values) const
{
    InsteadWords words;
    words.build = m_onDesk.plan.id;
    words.planned = m_planned->part->number;
    words.plannedLot = m_planned->key.lot;
    words.used = wordsIn(values, "used");
    words.quantity = figuresTyped(values, "quantity");
    words.usedLot = wordsIn(values, "usedLot");
    words.from = wordsIn(values, "from");
    words.backTo = wordsIn(values, "backTo");
    const int now = values.value(QStringLiteral("now")).toInt() - 1;
    if (now >= 0 && now <= 3)
        words.now = text(static_cast<PieceCondition>(now));
    return words;
}

BuildForm::Says AnotherPiece::saysOf(const QVariantMap &values) const
{
    const bool isFilled = m_planned && m_onDesk.worked.workshop != nullptr &&
                          !values.value(QStringLiteral("used")).toString().trimmed().isEmpty() &&
                          !values.value(QStringLiteral("backTo")).toString().trimmed().isEmpty();
    if (!isFilled)
        return {};
    return [words = wordsOf(values), alive = m_onDesk.worked](const By &by) {
        return saidInstead(words, *alive.workshop, by);
    };
}

void AnotherPiece::carryOut(const QVariantMap &values)
{
    if (!m_planned)
        return;
    const InsteadWords words = wordsOf(values);
    if (words.used.empty())
        return pen().refuse(tr("Say what went in: scan it, or type its part number."));
    const QString sentence =
        tr("%1 went in instead of %2.").arg(said(words.used), said(words.planned));
    pen().act(sentence,
              [words](const ShopFile &file, const Workshop &shop, const By &by) -> Result<ToWrite> {
                  const auto history = file.movements(words.planned);
                  if (!history)
                      return tl::unexpected(history.error());
                  auto made = builtInstead(words, shop, *history, by);
                  if (!made)
                      return tl::unexpected(made.error());
                  return ToWrite(std::move(made->action));
              });
}

} // namespace flarestock
