// SPDX-License-Identifier: MIT

#include "app/desk/stock/bench/bench_form.h"

#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "model/exact/case_fold.h"

namespace flarestock {

BenchForm::BenchForm(Pen &pen, QObject *parent) : Form(pen, parent), m_cuts(cutCells()) {}

bool BenchForm::begin(const QString &deed)
{
    const auto named = benchDeedNamed(deed);
    const auto rows = benchRows(m_subject);
    const auto row =
        std::find_if(rows.begin(), rows.end(), [&](const Row &one) { return one.key == deed; });
    if (!named || row == rows.end() || !row->cells.at(1).toBool())
        return false;
    pen().hear();
    m_deed = named;
    m_begun = m_subject;
    m_says.clear();
    m_cuts.become({});
    ask(benchFields(*m_deed, m_begun));
    Q_EMIT changed();
    Q_EMIT outlookChanged();
    return true;
}

QString BenchForm::title() const
{
    if (!m_deed)
        return {};
    const QString number = said(m_begun.entry->number);
    switch (*m_deed) {
    case BenchDeed::Cut:
        return tr("Cut %1").arg(number);
    case BenchDeed::MakeUp:
        return tr("Make up a hose of %1").arg(number);
    case BenchDeed::Open:
        break;
    }
    return tr("Open a box of %1").arg(number);
}

QString BenchForm::about() const
{
    if (!m_deed)
        return {};
    QString what = said(m_begun.entry->part->description);
    if (*m_deed != BenchDeed::Open)
        return what;
    return tr("%1: one of %2 at %3")
        .arg(what, saidStock(m_begun.there(), *m_begun.entry->part, m_begun.units),
             said(m_begun.place()->title));
}

QString BenchForm::button() const
{
    if (!m_deed)
        return {};
    switch (*m_deed) {
    case BenchDeed::Cut:
        return tr("Cut");
    case BenchDeed::MakeUp:
        return tr("Make up");
    case BenchDeed::Open:
        break;
    }
    return tr("Open");
}

QString BenchForm::caution() const
{
    const QString away = m_deed ? saidNotAlong(m_begun) : QString();
    return QString(away + u' ' + ownCaution()).trimmed();
}

QString BenchForm::ownCaution() const
{
    if (m_deed == BenchDeed::Cut) {
        const QString saw = tr(
            "What the saw has cut stays cut: Take back puts the book right only where nothing "
            "was cut yet. A length cut for nothing goes back to the rack as a piece of its own.");
        const QString promised = saidLengthsPromised(m_begun);
        return promised.isEmpty() ? saw : QString(promised + u' ' + saw);
    }
    if (m_deed == BenchDeed::MakeUp)
        return tr("A proof test is made with water behind a guard, nobody in line with the ends; "
                  "blow the hose out and dry it before it carries fuel or brake fluid.");
    return {};
}

QString BenchForm::outlook() const
{
    return m_says.join(u'\n');
}

QString BenchForm::fieldOf(const QString &code) const
{
    if (!m_deed || m_begun.book == nullptr)
        return {};
    const std::string wanted = code.trimmed().toStdString();
    for (const Place &place : m_begun.book->workshop->ledger.places()) {
        if (sameFolded(place.id, wanted))
            return QStringLiteral("to");
    }
    return {};
}

void BenchForm::lookAhead(const QVariantMap &values)
{
    m_values = values;
    m_again = m_reckoning.isUnderWay();
    if (!m_again)
        reckon();
}

void BenchForm::reckon()
{
    if (!m_deed || m_begun.entry == nullptr)
        return;
    const BenchFilled filled{*m_deed, m_begun, m_values};
    const By by{pen().who().toStdString(), {}, nowMilliseconds(), {}};
    m_reckoning.run([this, filled, by]() -> Errand::Back {
        const auto outlook = std::make_shared<BenchOutlook>(outlookOf(filled, by));
        return [this, outlook] {
            if (std::exchange(m_again, false))
                return reckon();
            m_says = outlook->says;
            m_cuts.become(outlook->pieces);
            Q_EMIT outlookChanged();
        };
    });
}

void BenchForm::carryOut(const QVariantMap &values)
{
    if (!m_deed || m_begun.entry == nullptr)
        return;
    const BenchFilled filled{*m_deed, m_begun, values};
    pen().act([filled](const Wrote &wrote) { return saidAtBench(filled, wrote.action); },
              madeAtBench(filled));
}

} // namespace flarestock
