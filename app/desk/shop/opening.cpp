// SPDX-License-Identifier: MIT
//
// How a shop comes onto the desk: from a file, from a server, or as the demo shop made anew; and
// how the areas hear of it.

#include "app/desk/rows/pace.h"
#include "app/desk/shop/desk.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

namespace flarestock {

void Desk::setDeeds(DeskDeeds deeds)
{
    m_deeds = std::move(deeds);
    m_server.setDeeds(m_deeds.atServer);
    m_keeping.maker()->setOpening(m_deeds.open);
}

/// Says so, too.
bool Desk::isBeingWritten()
{
    if (!m_handing.isBusy() && !m_backups.isBusy() && !m_trailer.copies()->isBusy())
        return false;
    refuse({m_shop.file, "is being written just now", "Try again."});
    return true;
}

bool Desk::openWith(const OpenShop &deed, const QString &file)
{
    if (!deed || isBeingWritten())
        return false;
    auto shop = deed(file.toStdString());
    if (!shop) {
        refuse(shop.error());
        return false;
    }
    show(std::move(*shop));
    return true;
}

bool Desk::openShopFile(const QString &file)
{
    return openWith(m_deeds.open, file);
}

/// The shop that is there stays on the desk until the other one has come.
void Desk::openAside(const OpenShop &deed, const QString &file, const QString &build)
{
    if (isBeingWritten())
        return;
    m_coming.open(deed, file, [this, build](Result<ShopOnDesk> shop) {
        if (!shop)
            return refuse(shop.error());
        if (isBeingWritten())
            return;
        show(std::move(*shop));
        if (!build.isEmpty())
            openBuild(build);
    });
}

void Desk::openShop(const QUrl &file)
{
    openAside(m_deeds.open, file.toLocalFile());
}

bool Desk::makeDemoIn(const QString &file)
{
    return openWith(m_deeds.makeDemo, file);
}

void Desk::makeDemo()
{
    const QString folder = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    QDir().mkpath(folder);
    const QString file = QDir(folder).filePath(QStringLiteral("demo-shop.flarestock"));
    openAside(QFile::exists(file) ? m_deeds.open : m_deeds.makeDemo, file);
}

/// `says`: what else there is to say.
void Desk::showOpened(const ShopOnDesk &shop, const QString &says)
{
    if (isBeingWritten())
        return;
    show(shop);
    if (!says.isEmpty())
        m_build.tell(says);
}

bool Desk::isLoading() const
{
    const auto isRead = [](const auto &area) { return !area.isLooking() || !area.isLoading(); };
    return !(isRead(m_abreast) && isRead(m_stock) && isRead(m_buying) && isRead(m_trailer) &&
             isRead(m_service) && isRead(m_parts));
}

/// The areas of another shop all at once; of the same one in turns, those that nobody looks at
/// last.
void Desk::tellAreas(bool isOther)
{
    m_pen.setShop(m_shop);
    m_handing.setReading(m_shop.read);
    m_keeping.setShop(m_shop, isOther);
    m_papers.setShop(m_shop);
    m_planning.setShop(m_shop);
    m_templates.setShop(m_shop, isOther);
    m_anywhere.setShop(m_shop);
    const auto tell = [this, isOther](auto &area) {
        if (isOther)
            area.setShop(m_shop, true);
        else
            Pace::instance().later(this, [this, &area] { area.setShop(m_shop, false); });
    };
    const auto tellThose = [&tell](bool looking, auto &...areas) {
        ((areas.isLooking() == looking ? tell(areas) : void()), ...);
    };
    for (const bool looking : {true, false})
        tellThose(looking, m_stock, m_abreast, m_buying, m_trailer, m_service, m_parts);
}

} // namespace flarestock
