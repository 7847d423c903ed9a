// SPDX-License-Identifier: MIT

#include "app/desk/service/lot/lot_search.h"

#include "app/desk/service/lot/lot_rows.h"
#include "app/desk/words/spoken.h"

namespace flarestock {

LotSearch::LotSearch(QObject *parent)
    : QObject(parent), m_acts(lotActCells()),
      m_came({QStringLiteral("head"), QStringLiteral("title"), QStringLiteral("detail"),
              QStringLiteral("figure"), QStringLiteral("flagged"), QStringLiteral("says")})
{
}

void LotSearch::setBook(const std::shared_ptr<const GarageBook> &book, const ReadShop &read)
{
    m_book = book;
    m_read = read;
    if (!m_asked.isEmpty())
        seek(m_asked);
}

void LotSearch::setUnits(Units units)
{
    m_units = units;
    showRows();
}

void LotSearch::forget()
{
    m_asked.clear();
    m_problem.clear();
    m_trace = nullptr;
    showRows();
}

void LotSearch::seek(const QString &what)
{
    m_asked = what.trimmed();
    if (m_asked.isEmpty())
        return forget();
    if (m_seeking.isUnderWay()) {
        m_seekAgain = true;
        return;
    }
    if (!m_book || !m_read)
        return;
    m_seeking.run([this, book = m_book, read = m_read, asked = m_asked]() -> Errand::Back {
        const auto found = std::make_shared<Result<LotTrace>>(
            readOf<LotTrace>(read, [&](ShopFile &file) -> Result<LotTrace> {
                const auto movements = file.movements();
                if (!movements)
                    return tl::unexpected(movements.error());
                return traceOf(asked.toStdString(), book->garage, *movements, book->today);
            }));
        return [this, book, found] {
            if (std::exchange(m_seekAgain, false))
                return seek(m_asked);
            if (m_asked.isEmpty())
                return; // It was forgotten meanwhile.
            m_problem = *found ? QString() : saidProblem(found->error());
            m_trace = *found ? std::make_shared<const LotTrace>(std::move(**found)) : nullptr;
            m_traced = book;
            showRows();
        };
    });
    Q_EMIT changed();
}

void LotSearch::showRows()
{
    const bool isFound = m_trace != nullptr;
    m_acts.become(isFound ? lotActRows({*m_trace, *m_traced, m_units}) : std::vector<Row>());
    m_came.become(isFound ? lotCameRows({*m_trace, *m_traced, m_units}) : std::vector<Row>());
    Q_EMIT changed();
}

QString LotSearch::says() const
{
    if (m_asked.isEmpty())
        return tr("Type or scan a lot, a serial, a tag or a part above (Ctrl+F), then Enter: where "
                  "it came from, which cars carry it, and what to do if it is bad.");
    if (!m_problem.isEmpty())
        return m_problem;
    if (m_trace == nullptr)
        return tr("Following %1 …").arg(m_asked);
    return m_acts.count() == 0 ? tr("Nothing of %1 is here any more.").arg(m_asked) : QString();
}

CarPosition LotSearch::at(const QString &key) const
{
    const int row = key.toInt();
    if (!m_trace || key.isEmpty() || row < 0 || row >= static_cast<int>(m_trace->acts.size()))
        return {};
    const LiesNow &lies = m_trace->acts[static_cast<std::size_t>(row)].lies;
    if (lies.place->kind != PlaceKind::Car)
        return {};
    return {lies.key.place, lies.position.substr(0, lies.position.find(", "))};
}

} // namespace flarestock
