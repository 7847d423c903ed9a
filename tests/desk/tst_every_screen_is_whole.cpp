// SPDX-License-Identifier: MIT
//
// Every screen, and every sheet that a button of it opens: in both languages, light and dark, large
// and small. No word is cut short, every control has a name, the focus is on the sheet and Tab
// comes round in it. A picture of each lies in the build's folder "screens", for whoever looks.
// With QT_SCALE_FACTOR=2 all is twice as large.

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "for_everyone.h"

#include <QDir>
#include <QStandardPaths>
#include <QTemporaryDir>

using namespace flarestock;

namespace {

/// Where its buttons are pressed: an area, what is pressed there first, and what is typed to find.
struct Room {
    const char *name;
    Qt::Key area;
    std::vector<const char *> presses = {};
    const char *found = "";
};

const std::vector<Room> &rooms()
{
    static const std::vector<Room> all = {
        {"builds", Qt::Key_1},
        {"builds-new", Qt::Key_1, {"Ctrl+N"}},
        {"builds-template", Qt::Key_1, {"Ctrl+T"}},
        {"builds-bill", Qt::Key_1, {"tabBill"}}, // Where the screen is small.
        {"builds-reserved", Qt::Key_1, {"tabBill", "step-reserve"}},
        {"builds-issued", Qt::Key_1, {"tabBill", "step-pick", "issueAll"}},
        {"builds-findings", Qt::Key_1, {"tabFindings"}},
        {"builds-pressure", Qt::Key_1, {"Ctrl+2"}},
        {"builds-pump", Qt::Key_1, {"Ctrl+3"}},
        {"builds-cost", Qt::Key_1, {"Ctrl+4"}},
        {"builds-by-date", Qt::Key_1, {"Ctrl+D"}},
        {"stock", Qt::Key_2},
        {"stock-fitting", Qt::Key_2, {}, "AD-8-8"},
        {"stock-hose", Qt::Key_2, {}, "EP-10"},
        {"buying-short", Qt::Key_3, {"page-0"}},
        {"buying-slips", Qt::Key_3, {"page-1"}},
        {"buying-orders", Qt::Key_3, {"page-2"}},
        {"buying-owed", Qt::Key_3, {"page-3"}},
        {"trailer-drawers", Qt::Key_4, {"workDrawer"}},
        {"trailer-load", Qt::Key_4, {"workIn"}},
        {"trailer-unload", Qt::Key_4, {"workOut"}},
        {"trailer-carry", Qt::Key_4, {"workCarry"}},
        {"trailer-copies", Qt::Key_4, {"workCopies"}},
        {"service", Qt::Key_5},
        {"service-lot", Qt::Key_5, {"tab-lot"}},
        {"parts", Qt::Key_6},
        {"parts-pump", Qt::Key_6, {}, "EP-460"},
    };
    return all;
}

/// Not what narrows, folds, or says the screen otherwise, and not what lies on every screen.
bool leads(const QString &button, const QString &room)
{
    static const QStringList stays = {
        QStringLiteral("takeBack"),       QStringLiteral("languageButton"),
        QStringLiteral("lookButton"),     QStringLiteral("unitsButton"),
        QStringLiteral("clearNarrowing"), QStringLiteral("belowKept"),
        QStringLiteral("tickAll"),        QStringLiteral("letGo"),
        QStringLiteral("buildsByDate"),   QStringLiteral("leaveAbreast"),
    };
    static const QStringList beginnings = {
        QStringLiteral("area-"), QStringLiteral("page-"),  QStringLiteral("sort-"),
        QStringLiteral("aim-"),  QStringLiteral("tab-"),   QStringLiteral("fold"),
        QStringLiteral("workI"), QStringLiteral("workO"),  QStringLiteral("workC"),
        QStringLiteral("workD"), QStringLiteral("picture")};
    static const QStringList everywhere = {QStringLiteral("otherShop"), QStringLiteral("who")};
    if (button.isEmpty() || stays.contains(button))
        return false;
    if (everywhere.contains(button) && room != QStringLiteral("builds"))
        return false;
    return std::none_of(beginnings.begin(), beginnings.end(),
                        [&button](const QString &one) { return button.startsWith(one); });
}

} // namespace

class EveryScreenIsWhole : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void whateverIsOpened_data();
    void whateverIsOpened();

private:
    void open(const QString &language, bool dark);
    void key(Qt::Key key, Qt::KeyboardModifiers with = Qt::NoModifier)
    {
        QTest::keyClick(m_window, key, with);
    }
    [[nodiscard]] QQuickItem *sheet() const; ///< The one that lies on top; nullptr where none does.
    [[nodiscard]] QStringList buttons(const QString &room) const;
    void press(const QString &name);
    void settle();
    void go(const Room &room);
    void putAway();
    void look(const QString &name);
    void goRoundInSheet(const QString &name);
    [[nodiscard]] bool isFileDialog() const; ///< Qt's own, with no names of ours.

    QTemporaryDir m_folder;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
    QSize m_size;
    QString m_pictures;
    QStringList m_wrong;
    int m_shops = 0;
    int m_seen = 0;
};

void EveryScreenIsWhole::initTestCase()
{
    QStandardPaths::setTestModeEnabled(true);
    listenAsAScreenReader();
    prepareScreens();
}

void EveryScreenIsWhole::open(const QString &language, bool dark)
{
    m_screens.reset();
    m_desk.reset();
    m_look.reset();
    m_look = std::make_unique<Look>(nullptr);
    m_look->setLanguage(language);
    m_look->setDark(dark);
    m_desk = std::make_unique<Desk>(nullptr);
    m_desk->setDeeds({openShopFile, makeDemoFile});
    m_desk->setWho(QStringLiteral("Kim"));
    const QString file = m_folder.filePath(QStringLiteral("demo%1.flarestock").arg(++m_shops));
    QVERIFY2(m_desk->makeDemoIn(file), qPrintable(m_desk->problem()));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    m_screens = std::make_unique<Screens>();
    QVERIFY(m_screens->load());
    m_screens->follow(*m_look, *m_desk);
    m_window = m_screens->window();
    m_window->requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(m_window));
}

QQuickItem *EveryScreenIsWhole::sheet() const
{
    QQuickItem *top = nullptr;
    for (QQuickItem *item : allSeen(*m_window)) {
        if (item->inherits("QQuickPopupItem"))
            top = item;
    }
    return top;
}

QStringList EveryScreenIsWhole::buttons(const QString &room) const
{
    QStringList names;
    const QQuickItem *on = sheet(); // What lies under it is not in reach.
    for (const QQuickItem *item : allSeen(*m_window)) {
        if ((on == nullptr || on->isAncestorOf(item)) && item->inherits("QQuickAbstractButton") &&
            item->isEnabled() && leads(item->objectName(), room) &&
            !names.contains(item->objectName()))
            names.append(item->objectName());
    }
    return names;
}

/// Layouts, and what an area reads.
void EveryScreenIsWhole::settle()
{
    QTest::qWait(60);
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->isLoading() && !m_desk->pen()->isBusy(), 30000);
}

void EveryScreenIsWhole::press(const QString &name)
{
    if (name.startsWith(QStringLiteral("Ctrl+"))) {
        key(static_cast<Qt::Key>(name.back().toLatin1()), Qt::ControlModifier);
        return settle();
    }
    QQuickItem *item = seen(*m_window, qPrintable(name));
    if (item == nullptr)
        return;
    item->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return);
    settle();
}

void EveryScreenIsWhole::putAway()
{
    for (int at = 0; at < 4 && sheet() != nullptr; ++at) {
        key(Qt::Key_Escape);
        settle();
    }
}

void EveryScreenIsWhole::go(const Room &room)
{
    putAway();
    key(room.area, Qt::AltModifier);
    settle();
    for (const char *first : {"leaveAbreast", "clearNarrowing"})
        press(QString::fromLatin1(first)); // Where it is there.
    for (const char *name : room.presses)
        press(QString::fromLatin1(name));
    if (*room.found == 0)
        return;
    key(Qt::Key_F, Qt::ControlModifier);
    key(Qt::Key_A, Qt::ControlModifier);
    for (const char *letter = room.found; *letter != 0; ++letter)
        QTest::keyClick(m_window, *letter);
    settle();
    key(Qt::Key_Return);
    settle();
}

bool EveryScreenIsWhole::isFileDialog() const
{
    return seen(*m_window, "fileDialogListView") != nullptr;
}

/// A line of a list may be longer than its column: the one in hand is shown whole elsewhere.
void EveryScreenIsWhole::look(const QString &name)
{
    ++m_seen;
    const QImage image = pictureOf(*m_window, m_size);
    if (!image.save(m_pictures + QDir::separator() + name + QStringLiteral(".png")))
        m_wrong.append(name + QStringLiteral(": no picture"));
    if (isFileDialog())
        return;
    WordsSeen words;
    words.look(*m_window,
               {"billList", "findingList", "lineMap", "stockLine", "lackingLine", "dayColumn",
                "abreastLine", "abreastHead", "cardTab", "paragraph", "foundLine"});
    if (const QString cut = words.cut(0); !cut.isEmpty())
        m_wrong.append(QStringLiteral("%1: cut short: %2").arg(name, cut));
    if (const QString nameless = namelessControls(*m_window, 10); !nameless.isEmpty())
        m_wrong.append(QStringLiteral("%1: without a name: %2").arg(name, nameless));
}

/// Tab stays in the sheet that lies over the screen, and comes round.
void EveryScreenIsWhole::goRoundInSheet(const QString &name)
{
    QSet<const QQuickItem *> passed = {m_window->activeFocusItem()};
    const auto isInside = [this] {
        for (const QQuickItem *item = m_window->activeFocusItem(); item != nullptr;
             item = item->parentItem()) {
            if (item == sheet())
                return true;
        }
        return false;
    };
    if (!isInside())
        m_wrong.append(name + QStringLiteral(": the focus is not on it"));
    for (int at = 0; at < 400; ++at) {
        const QQuickItem *before = m_window->activeFocusItem();
        key(Qt::Key_Tab);
        if (m_window->activeFocusItem() == before && passed.size() > 1) {
            m_wrong.append(name + QStringLiteral(": Tab is caught by ") + focusName(*m_window));
            return;
        }
        if (!isInside()) {
            m_wrong.append(name + QStringLiteral(": Tab leaves it for ") + focusName(*m_window));
            return;
        }
        if (passed.contains(m_window->activeFocusItem()))
            return;
        passed.insert(m_window->activeFocusItem());
    }
    m_wrong.append(name + QStringLiteral(": Tab does not come round"));
}

void EveryScreenIsWhole::whateverIsOpened_data()
{
    QTest::addColumn<QString>("language");
    QTest::addColumn<bool>("dark");
    QTest::addColumn<QSize>("size");
    QTest::newRow("en-light") << QStringLiteral("en") << false << QSize(1440, 900);
    QTest::newRow("en-dark-small") << QStringLiteral("en") << true << QSize(1024, 640);
    QTest::newRow("de-light-small") << QStringLiteral("de") << false << QSize(1024, 640);
    QTest::newRow("de-dark") << QStringLiteral("de") << true << QSize(1440, 900);
}

void EveryScreenIsWhole::whateverIsOpened()
{
    QFETCH(QString, language);
    QFETCH(bool, dark);
    QFETCH(QSize, size);
    open(language, dark);
    m_size = size;
    m_seen = 0;
    m_wrong.clear();
    m_pictures = QStringLiteral(FLARESTOCK_BINARY_DIR "/screens/%1-at-%2")
                     .arg(QString::fromLatin1(QTest::currentDataTag()))
                     .arg(m_window->devicePixelRatio());
    QDir(m_pictures).removeRecursively();
    QVERIFY(QDir().mkpath(m_pictures));
    (void)pictureOf(*m_window, size);
    for (const Room &room : rooms()) {
        const QString name = QString::fromLatin1(room.name);
        go(room);
        look(name);
        for (const QString &button : buttons(name)) {
            if (seen(*m_window, qPrintable(button)) == nullptr)
                go(room);
            press(button);
            if (sheet() == nullptr)
                continue;
            look(name + QLatin1Char('-') + button);
            if (!isFileDialog())
                goRoundInSheet(name + QLatin1Char('-') + button);
            putAway();
        }
    }
    m_wrong += m_screens->warnings();
    for (const QString &wrong : m_wrong)
        qWarning("%s", qPrintable(wrong));
    QCOMPARE(m_wrong.size(), 0);
    QVERIFY2(m_seen > 60, qPrintable(QString::number(m_seen)));
}

QTEST_MAIN(EveryScreenIsWhole)
#include "tst_every_screen_is_whole.moc"
