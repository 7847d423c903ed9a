// SPDX-License-Identifier: MIT
//
// Who changes a document changes its newest version, whoever else does so at the same moment: two
// processes that add their lines to one text lose none of them.

#include "other_process.h"
#include "shop_somewhere.h"

#include <QElapsedTimer>
#include <QTest>

using namespace flarestock;
using namespace flarestock::tests;

namespace {

constexpr int ChangesOfEach = 100;
const std::string Name = "builds.toml";

std::string lineOf(const std::string &who, int change)
{
    return who + " " + std::to_string(change) + "\n";
}

Result<void> addLine(ShopFile &shop, const std::string &line)
{
    return shop.changeDocument(
        Name,
        [&line](const std::optional<std::string> &newest) -> Result<std::string> {
            return newest.value_or(std::string()) + line;
        },
        "test", 1);
}

/// Adds its lines as soon as `start` is there; says "done", or what was wrong.
class Adding {
public:
    Adding(const Somewhere &here, std::string who, std::filesystem::path start)
        : m_process([&](const OtherProcess::Say &say) {
              auto shop = ShopFile::open(here.path(), OpenMode::ReadWrite);
              say(shop ? "ready" : shop.error().sentence());
              while (!std::filesystem::exists(start))
                  ::usleep(100);
              for (int change = 0; shop && change < ChangesOfEach; ++change) {
                  if (const auto added = addLine(*shop, lineOf(who, change)); !added) {
                      say(added.error().sentence());
                      return;
                  }
                  ::usleep(3000); // As long as it takes to write, so that the other gets its turn.
              }
              say("done");
          })
    {
        m_first = m_process.said();
    }
    [[nodiscard]] std::string ready() const { return m_first; }
    [[nodiscard]] std::string result() const { return m_process.saidToItsEnd(); }

private:
    OtherProcess m_process;
    std::string m_first;
};

/// How often the author of the lines changes from one line to the next.
int turnsIn(const std::string &text)
{
    int turns = 0;
    std::string before;
    for (const auto &line : QString::fromStdString(text).split(u'\n', Qt::SkipEmptyParts)) {
        const std::string who = line.section(u' ', 0, 0).toStdString();
        turns += !before.empty() && who != before;
        before = who;
    }
    return turns;
}

} // namespace

class DocumentsChangeTogether : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase_data() { bothPlaces(); }
    void theNewestIsChanged();
    void aChangeThatFailsWritesNothing();
    void twoWhoChangeItAtOnceLoseNothing();
};

void DocumentsChangeTogether::theNewestIsChanged()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    std::vector<std::optional<std::string>> seen;
    const auto next = [&seen](const std::optional<std::string> &newest) -> Result<std::string> {
        seen.push_back(newest);
        return newest ? *newest + "more" : "first";
    };
    QVERIFY(shop->changeDocument(Name, next, "test", 1)); // There was none.
    auto other = ShopFile::open(here.path(), OpenMode::ReadWrite);
    QVERIFY(other->putDocument(Name, "by another ", "test", 2));
    QVERIFY(shop->changeDocument(Name, next, "test", 3));
    QCOMPARE(shop->documents()->at(Name), std::string("by another more"));
    QCOMPARE(seen.size(), std::size_t{2});
    QVERIFY(!seen.front());
    QCOMPARE(seen.back(), std::optional<std::string>("by another "));
    // What stays as it is is no version.
    QVERIFY(shop->changeDocument(
        Name, [](const auto &newest) { return *newest; }, "test", 4));
    QCOMPARE(here.raw()->one(QStringLiteral("SELECT count(*) FROM document WHERE name = '%1'")
                                 .arg(QString::fromStdString(Name))),
             QStringLiteral("3"));
    QVERIFY(ShopFile::verify(here.path())->whole);
}

void DocumentsChangeTogether::aChangeThatFailsWritesNothing()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    auto shop = here.make(smallShop());
    QVERIFY(shop->putDocument(Name, "one", "test", 1));
    const auto refused = shop->changeDocument(
        Name,
        [](const auto &) -> Result<std::string> {
            return tl::unexpected(Problem{"builds.toml", "does not read", "Mend it."});
        },
        "test", 2);
    QVERIFY(!refused);
    QCOMPARE(refused.error().sentence(), std::string("builds.toml: does not read. Mend it."));
    QCOMPARE(shop->documents()->at(Name), std::string("one"));
    QVERIFY(addLine(*shop, " two")); // It goes on.
    QCOMPARE(shop->documents()->at(Name), std::string("one two"));
    const auto reading = ShopFile::open(here.path(), OpenMode::ReadOnly);
    QVERIFY(!addLine(const_cast<ShopFile &>(*reading), "three"));
}

void DocumentsChangeTogether::twoWhoChangeItAtOnceLoseNothing()
{
    QFETCH_GLOBAL(bool, onServer);
    const Somewhere here(onServer);
    QVERIFY(here.make(smallShop()));
    const auto start = here.folder().file("start");
    const Adding one(here, "one", start);
    const Adding other(here, "other", start);
    QCOMPARE(one.ready(), std::string("ready"));
    QCOMPARE(other.ready(), std::string("ready"));
    writeBytes(start, "now");
    QCOMPARE(one.result(), std::string("done"));
    QCOMPARE(other.result(), std::string("done"));
    const auto shop = ShopFile::open(here.path(), OpenMode::ReadOnly);
    const std::string text = shop->documents()->at(Name);
    for (int change = 0; change < ChangesOfEach; ++change) {
        for (const auto *who : {"one", "other"})
            QVERIFY2(text.find(lineOf(who, change)) != std::string::npos,
                     lineOf(who, change).c_str());
    }
    // They were in each other's way: neither wrote all of its lines before the other began.
    QVERIFY2(turnsIn(text) > 1, qPrintable(QString::number(turnsIn(text))));
    QVERIFY(ShopFile::verify(here.path())->whole);
}

QTEST_GUILESS_MAIN(DocumentsChangeTogether)
#include "tst_documents_change_together.moc"
