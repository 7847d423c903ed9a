// SPDX-License-Identifier: MIT

#include "app/desk/buying/box/trouble_form.h"

#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"

#include <algorithm>
#include <array>
#include <map>

namespace flarestock {

namespace {

constexpr std::array Faults{ClaimFault::Damaged, ClaimFault::ShortDelivery, ClaimFault::WrongPart};

ClaimFault faultOf(const QVariantMap &values)
{
    const int at = values.value(QStringLiteral("fault")).toInt();
    return Faults.at(std::min(static_cast<std::size_t>(std::max(0, at)), Faults.size() - 1));
}

/// Which part came is asked only where it is not the one that was ordered.
std::vector<Row> fieldsOf(ClaimFault fault)
{
    std::vector<Row> fields{
        choiceField("fault", TroubleForm::tr("what is wrong"),
                    {TroubleForm::tr("it came damaged"),
                     TroubleForm::tr("on the paper, not in the box"),
                     TroubleForm::tr("another part came")}),
        figureField("quantity", TroubleForm::tr("how many, how much"), QStringLiteral("1"))};
    if (fault == ClaimFault::WrongPart)
        fields.push_back(typedField("came", TroubleForm::tr("which part came"), {},
                                    TroubleForm::tr("type or scan it")));
    return fields;
}

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
    ask(fieldsOf(ClaimFault::Damaged));
    Q_EMIT changed();
}

void TroubleForm::lookAhead(const QVariantMap &values)
{
    fields()->become(fieldsOf(faultOf(values)));
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

void TroubleForm::carryOut(const QVariantMap &values)
{
    Trouble trouble{faultOf(values), m_part, figuresTyped(values, "quantity"), {}};
    const Part *part = m_workshop ? m_workshop->part(m_part) : nullptr;
    if (part == nullptr)
        return;
    const auto quantity = quantityAsked(trouble.quantity, *part);
    if (!quantity || *quantity <= 0)
        return pen().refuse(tr("Write how many or how much of it."));
    if (trouble.fault == ClaimFault::WrongPart) {
        const auto came = partAsked(wordsIn(values, "came"), m_workshop->catalogue);
        if (!came)
            return pen().refuse(saidProblem(came.error()));
        trouble.came = (*came)->number;
    }
    Q_EMIT noted(trouble);
}

} // namespace flarestock
