// SPDX-License-Identifier: MIT

#include "app/desk/buying/owed/claim_form.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/owed/owed_told.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

namespace {

QString saidClaimStep(ClaimDeed deed, const QString &number)
{
    switch (deed) {
    case ClaimDeed::Promise:
        return BuyingWords::tr("Claim %1 is promised.").arg(number);
    case ClaimDeed::Came:
        return BuyingWords::tr("Claim %1: the piece came.").arg(number);
    case ClaimDeed::Credit:
        return BuyingWords::tr("Claim %1 is paid back.").arg(number);
    case ClaimDeed::Drop:
        return BuyingWords::tr("Claim %1 is dropped.").arg(number);
    case ClaimDeed::Raise:
        break;
    }
    return BuyingWords::tr("A claim is raised.");
}

} // namespace

void ClaimForm::begin(ClaimDeed deed, const ClaimSubject &subject)
{
    pen().hear();
    m_deed = deed;
    m_subject = subject;
    ask(claimFields(deed, subject));
    Q_EMIT changed();
}

QString ClaimForm::title() const
{
    if (!m_deed)
        return {};
    switch (*m_deed) {
    case ClaimDeed::Promise:
        return tr("The supplier names a day for %1").arg(m_subject.number);
    case ClaimDeed::Came:
        return tr("What was owed came: %1").arg(m_subject.number);
    case ClaimDeed::Credit:
        return tr("He pays back: %1").arg(m_subject.number);
    case ClaimDeed::Drop:
        return tr("Drop claim %1").arg(m_subject.number);
    case ClaimDeed::Raise:
        break;
    }
    return tr("A supplier owes something");
}

QString ClaimForm::about() const
{
    const ClaimStanding *claim = m_deed && !m_subject.number.isEmpty()
                                     ? claimOf(m_subject.number, *m_subject.workshop)
                                     : nullptr;
    if (claim == nullptr)
        return {};
    const Part *part = m_subject.workshop->part(claim->now.part);
    return part ? tr("%1, %2").arg(said(part->number), said(part->description))
                : said(claim->now.part);
}

QString ClaimForm::button() const
{
    if (!m_deed)
        return {};
    switch (*m_deed) {
    case ClaimDeed::Promise:
        return tr("Count on it from then");
    case ClaimDeed::Came:
        return tr("Put it away");
    case ClaimDeed::Credit:
        return tr("Take it off the cost");
    case ClaimDeed::Drop:
        return tr("Nothing comes of it");
    case ClaimDeed::Raise:
        break;
    }
    return tr("Raise the claim");
}

QString ClaimForm::fieldOf(const QString &code) const
{
    const std::string wanted = code.trimmed().toStdString();
    if (m_deed == ClaimDeed::Raise && m_subject.workshop->part(wanted))
        return QStringLiteral("part");
    if (m_deed == ClaimDeed::Came && m_subject.workshop->ledger.place(wanted))
        return QStringLiteral("to");
    return {};
}

void ClaimForm::carryOut(const QVariantMap &values)
{
    if (m_deed)
        pen().act(saidClaimStep(*m_deed, m_subject.number), claimStep(*m_deed, m_subject, values));
}

} // namespace flarestock
