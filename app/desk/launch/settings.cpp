// SPDX-License-Identifier: MIT

#include "app/desk/launch/settings.h"

#include "app/desk/language/language.h"
#include "app/desk/words/units.h"

#include <QSettings>

namespace flarestock {

namespace {

constexpr auto Organisation = "flarestock";
constexpr auto Application = "desk";

/// A name of a shop has slashes, which settings take for groups.
QString sketchesOf(const QString &shop)
{
    return QString(QStringLiteral("sketches/") +
                   QString::fromLatin1(shop.toUtf8().toBase64(QByteArray::Base64UrlEncoding)));
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

QString lastSketches(const QString &shop)
{
    return QSettings(QLatin1String(Organisation), QLatin1String(Application))
        .value(sketchesOf(shop))
        .toString();
}

void rememberSketches(const QString &shop, const QString &sketches)
{
    QSettings settings{QLatin1String(Organisation), QLatin1String(Application)};
    if (sketches.isEmpty())
        settings.remove(sketchesOf(shop));
    else
        settings.setValue(sketchesOf(shop), sketches);
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
