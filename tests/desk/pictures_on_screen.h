// SPDX-License-Identifier: MIT
//
// Pictures on screen: what a test stands on that looks at the pictures of a build in the real
// window of a demo shop, with hands that know the keyboard only.

#pragma once

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "named_controls.h"
#include "seen.h"

#include <QDir>
#include <QTemporaryDir>
#include <QTest>

namespace flarestock {

class PicturesOnScreen {
protected:
    void open()
    {
        listenAsAScreenReader();
        prepareScreens();
        m_look = std::make_unique<Look>(nullptr);
        m_look->setInInches(true);
        m_desk = std::make_unique<Desk>(nullptr);
        m_desk->build()->setInInches(true);
        m_desk->setDeeds({openShopFile, makeDemoFile});
        QVERIFY2(m_desk->makeDemoIn(m_folder.filePath(QStringLiteral("demo.flarestock"))),
                 qPrintable(m_desk->problem()));
        m_screens = std::make_unique<Screens>();
        QVERIFY(m_screens->load());
        m_window = m_screens->window();
        m_window->requestActivate();
        QVERIFY(QTest::qWaitForWindowActive(m_window));
        (void)pictureOf(*m_window, QSize(1440, 900));
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
    /// A build and one of its pictures, by keys, worked out.
    void look(const char *build, BuildPictures::Picture picture)
    {
        QVERIFY(m_desk->openBuild(QString::fromLatin1(build)));
        key(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(picture)), Qt::ControlModifier);
        QCOMPARE(m_desk->pictures()->shown(), static_cast<int>(picture));
        QTRY_VERIFY(!m_desk->pictures()->isWorking());
    }
    /// It is written light and large, dark and small, and no word of it is cut short.
    void keepPictures(const char *name)
    {
        QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
        for (const bool dark : {false, true}) {
            m_look->setDark(dark);
            const QImage image = pictureOf(*m_window, dark ? QSize(1024, 640) : QSize(1440, 900));
            QVERIFY(
                image.save(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/plot-%1-%2.png")
                               .arg(QString::fromLatin1(name), dark ? QStringLiteral("dark-small")
                                                                    : QStringLiteral("light"))));
            for (const QQuickItem *one : allSeen(*m_window))
                if (one->objectName().startsWith(QStringLiteral("plot")))
                    QVERIFY2(!one->property("truncated").toBool(),
                             qPrintable(one->property("text").toString()));
        }
        m_look->setDark(false);
        (void)pictureOf(*m_window, QSize(1440, 900));
    }

    QTemporaryDir m_folder;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
};

} // namespace flarestock
