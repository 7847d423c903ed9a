// SPDX-License-Identifier: MIT

#include "app/desk/tables/two_ports.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "model/ports/mating.h"

namespace flarestock {

void TwoPorts::setFirst(const QString &typed)
{
    if (typed == m_first)
        return;
    m_first = typed;
    say();
}

void TwoPorts::setSecond(const QString &typed)
{
    if (typed == m_second)
        return;
    m_second = typed;
    say();
}

void TwoPorts::say()
{
    for (QString *said : {&m_verdict, &m_why, &m_needs, &m_source, &m_wrong})
        said->clear();
    meet();
    Q_EMIT changed();
}

void TwoPorts::meet()
{
    const auto one = parseEnd(unlocalised(m_first.trimmed()).toStdString());
    const auto other = parseEnd(unlocalised(m_second.trimmed()).toStdString());
    if (!m_first.trimmed().isEmpty() && !one)
        m_wrong = saidProblem(one.error());
    else if (!m_second.trimmed().isEmpty() && !other)
        m_wrong = saidProblem(other.error());
    if (!one || !other)
        return;
    auto aids = one->aids;
    aids.insert(aids.end(), other->aids.begin(), other->aids.end());
    Link link;
    link.mating = mating(one->port, other->port, aids);
    m_mark = standing(link);
    m_verdict =
        tr("%1 with %2: %3")
            .arg(saidPort(one->port), saidPort(other->port), saidVerdict(link.mating.verdict));
    m_why = inWords(link.mating.why);
    QStringList needs;
    for (const Need &need : link.mating.needs)
        needs.append(inWords(need.text()));
    if (!needs.isEmpty())
        m_needs = tr("It needs: %1").arg(needs.join(QStringLiteral(", ")));
    m_source = tr("Source: %1").arg(inWords(link.mating.source));
}

} // namespace flarestock
