// SPDX-License-Identifier: MIT

#include "app/desk/stock/deeds/stock_form.h"

#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"
#include "model/exact/case_fold.h"

namespace flarestock {

StockForm::StockForm(Pen &pen, QObject *parent) : Form(pen, parent), m_deeds(deedCells()) {}

void StockForm::show(const DeedSubject &subject)
{
    m_subject = subject;
    m_deeds.become(deedRows(m_subject));
    Q_EMIT changed();
}

bool StockForm::begin(const QString &deed)
{
    const int row = m_deeds.rowOf(deed);
    const auto named = deedNamed(deed);
    if (row < 0 || !named || !m_deeds.cell(row, QStringLiteral("ready")).toBool())
        return false;
    pen().hear();
    m_deed = named;
    m_begun = m_subject;
    ask(fieldRows(*m_deed, m_begun));
    Q_EMIT changed();
    return true;
}

QString StockForm::title() const
{
    return m_deed ? saidDeedTitle(*m_deed, m_begun) : QString();
}

QString StockForm::about() const
{
    if (!m_deed)
        return {};
    const StockEntry &entry = *m_begun.entry;
    QString what = said(entry.part ? entry.part->description : entry.number);
    const bool withPieces = *m_deed != StockDeed::Receive && *m_deed != StockDeed::Keep &&
                            *m_deed != StockDeed::Level && *m_deed != StockDeed::Count;
    if (!withPieces || !m_begun.pieces || entry.part == nullptr)
        return what;
    QStringList pieces{tr("%1 at %2")
                           .arg(saidStock(m_begun.there(), *entry.part, m_begun.units),
                                said(m_begun.place()->title))};
    if (!m_begun.pieces->lot.empty())
        pieces.append(said(m_begun.pieces->lot));
    pieces.append(saidCondition(m_begun.pieces->condition));
    return tr("%1: %2").arg(what, pieces.join(QStringLiteral(", ")));
}

QString StockForm::button() const
{
    return m_deed ? m_deeds.cell(static_cast<int>(*m_deed), QStringLiteral("label")).toString()
                  : QString();
}

QString StockForm::caution() const
{
    if (!m_deed)
        return {};
    const bool takesNothing = m_deed == StockDeed::Receive || m_deed == StockDeed::Keep;
    const QString away = takesNothing ? QString() : saidNotAlong(m_begun);
    return QString(away + u' ' + ownCaution()).trimmed();
}

QString StockForm::ownCaution() const
{
    if (m_deed == StockDeed::Scrap)
        return tr("What has held fuel gives off vapour: let it drain and air before it goes into "
                  "the bin, away from sparks.");
    if (m_deed == StockDeed::Judge)
        return tr("Who calls a used piece good has looked at its threads, its seat and its seals.");
    if (m_deed == StockDeed::Take || m_deed == StockDeed::Move || m_deed == StockDeed::Lend)
        return saidLengthsPromised(m_begun);
    return {};
}

QString StockForm::fieldOf(const QString &code) const
{
    if (!m_deed || m_begun.book == nullptr)
        return {};
    const std::string wanted = code.trimmed().toStdString();
    for (const Place &place : m_begun.book->workshop->ledger.places()) {
        if (!sameFolded(place.id, wanted))
            continue;
        for (const char *field : {"to", "place"}) {
            if (shownFields().rowOf(QString::fromLatin1(field)) >= 0)
                return QString::fromLatin1(field);
        }
    }
    // A number that nobody knows yet is that of the piece that comes.
    const QString lot = QStringLiteral("lot");
    const bool isKnown = m_begun.book->workshop->part(wanted) != nullptr;
    return !isKnown && shownFields().rowOf(lot) >= 0 ? lot : QString();
}

void StockForm::carryOut(const QVariantMap &values)
{
    if (!m_deed || m_begun.entry == nullptr)
        return;
    const FilledIn filled{*m_deed, m_begun, values};
    if (const QString tooMuch = saidTooMuch(filled); !tooMuch.isEmpty())
        return pen().refuse(tooMuch);
    if (*m_deed != StockDeed::Count)
        return pen().act(saidDone(filled), madeOf(filled));
    if (filled.shown("found").isEmpty())
        return pen().refuse(tr("Write down what you have counted, 0 where nothing lies there."));
    pen().count([filled](const Counted &counted) { return saidCounted(filled, counted); },
                countOf(filled));
}

} // namespace flarestock
