// SPDX-License-Identifier: MIT
//
// A built car is not quite as it was planned: another piece went in, a joint was opened again. Both
// by keyboard on the real screen, said before they are done, and taken back.

#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "app/workshop/workshop.h"
#include "seen.h"
#include "sheet_pictures.h"

#include <QTemporaryDir>
#include <QTest>

using namespace flarestock;

class CarDiffersFromThePlan : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void noJointIsOpenedOfABuildWithoutPieces();
    void anotherPieceIsSaidToFitOrNot();
    void anotherPieceGoesIn();
    void aJointThatIsOpenedTakesAFreshRing();
    void nothingIsWarnedAbout();

private:
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
        for (const char *letter = text; *letter != 0; ++letter)
            QTest::keyClick(m_window, *letter);
    }
    [[nodiscard]] HandingOut &handing() const { return *m_desk->handing(); }
    void awaitWritten() { QTRY_VERIFY_WITH_TIMEOUT(!handing().isBusy(), 20000); }
    /// What lies of a part in a place of stock, or in the car.
    [[nodiscard]] std::int64_t lies(const char *part, const char *place) const;
    void openPumpInlet();
    void askForAnother(const char *part);

    QTemporaryDir m_folder;
    QString m_file;
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<Screens> m_screens;
    QQuickWindow *m_window = nullptr;
};

void CarDiffersFromThePlan::initTestCase()
{
    prepareScreens();
    m_look = std::make_unique<Look>(nullptr);
    m_look->setInInches(true);
    m_desk = std::make_unique<Desk>(nullptr);
    m_file = m_folder.filePath(QStringLiteral("demo.flarestock"));
    auto shop = makeDemoFile(m_file.toStdString());
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    m_desk->show(std::move(*shop));
    m_desk->setWho(QStringLiteral("Kim"));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    m_screens = std::make_unique<Screens>();
    QVERIFY(m_screens->load());
    m_window = m_screens->window();
    m_window->requestActivate();
    QVERIFY(QTest::qWaitForWindowActive(m_window));
    (void)pictureOf(*m_window, QSize(1440, 900));
}

std::int64_t CarDiffersFromThePlan::lies(const char *part, const char *place) const
{
    const auto shop = Workshop::open(m_file.toStdString()).value();
    std::int64_t all = 0;
    for (const auto &[key, held] : shop->ledger.balancesOf(part))
        all += key.place == place ? held.quantity : 0;
    return all;
}

/// On the map.
void CarDiffersFromThePlan::openPumpInlet()
{
    QString spot;
    for (const PlacedJoint &joint : m_desk->build()->worked().expansion->joints) {
        if (joint.at == "pump inlet")
            spot = QStringLiteral("joint|") + QString::fromStdString(joint.id);
    }
    QVERIFY(!spot.isEmpty());
    m_desk->build()->openSpot(spot);
    QTRY_COMPARE(m_desk->build()->opened()->spot(), spot);
}

void CarDiffersFromThePlan::noJointIsOpenedOfABuildWithoutPieces()
{
    openPumpInlet();
    QVERIFY(item("openJoint") == nullptr);
}

void CarDiffersFromThePlan::askForAnother(const char *part)
{
    press("step-give");
    QTRY_VERIFY(item("inCarList") != nullptr);
    int row = -1;
    for (int at = 0; at < handing().inCar()->count(); ++at) {
        if (handing().inCar()->cell(at, QStringLiteral("part")).toString() == QLatin1String(part))
            row = at;
    }
    QVERIFY2(row >= 0, part);
    QVERIFY(QMetaObject::invokeMethod(item("inCarList"), "positionViewAtIndex", Q_ARG(int, row),
                                      Q_ARG(int, 0)));
    QQuickItem *button = nullptr;
    for (QQuickItem *one : allSeen(*m_window)) {
        if (one->objectName() != QStringLiteral("anotherPiece"))
            continue;
        const QQuickItem *line = one;
        while (line != nullptr && !line->property("typed").isValid())
            line = line->parentItem();
        if (line != nullptr && line->property("part").toString() == QLatin1String(part))
            button = one;
    }
    QVERIFY2(button != nullptr, part);
    button->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return);
    QTRY_VERIFY(item("field-used") != nullptr);
}

/// AD-8-10 ends in a flare -10 where the hose end of the plan is one; AD-8-8 ends in -8: there the
/// hose end cannot be screwed on (SAE J514: 7/8-14 and 3/4-16).
void CarDiffersFromThePlan::anotherPieceIsSaidToFitOrNot()
{
    handing().reserve();
    awaitWritten();
    handing().issue(true);
    awaitWritten();
    QTRY_VERIFY(handing().inCar()->count() > 0);
    askForAnother("AD-8-10");
    press("doDeed");
    QTRY_VERIFY(words("sheetProblem").contains(QStringLiteral("Say what went in")));
    write("field-used", "AD-8-8");
    QTRY_VERIFY_WITH_TIMEOUT(words("formOutlook").contains(QStringLiteral("! ")), 20000);
    pictureOfSheet(*m_window, *m_look, "another-piece");
}

void CarDiffersFromThePlan::anotherPieceGoesIn()
{
    const std::int64_t planned = lies("AD-8-10", "car-2");
    const std::int64_t used = lies("AD-8-8", "car-2");
    item("field-used")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(item("field-used") == nullptr);
    QCOMPARE(words("lastStep"), QStringLiteral("AD-8-8 went in instead of AD-8-10."));
    QCOMPARE(lies("AD-8-10", "car-2"), planned - 1);
    QCOMPARE(lies("AD-8-8", "car-2"), used + 1);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_VERIFY(words("lastStep").startsWith(QStringLiteral("Taken back: ")));
    QCOMPARE(lies("AD-8-10", "car-2"), planned);
    QCOMPARE(lies("AD-8-8", "car-2"), used);
}

/// The pump's inlet is a boss -8: one ring AS568-908 (SAE J1926-1), here RG-908.
void CarDiffersFromThePlan::aJointThatIsOpenedTakesAFreshRing()
{
    const std::int64_t fresh = lies("RG-908", "R1");
    openPumpInlet();
    press("openJoint");
    QTRY_VERIFY_WITH_TIMEOUT(words("formOutlook").contains(QStringLiteral("1 of RG-908")), 20000);
    QVERIFY(words("formOutlook").contains(QStringLiteral("1 old used up")));
    QTRY_COMPARE(focusName(*m_window), QStringLiteral("doDeed"));
    pictureOfSheet(*m_window, *m_look, "joint-again");
    key(Qt::Key_Return);
    awaitWritten();
    QTRY_VERIFY(item("doDeed") == nullptr);
    QVERIFY(words("lastStep").startsWith(QStringLiteral("pump inlet was opened")));
    QCOMPARE(lies("RG-908", "R1"), fresh - 1);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_COMPARE(lies("RG-908", "R1"), fresh);
}

void CarDiffersFromThePlan::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(CarDiffersFromThePlan)
#include "tst_car_differs_from_the_plan.moc"
