// SPDX-License-Identifier: MIT

#include "app/desk/buying/box/trouble_form.h"

#include "app/desk/words/spoken.h"

#include <array>
#include <map>

namespace flarestock {

namespace {

constexpr std::array Faults{ClaimFault::Damaged, ClaimFault::ShortDelivery, ClaimFault::WrongPart};

} // namespace

void Trouble::tell(ReceivingWords &words) const
{
    if (fault == ClaimFault::WrongPart)
        words.wrong.emplace_back(came, quantity, part);
    else
        (fault == ClaimFault::Damaged ? words.damaged : words.lacking).emplace_back(part, quantity);
}

void leaveOut(const std::vector<Trouble> &troubles, const Workshop &workshop, Ticks &ticks)
{
    std::map<const Part *, std::int64_t> away;
    for (const Trouble &one : troubles) {
        const Part *part = workshop.part(one.part);
        if (part != nullptr && one.fault != ClaimFault::Damaged)
            away[part] += quantityAsked(one.quantity, *part).value_or(0);
    }
    for (const auto &[part, amount] : away)
        ticks.isNotThere(*part, amount);
}

void TroubleForm::begin(const std::shared_ptr<const Workshop> &workshop, const std::string &part)
{
    pen().hear();
    m_workshop = workshop;
    m_part = part;
    const QString typed = QStringLiteral("typed");
    ask({{QStringLiteral("fault"),
          {tr("what is wrong"), QStringLiteral("choice"),
           QStringList{tr("it came damaged"), tr("on the paper, not in the box"),
                       tr("another part came")},
           QStringLiteral("0"), QString()}},
         {QStringLiteral("quantity"),
          {tr("how many, how much"), typed, QStringList(), QStringLiteral("1"), QString()}},
         {QStringLiteral("came"),
          {tr("which part came"), typed, QStringList(), QString(),
           tr("type or scan it, where another one came")}}});
    Q_EMIT changed();
}

QString TroubleForm::title() const
{
    return tr("What is wrong with %1").arg(said(m_part));
}

QString TroubleForm::about() const
{
    return tr(
        "It becomes a claim when the box is put away. What came damaged is kept apart and not "
        "to be used.");
}

QString TroubleForm::button() const
{
    return tr("Note it");
}

QString TroubleForm::fieldOf(const QString &code) const
{
    return m_workshop && m_workshop->part(code.trimmed().toStdString()) ? QStringLiteral("came")
                                                                        : QString();
}

void TroubleForm::finish(const QVariantMap &values)
{
    const auto typed = [&values](const char *key) {
        return unlocalised(values.value(QString::fromLatin1(key)).toString().trimmed())
            .toStdString();
    };
    const auto at = static_cast<std::size_t>(values.value(QStringLiteral("fault")).toInt());
    Trouble trouble{Faults.at(std::min(at, Faults.size() - 1)), m_part, typed("quantity"), {}};
    const Part *part = m_workshop ? m_workshop->part(m_part) : nullptr;
    if (part == nullptr)
        return;
    const auto quantity = quantityAsked(trouble.quantity, *part);
    if (!quantity || *quantity <= 0)
        return pen().refuse(tr("Write how many or how much of it."));
    if (trouble.fault == ClaimFault::WrongPart) {
        const auto came = partAsked(typed("came"), m_workshop->catalogue);
        if (!came)
            return pen().refuse(saidProblem(came.error()));
        trouble.came = (*came)->number;
    }
    Q_EMIT noted(trouble);
}

} // namespace flarestock
