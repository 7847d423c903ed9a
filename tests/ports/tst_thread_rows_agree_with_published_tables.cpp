// SPDX-License-Identifier: MIT
//
// The thread rows against tables from outside: FreeCAD's limit tables as Debian's freecad-common
// ships them, and published figures of ASME B1.1, B1.20.1 and ISO 228-1.

#include "model/ports/size_table.h"

#include <QFile>
#include <QSet>
#include <QTest>

#include <cmath>

using namespace flarestock;

namespace {

const QString Folder = QStringLiteral("/usr/share/freecad/Mod/Path/Data/Threads/");

/// name, pitch as printed, then the figures of the row.
QMap<QString, QStringList> tableOf(const QString &file)
{
    QFile csv(Folder + file);
    QMap<QString, QStringList> rows;
    if (!csv.open(QIODevice::ReadOnly))
        return rows;
    csv.readLine();
    while (!csv.atEnd()) {
        const auto cells = QString::fromUtf8(csv.readLine()).trimmed().split(u',');
        rows.insert(cells[0], cells);
    }
    return rows;
}

} // namespace

class ThreadTablesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void agreesWithFreecadOnInchLimits();
    void agreesWithFreecadOnMetricLimits();
    void agreesWithPublishedFigures_data();
    void agreesWithPublishedFigures();
    void everyRowObeysItsForm();
    void tubeIsTheDashInSixteenths();
    void everySourceThatIsCitedIsListed();
};

void ThreadTablesTest::agreesWithFreecadOnInchLimits()
{
    const auto external = tableOf(QStringLiteral("imperial-external-2A.csv"));
    QVERIFY2(external.size() > 50, "the Debian package freecad-common is missing");
    int compared = 0;
    for (const auto &row : sizeRows()) {
        if (!row.thread || row.thread->form != ThreadForm::Unified)
            continue;
        const auto name = QString::fromStdString(row.thread->name);
        const auto cells = external.value(name);
        if (cells.size() < 8)
            continue; // 12-UN, 16-UN and UNS are not in that set
        const auto limits = limitsOf(*row.thread);
        QVERIFY2(std::abs(limits.externalMajorMost / 25.4 - cells[4].toDouble()) < 0.0002,
                 qPrintable(name));
        QVERIFY2(std::abs(limits.externalMajorLeast / 25.4 - cells[5].toDouble()) < 0.0002,
                 qPrintable(name));
        QVERIFY2(std::abs(limits.externalPitchMost / 25.4 - cells[6].toDouble()) < 0.0002,
                 qPrintable(name));
        ++compared;
    }
    QVERIFY2(compared >= 8, qPrintable(QString::number(compared)));
}

void ThreadTablesTest::agreesWithFreecadOnMetricLimits()
{
    const auto internal = tableOf(QStringLiteral("metric-internal-6H.csv"));
    QVERIFY(internal.size() > 50);
    int compared = 0;
    for (const auto &row : sizeRows()) {
        if (!row.thread || row.thread->form != ThreadForm::Metric)
            continue;
        // "M10x1.0" stands there as "M10 x 1"
        const auto name = QString::fromStdString(row.thread->name)
                              .replace(QStringLiteral(".0"), QString())
                              .replace(QStringLiteral("x"), QStringLiteral(" x "));
        const auto cells = internal.value(name);
        if (cells.size() < 7)
            continue;
        const auto limits = limitsOf(*row.thread);
        QVERIFY2(std::abs(limits.internalMinorLeast - cells[3].toDouble()) < 0.002,
                 qPrintable(name));
        QVERIFY2(std::abs(limits.internalPitchLeast - cells[5].toDouble()) < 0.002,
                 qPrintable(name));
        QVERIFY2(std::abs(limits.internalPitchMost - cells[6].toDouble()) < 0.03, qPrintable(name));
        ++compared;
    }
    QVERIFY2(compared >= 8, qPrintable(QString::number(compared)));
}

void ThreadTablesTest::agreesWithPublishedFigures_data()
{
    QTest::addColumn<int>("family");
    QTest::addColumn<QString>("size");
    QTest::addColumn<QString>("what");
    QTest::addColumn<double>("published");
    const auto row = [](Family family, const char *size, const char *what, double value) {
        QTest::addRow("%s %s %s", text(family).data(), size, what)
            << int(family) << QString::fromUtf8(size) << QString::fromUtf8(what) << value;
    };
    // ASME B1.1 class tables (a re-typed copy with its own unit test), inches in millimetres.
    row(Family::Jic, "-6", "pitch diameter", 0.5264 * 25.4);
    row(Family::Jic, "-8", "pitch diameter", 0.7094 * 25.4);
    row(Family::Orb, "-10", "pitch diameter", 0.8286 * 25.4);
    row(Family::Jic, "-12", "pitch diameter", 1.0084 * 25.4);
    // ASME B1.20.1 basic dimensions: E1 and L1 as printed.
    row(Family::Npt, "1/8", "pitch diameter", 0.3736 * 25.4);
    row(Family::Npt, "1/4", "pitch diameter", 0.49163 * 25.4);
    row(Family::Npt, "3/8", "pitch diameter", 0.62701 * 25.4);
    row(Family::Npt, "1/2", "pitch diameter", 0.77843 * 25.4);
    row(Family::Npt, "1/2", "hand tight", 0.320 * 25.4);
    row(Family::Npt, "1/2", "small end", 0.75843 * 25.4);
    // ISO 228-1: a pocket book and three thread libraries agree.
    row(Family::Bspp, "1/8", "pitch diameter", 9.147);
    row(Family::Bspp, "1/4", "pitch diameter", 12.301);
    row(Family::Bspp, "3/8", "minor diameter", 14.95);
    row(Family::Bspp, "1/2", "minor diameter", 18.631);
    row(Family::Bspp, "1 3/4", "major diameter", 53.746); // 53.743 in one library is a slip
    // AS8879 scope: UNJ internal minor D − 0.974279 P; 9/16-18 is 0.5084 in.
    row(Family::An, "-6", "minor diameter", 0.5084 * 25.4);
    row(Family::Jic, "-6", "minor diameter", 0.5024 * 25.4);
}

void ThreadTablesTest::agreesWithPublishedFigures()
{
    QFETCH(int, family);
    QFETCH(QString, size);
    QFETCH(QString, what);
    QFETCH(double, published);
    const auto *row = findSize(Family(family), size.toStdString());
    QVERIFY(row != nullptr);
    const auto &thread = *row->thread;
    const double ours = what == u"pitch diameter"   ? thread.pitchDiameterMm
                        : what == u"hand tight"     ? thread.handTightMm
                        : what == u"small end"      ? thread.smallEndMm
                        : what == u"minor diameter" ? thread.femaleMinorMm()
                                                    : thread.majorMm;
    QVERIFY2(std::abs(ours - published) < 0.0026, qPrintable(QString::number(ours)));
}

void ThreadTablesTest::everyRowObeysItsForm()
{
    int swept = 0;
    for (const auto &row : sizeRows()) {
        QVERIFY2(!row.source.empty(), row.size.c_str());
        if (!row.thread)
            continue;
        const auto limits = limitsOf(*row.thread);
        QVERIFY(limits.externalPitchLeast < limits.externalPitchMost);
        QVERIFY(limits.internalMinorLeast < limits.internalMinorMost);
        if (!row.thread->tapered)
            QVERIFY(limits.externalPitchMost <= limits.internalPitchLeast + 1e-9);
        ++swept;
    }
    QVERIFY(swept > 150);
}

void ThreadTablesTest::tubeIsTheDashInSixteenths()
{
    int swept = 0;
    for (const auto &row : sizeRows()) {
        if (row.family != Family::An && row.family != Family::Jic && row.family != Family::Sae45)
            continue;
        const Port port{row.family, row.size, {}, Gender::Male, Turning::Fixed};
        QVERIFY2(std::abs(row.tubeMm - dash(port) * 25.4 / 16) < 0.002, row.size.c_str());
        ++swept;
    }
    QCOMPARE(swept, 37);
}

void ThreadTablesTest::everySourceThatIsCitedIsListed()
{
    const auto rowsOf = [](const char *name) {
        QFile file(QStringLiteral(FLARESTOCK_SOURCE_DIR "/model/ports/data/") +
                   QString::fromUtf8(name));
        auto lines = file.open(QIODevice::ReadOnly)
                         ? QString::fromUtf8(file.readAll()).split(u'\n', Qt::SkipEmptyParts)
                         : QStringList();
        if (!lines.isEmpty())
            lines.removeFirst(); // The headings.
        return lines;
    };
    QSet<QString> cited;
    const QStringList threads = rowsOf("threads.csv");
    const QStringList torques = rowsOf("torques.csv");
    for (const QString &row : threads) {
        const auto ids = row.section(u',', -1).split(u' ', Qt::SkipEmptyParts);
        cited += QSet<QString>(ids.begin(), ids.end());
    }
    for (const QString &row : torques)
        cited += row.section(u',', 7, 7);
    QSet<QString> listed;
    const QStringList sources = rowsOf("sources.csv");
    for (const QString &row : sources) {
        QCOMPARE(row.count(u','), 3);
        listed += row.section(u',', 0, 0);
    }
    QVERIFY(cited.size() > 20);
    QCOMPARE(listed - cited, QSet<QString>());
    QCOMPARE(cited - listed, QSet<QString>());
}

QTEST_APPLESS_MAIN(ThreadTablesTest)
#include "tst_thread_rows_agree_with_published_tables.moc"
