// SPDX-License-Identifier: MIT
//
// A shop's files come out of it whatever they say, and go in all or none: an import that fails, or
// is killed, at one of several files has taken in none. The demo shop is invented.

#include "tests/command/changed_shop.h"

#include "model/storage/shop_file.h"

#include <QDir>
#include <QRandomGenerator>
#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

constexpr auto Adapters = "parts/adapters.csv";
constexpr int ManyFiles = 300;

/// Nobody reads a file of this name but at the beginning of a shop, so that it may say anything.
std::string unread(int number)
{
    return "old-" + std::to_string(number) + "/stock.csv";
}

/// The lines that do not have it.
QByteArray without(const char *what, const QByteArray &text)
{
    QByteArray kept;
    for (const QByteArray &line : text.split('\n'))
        kept += line.contains(what) ? QByteArray() : QByteArray(line + '\n');
    return kept;
}

} // namespace

class FilesGoOutAndIn : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void oneThatFailsKeepsOutTheOthers();
    void aKilledOneHasTakenInAllOrNone();
    void oneThatDoesNotReadComesOutAndGoesInMended();
    void anotherSeatsChangeMeanwhileIsRefused();
    void aFolderOfBeforeOverwritesNoChange();
    void aTemplateThatABuildDoesNotWorkOutByIsRefused();

private:
    [[nodiscard]] TextFiles documents() const
    {
        const auto shop = ShopFile::open(m_shop.path(), OpenMode::ReadOnly);
        return shop ? shop->documents().value() : TextFiles();
    }
    void put(const std::string &name, const std::string &text) const
    {
        auto shop = ShopFile::open(m_shop.path(), OpenMode::ReadWrite);
        QVERIFY(shop && shop->putDocument(name, text, "test", 1));
    }
    [[nodiscard]] std::string files() const
    {
        return m_folder->filePath(QStringLiteral("files")).toStdString();
    }
    void edit(const std::string &name, const QByteArray &text) const
    {
        const QString path = QString::fromStdString(files() + "/" + name);
        QVERIFY(QDir().mkpath(QFileInfo(path).path()));
        writeBytes(path.toStdString(), text);
    }

    ChangedShop m_shop;
    std::unique_ptr<QTemporaryDir> m_folder;
};

void FilesGoOutAndIn::init()
{
    m_shop.renew();
    m_folder = std::make_unique<QTemporaryDir>();
    QCOMPARE(m_shop.run({"export", "--to", files()}).status, 0);
}

void FilesGoOutAndIn::oneThatFailsKeepsOutTheOthers()
{
    const auto before = documents();
    edit("builds.toml", bytesOf(files() + "/builds.toml") + "\n# edited\n"); // Comes first.
    edit(unread(1), "\xFF\xFE is no UTF-8");
    const Ran taken = m_shop.run({"import", "--from", files()});
    QCOMPARE(taken.status, 2);
    QVERIFY2(taken.refusesInOneLine(), taken.err.c_str());
    QVERIFY(documents() == before);
    edit(unread(1), "is UTF-8");
    QCOMPARE(arrayOf(m_shop.json({"import", "--from", files()}), "files").size(), 2);
    QCOMPARE(documents().at(unread(1)), std::string("is UTF-8"));
    QVERIFY(m_shop.isWhole());
}

void FilesGoOutAndIn::aKilledOneHasTakenInAllOrNone()
{
    for (int number = 0; number < ManyFiles; ++number)
        edit(unread(number), "part,place,quantity\n");
    const auto before = documents().size();
    const QString log = QString::fromStdString(m_shop.path() + "-wal");
    QRandomGenerator dice(1);
    int killed = 0;
    for (int turn = 0; turn < 10 && documents().size() == before; ++turn) {
        QProcess import;
        import.start(QStringLiteral(FLARESTOCK_EXECUTABLE),
                     {QStringLiteral("import"), QStringLiteral("--from"),
                      QString::fromStdString(files()), QStringLiteral("--shop"),
                      QString::fromStdString(m_shop.path())});
        QVERIFY(import.waitForStarted());
        const bool atFirstWriting = turn % 2 == 0;
        while (import.state() == QProcess::Running &&
               (atFirstWriting ? QFileInfo(log).size() == 0 : !QFile::exists(log)))
            import.waitForFinished(1);
        import.waitForFinished(atFirstWriting ? 1 : dice.bounded(1, 60));
        killed += import.state() == QProcess::Running;
        import.kill();
        import.waitForFinished();
        const auto after = documents().size();
        QVERIFY2(after == before || after == before + ManyFiles,
                 qPrintable(QStringLiteral("%1 of %2").arg(after - before).arg(ManyFiles)));
    }
    QVERIFY(killed > 0);
    QVERIFY(m_shop.isWhole());
}

void FilesGoOutAndIn::oneThatDoesNotReadComesOutAndGoesInMended()
{
    const std::string good = documents().at(Adapters);
    put(Adapters, good + "AD-X,adaptor,of no kind\n");
    QCOMPARE(m_shop.run({"stock"}).status, 2);
    const auto out = m_folder->filePath(QStringLiteral("out")).toStdString();
    const Ran written = m_shop.run({"export", "--to", out});
    QVERIFY2(written.status == 0, written.err.c_str());
    QVERIFY(bytesOf(out + "/" + Adapters).endsWith("AD-X,adaptor,of no kind\n"));
    writeBytes(out + "/" + Adapters, without("AD-8-8,", QByteArray::fromStdString(good)));
    writeBytes(out + "/offers.csv", without("AD-8-8,", bytesOf(files() + "/offers.csv")));
    const Ran lacking = m_shop.run({"import", "--from", out});
    QVERIFY2(lacking.err.find("AD-8-8: is no longer in the catalogue") != std::string::npos,
             lacking.err.c_str());
    writeBytes(out + "/" + Adapters, QByteArray::fromStdString(good));
    writeBytes(out + "/offers.csv", bytesOf(files() + "/offers.csv"));
    const Ran mended = m_shop.run({"import", "--from", out});
    QVERIFY2(mended.status == 0, mended.err.c_str());
    QCOMPARE(m_shop.run({"stock"}).status, 0);
}

void FilesGoOutAndIn::anotherSeatsChangeMeanwhileIsRefused()
{
    auto one = ShopFile::open(m_shop.path(), OpenMode::ReadWrite);
    const TextFiles basis = one->documents().value();
    put("builds.toml", basis.at("builds.toml") + "\n# of another\n");
    const auto refused = one->putDocuments({{"offers.csv", "part\n"}}, basis, "test", 2);
    QVERIFY(!refused);
    QCOMPARE(refused.error().sentence(),
             std::string("builds.toml: was changed by somebody else just now, so that nothing was "
                         "written. Look at what it says now, then do it again."));
    QCOMPARE(documents().at("offers.csv"), basis.at("offers.csv"));
    put("new.toml", "# of another\n"); // One that there was not is a change likewise.
    const auto newest = documents();
    QVERIFY(!one->putDocuments({{"offers.csv", "part\n"}}, basis, "test", 3));
    QVERIFY(one->putDocuments({{"offers.csv", "part\n"}}, newest, "test", 4));
    QCOMPARE(documents().at("offers.csv"), std::string("part\n"));
}

void FilesGoOutAndIn::aFolderOfBeforeOverwritesNoChange()
{
    const std::string builds = documents().at("builds.toml");
    put("builds.toml", builds + "\n# of the desk\n"); // After the folder was written.
    const std::string offers = documents().at("offers.csv") + "\n";
    edit("offers.csv", QByteArray::fromStdString(offers));
    // What was not edited in the folder is not taken for an edit.
    QCOMPARE(arrayOf(m_shop.json({"import", "--from", files()}), "files").size(), 1);
    QCOMPARE(documents().at("builds.toml"), builds + "\n# of the desk\n");
    // What was edited at both sides is nobody's to throw away.
    edit("builds.toml", QByteArray::fromStdString(builds + "\n# of the folder\n"));
    const Ran refused = m_shop.run({"import", "--from", files()});
    QCOMPARE(refused.status, 2);
    QVERIFY2(refused.err.find("builds.toml: was changed in the shop too") != std::string::npos,
             refused.err.c_str());
    // The same folder goes in again and again.
    edit("builds.toml", QByteArray::fromStdString(builds));
    for (const char *line : {"\n", "\n\n"}) {
        edit("offers.csv", QByteArray::fromStdString(offers + line));
        QCOMPARE(m_shop.run({"import", "--from", files()}).status, 0);
        QCOMPARE(documents().at("offers.csv"), offers + line);
    }
}

/// The coupe's build answers a question of its template that is called otherwise in the folder.
void FilesGoOutAndIn::aTemplateThatABuildDoesNotWorkOutByIsRefused()
{
    const auto before = documents();
    const std::string form = "templates/injection-frame-rail.toml";
    edit(form, bytesOf(files() + "/" + form).replace("cylinders", "cylinder-count"));
    const Ran refused = m_shop.run({"import", "--from", files()});
    QCOMPARE(refused.status, 2);
    QVERIFY2(refused.refusesInOneLine(), refused.err.c_str());
    QVERIFY2(refused.err.find("the build \"Coupe, hill-climb: fuel for E85 injection\"") !=
                     std::string::npos &&
                 refused.err.find("cylinders") != std::string::npos,
             refused.err.c_str());
    QVERIFY(documents() == before);
    edit("builds.toml", bytesOf(files() + "/builds.toml") // Changed along with it.
                            .replace("cylinders = \"six\"", "cylinder-count = \"six\""));
    QCOMPARE(arrayOf(m_shop.json({"import", "--from", files()}), "files").size(), 2);
}

QTEST_GUILESS_MAIN(FilesGoOutAndIn)
#include "tst_files_go_out_and_in_whole.moc"
