// SPDX-License-Identifier: MIT

#include "app/desk/handing/changes/joint_again.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/garage/cautions.h"

#include <algorithm>

namespace flarestock {

namespace {

QString saidPieces(std::int64_t smallest, const Part &part, Units units)
{
    return saidAmount(Quantity::ofSmallest(smallest, part.unit), units);
}

QStringList saidRenewed(const RenewedAction &made, Units units)
{
    QStringList says;
    for (const Renewed &piece : made.pieces) {
        const QString need = saidPieces(piece.need, *piece.part, units);
        QString line = JointAgain::tr("%1 of %2, %3: %4 fresh from stock, %5 old used up")
                           .arg(need, said(piece.part->number), said(piece.part->description),
                                saidPieces(piece.taken, *piece.part, units),
                                saidPieces(piece.spent, *piece.part, units));
        if (piece.shortBy() > 0)
            line = JointAgain::tr("! %1; %2 short")
                       .arg(line, saidPieces(piece.shortBy(), *piece.part, units));
        says.append(line);
    }
    return says;
}

} // namespace

bool JointAgain::begin(const OnDesk &onDesk, const std::string &joint)
{
    if (onDesk.worked.expansion == nullptr || onDesk.worked.workshop == nullptr)
        return false;
    const auto &joints = onDesk.worked.expansion->joints;
    const auto found = std::find_if(joints.begin(), joints.end(),
                                    [&](const PlacedJoint &one) { return one.id == joint; });
    if (found == joints.end())
        return false;
    pen().hear();
    forget();
    m_onDesk = onDesk;
    m_joint = joint;
    m_at = said(found->at);
    ask({});
    Q_EMIT changed();
    return true;
}

QString JointAgain::title() const
{
    return tr("Open the joint again: %1").arg(m_at);
}

QString JointAgain::about() const
{
    return tr("What seals once is not put in twice: the old ones are used up, fresh ones go in.");
}

QString JointAgain::caution() const
{
    QString caution = inWords(OpeningCaution);
    caution[0] = caution.at(0).toUpper();
    return QString(caution + u'.');
}

BuildForm::Says JointAgain::saysOf(const QVariantMap &) const
{
    if (m_joint.empty())
        return {};
    return [build = m_onDesk.plan.id, joint = m_joint, alive = m_onDesk.worked,
            units = m_onDesk.units](const By &by) -> QStringList {
        const auto made = openedJoint(build, joint, *alive.workshop, by);
        return made ? saidRenewed(*made, units) : QStringList{saidProblem(made.error())};
    };
}

void JointAgain::carryOut(const QVariantMap &)
{
    const QString sentence = tr("%1 was opened: fresh rings and washers went in.").arg(m_at);
    pen().act(sentence,
              [build = m_onDesk.plan.id, joint = m_joint](const ShopFile &, const Workshop &shop,
                                                          const By &by) -> Result<ToWrite> {
                  auto made = openedJoint(build, joint, shop, by);
                  if (!made)
                      return tl::unexpected(made.error());
                  if (made->action.movements.empty())
                      return problem(made->at,
                                     "has nothing fresh to take and nothing old in the car",
                                     "Buy its rings and washers first.");
                  return ToWrite(std::move(made->action));
              });
}

} // namespace flarestock
