// SPDX-License-Identifier: MIT
//
// Trailer on screen: what a test stands on that works in the real window at the trailer of a demo
// shop of which two drawers lack something.

#pragma once

#include "app/stockroom/byhand/moving.h"
#include "app/workshop/clock.h"
#include "stock_on_screen.h"

namespace flarestock {

/// Moves pieces in a shop file as the commands do, as another hand at another place would.
inline void moveIn(const QString &file, const MoveWords &words)
{
    auto shop = ShopFile::open(file.toStdString(), OpenMode::ReadWrite);
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    const auto workshop = Workshop::read(*shop).value();
    const auto movement = moved(words, *workshop, nowMilliseconds());
    QVERIFY2(movement, movement ? "" : movement.error().sentence().c_str());
    const auto done =
        shop->append(numbered({*movement}, By{"the pit crew", {}, nowMilliseconds(), freshId()}));
    QVERIFY2(done, done ? "" : done.error().sentence().c_str());
}

class TrailerOnScreen : protected StockOnScreen {
protected:
    /// The window, on a shop whose trailer lacks an element of each kind, and clamps.
    void openTrailer()
    {
        open();
        moveIn(m_file, {"EG-10-S", "1", "trailer-1", "car-1", "batch 0926", "", "", ""});
        moveIn(m_file, {"EM-40-S", "1", "trailer-1", "car-2", "", "", "", ""});
        moveIn(m_file, {"CL-38", "2", "trailer-6", "car-1", "", "", "", ""});
        QVERIFY(m_desk->openShopFile(m_file));
        key(Qt::Key_4, Qt::AltModifier);
        QTRY_VERIFY(item("drawerWall") != nullptr);
        QTRY_COMPARE_WITH_TIMEOUT(trailer().drawers()->count(), 6, 20000);
        QTRY_COMPARE(focusName(*m_window), QStringLiteral("drawerCell"));
    }
    [[nodiscard]] TrailerDesk &trailer() const { return *m_desk->trailer(); }
    [[nodiscard]] CopiesDesk &copies() const { return *trailer().copies(); }
    [[nodiscard]] CarryDesk &carry() const { return *trailer().carry(); }
    void awaitShown()
    {
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy() && !copies().isBusy(), 30000);
        QTRY_VERIFY_WITH_TIMEOUT(!trailer().isLoading(), 30000);
    }
    /// All of a part at a place of a shop file, whatever its lot or state.
    [[nodiscard]] static std::int64_t allAt(const QString &file, const char *part,
                                            const char *place)
    {
        const auto shop = Workshop::open(file.toStdString()).value();
        std::int64_t sum = 0;
        for (const auto &[key, held] : shop->ledger.balancesOf(part))
            sum += key.place == place ? held.quantity : 0;
        return sum;
    }
    [[nodiscard]] std::int64_t all(const char *part, const char *place) const
    {
        return allAt(m_file, part, place);
    }
    void trailerPicture(const char *name, const QSize &size = QSize(1440, 900)) const
    {
        QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
        QVERIFY(pictureOf(*m_window, size)
                    .save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/trailer-%1.png")
                              .arg(QString::fromLatin1(name))));
    }
};

} // namespace flarestock
