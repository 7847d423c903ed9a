// SPDX-License-Identifier: MIT
//
// Stock on screen: what a test stands on that works in the real window on the stock of a demo shop:
// the window, and hands that know the keyboard only.

#pragma once

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/scan/scan_ear.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "app/workshop/workshop.h"
#include "named_controls.h"
#include "seen.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

namespace flarestock {

class StockOnScreen {
protected:
    void open()
    {
        listenAsAScreenReader();
        prepareScreens();
        m_look = std::make_unique<Look>(nullptr);
        m_look->setInInches(true);
        m_desk = std::make_unique<Desk>(nullptr);
        m_desk->setDeeds({openShopFile, makeDemoFile});
        m_file = m_folder.filePath(QStringLiteral("demo.flarestock"));
        QVERIFY2(m_desk->makeDemoIn(m_file), qPrintable(m_desk->problem()));
        m_desk->setWho(QStringLiteral("Kim"));
        m_screens = std::make_unique<Screens>();
        QVERIFY(m_screens->load());
        m_window = m_screens->window();
        m_window->requestActivate();
        QVERIFY(QTest::qWaitForWindowActive(m_window));
        (void)pictureOf(*m_window, QSize(1440, 900));
    }
    /// The area of stock, with its lines.
    void showStock()
    {
        key(Qt::Key_2, Qt::AltModifier);
        QTRY_VERIFY(item("stockList") != nullptr);
        QTRY_VERIFY_WITH_TIMEOUT(stock().rows()->count() > 50, 20000);
        QTRY_COMPARE(focusName(*m_window), QStringLiteral("stockLine"));
    }
    [[nodiscard]] QQuickItem *item(const char *name) const { return seen(*m_window, name); }
    [[nodiscard]] QString words(const char *name) const
    {
        const QQuickItem *found = item(name);
        return found == nullptr ? QString() : found->property("text").toString();
    }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(m_window, key, with);
    }
    void type(const char *text, int delay = -1)
    {
        for (const char *letter = text; *letter != 0; ++letter)
            QTest::keyClick(m_window, *letter, Qt::NoModifier, delay);
    }
    void press(const char *name)
    {
        QTRY_VERIFY2(item(name) != nullptr && item(name)->isEnabled(), name);
        item(name)->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_Return);
    }
    void write(const char *field, const char *text)
    {
        QTRY_VERIFY2(item(field) != nullptr, field);
        item(field)->forceActiveFocus(Qt::TabFocusReason);
        type(text);
    }
    /// Brings a part into hand as one would: find it, Enter.
    void take(const char *number)
    {
        key(Qt::Key_F, Qt::ControlModifier);
        key(Qt::Key_A, Qt::ControlModifier);
        type(number);
        QTest::qWait(ScanEar::GapMost * 2); // A hand, not a scanner.
        QTRY_VERIFY_WITH_TIMEOUT(!stock().isLoading(), 20000);
        QTRY_COMPARE(stock().selected(), QString::fromLatin1(number));
        key(Qt::Key_Return);
        QTRY_COMPARE(focusName(*m_window), QStringLiteral("stockLine"));
    }
    [[nodiscard]] StockDesk &stock() const { return *m_desk->stock(); }
    void awaitWritten()
    {
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 20000);
        QTRY_VERIFY_WITH_TIMEOUT(!stock().isLoading(), 20000);
    }
    [[nodiscard]] std::int64_t lies(const char *part, const char *place) const
    {
        const auto shop = Workshop::open(m_file.toStdString()).value();
        return shop->ledger.balance({part, place, {}, PieceCondition::New}).quantity;
    }
    void picture(const char *name, const QSize &size = QSize(1440, 900)) const
    {
        QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
        QVERIFY(pictureOf(*m_window, size)
                    .save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/stock-%1.png")
                              .arg(QString::fromLatin1(name))));
    }

    QTemporaryDir m_folder;
    QString m_file;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
};

} // namespace flarestock
