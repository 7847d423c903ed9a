// SPDX-License-Identifier: MIT
//
// Keeping on screen: what a test stands on that works in the real window on a shop as a whole, with
// the keyboard only.

#pragma once

#include "app/desk/language/language.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/look.h"
#include "app/workshop/documents.h"
#include "desk_on_demo.h"
#include "seen.h"
#include "sheet_pictures.h"

#include <QFile>

namespace flarestock {

class KeepingOnScreen : protected DeskOnDemo {
protected:
    /// The window with a new demo shop on the desk, or with none.
    void show(bool withShop = true)
    {
        m_screens.reset();
        m_desk.reset();
        m_look.reset();
        m_look = std::make_unique<Look>(nullptr);
        QVERIFY(speak(QStringLiteral("en"))); // Whatever was spoken before.
        if (withShop) {
            renew();
        } else {
            m_desk = std::make_unique<Desk>(nullptr);
            m_desk->setDeeds({openShopFile, makeDemoFile});
        }
        m_desk->setWho(QStringLiteral("Kim"));
        m_screens = std::make_unique<Screens>();
        QVERIFY(m_screens->load());
        m_screens->follow(*m_look, *m_desk);
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
    [[nodiscard]] QStringList allWords(const char *name) const
    {
        QStringList all;
        for (const QQuickItem *one : allSeen(*m_window))
            if (one->objectName() == QLatin1String(name))
                all.append(one->property("text").toString());
        return all;
    }
    [[nodiscard]] QString focus() const { return focusName(*m_window); }
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(m_window, key, with);
    }
    /// What stood there is gone.
    void write(const char *field, const QString &text)
    {
        QTRY_VERIFY2(item(field) != nullptr, field);
        item(field)->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_A, Qt::ControlModifier);
        for (const QChar letter : text)
            QTest::keyClick(m_window, letter.toLatin1());
        QCOMPARE(words(field), text);
    }
    void press(const char *name)
    {
        QTRY_VERIFY2(item(name) != nullptr && item(name)->isEnabled(), name);
        item(name)->forceActiveFocus(Qt::TabFocusReason);
        key(Qt::Key_Return);
    }
    /// Opens the sheet of a deed by Ctrl+O and Tab down to its button.
    void ask(const char *deed)
    {
        key(Qt::Key_O, Qt::ControlModifier);
        QTRY_COMPARE(focus(), QStringLiteral("otherFile"));
        for (int tabs = 0; tabs < 12 && focus() != QLatin1String(deed); ++tabs)
            key(Qt::Key_Tab);
        QCOMPARE(focus(), QString::fromLatin1(deed));
        key(Qt::Key_Return);
    }
    [[nodiscard]] QString in(const char *name) const
    {
        return m_folder.filePath(QString::fromLatin1(name) + QString::number(m_names));
    }
    void newNames() { ++m_names; }
    [[nodiscard]] TextFiles documents(const QString &file) const
    {
        const auto shop = ShopFile::open(file.toStdString(), OpenMode::ReadOnly);
        return shop ? shop->documents().value_or(TextFiles()) : TextFiles();
    }
    static QByteArray bytesOf(const QString &path)
    {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    /// Replaces a text of a file where it comes first; it has to be there.
    static void edit(const QString &path, const char *before, const char *after)
    {
        QByteArray bytes = bytesOf(path);
        const auto at = bytes.indexOf(before);
        QVERIFY2(at >= 0, before);
        QFile file(path);
        QVERIFY(file.open(QIODevice::WriteOnly));
        QVERIFY(file.write(bytes.replace(at, QByteArray(before).size(), after)) > 0);
    }

    std::unique_ptr<Look> m_look;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
    int m_names = 0;
};

} // namespace flarestock
