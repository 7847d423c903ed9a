// SPDX-License-Identifier: MIT

#include "app/desk/launch/options.h"

#include <QCommandLineParser>
#include <QRegularExpression>

namespace flarestock {

namespace {

Result<QSize> readSize(const QString &text)
{
    static const QRegularExpression form(QStringLiteral("^(\\d{3,5})x(\\d{3,5})$"));
    const auto found = form.match(text);
    if (!found.hasMatch())
        return problem("--size", "is no size", "Write it like 1440x900.");
    return QSize(found.captured(1).toInt(), found.captured(2).toInt());
}

/// Where a server's password comes from, and whether the keyring is to have it.
void readPassword(const QCommandLineParser &parser, DeskOptions &options)
{
    bool isNumber = false;
    const int given = parser.value(QStringLiteral("password-fd")).toInt(&isNumber);
    if (isNumber)
        options.passwordFrom = given;
    if (parser.isSet(QStringLiteral("password-stdin")))
        options.passwordFrom = 0;
    options.keepPassword = parser.isSet(QStringLiteral("keep-password"));
}

/// Whether area, theme, units and language are among those that there are.
Result<void> areKnown(const DeskOptions &options)
{
    if (options.area < 1 || options.area > 6)
        return problem("--area", "is none of the six", "Write 1 for Builds, 2 for Stock …");
    if (!options.theme.isEmpty() && options.theme != QStringLiteral("light") &&
        options.theme != QStringLiteral("dark"))
        return problem("--theme", "is neither light nor dark", "Write one of them.");
    if (!options.units.isEmpty() && options.units != QStringLiteral("in") &&
        options.units != QStringLiteral("mm"))
        return problem("--units", "is neither in nor mm", "Write one of them.");
    if (!options.language.isEmpty() && options.language != QStringLiteral("en") &&
        options.language != QStringLiteral("de"))
        return problem("--language", "is neither en nor de", "Write one of them.");
    return {};
}

} // namespace

Result<DeskOptions> readOptions(const QStringList &words)
{
    const QCommandLineOption shop(QStringLiteral("shop"), {}, QStringLiteral("FILE"));
    const QCommandLineOption build(QStringLiteral("build"), {}, QStringLiteral("ID"));
    const QCommandLineOption area(QStringLiteral("area"), {}, QStringLiteral("N"),
                                  QStringLiteral("1"));
    const QCommandLineOption theme(QStringLiteral("theme"), {}, QStringLiteral("light|dark"));
    const QCommandLineOption units(QStringLiteral("units"), {}, QStringLiteral("in|mm"));
    const QCommandLineOption language(QStringLiteral("language"), {}, QStringLiteral("en|de"));
    const QCommandLineOption selfTest(QStringLiteral("self-test"));
    const QCommandLineOption screenshot(QStringLiteral("screenshot"), {}, QStringLiteral("FILE"));
    const QCommandLineOption size(QStringLiteral("size"), {}, QStringLiteral("WxH"),
                                  QStringLiteral("1440x900"));
    const QCommandLineOption scale(QStringLiteral("scale"), {}, QStringLiteral("NUMBER"));
    const QCommandLineOption help(QStringLiteral("help"));
    const QCommandLineOption version(QStringLiteral("version"));
    QCommandLineParser parser;
    parser.addOptions({shop, build, area, theme, units, language, selfTest, screenshot, size, scale,
                       help, version});
    parser.addOption(QCommandLineOption(QStringLiteral("password-fd"), {}, QStringLiteral("N")));
    parser.addOption(QCommandLineOption(QStringLiteral("password-stdin")));
    parser.addOption(QCommandLineOption(QStringLiteral("keep-password")));
    if (!parser.parse(words))
        return problem("flarestock-desk", parser.errorText().toStdString(), "See --help.");
    if (!parser.positionalArguments().isEmpty())
        return problem(parser.positionalArguments().constFirst().toStdString(),
                       "is not an option of flarestock-desk", "See --help.");
    DeskOptions options;
    options.shop = parser.value(shop);
    options.build = parser.value(build);
    options.theme = parser.value(theme);
    options.area = parser.value(area).toInt();
    options.units = parser.value(units);
    options.language = parser.value(language);
    options.selfTest = parser.isSet(selfTest);
    readPassword(parser, options);
    options.screenshot = parser.value(screenshot);
    options.help = parser.isSet(help);
    options.version = parser.isSet(version);
    const auto wanted = readSize(parser.value(size));
    if (!wanted)
        return tl::unexpected(wanted.error());
    options.size = *wanted;
    if (const auto known = areKnown(options); !known)
        return tl::unexpected(known.error());
    if (parser.isSet(scale))
        options.scale = parser.value(scale).toDouble();
    if (parser.isSet(scale) && !(options.scale >= 0.5 && options.scale <= 4))
        return problem("--scale", "is no scale", "Write a number from 0.5 to 4, like 1.5.");
    return options;
}

QString optionsHelp()
{
    return QStringLiteral(
        "flarestock-desk: the screens of a shop\n"
        "\n"
        "  --shop FILE          the shop to open, or postgresql://role@host/database; without it "
        "the\n"
        "                       last file\n"
        "  --password-stdin, --password-fd N\n"
        "                       the server's password is the first line of the standard input, or "
        "of\n"
        "                       a descriptor; otherwise the keyring has it, or the screen asks\n"
        "  --keep-password      keeps it in the desktop's keyring once the server has taken it\n"
        "  --build ID           the build to open\n"
        "  --area N             the area to begin with: 1 builds, 2 stock …\n"
        "  --theme light|dark   paper or dark screen; without it as last time\n"
        "  --units in|mm        in, psi, gph or mm, bar, L/h; without it as last time\n"
        "  --language en|de     English or German; without it as last time, else as the system\n"
        "  --scale NUMBER       0.5 to 4: everything so much larger or smaller\n"
        "  --screenshot FILE    writes a picture of the screen as PNG and ends\n"
        "  --size WxH           the size of that picture before scaling, 1440x900\n"
        "  --self-test          loads every screen and ends; exit status 1 at any warning\n"
        "  --version, --help\n");
}

} // namespace flarestock
