// SPDX-License-Identifier: MIT
//
// flarestock-desk: puts a shop file on the desk and shows the screens.

#include "app/desk/launch/kept_sheets.h"
#include "app/desk/launch/open_shop.h"
#include "app/desk/launch/options.h"
#include "app/desk/launch/picture.h"
#include "app/desk/launch/screens.h"
#include "app/desk/launch/self_test.h"
#include "app/desk/launch/server_password.h"
#include "app/desk/launch/settings.h"
#include "app/desk/launch/spare_moment.h"
#include "app/desk/rows/pace.h"
#include "app/desk/scan/scan_ear.h"
#include "model/storage/server/server_address.h"

#include <QDir>
#include <QFile>
#include <QGuiApplication>
#include <QQuickWindow>
#include <QTemporaryDir>
#include <QTimer>

#include <cstdio>
#include <memory>

using namespace flarestock;

namespace {

constexpr int Done = 0;
constexpr int Failed = 1;
constexpr int InputProblem = 2;

int refuse(const Problem &problem)
{
    std::fprintf(stderr, "%s\n", problem.sentence().c_str());
    return InputProblem;
}

/// Whatever has to be in the environment before the application is made.
void prepareEnvironment(const DeskOptions &options)
{
    if (options.scale > 0)
        qputenv("QT_SCALE_FACTOR", QByteArray::number(options.scale));
    // A picture or a self-test looks the same wherever it runs, so neither asks for a display.
    if (!options.isSeen() && !qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
}

/// The shop that the options name, or for a picture or a self-test a demo shop of its own.
bool putShopOnDesk(Desk &desk, const DeskOptions &options, const QString &folder)
{
    if (!options.shop.isEmpty())
        return desk.openShopFile(options.shop);
    return desk.makeDemoIn(QDir(folder).filePath(QStringLiteral("demo.flarestock")));
}

/// The file that a person's screens begin with, the one of the options or the last one; empty where
/// there is none.
QString fileToOpen(const DeskOptions &options)
{
    const QString shop = options.shop.isEmpty() ? lastShop() : options.shop;
    return options.isSeen() && QFile::exists(shop) ? shop : QString();
}

/// The address of the server that a person's screens begin with; empty where it is a file.
QString serverToOpen(const DeskOptions &options)
{
    const QString shop = options.shop.isEmpty() ? lastShop() : options.shop;
    return options.isSeen() && isServer(shop.toStdString()) ? shop : QString();
}

/// Opens it beside the window, and then the build that the options name.
void openAtServer(Desk &desk, const QString &address, const DeskOptions &options)
{
    if (!options.build.isEmpty())
        QObject::connect(
            desk.server(), &AtServer::opened, &desk,
            [&desk, build = options.build] { desk.openBuild(build); }, Qt::SingleShotConnection);
    desk.server()->open(address, {}, options.keepPassword);
}

/// What a person's screens begin with comes while they are there already.
void openBeside(Desk &desk, const QString &server, const QString &file, const DeskOptions &options)
{
    if (!server.isEmpty())
        openAtServer(desk, server, options);
    else if (!file.isEmpty())
        desk.openAside(openShopFile, file, options.build);
}

/// A scanner is heard wherever the keyboard is.
void listenToScanner(ScanEar &ear, Desk &desk, QQuickWindow &window)
{
    const auto tell = [&ear, &desk] { ear.setTelling(desk.takesScans()); };
    QObject::connect(&desk, &Desk::takesScansChanged, &ear, tell);
    QObject::connect(&ear, &ScanEar::heard, &desk, &Desk::scanned);
    tell();
    ear.listenTo(window);
}

/// The build that was last on the desk comes onto it again; not where one was asked for.
void rememberBuilds(Desk &desk, bool isAsked)
{
    const auto recall = [&desk, isAsked] {
        const QString last = lastBuild(desk.shopPath()); // Before another one comes.
        const auto open = [&desk, last, shop = desk.shopPath()] {
            const bool isThere = shop == desk.shopPath() && desk.builds()->rowOf(last) >= 0;
            if (isThere && last != desk.build()->id())
                desk.openBuild(last);
        };
        if (!last.isEmpty() && !isAsked)
            QTimer::singleShot(0, &desk, open);
    };
    QObject::connect(&desk, &Desk::shopChanged, &desk, recall);
    QObject::connect(desk.build(), &BuildDesk::changed, &desk, [&desk, kept = QString()]() mutable {
        const QString now = desk.shopPath() + QLatin1Char('\n') + desk.build()->id();
        if (!desk.build()->id().isEmpty() && std::exchange(kept, now) != now)
            rememberBuild(desk.shopPath(), desk.build()->id());
    });
    if (desk.hasShop())
        recall();
}

/// What the person has chosen is there the next time.
void rememberChoices(Desk &desk, const Look &look, const DeskOptions &options)
{
    rememberBuilds(desk, !options.build.isEmpty());
    desk.setWho(lastWho());
    QObject::connect(&look, &Look::darkChanged, &look, [&look] { rememberDark(look.isDark()); });
    QObject::connect(&look, &Look::inInchesChanged, &look,
                     [&look] { rememberInches(look.inInches()); });
    QObject::connect(&look, &Look::languageChanged, &look,
                     [&look] { rememberLanguage(look.language()); });
    QObject::connect(&desk, &Desk::whoChanged, &desk, [&desk] { rememberWho(desk.who()); });
    const auto recall = [&desk] {
        rememberShop(desk.shopPath());
        desk.templates()->setSketches(lastSketches(desk.shopPath()));
    };
    QObject::connect(&desk, &Desk::shopChanged, &desk, recall);
    QObject::connect(desk.templates(), &TemplateDesk::sketchesKept, rememberSketches);
    if (desk.hasShop())
        recall();
}

/// Somebody sits at the window: a key is answered at once, and what takes longer comes later.
void sitDown(Desk &desk, const DeskOptions &options)
{
    if (!options.isSeen())
        return;
    Pace::instance().setInSteps(true);
    desk.build()->setPatience(Working::AtTheWindowMs);
}

int test(std::unique_ptr<Screens> screens, Desk &desk, Look &look)
{
    QStringList wrong = selfTest(*screens, desk, look);
    screens.reset(); // What is warned about while the window goes counts too.
    wrong += warningsHeard();
    wrong.removeDuplicates();
    for (const QString &sentence : wrong)
        std::fprintf(stderr, "self-test: %s\n", qPrintable(sentence));
    std::printf("self-test: %d builds and templates shown, %d things wrong\n",
                desk.builds()->count(), static_cast<int>(wrong.size()));
    return wrong.isEmpty() ? Done : Failed;
}

int runDesk(QGuiApplication &application, const DeskOptions &options)
{
    prepareScreens();
    const QTemporaryDir folder;
    Look look(nullptr);
    look.setLanguage(!options.language.isEmpty() ? options.language
                     : options.isSeen()          ? lastLanguage()
                                                 : QStringLiteral("en"));
    Desk desk(nullptr);
    desk.setDeeds({openShopFile, makeDemoFile, {useServerPassword, openShopFile, keepPasswordOf}});
    takeServerPasswords(options);
    const QString server = serverToOpen(options);
    const QString file = fileToOpen(options);
    const bool isAsked = !options.shop.isEmpty() || !options.isSeen();
    const bool isAtOnce = isAsked && server.isEmpty() && file.isEmpty();
    const bool opened = isAtOnce && putShopOnDesk(desk, options, folder.path());
    if (isAtOnce && !opened) {
        std::fprintf(stderr, "%s\n", qPrintable(desk.problem()));
        return InputProblem;
    }
    if (opened && !options.build.isEmpty() && !desk.openBuild(options.build)) {
        std::fprintf(stderr, "%s\n", qPrintable(desk.problem()));
        return InputProblem;
    }
    if (opened && !keepServerPassword(options))
        std::fputs("The keyring does not take the password.\n", stderr);
    auto screens = std::make_unique<Screens>();
    look.setDark(options.theme.isEmpty() ? options.isSeen() && wasDark()
                                         : options.theme == QStringLiteral("dark"));
    look.setInInches(options.units.isEmpty() ? options.isSeen() && wasInInches()
                                             : options.units == QStringLiteral("in"));
    sitDown(desk, options);
    if (!screens->load())
        return Failed;
    screens->follow(look, desk);
    screens->window()->setProperty("area", options.area - 1);
    if (options.selfTest)
        return test(std::move(screens), desk, look);
    if (!options.screenshot.isEmpty()) {
        waitForAreas(desk);
        const auto written = writePicture(*screens->window(), options.size, options.screenshot);
        return written ? Done : refuse(written.error());
    }
    const SpareMoment spare(screens->engine());
    ScanEar ear;
    listenToScanner(ear, desk, *screens->window());
    rememberChoices(desk, look, options);
    const KeptSheets kept(desk);
    openBeside(desk, server, file, options);
    return application.exec();
}

} // namespace

int main(int argc, char **argv)
{
    QStringList words;
    for (int at = 0; at < argc; ++at)
        words.append(QString::fromLocal8Bit(argv[at]));
    const auto options = readOptions(words);
    if (!options)
        return refuse(options.error());
    if (options->help || options->version) {
        std::fputs(options->help ? qPrintable(optionsHelp())
                                 : "flarestock-desk " FLARESTOCK_VERSION "\n",
                   stdout);
        return Done;
    }
    prepareEnvironment(*options);
    if (options->selfTest)
        listenToWarnings();
    QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("flarestock"));
    QGuiApplication::setApplicationVersion(QStringLiteral(FLARESTOCK_VERSION));
    return runDesk(application, *options);
}
