// SPDX-License-Identifier: MIT

#include "app/desk/trailer/trailer_desk.h"

#include "app/desk/scan/label_code.h"
#include "app/desk/trailer/drawers/drawer_rows.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "model/exact/case_fold.h"

#include <algorithm>

namespace flarestock {

namespace {

std::string today()
{
    return dayOf(nowMilliseconds());
}

/// Its title; with its day where another one to come is called the same.
QString saidEvent(const Event &event, const std::vector<const Event *> &coming)
{
    const auto named = std::count_if(coming.begin(), coming.end(), [&event](const Event *other) {
        return other->title == event.title;
    });
    return named < 2 ? said(event.title)
                     : TrailerDesk::tr("%1, %2").arg(said(event.title), saidDate(event.firstDay));
}

Drawer::Pieces piecesOf(const TrailerBook &book)
{
    Drawer::Pieces sum;
    for (const Drawer &drawer : book.drawers) {
        const auto pieces = drawer.pieces();
        sum.there += pieces.there;
        sum.lack += pieces.lack;
        sum.over += pieces.over;
    }
    return sum;
}

} // namespace

TrailerDesk::TrailerDesk(Pen &pen, QObject *parent)
    : QObject(parent), m_drawers(drawerCells()), m_inDrawer(inDrawerCells()),
      m_load(LoadList::Way::In, pen), m_unload(LoadList::Way::Out, pen), m_carry(pen), m_copies(pen)
{
}

void TrailerDesk::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_workshop = shop.workshop;
    m_read = shop.read;
    m_load.setRead(shop.read);
    m_unload.setRead(shop.read);
    m_isStale = true;
    m_carry.setShop(shop, isOther);
    m_copies.setShop(shop, isOther);
    if (isOther) {
        m_book = nullptr;
        m_seen = {};
        m_drawer.clear();
        m_drawers.become({});
        m_inDrawer.become({});
        m_load.clear();
        m_unload.clear();
        const auto next = coming();
        m_event = next.empty() ? std::string() : next.front()->id;
    }
    make();
    Q_EMIT changed();
}

void TrailerDesk::setLooking(bool looking)
{
    if (looking == m_isLooking)
        return;
    m_isLooking = looking;
    make();
    Q_EMIT changed();
}

void TrailerDesk::setInInches(bool inInches)
{
    m_units = inInches ? Units::Inch : Units::Metric;
    show();
}

void TrailerDesk::make()
{
    if (!m_isLooking || !m_isStale || !m_workshop || m_making.isUnderWay())
        return;
    m_isStale = false;
    m_making.run([this, workshop = m_workshop, read = m_read, event = m_event]() -> Errand::Back {
        const auto book = TrailerBook::of(workshop, {today(), event});
        const auto trips = TripsSeen::of(read);
        return [this, book, trips] {
            if (book->workshop == m_workshop)
                take(book, trips);
            make(); // The shop may have gone on meanwhile.
        };
    });
}

void TrailerDesk::take(const std::shared_ptr<const TrailerBook> &book, const TripsSeen &trips)
{
    m_book = book;
    m_seen = trips;
    if (!book->drawer(m_drawer.toStdString())) { // The first that lacks something, else the first.
        const auto first = std::find_if(book->drawers.begin(), book->drawers.end(),
                                        [](const Drawer &one) { return one.pieces().lack > 0; });
        m_drawer = book->drawers.empty()          ? QString()
                   : first == book->drawers.end() ? said(book->drawers.front().id)
                                                  : said(first->id);
    }
    show();
}

void TrailerDesk::show()
{
    if (m_book) {
        const Drawer *drawer = m_book->drawer(m_drawer.toStdString());
        m_drawers.become(drawerRows(*m_book, m_seen));
        m_inDrawer.become(drawer ? inDrawerRows(*drawer, m_units) : std::vector<Row>());
        m_load.show(m_book, m_units);
        m_unload.show(m_book, m_units);
        m_copies.show(m_seen, m_units);
    }
    Q_EMIT changed();
}

const Drawer *TrailerDesk::drawerOf(const QString &code) const
{
    if (!m_book)
        return nullptr;
    const auto found = std::find_if(m_book->drawers.begin(), m_book->drawers.end(),
                                    [wanted = code.trimmed().toStdString()](const Drawer &one) {
                                        return sameFolded(one.id, wanted);
                                    });
    return found == m_book->drawers.end() ? nullptr : &*found;
}

void TrailerDesk::pullOut(const QString &drawer)
{
    const Drawer *wanted = drawerOf(drawer);
    if (wanted == nullptr || said(wanted->id) == m_drawer)
        return;
    m_drawer = said(wanted->id);
    show();
}

const Event *TrailerDesk::packedFor() const
{
    return m_workshop && !m_event.empty() ? m_workshop->season.event(m_event) : nullptr;
}

QString TrailerDesk::heading() const
{
    const Event *event = packedFor();
    return event ? tr("Trailer, by %1").arg(saidDate(event->firstDay)) : tr("Trailer");
}

QString TrailerDesk::about() const
{
    if (!m_book)
        return {};
    const auto drawers = static_cast<int>(m_book->drawers.size());
    const QString count = drawers == 1 ? tr("1 drawer") : tr("%1 drawers").arg(drawers);
    return tr("%1  ·  counted as there is what is good on %2")
        .arg(count, saidDate(m_book->asked.day));
}

QString TrailerDesk::nothing() const
{
    if (!m_workshop)
        return tr("Nothing is known here of what this shop has in its trailer.");
    if (!m_book)
        return tr("Looking into the drawers …");
    return m_book->drawers.empty() ? tr("The shop has no drawer yet. Its places are kept in "
                                        "shop.toml: a place of the kind drawer is one of the "
                                        "trailer.")
                                   : QString();
}

QString TrailerDesk::allThere() const
{
    if (!m_book)
        return tr("looking");
    const auto sum = piecesOf(*m_book);
    return tr("%1 of %2 pieces")
        .arg(QLocale().toString(static_cast<qlonglong>(sum.there)),
             QLocale().toString(static_cast<qlonglong>(sum.there) + sum.lack));
}

int TrailerDesk::allThereMark() const
{
    if (!m_book)
        return Standing::Note;
    return piecesOf(*m_book).lack > 0 ? Standing::Short : Standing::Made;
}

std::vector<const Event *> TrailerDesk::coming() const
{
    return m_workshop ? m_workshop->season.from(today()) : std::vector<const Event *>();
}

QStringList TrailerDesk::events() const
{
    QStringList all{tr("as of today")};
    const auto next = coming();
    for (const Event *event : next)
        all.append(saidEvent(*event, next));
    return all;
}

QString TrailerDesk::packed() const
{
    const Event *event = packedFor();
    return event ? saidEvent(*event, coming()) : tr("as of today");
}

void TrailerDesk::packFor(int event)
{
    const auto next = coming();
    const auto at = static_cast<std::size_t>(std::max(0, event));
    m_event = at == 0 || at > next.size() ? std::string() : next[at - 1]->id;
    m_isStale = true;
    make();
    Q_EMIT changed();
}

QString TrailerDesk::drawerTitle() const
{
    const Drawer *drawer = m_book ? m_book->drawer(m_drawer.toStdString()) : nullptr;
    return drawer ? tr("Pulled out: %1, %2").arg(said(drawer->id), said(drawer->title)) : QString();
}

QString TrailerDesk::drawerAbout() const
{
    const Drawer *drawer = m_book ? m_book->drawer(m_drawer.toStdString()) : nullptr;
    if (drawer == nullptr)
        return {};
    const QString away = m_seen.awayWith(drawer->id);
    const QString pieces = drawer->lines.empty() ? tr("Nothing lies here, and nothing is to.")
                                                 : saidPieces(drawer->pieces());
    return away.isEmpty() ? pieces : tr("%1  ·  %2").arg(away, pieces);
}

bool TrailerDesk::drawerLacks() const
{
    const Drawer *drawer = m_book ? m_book->drawer(m_drawer.toStdString()) : nullptr;
    return drawer != nullptr && drawer->pieces().lack > 0;
}

bool TrailerDesk::scan(const QString &code)
{
    if (!m_book)
        return false;
    if (drawerOf(code) != nullptr) {
        pullOut(code);
        Q_EMIT arrivedAtDrawer();
        return true;
    }
    if (m_load.scan(code)) {
        Q_EMIT arrivedAtLoad();
        return true;
    }
    const std::string part = LabelCode::of(code).part.toStdString();
    for (const Drawer &drawer : m_book->drawers) {
        if (std::none_of(drawer.lines.begin(), drawer.lines.end(),
                         [&](const DrawerLine &line) { return sameFolded(line.number, part); }))
            continue;
        pullOut(said(drawer.id));
        Q_EMIT arrivedAtDrawer();
        return true;
    }
    return false;
}

bool TrailerDesk::knows(const QString &code) const
{
    return m_book && m_book->workshop->part(LabelCode::of(code).part.toStdString()) != nullptr;
}

} // namespace flarestock
