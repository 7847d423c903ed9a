// SPDX-License-Identifier: MIT
//
// Buying on screen: what a test stands on that works in the real window on what a demo shop buys,
// and what the buyer's own code says of the same file.

#pragma once

#include "app/buyer/needs.h"
#include "app/buyer/planned.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "app/workshop/made_up.h"
#include "stock_on_screen.h"

namespace flarestock {

class BuyingOnScreen : protected StockOnScreen {
protected:
    void showBuying()
    {
        key(Qt::Key_3, Qt::AltModifier);
        QTRY_VERIFY(item("lackingList") != nullptr);
        awaitBuying();
    }
    void awaitBuying()
    {
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 30000);
        QTRY_VERIFY_WITH_TIMEOUT(!buying().isLoading(), 60000);
        const SlipsPage &slips = *buying().slips();
        QTRY_VERIFY_WITH_TIMEOUT(!slips.isLooking() || !slips.isLoading(), 60000);
    }
    [[nodiscard]] BuyingDesk &buying() const { return *m_desk->buying(); }
    [[nodiscard]] std::shared_ptr<const Workshop> inFile() const
    {
        return Workshop::open(m_file.toStdString()).value();
    }
    /// As `plan` and `short` ask for them.
    [[nodiscard]] std::vector<Shortage> shortages() const
    {
        const auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly).value();
        const auto shop = Workshop::read(file).value();
        auto due = dueInShop(*shop, file, today()).value();
        NeedsAsked asked{today()};
        asked.due = std::move(due.lines);
        return shortagesOf(*shop, asked).value();
    }
    [[nodiscard]] static std::string today() { return dayOf(nowMilliseconds()); }
    [[nodiscard]] static QString cell(Rows *rows, int row, const char *name)
    {
        return rows->cell(row, QString::fromLatin1(name)).toString();
    }
    void pictureOfBuying(const char *name, const QSize &size = QSize(1440, 900))
    {
        QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
        QVERIFY(pictureOf(*m_window, size)
                    .save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/buying-%1.png")
                              .arg(QString::fromLatin1(name))));
    }
};

} // namespace flarestock
