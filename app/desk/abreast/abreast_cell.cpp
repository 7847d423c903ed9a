// SPDX-License-Identifier: MIT
//
// The cell in hand of AbreastDesk: what is said of it, and its pieces reserved.

#include "app/desk/abreast/abreast_desk.h"
#include "app/desk/abreast/abreast_words.h"
#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"
#include "app/stockroom/handing_out.h"

#include <algorithm>

namespace flarestock {

void AbreastDesk::setPart(const QString &part)
{
    if (part == m_part || m_lines.rowOf(part) < 0)
        return;
    m_part = part;
    Q_EMIT inHandChanged();
}

void AbreastDesk::setBuild(const QString &build)
{
    if (build == m_build || (m_heads.count() > 0 && m_heads.rowOf(build) < 0))
        return;
    m_build = build;
    Q_EMIT inHandChanged();
}

const BuildPlan *AbreastDesk::planOf(const QString &build) const
{
    return m_workshop ? m_workshop->build(build.toStdString()) : nullptr;
}

const NeedLine *AbreastDesk::wantInHand() const
{
    return m_now ? m_now->want(m_build.toStdString(), m_part.toStdString()) : nullptr;
}

QString AbreastDesk::inHand() const
{
    const QVariantList cells =
        m_lines.cell(m_lines.rowOf(m_part), QStringLiteral("cells")).toList();
    const int at = column();
    return at >= 0 && at < cells.size()
               ? cells.at(at).toMap().value(QStringLiteral("says")).toString()
               : QString();
}

QString AbreastDesk::why() const
{
    const NeedLine *want = wantInHand();
    return want ? saidWhy(*m_now, *want, m_units).join(u' ') : QString();
}

bool AbreastDesk::lacks() const
{
    const NeedLine *want = wantInHand();
    return want != nullptr && want->shortBy.sign() > 0;
}

QString AbreastDesk::whyNotReserve() const
{
    const NeedLine *want = wantInHand();
    if (want == nullptr)
        return tr("This build wants none of it.");
    if (QString why = m_pen.barrier(); !why.isEmpty())
        return why;
    if (isTrying())
        return tr("Days are being tried. Keep them, or put them back as before, then reserve.");
    if (want->own >= want->need)
        return tr("All that it needs of it is its own already.");
    const auto stock = m_workshop->shelf.find(want->part->number);
    if (stock == m_workshop->shelf.end() || stock->second.free.amount.sign() <= 0)
        return tr("None of it is free.");
    return {};
}

void AbreastDesk::reserve()
{
    if (const QString why = whyNotReserve(); !why.isEmpty())
        return m_pen.refuse(why);
    const NeedLine &want = *wantInHand();
    const QString whom = saidWhom(want.whom, *m_workshop);
    const auto sentence = [whom, part = *want.part, units = m_units](const Wrote &wrote) {
        std::int64_t sum = 0;
        for (const Record &record : wrote.action.records)
            if (const auto promise = Promise::read(record))
                sum += promise->quantity;
        return tr("%1 of %2 reserved for %3.")
            .arg(saidAmount(Quantity::ofSmallest(sum, part.unit), units), said(part.number), whom);
    };
    m_pen.act(sentence,
              [build = want.whom, part = want.part->number](
                  const ShopFile &, const Workshop &workshop, const By &by) -> Result<ToWrite> {
                  const BuildPlan *plan = workshop.build(build);
                  if (plan == nullptr)
                      return problem(build, "is no longer a build of this shop",
                                     "Choose another one.");
                  const auto worked = workBuild(workshop, *plan);
                  if (!worked)
                      return tl::unexpected(worked.error());
                  auto promises = promisesLacking(*worked, workshop, *plan);
                  std::erase_if(promises, [&part](const Promise &one) { return one.part != part; });
                  if (promises.empty())
                      return problem(part, "is not free to this build now, or it comes back",
                                     "Look who has it.");
                  return ToWrite(promised(std::move(promises), by));
              });
}

} // namespace flarestock
