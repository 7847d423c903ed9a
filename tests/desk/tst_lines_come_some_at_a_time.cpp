// SPDX-License-Identifier: MIT
//
// Where somebody sits at the window, lines that are slow to make come some at a time, in their
// order, and end as the list is, whatever happens to it meanwhile; the window itself ends with the
// same lines as one that makes them at once.

#include "app/desk/launch/screens.h"
#include "app/desk/rows/pace.h"
#include "app/desk/rows/steps.h"
#include "app/desk/shop/look.h"
#include "desk_on_demo.h"
#include "seen.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>
#include <QThread>

#include <map>
#include <random>

using namespace flarestock;

namespace {

std::vector<Row> rowsOf(int from, int to)
{
    std::vector<Row> rows;
    for (int at = from; at < to; ++at)
        rows.push_back({QString::number(at), {at * 10}});
    return rows;
}

/// A list may keep a line below its end.
bool isInSight(const QQuickItem &item)
{
    const QRectF box = item.mapRectToScene(QRectF(0, 0, item.width(), item.height()));
    for (const QQuickItem *round = item.parentItem(); round != nullptr;
         round = round->parentItem()) {
        if (round->clip() &&
            !box.intersects(round->mapRectToScene(QRectF(0, 0, round->width(), round->height()))))
            return false;
    }
    return true;
}

/// How many lines of each kind are on the screen.
std::map<QString, int> linesOn(const QQuickWindow &window)
{
    std::map<QString, int> lines;
    for (const QQuickItem *item : allSeen(window)) {
        if (!item->objectName().isEmpty() && isInSight(*item))
            ++lines[item->objectName()];
    }
    return lines;
}

bool isWorkingOut(const QQuickWindow &window)
{
    const auto all = allSeen(window);
    return std::any_of(all.begin(), all.end(), [](const QQuickItem *item) {
        return item->property("text").toString().startsWith(QLatin1String("Working out"));
    });
}

struct Screen {
    std::map<QString, int> lines;
    QImage picture;
};

/// Of how many of all points two pictures differ; 1 where they are not of one size.
double otherShare(const QImage &one, const QImage &other)
{
    if (one.isNull() || one.size() != other.size())
        return 1;
    int differs = 0;
    for (int y = 0; y < one.height(); ++y) {
        for (int x = 0; x < one.width(); ++x)
            differs += one.pixel(x, y) != other.pixel(x, y) ? 1 : 0;
    }
    return static_cast<double>(differs) / (one.width() * one.height());
}

} // namespace

class LinesComeSomeAtATime : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void cleanup();
    void areThereAtOnceWhereNobodyWaits();
    void keepNoTurnLongerThanItsTime();
    void endAsTheListIsWhateverItBecomesMeanwhile();
    void areForgottenWithTheirView();
    void endWithTheSameScreens();
    void areasThatNobodyAskedForAreMade();

private:
    [[nodiscard]] std::vector<Screen> screensIn(bool inSteps);
};

void LinesComeSomeAtATime::init()
{
    Pace::instance().setInSteps(true);
}

void LinesComeSomeAtATime::cleanup()
{
    QTRY_VERIFY(!Pace::instance().isBusy());
    Pace::instance().setInSteps(false);
}

void LinesComeSomeAtATime::areThereAtOnceWhereNobodyWaits()
{
    Pace::instance().setInSteps(false);
    Rows rows({QStringLiteral("value")});
    rows.become(rowsOf(0, 5));
    Steps steps;
    const QAbstractItemModelTester tester(&steps);
    steps.setOf(&rows);
    QCOMPARE(steps.rows(), rows.rows());
    QCOMPARE(steps.roleNames(), rows.roleNames());
    rows.become(rowsOf(3, 9));
    QCOMPARE(steps.rows(), rows.rows());
    steps.setOf(nullptr);
    QCOMPARE(steps.count(), 0);
}

/// A view takes a millisecond for each line.
void LinesComeSomeAtATime::keepNoTurnLongerThanItsTime()
{
    Rows rows({QStringLiteral("value")});
    Steps steps;
    steps.setOf(&rows);
    QTRY_VERIFY(!Pace::instance().isBusy());
    connect(&steps, &Steps::rowsInserted, [] { QThread::usleep(1000); });
    rows.become(rowsOf(0, 60));
    QCOMPARE(steps.count(), 0); // From the next turn on.
    int most = 0;
    int turns = 0;
    while (Pace::instance().isBusy()) {
        const int before = steps.count();
        QCoreApplication::processEvents();
        most = std::max(most, steps.count() - before);
        turns += steps.count() > before ? 1 : 0;
        const auto shown = static_cast<std::size_t>(steps.count());
        QVERIFY(std::equal(steps.rows().begin(), steps.rows().end(), rows.rows().begin(),
                           rows.rows().begin() + static_cast<std::ptrdiff_t>(shown)));
    }
    QCOMPARE(steps.rows(), rows.rows());
    QVERIFY2(most <= Pace::TurnMs + 1, qPrintable(QString::number(most)));
    QVERIFY(turns >= 60 / (Pace::TurnMs + 1));
}

void LinesComeSomeAtATime::endAsTheListIsWhateverItBecomesMeanwhile()
{
    const unsigned seed = qEnvironmentVariableIsSet("FLARESTOCK_SEED")
                              ? qEnvironmentVariable("FLARESTOCK_SEED").toUInt()
                              : std::random_device()();
    qInfo("FLARESTOCK_SEED=%u", seed);
    std::mt19937 random(seed);
    Rows rows({QStringLiteral("value")});
    Steps steps;
    const QAbstractItemModelTester tester(&steps);
    steps.setOf(&rows);
    connect(&steps, &Steps::rowsInserted, [] { QThread::usleep(400); });
    QSignalSpy settled(&steps, &Steps::settled);
    for (int round = 0; round < 60; ++round) {
        std::vector<Row> wanted;
        for (int key = 0; key < 12; ++key) {
            if (random() % 3 != 0)
                wanted.push_back({QString::number(key), {static_cast<int>(random() % 4)}});
        }
        std::shuffle(wanted.begin(), wanted.end(), random);
        if (random() % 4 == 0)
            rows.showOther(wanted);
        else
            rows.become(wanted);
        for (unsigned turn = random() % 4; turn > 0; --turn)
            QCoreApplication::processEvents(); // Some of it only.
    }
    settled.clear();
    rows.become(rowsOf(0, 30));
    QTRY_COMPARE(steps.rows(), rows.rows());
    QTRY_COMPARE(settled.count(), 1);
}

void LinesComeSomeAtATime::areForgottenWithTheirView()
{
    Rows rows({QStringLiteral("value")});
    auto steps = std::make_unique<Steps>();
    steps->setOf(&rows);
    rows.become(rowsOf(0, 30));
    QVERIFY(Pace::instance().isBusy());
    steps.reset();
    QTRY_VERIFY(!Pace::instance().isBusy());
    Steps others;
    {
        Rows gone({QStringLiteral("value")});
        gone.become(rowsOf(0, 3));
        others.setOf(&gone);
        QTRY_COMPARE(others.count(), 3);
    }
    QCOMPARE(others.of(), nullptr);
}

/// What stands on each area's screen, by its names and as it looks.
std::vector<Screen> LinesComeSomeAtATime::screensIn(bool inSteps)
{
    Pace::instance().setInSteps(inSteps);
    Look look(nullptr);
    renew("coupe-fuel");
    Screens screens;
    std::vector<Screen> seenOn;
    if (!screens.load())
        return seenOn;
    QQuickWindow &window = *screens.window();
    window.resize(1440, 900);
    (void)QTest::qWaitForWindowExposed(&window);
    for (int area = 0; area < 6; ++area) {
        QTest::keyClick(&window, static_cast<Qt::Key>(Qt::Key_1 + area), Qt::AltModifier);
        QTest::qWait(150);
        (void)QTest::qWaitFor([this] { return !m_desk->isLoading(); }, 30000);
        (void)QTest::qWaitFor([] { return !Pace::instance().isBusy(); }, 30000);
        (void)QTest::qWaitFor([&window] { return !isWorkingOut(window); }, 30000);
        QTest::qWait(inSteps ? 900 : 100); // A frame for each piece of a list.
        seenOn.push_back({linesOn(window), window.grabWindow()});
    }
    for (const QString &warning : screens.warnings())
        qWarning("%s", qPrintable(warning));
    if (!screens.warnings().isEmpty())
        seenOn.clear();
    return seenOn;
}

void LinesComeSomeAtATime::endWithTheSameScreens()
{
    const auto atOnce = screensIn(false);
    const auto inSteps = screensIn(true);
    QCOMPARE(atOnce.size(), std::size_t(6));
    QCOMPARE(inSteps.size(), atOnce.size());
    for (std::size_t area = 0; area < atOnce.size(); ++area) {
        const double share = otherShare(atOnce[area].picture, inSteps[area].picture);
        QVERIFY2(
            share < 0.001,
            qPrintable(QStringLiteral("area %1 looks otherwise: %2").arg(area + 1).arg(share)));
        for (const auto &[name, count] : atOnce[area].lines) {
            const auto other = inSteps[area].lines.find(name);
            const int shown = other == inSteps[area].lines.end() ? 0 : other->second;
            QVERIFY2(shown == count, qPrintable(QStringLiteral("area %1: %2 of %3, not %4")
                                                    .arg(area + 1)
                                                    .arg(shown)
                                                    .arg(name)
                                                    .arg(count)));
        }
    }
}

void LinesComeSomeAtATime::areasThatNobodyAskedForAreMade()
{
    const auto made = [](const QQuickWindow &window) {
        QSet<QString> areas;
        std::vector<const QQuickItem *> items = {window.contentItem()};
        for (std::size_t at = 0; at < items.size(); ++at) {
            const QString kind = QString::fromLatin1(items[at]->metaObject()->className());
            if (kind.contains(QStringLiteral("Area_QMLTYPE")))
                areas.insert(kind);
            for (const QQuickItem *child : items[at]->childItems())
                items.push_back(child);
        }
        return areas.size();
    };
    Look look(nullptr);
    renew("coupe-fuel");
    Screens screens;
    QVERIFY(screens.load());
    QCOMPARE(made(*screens.window()), 1); // The one that shows.
    QTRY_COMPARE_WITH_TIMEOUT(made(*screens.window()), 6, 20000);
    QCOMPARE(screens.warnings(), QStringList());
}

QTEST_MAIN(LinesComeSomeAtATime)
#include "tst_lines_come_some_at_a_time.moc"
