// SPDX-License-Identifier: MIT
//
// A shop of one's own is begun out of CSV and TOML files; they come out of it as they went in, and
// go back in when they were edited: all that changed, or nothing. The demo shop is invented.

#include "tests/command/changed_shop.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>
#include <QTest>

using namespace flarestock::tests;

namespace {

QByteArray read(const QString &path)
{
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

void write(const QString &path, const QByteArray &bytes)
{
    QFile file(path);
    QVERIFY(file.open(QIODevice::WriteOnly));
    file.write(bytes);
}

} // namespace

class OwnShop : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void init();
    void itIsTheShopThatTheFilesSay();
    void whatCannotBeReadMakesNoShop();
    void editedFilesAreTakenIn();
    void whatLiesSomewhereStaysInTheCatalogue();
    void aFolderWithSomethingInItIsNotWrittenOver();

private:
    [[nodiscard]] QString inFolder(const char *name) const
    {
        return m_folder->filePath(QString(QStringLiteral("files/") + QString::fromUtf8(name)));
    }
    [[nodiscard]] std::string files() const
    {
        return m_folder->filePath(QStringLiteral("files")).toStdString();
    }
    [[nodiscard]] Ran begin(const std::string &shop) const
    {
        return runFlarestock({"begin", "--from", files(), "--to", shop});
    }
    [[nodiscard]] std::string own() const
    {
        return m_folder->filePath(QStringLiteral("own.flarestock")).toStdString();
    }
    [[nodiscard]] static std::string total(const std::string &shop)
    {
        const Ran bill = runFlarestock({"bill", "--build", "coupe-fuel", "--json", "--shop", shop});
        return textOf(bill.json(), "total");
    }
    /// Replaces a text of a file, which has to be there.
    void edit(const char *name, const char *before, const char *after) const
    {
        QByteArray text = read(inFolder(name));
        QVERIFY(text.contains(before));
        write(inFolder(name), text.replace(before, after));
    }

    ChangedShop m_demo;
    std::unique_ptr<QTemporaryDir> m_folder;
};

void OwnShop::init()
{
    m_demo.renew();
    m_folder = std::make_unique<QTemporaryDir>();
    const Ran written = m_demo.run({"export", "--to", files()});
    QVERIFY2(written.status == 0, written.err.c_str());
}

void OwnShop::itIsTheShopThatTheFilesSay()
{
    const Ran made = begin(own());
    QVERIFY2(made.status == 0, made.err.c_str());
    QCOMPARE(runFlarestock({"verify", own()}).status, 0);
    QVERIFY(!total(own()).empty());
    QCOMPARE(total(own()), total(m_demo.path()));
    const auto again = m_folder->filePath(QStringLiteral("again"));
    QCOMPARE(runFlarestock({"export", "--to", again.toStdString(), "--shop", own()}).status, 0);
    for (const char *name : {"shop.toml", "stock.csv", "builds.toml", "parts/adapters.csv"})
        QCOMPARE(read(QString(again + u'/' + QString::fromUtf8(name))), read(inFolder(name)));
    const Ran twice = begin(own());
    QCOMPARE(twice.status, 2); // Nothing is written over.
}

void OwnShop::whatCannotBeReadMakesNoShop()
{
    edit("parts/adapters.csv", "AD-8-8,adapter", "AD-8-8,adaptor");
    const Ran made = begin(own());
    QVERIFY2(made.refusesInOneLine() || made.status == 2, made.err.c_str());
    QVERIFY2(made.err.find("parts/adapters.csv") != std::string::npos, made.err.c_str());
    QVERIFY2(made.err.find("adaptor") != std::string::npos, made.err.c_str());
    QVERIFY(!QFile::exists(QString::fromStdString(own())));
    QVERIFY(QDir(inFolder("")).removeRecursively());
    QCOMPARE(begin(own()).status, 2);
}

void OwnShop::editedFilesAreTakenIn()
{
    edit("builds.toml", "id = \"coupe-fuel\"", "id = \"coupe-fuel-2\"");
    const Ran taken = m_demo.json({"import", "--from", files()});
    QVERIFY2(taken.status == 0, taken.err.c_str());
    QCOMPARE(arrayOf(taken, "files").size(), 1);
    QCOMPARE(m_demo.run({"bill", "--build", "coupe-fuel-2"}).status, 0);
    QCOMPARE(m_demo.run({"bill", "--build", "coupe-fuel"}).status, 2);
    QCOMPARE(arrayOf(m_demo.json({"import", "--from", files()}), "files").size(), 0);
    QVERIFY(m_demo.isWhole());
}

void OwnShop::whatLiesSomewhereStaysInTheCatalogue()
{
    QByteArray kept;
    for (const QByteArray &line : read(inFolder("parts/adapters.csv")).split('\n')) {
        if (!line.startsWith("AD-8-8,"))
            kept += line + '\n';
    }
    write(inFolder("parts/adapters.csv"), kept);
    edit("builds.toml", "id = \"coupe-fuel\"", "id = \"coupe-fuel-2\"");
    const Ran taken = m_demo.run({"import", "--from", files()});
    QCOMPARE(taken.status, 2);
    QVERIFY2(taken.err.find("AD-8-8") != std::string::npos, taken.err.c_str());
    QCOMPARE(m_demo.run({"bill", "--build", "coupe-fuel"}).status, 0); // Nothing of it is in.
}

void OwnShop::aFolderWithSomethingInItIsNotWrittenOver()
{
    const Ran again = m_demo.run({"export", "--to", files()});
    QCOMPARE(again.status, 2);
    QVERIFY2(again.err.find("is not empty") != std::string::npos, again.err.c_str());
    QCOMPARE(m_demo.run({"export"}).status, 2);
}

QTEST_GUILESS_MAIN(OwnShop)
#include "tst_own_shop_is_begun.moc"
