// SPDX-License-Identifier: MIT

#include "app/desk/launch/settings.h"

#include "app/desk/language/language.h"
#include "app/desk/words/units.h"

#include <QSettings>

namespace flarestock {

namespace {

constexpr auto Organisation = "flarestock";
constexpr auto Application = "desk";

/// What is kept of a shop. Its name has slashes, which settings take for groups.
QString keyOfShop(const char *what, const QString &shop)
{
    return QString(QString::fromLatin1(what) + QLatin1Char('/') +
                   QString::fromLatin1(shop.toUtf8().toBase64(QByteArray::Base64UrlEncoding)));
}

QString keptOf(const QString &key)
{
    return QSettings(QLatin1String(Organisation), QLatin1String(Application)).value(key).toString();
}

void keepOf(const QString &key, const QString &text)
{
    QSettings settings{QLatin1String(Organisation), QLatin1String(Application)};
    if (text.isEmpty())
        settings.remove(key);
    else
        settings.setValue(key, text);
}

} // namespace

QString lastShop()
{
    return QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .value(QStringLiteral("shop"))
        .toString();
}

void rememberShop(const QString &file)
{
    QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .setValue(QStringLiteral("shop"), file);
}

bool wasDark()
{
    return QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .value(QStringLiteral("dark"))
        .toBool();
}

void rememberDark(bool dark)
{
    QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .setValue(QStringLiteral("dark"), dark);
}

QString lastWho()
{
    return QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .value(QStringLiteral("who"))
        .toString();
}

void rememberWho(const QString &who)
{
    QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .setValue(QStringLiteral("who"), who);
}

QString lastBuild(const QString &shop)
{
    return keptOf(keyOfShop("builds", shop));
}

void rememberBuild(const QString &shop, const QString &build)
{
    keepOf(keyOfShop("builds", shop), build);
}

QString lastSketches(const QString &shop)
{
    return keptOf(keyOfShop("sketches", shop));
}

void rememberSketches(const QString &shop, const QString &sketches)
{
    keepOf(keyOfShop("sketches", shop), sketches);
}

QString lastSheets(const QString &shop)
{
    return keptOf(keyOfShop("sheets", shop));
}

void rememberSheets(const QString &shop, const QString &sheets)
{
    keepOf(keyOfShop("sheets", shop), sheets);
}

bool wasInInches()
{
    return QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .value(QStringLiteral("inches"), unitsOf(QLocale()) == Units::Inch)
        .toBool();
}

void rememberInches(bool inInches)
{
    QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .setValue(QStringLiteral("inches"), inInches);
}

QString lastLanguage()
{
    return QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .value(QStringLiteral("language"), languageOfSystem())
        .toString();
}

void rememberLanguage(const QString &language)
{
    QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .setValue(QStringLiteral("language"), language);
}

} // namespace flarestock
