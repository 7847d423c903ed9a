// SPDX-License-Identifier: MIT

#include "app/desk/stock/undone/going_back.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/language/sentences.h"
#include "app/desk/stock/stock_rows.h"
#include "app/desk/words/spoken.h"
#include "app/stockroom/undone/taking_back.h"
#include "app/workshop/clock.h"

namespace flarestock {

namespace {

constexpr int LinesSaid = 6;

/// A servicing or an outing that counts no more; empty of any other record.
QString saidRecord(const Record &record, const Workshop &shop)
{
    const QString whom = saidWhom(record.subject, shop);
    if (record.kind == RecordKind::Servicing)
        return GoingBack::tr("%1: %2, %3, counts no more")
            .arg(whom, said(record.field("position")), inWords(record.field("work")));
    return record.kind == RecordKind::Outing ? GoingBack::tr("%1: what it ran at %2 counts no more")
                                                   .arg(whom, said(record.field("event")))
                                             : QString();
}

/// What goes which way, a movement a line, and what was done to a car.
QStringList saidBack(const Action &action, const Workshop &shop, Units units)
{
    QStringList says;
    for (const Movement &one : action.movements) {
        const Part *part = shop.part(one.part);
        says.append(GoingBack::tr("%1 of %2 goes back, %3 → %4")
                        .arg(part == nullptr ? QString::number(one.quantity)
                                             : saidStock(one.quantity, *part, units),
                             said(one.part), said(one.from), said(one.to)));
    }
    for (const auto *records : {&action.records, &action.afterwards}) {
        for (const Record &record : *records) {
            if (const QString words = saidRecord(record, shop); !words.isEmpty())
                says.append(words);
        }
    }
    if (const qsizetype more = says.size() - LinesSaid; more > 0) {
        says.resize(LinesSaid);
        says.append(GoingBack::tr("and %1 more").arg(more));
    }
    return says;
}

} // namespace

bool GoingBack::begin(const QString &movement, const QString &what)
{
    const auto id = MovementId::parse(movement.toStdString());
    if (!id || !m_read || isReading())
        return false;
    pen().hear();
    m_movement = *id;
    m_what = what;
    m_says.clear();
    ask({typedField("why", tr("why"), {}, tr("booked twice, wrong bin"))});
    const By by{pen().who().toStdString(), {}, nowMilliseconds(), {}};
    m_reading.run([this, id = *id, by, read = m_read, units = m_units]() -> Errand::Back {
        auto says = std::make_shared<QStringList>();
        const auto done = read([&](ShopFile &file, const Workshop &shop) -> Result<void> {
            const auto back = movementTakenBack(id, file, shop, by);
            if (!back)
                return tl::unexpected(back.error());
            *says = saidBack(*back, shop, units);
            return {};
        });
        if (!done)
            *says = {saidProblem(done.error())};
        return [this, says] {
            m_says = *says;
            Q_EMIT outlookChanged();
        };
    });
    Q_EMIT changed();
    Q_EMIT outlookChanged();
    return true;
}

QString GoingBack::caution() const
{
    return tr("The book goes back, not the piece: put it where the lines below say. It stays "
              "written down that it was taken back.");
}

void GoingBack::carryOut(const QVariantMap &values)
{
    if (!m_movement)
        return;
    const std::string why = values.value(QStringLiteral("why")).toString().trimmed().toStdString();
    pen().act(tr("Gone back: %1.").arg(m_what),
              [id = *m_movement, why](const ShopFile &file, const Workshop &shop,
                                      By by) -> Result<ToWrite> {
                  by.why = why;
                  auto action = movementTakenBack(id, file, shop, by);
                  if (!action)
                      return tl::unexpected(action.error());
                  return ToWrite(std::move(*action));
              });
}

} // namespace flarestock
