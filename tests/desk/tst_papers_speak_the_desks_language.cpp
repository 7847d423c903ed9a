// SPDX-License-Identifier: MIT
//
// Every paper that the desk writes, at a German desk, as another program (poppler's pdftotext)
// reads it: it says what it is in German, and of the words of the same paper in English none is
// left but what comes from the shop. The codes on it are what they were; figures, days and lengths
// are the person's.

#include "app/desk/language/language.h"
#include "app/desk/launch/open_shop.h"
#include "app/desk/shop/desk.h"

#include <QDir>
#include <QDirIterator>
#include <QProcess>
#include <QRegularExpression>
#include <QSet>
#include <QTemporaryDir>
#include <QTest>

using namespace flarestock;

namespace {

constexpr const char *OrderNumber = "2026-0001";

QStringList listed(std::initializer_list<const char *> texts)
{
    QStringList all;
    for (const char *text : texts)
        all.append(QString::fromUtf8(text));
    return all;
}

QByteArray ranWith(const QString &program, const QStringList &words)
{
    QProcess process;
    process.start(program, words);
    return process.waitForFinished(60000) && process.exitCode() == 0
               ? process.readAllStandardOutput()
               : QByteArray();
}

QSet<QString> wordsOf(const QString &text)
{
    static const QRegularExpression form(QStringLiteral("[^\\W\\d_]{3,}"),
                                         QRegularExpression::UseUnicodePropertiesOption);
    QSet<QString> words;
    for (auto at = form.globalMatch(text); at.hasNext();)
        words.insert(at.next().captured());
    return words;
}

/// All that the demo shop's own documents say, and what is typed below.
QSet<QString> wordsOfTheShop()
{
    QString all = QStringLiteral("Kim leave it at the gate scratched lot box");
    QDirIterator files(QStringLiteral(FLARESTOCK_SOURCE_DIR "/demo-data"),
                       {QStringLiteral("*.csv"), QStringLiteral("*.toml")}, QDir::Files,
                       QDirIterator::Subdirectories);
    while (files.hasNext()) {
        QFile file(files.next());
        if (file.open(QIODevice::ReadOnly))
            all += u' ' + QString::fromUtf8(file.readAll());
    }
    return wordsOf(all);
}

} // namespace

class PapersSpeakTheDesksLanguage : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void cleanup() { QVERIFY(speak(QStringLiteral("en"))); }
    void eachIsGermanAtAGermanDesk_data();
    void eachIsGermanAtAGermanDesk();
    void anOrderGoesAbroadInEnglish();
    void aCodeScansInAnyLanguage();
    void lengthsAreInThePersonsUnits();
    void aServiceCardNamesWhatPeopleKnow();

private:
    void command(std::initializer_list<const char *> words);
    [[nodiscard]] QString written(const QString &kind);
    void fromBuild(int paper, const QString &file);
    void fromCar(const char *paper, const QString &file);
    void fromStock(const QString &file);
    /// What pdftotext reads off a paper that was written at a desk of that language.
    [[nodiscard]] QString read(const QString &kind, const char *language);

    QTemporaryDir m_folder;
    QString m_shop;
    std::unique_ptr<Desk> m_desk;
};

void PapersSpeakTheDesksLanguage::command(std::initializer_list<const char *> words)
{
    QProcess process;
    process.start(QStringLiteral(FLARESTOCK_EXECUTABLE),
                  listed(words) + QStringList{QStringLiteral("--shop"), m_shop});
    QVERIFY(process.waitForFinished(60000));
    QVERIFY2(process.exitCode() == 0, process.readAllStandardError().constData());
}

void PapersSpeakTheDesksLanguage::initTestCase()
{
    m_shop = m_folder.filePath(QStringLiteral("demo.flarestock"));
    const auto made = makeDemoFile(m_shop.toStdString());
    QVERIFY2(made, made ? "" : made.error().sentence().c_str());
    const char *day = "2026-11-02";
    command({"order", "new", "--supplier", "TCF", "--line", "AD-3-3 250 at 5.333", "--line",
             "AD-8-8 4 at 5.95", "--freight", "25.00", "--discount", "11.11", "--note",
             "leave it at the gate", "--day", day, "--due", "2026-12-12"});
    command({"order", "new", "--supplier", "NHT", "--line", "PT-6 240 at 0.6355", "--day", day});
    command({"order", "place", OrderNumber, "--day", day, "--due", "2026-12-12"});
    command({"claim", "raise", "AD-3-3", "2", "--fault", "wrong part", "--order", OrderNumber,
             "--note", "scratched"});
    command({"reserve", "coupe-fuel"});
    command({"move", "AD-8-8", "1", "--from", "A3", "--to", "trailer-1"});
    command({"receive", "AD-3-3", "5", "--from", "supplier-TCF", "--to", "A3", "--cost", "30.00",
             "--lot", "lot-7", "--use-by", "2027-03-31"});
    auto shop = openShopFile(m_shop.toStdString());
    QVERIFY2(shop, shop ? "" : shop.error().sentence().c_str());
    m_desk = std::make_unique<Desk>(nullptr);
    m_desk->show(std::move(*shop));
    QVERIFY(m_desk->openBuild(QStringLiteral("coupe-fuel")));
    m_desk->buying()->setLooking(true);
    m_desk->trailer()->setLooking(true);
    m_desk->service()->setLooking(true);
    m_desk->stock()->setLooking(true);
    QTRY_VERIFY_WITH_TIMEOUT(m_desk->buying()->orders()->orders()->count() == 2, 30000);
    QTRY_VERIFY_WITH_TIMEOUT(m_desk->buying()->owed()->claims()->count() == 1, 30000);
    QTRY_VERIFY_WITH_TIMEOUT(m_desk->service()->due()->count() > 0, 30000);
    QTRY_VERIFY_WITH_TIMEOUT(m_desk->stock()->rows()->count() > 50, 30000);
    m_desk->trailer()->packFor(2);
    QTRY_VERIFY_WITH_TIMEOUT(m_desk->trailer()->unload()->rows()->count() > 0, 30000);
}

void PapersSpeakTheDesksLanguage::fromBuild(int paper, const QString &file)
{
    BuildPapers &papers = *m_desk->papers();
    QVERIFY(papers.begin());
    papers.finish({{QStringLiteral("paper"), paper}, {QStringLiteral("size"), 0}});
    papers.write(QUrl::fromLocalFile(file));
    QTRY_VERIFY_WITH_TIMEOUT(!papers.isBusy(), 30000);
}

void PapersSpeakTheDesksLanguage::fromCar(const char *paper, const QString &file)
{
    PaperForm &form = *m_desk->service()->paper();
    QVERIFY(form.begin(QLatin1String(paper), QStringLiteral("car-1")));
    form.finish({{QStringLiteral("event"), 1}, {QStringLiteral("size"), 0}});
    form.write(QUrl::fromLocalFile(file));
    QTRY_VERIFY_WITH_TIMEOUT(!form.isBusy(), 30000);
}

void PapersSpeakTheDesksLanguage::fromStock(const QString &file)
{
    m_desk->stock()->select(QStringLiteral("AD-3-3"));
    PartPanel &panel = *m_desk->stock()->panel();
    for (int row = 0; row < panel.lying()->count(); ++row) {
        const QString key = panel.lying()->cell(row, QStringLiteral("key")).toString();
        if (key.contains(u"lot-7"))
            panel.setPieces(key);
    }
    LabelForm &labels = *m_desk->stock()->labels();
    QVERIFY(labels.begin());
    labels.finish({{QStringLiteral("for"), 1},
                   {QStringLiteral("count"), QStringLiteral("1")},
                   {QStringLiteral("size"), QStringLiteral("50x25")}});
    labels.write(QUrl::fromLocalFile(file));
    QTRY_VERIFY_WITH_TIMEOUT(!labels.isBusy(), 30000);
}

/// The file of that paper, as the desk writes it now.
QString PapersSpeakTheDesksLanguage::written(const QString &kind)
{
    const QString file = m_folder.filePath(kind + QStringLiteral(".pdf"));
    const QUrl url = QUrl::fromLocalFile(file);
    QFile::remove(file);
    OrdersPage &orders = *m_desk->buying()->orders();
    OwedPage &owed = *m_desk->buying()->owed();
    if (kind.startsWith(QStringLiteral("order"))) {
        orders.select(kind.endsWith(QStringLiteral("hose")) ? QStringLiteral("2026-0002")
                                                            : QString::fromLatin1(OrderNumber));
        orders.writePaper(kind.contains(QStringLiteral("abroad")) ? QStringLiteral("english")
                                                                  : QStringLiteral("pdf"),
                          url);
    } else if (kind == QStringLiteral("claim")) {
        owed.select(owed.keyAt(0));
        owed.writeLetter(QStringLiteral("pdf"), url);
    } else if (kind == QStringLiteral("load")) {
        m_desk->trailer()->load()->writeTo(url);
    } else if (kind == QStringLiteral("unload")) {
        m_desk->trailer()->unload()->writeTo(url);
    } else if (kind == QStringLiteral("label")) {
        fromStock(file);
    } else if (kind == QStringLiteral("card") || kind == QStringLiteral("sheet")) {
        fromCar(kind.toLatin1().constData(), file);
    } else {
        const QStringList papers{QStringLiteral("build-sheet"), QStringLiteral("pick-list"),
                                 QStringLiteral("line-map")};
        fromBuild(static_cast<int>(papers.indexOf(kind)), file);
    }
    (void)QTest::qWaitFor(
        [&] { return QFile::exists(file) && !orders.isWriting() && !owed.isWriting(); }, 30000);
    return file;
}

QString PapersSpeakTheDesksLanguage::read(const QString &kind, const char *language)
{
    if (!speak(QLatin1String(language)))
        return {};
    const QString file = written(kind);
    const QString looked = QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures/paper-%1-%2.pdf")
                               .arg(kind, QLatin1String(language));
    QDir().mkpath(QStringLiteral(FLARESTOCK_BINARY_DIR "/pictures"));
    QFile::remove(looked); // Beside the pictures, for whoever wants to look.
    QFile::copy(file, looked);
    return QString::fromUtf8(ranWith(QStringLiteral("pdftotext"),
                                     {QStringLiteral("-layout"), file, QStringLiteral("-")}));
}

void PapersSpeakTheDesksLanguage::eachIsGermanAtAGermanDesk_data()
{
    QTest::addColumn<QStringList>("says");
    QTest::newRow("order") << listed({"Bestellung 2026-0001", "Ihre Nummer", "Rabatt", "Gesamt USD",
                                      "1.333,25", "Seite 1 von 1", "Bemerkung", "2. Nov. 2026"});
    QTest::newRow("order-hose") << listed(
        {"Entwurf der Bestellung", "240 in", "0,6355 / in", "6.096 mm"});
    QTest::newRow("claim") << listed(
        {"Reklamation", "falsches Teil", "Bitte senden Sie", "scratched"});
    QTest::newRow("load") << listed(
        {"Ladeliste des Anhängers", "Oxlow frost trial", "30. Jan. 2027", "Schublade"});
    QTest::newRow("unload") << listed(
        {"Aus dem Anhänger zu nehmen", "Oxlow frost trial", "gehört nicht", "AD-8-8"});
    QTest::newRow("card") << listed({"Wartungskarte", "ansehen", "Feuerlöscher", "Läufe"});
    QTest::newRow("sheet") << listed({"Prüfblatt", "Drin seit", "Unterschrieben:", "Läufe"});
    QTest::newRow("build-sheet") << listed(
        {"Aufbaublatt", "verbinden", "Dichtprüfung", "Feuerlöscher", "mm"});
    QTest::newRow("pick-list") << listed({"Entnahmeliste", "abgelängt auf", "mm", "Stand"});
    QTest::newRow("line-map") << listed({"Saugseite", "Rat aus den eingetragenen Daten"});
    QTest::newRow("label") << listed({"AD-3-3", "Charge lot-7", "verwendbar bis", "in A3"});
}

void PapersSpeakTheDesksLanguage::eachIsGermanAtAGermanDesk()
{
    QFETCH(QStringList, says);
    const QString kind = QString::fromLatin1(QTest::currentDataTag());
    const QString english = read(kind, "en");
    const QString german = read(kind, "de");
    QVERIFY2(german.size() > 40, qPrintable(german));
    for (const QString &one : says)
        QVERIFY2(german.contains(one), qPrintable(one + u'\n' + german));
    // A port is written as the catalogue has it; some months and units are called alike.
    const QStringList kept = listed({"male", "female", "swivel", "adjustable", "lbf", "pounds",
                                     "Jan", "Apr", "Aug", "Sep", "Nov", "Feb"});
    const QSet<QString> left = (wordsOf(english) & wordsOf(german)) - wordsOfTheShop() -
                               QSet<QString>(kept.begin(), kept.end());
    QVERIFY2(left.isEmpty(), qPrintable(QStringList(left.values()).join(u' ') + u'\n' + german));
    QVERIFY(!(wordsOf(english) - wordsOf(german)).isEmpty());
}

/// A supplier who reads no German: the same order in English, with days that nobody can misread.
void PapersSpeakTheDesksLanguage::anOrderGoesAbroadInEnglish()
{
    const QString said = read(QStringLiteral("order-abroad"), "de");
    for (const char *one :
         {"Order 2026-0001", "Your number", "1333.25", "2026-11-02", "page 1 of 1"})
        QVERIFY2(said.contains(QLatin1String(one)), qPrintable(said));
    QVERIFY(!said.contains(QStringLiteral("Bestellung")));
}

void PapersSpeakTheDesksLanguage::aCodeScansInAnyLanguage()
{
    QVERIFY(speak(QStringLiteral("de")));
    const std::pair<const char *, QString> codes[] = {{"order", QString::fromLatin1(OrderNumber)},
                                                      {"label", QStringLiteral("AD-3-3=lot-7")}};
    for (const auto &[kind, code] : codes) {
        const QString file = written(QLatin1String(kind));
        const QString picture = m_folder.filePath(QStringLiteral("code"));
        (void)ranWith(QStringLiteral("pdftoppm"),
                      {QStringLiteral("-r"), QStringLiteral("300"), QStringLiteral("-png"),
                       QStringLiteral("-singlefile"), file, picture});
        QCOMPARE(QString::fromUtf8(ranWith(QStringLiteral("zbarimg"),
                                           {QStringLiteral("-q"), QStringLiteral("--raw"),
                                            picture + QStringLiteral(".png")}))
                     .trimmed(),
                 code);
    }
}

void PapersSpeakTheDesksLanguage::lengthsAreInThePersonsUnits()
{
    const QString metric = read(QStringLiteral("pick-list"), "en");
    static const QRegularExpression mm(QStringLiteral("cut to (≈ )?[\\d.,]+ mm"));
    static const QRegularExpression cutInFeet(QStringLiteral("cut to (≈ )?\\d+ ft"));
    QVERIFY2(metric.contains(mm), qPrintable(metric));
    QVERIFY2(!metric.contains(cutInFeet), qPrintable(metric));
    m_desk->build()->setInInches(true);
    const QString inches = read(QStringLiteral("pick-list"), "en");
    m_desk->build()->setInInches(false);
    QVERIFY2(!inches.contains(mm), qPrintable(inches));
    QVERIFY2(inches.contains(cutInFeet), qPrintable(inches));
}

void PapersSpeakTheDesksLanguage::aServiceCardNamesWhatPeopleKnow()
{
    const QString card = read(QStringLiteral("card"), "en");
    QVERIFY2(card.contains(QStringLiteral("not to be used at:")), qPrintable(card));
    for (const QString &event : {QStringLiteral("winter-sprint"), QStringLiteral("millpond-test")})
        QVERIFY2(!card.contains(event), qPrintable(card));
    QCOMPARE(card.count(QStringLiteral("supply hose")), 1);
}

QTEST_MAIN(PapersSpeakTheDesksLanguage)
#include "tst_papers_speak_the_desks_language.moc"
