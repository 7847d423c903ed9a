// SPDX-License-Identifier: MIT
//
// What the model says of the demo's builds and templates, of what is due and of two ports, is said
// in German, each sentence of it; and how long that takes.

#include "app/desk/language/language.h"
#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/garage/cautions.h"
#include "app/garage/due_list.h"
#include "app/garage/garage.h"
#include "app/workshop/demo_shop.h"
#include "app/workshop/worked_build.h"
#include "desk_on_demo.h"

#include <QElapsedTimer>
#include <QRegularExpression>
#include <QSet>

using namespace flarestock;

class ModelSpeaksGerman : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase();
    void eachFindingIsGerman();
    void eachReasonIsGerman();
    void whatIsDueIsGerman();
    void cautionsAreGerman();
    void placesAreFilled();
    void englishStaysAsItIs();
    void aScreenFullIsSaidAtOnce();
    void cleanupTestCase() { speak(QStringLiteral("en")); }

private:
    void ask(std::string_view english)
    {
        static const QRegularExpression left(
            QStringLiteral("\\b(the|is|are|not|its|it|by|has)\\b"));
        QString german = inWords(english);
        german.remove(QStringLiteral("ump in the tank")); // A title, which is the shop's own.
        if (!english.empty() && (german == said(english) || german.contains(left)))
            m_english.insert(german);
        ++m_asked;
    }
    void allAreGerman(int atLeast)
    {
        QVERIFY2(m_asked >= atLeast, qPrintable(QString::number(m_asked)));
        QVERIFY2(m_english.isEmpty(), qPrintable(m_english.values().join(u'\n')));
    }
    [[nodiscard]] std::vector<BuildPlan> plans() const
    {
        std::vector<BuildPlan> all = m_shop->builds;
        for (const auto &[id, form] : *m_shop->templates)
            all.emplace_back().templateId = id;
        return all;
    }

    std::shared_ptr<const Workshop> m_shop;
    QSet<QString> m_english;
    int m_asked = 0;
};

void ModelSpeaksGerman::initTestCase()
{
    renew();
    m_shop = inFile();
    QVERIFY(speak(QStringLiteral("de")));
}

void ModelSpeaksGerman::eachFindingIsGerman()
{
    for (const BuildPlan &plan : plans()) {
        const auto worked = workBuild(*m_shop, plan);
        QVERIFY2(worked, plan.templateId.c_str());
        for (const Finding &finding : worked->findings) {
            ask(finding.about);
            ask(finding.text);
            ask(finding.remedy);
            ask(text(finding.severity));
        }
    }
    allAreGerman(500);
}

void ModelSpeaksGerman::eachReasonIsGerman()
{
    for (const BuildPlan &plan : plans()) {
        const auto worked = workBuild(*m_shop, plan);
        QVERIFY(worked);
        for (const PlacedStation &station : worked->expansion.stations)
            ask(station.why);
        for (const PlacedJoint &joint : worked->expansion.joints) {
            if (!joint.way)
                continue;
            for (const Link &link : joint.way->links)
                ask(link.mating.why);
        }
    }
    allAreGerman(500);
}

void ModelSpeaksGerman::whatIsDueIsGerman()
{
    auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly);
    QVERIFY(file);
    const auto garage = Garage::of(*m_shop, *file);
    QVERIFY(garage);
    const auto due = dueList(*garage, {{}, {}, {}, "2026-11-29", true});
    QVERIFY(due);
    for (const DueLine &line : *due) {
        for (const std::string &why : line.work.why)
            ask(why);
    }
    allAreGerman(20);
}

void ModelSpeaksGerman::cautionsAreGerman()
{
    for (const std::string_view one : OpeningCautions)
        ask(one);
    ask(OpeningCaution);
    ask(AdviceOnly);
    allAreGerman(9);
}

void ModelSpeaksGerman::placesAreFilled()
{
    const QString said =
        inWords(std::string_view("4 events since fitted, every 3; may be used until 2027-05-16"));
    for (const char *kept : {"4", "3", "2027-05-16", "; "})
        QVERIFY2(said.contains(QLatin1String(kept)), qPrintable(said));
    QVERIFY2(!said.contains(u'%') && !said.contains(QStringLiteral("since")), qPrintable(said));
    QCOMPARE(inWords(std::string_view("AD-66")), QStringLiteral("AD-66")); // No line has it.
}

void ModelSpeaksGerman::englishStaysAsItIs()
{
    speak(QStringLiteral("en"));
    QCOMPARE(inWords(OpeningCaution), said(OpeningCaution));
    QVERIFY(speak(QStringLiteral("de")));
}

/// The first time each sentence is looked for, then it is known.
void ModelSpeaksGerman::aScreenFullIsSaidAtOnce()
{
    const auto worked = workBuild(*m_shop, m_shop->builds.front());
    QVERIFY(worked);
    setSentences({QStringLiteral(":/flarestock/findings.tsv")}, {}); // Nothing is known yet.
    qint64 took[2];
    for (int round = 0; round < 2; ++round) {
        QElapsedTimer since;
        since.start();
        for (const Finding &finding : worked->findings)
            ask(finding.text);
        took[round] = since.nsecsElapsed() / 1000;
    }
    speak(QStringLiteral("de"));
    qInfo("%zu findings: %lld us at first, then %lld us", worked->findings.size(), took[0],
          took[1]);
    QVERIFY(took[1] < 8000);
}

QTEST_GUILESS_MAIN(ModelSpeaksGerman)
#include "tst_model_speaks_german.moc"
