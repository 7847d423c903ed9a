// SPDX-License-Identifier: MIT
//
// The line map at every width: nothing lies on anything else, lines meet their plates, a stroke is
// as thick as its bore.

#include "app/desk/launch/open_shop.h"
#include "app/desk/map/map_layout.h"
#include "bench_shop.h"

#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

using namespace flarestock;

namespace {

constexpr double Close = 0.01;

bool touchesEdge(const QPointF &point, const QRectF &box)
{
    return box.adjusted(-Close, -Close, Close, Close).contains(point) &&
           !box.adjusted(Close, Close, -Close, -Close).contains(point);
}

/// Whether a piece of a stroke runs through the inside of a plate.
bool runsThrough(const QPointF &a, const QPointF &b, const QRectF &box)
{
    const QRectF piece = QRectF(a, b).normalized().adjusted(-Close, -Close, Close, Close);
    return piece.intersects(box.adjusted(1, 1, -1, -1));
}

/// Whether two upright pieces of two strokes lie on one another, so that one could not tell which
/// goes where.
bool coincide(const MapStroke &one, const MapStroke &other)
{
    for (int a = 1; a < one.line.size(); ++a) {
        for (int b = 1; b < other.line.size(); ++b) {
            const QRectF first = QRectF(one.line[a - 1], one.line[a]).normalized();
            const QRectF second = QRectF(other.line[b - 1], other.line[b]).normalized();
            if (first.width() > Close || second.width() > Close)
                continue;
            const double shared =
                std::min(first.bottom(), second.bottom()) - std::max(first.top(), second.top());
            if (std::abs(first.x() - second.x()) < 4 && shared > 4)
                return true;
        }
    }
    return false;
}

QByteArray named(const std::string &what, double width)
{
    return QByteArray::fromStdString(what) + " at " + QByteArray::number(width);
}

} // namespace

class MapIsLaidOut : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void everyBuildAtEveryWidth_data();
    void everyBuildAtEveryWidth();
    void aListTurnedRoundIsDrawnTheSame_data();
    void aListTurnedRoundIsDrawnTheSame();
    void aStrokeIsAsThickAsItsBore();
    void nothingGivesAnEmptyMap();

private:
    QTemporaryDir m_folder;
    std::vector<std::pair<std::string, WorkedOut>> m_builds;
};

void MapIsLaidOut::initTestCase()
{
    const auto shop = makeDemoFile(m_folder.filePath(QStringLiteral("demo")).toStdString());
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    for (const BuildPlan &plan : shop->builds) {
        const auto worked = shop->workOut(plan);
        QVERIFY2(worked, worked ? "" : worked.error().sentence().c_str());
        m_builds.emplace_back(plan.id, *worked);
    }
    m_builds.emplace_back("bench", workOutBench(benchPlan()).value());
    QVERIFY(m_builds.size() > 6);
}

void MapIsLaidOut::everyBuildAtEveryWidth_data()
{
    QTest::addColumn<std::size_t>("build");
    QTest::addColumn<double>("width");
    for (std::size_t at = 0; at < m_builds.size(); ++at) {
        for (const double width : {300.0, 556.0, 807.0, 924.0, 1400.0})
            QTest::newRow(named(m_builds[at].first, width)) << at << width;
    }
}

void MapIsLaidOut::everyBuildAtEveryWidth()
{
    QFETCH(std::size_t, build);
    QFETCH(double, width);
    const Expansion &expansion = *m_builds[build].second.expansion;
    MapSpace space;
    space.width = width;
    const MapLayout map = layoutMap(expansion, space);

    for (const PlacedStation &station : expansion.stations)
        QVERIFY2(map.plate(station.id) != nullptr, station.id.c_str());
    for (std::size_t a = 0; a < map.plates.size(); ++a) {
        for (std::size_t b = a + 1; b < map.plates.size(); ++b)
            QVERIFY2(!map.plates[a].box.intersects(map.plates[b].box),
                     map.plates[b].station.c_str());
    }
    for (const MapStroke &stroke : map.strokes) {
        for (int at = 1; at < stroke.line.size(); ++at) {
            const QPointF a = stroke.line[at - 1];
            const QPointF b = stroke.line[at];
            QVERIFY2(std::abs(a.x() - b.x()) < Close || std::abs(a.y() - b.y()) < Close,
                     stroke.run.c_str());
            for (const MapPlate &plate : map.plates)
                QVERIFY2(!runsThrough(a, b, plate.box),
                         (stroke.run + " through " + plate.station).c_str());
        }
        const PlacedRun *run = expansion.run(stroke.run);
        QVERIFY2(touchesEdge(stroke.line.first(), map.plate(run->from)->box), stroke.run.c_str());
    }
    for (std::size_t a = 0; a < map.strokes.size(); ++a) {
        for (std::size_t b = a + 1; b < map.strokes.size(); ++b)
            QVERIFY2(!coincide(map.strokes[a], map.strokes[b]),
                     (map.strokes[a].run + " on " + map.strokes[b].run).c_str());
    }
    QCOMPARE(map.marks.size(), expansion.joints.size());
    for (std::size_t a = 0; a < map.marks.size(); ++a) {
        for (std::size_t b = a + 1; b < map.marks.size(); ++b) {
            const QPointF apart = map.marks[a].at - map.marks[b].at;
            QVERIFY2(std::hypot(apart.x(), apart.y()) >= 39,
                     (map.marks[a].joint + " and " + map.marks[b].joint).c_str());
        }
        QVERIFY(map.marks[a].at.y() > 0 && map.marks[a].at.y() < map.height);
    }
    const double right = map.plates.front().box.width() + space.labelWidth + 72;
    for (const MapPlate &plate : map.plates) {
        QVERIFY(plate.box.left() > 0);
        QVERIFY(plate.box.right() <= std::max(width, right));
    }
}

void MapIsLaidOut::aListTurnedRoundIsDrawnTheSame_data()
{
    QTest::addColumn<std::size_t>("build");
    for (std::size_t at = 0; at + 1 < m_builds.size(); ++at) // The bench's runs have no levels.
        QTest::newRow(m_builds[at].first.c_str()) << at;
}

/// A template may list where its feeds end first: only what leads back is drawn so. Listed as it
/// flows it stands as it is listed.
void MapIsLaidOut::aListTurnedRoundIsDrawnTheSame()
{
    QFETCH(std::size_t, build);
    Expansion expansion = *m_builds[build].second.expansion;
    const auto echoes = [](const MapLayout &map) {
        return std::count_if(map.plates.begin(), map.plates.end(),
                             [](const MapPlate &plate) { return plate.echo; });
    };
    const MapLayout asListed = layoutMap(expansion, {});
    for (const Level level : {Level::Suction, Level::Pressure, Level::Return}) {
        auto plate = asListed.plates.begin();
        for (const PlacedStation &station : expansion.stations) {
            if (station.station->level != level)
                continue;
            plate = std::find_if(plate, asListed.plates.end(), [&](const MapPlate &one) {
                return !one.echo && one.station == station.id;
            });
            QVERIFY2(plate != asListed.plates.end(), station.id.c_str());
        }
    }
    std::reverse(expansion.stations.begin(), expansion.stations.end());
    const MapLayout map = layoutMap(expansion, {});
    QCOMPARE(echoes(map), echoes(asListed));
    for (const PlacedRun &run : expansion.runs) {
        const MapPlate *from = map.plate(run.from);
        const MapPlate *to = map.plate(run.to);
        const bool isInRow = run.run->level != Level::Return && from && to && from->row == to->row;
        QVERIFY2(!isInRow || from->box.left() < to->box.left(), run.id.c_str());
    }
}

void MapIsLaidOut::aStrokeIsAsThickAsItsBore()
{
    QVERIFY(strokeThickness(14.2) > strokeThickness(11.1));
    QVERIFY(strokeThickness(11.1) > strokeThickness(8.7));
    QCOMPARE(strokeThickness(14.2) / strokeThickness(7.1), 2.0);
    QVERIFY(strokeThickness(0) < strokeThickness(3.5)); // Not published: thin and broken.
}

void MapIsLaidOut::nothingGivesAnEmptyMap()
{
    const MapLayout map = layoutMap({}, {});
    QVERIFY(map.plates.empty() && map.strokes.empty() && map.marks.empty());
}

QTEST_APPLESS_MAIN(MapIsLaidOut)
#include "tst_map_is_laid_out.moc"
