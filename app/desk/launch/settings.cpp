// SPDX-License-Identifier: MIT

#include "app/desk/launch/settings.h"

#include "app/desk/words/units.h"

#include <QSettings>

namespace flarestock {

namespace {

constexpr auto Organisation = "flarestock";
constexpr auto Application = "desk";

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

} // namespace flarestock
