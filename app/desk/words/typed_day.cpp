// SPDX-License-Identifier: MIT

#include "app/desk/words/typed_day.h"

#include "app/desk/words/spoken.h"

#include <QDate>
#include <QRegularExpression>

#include <optional>

namespace flarestock {

namespace {

/// A locale's short date where it is three numbers: "dd.MM.yyyy".
struct DayForm {
    QString shown; ///< Its year with four digits.
    QString order; ///< "dMy"
    QString sign;  ///< Between them.
};

std::optional<DayForm> dayFormOf(const QLocale &locale)
{
    static const QRegularExpression numbers(
        QStringLiteral("^(d{1,2}|M{1,2}|y{1,4})(\\s*([./-])\\s*)(d{1,2}|M{1,2}|y{1,4})\\2"
                       "(d{1,2}|M{1,2}|y{1,4})\\.?$"));
    static const QRegularExpression year(QStringLiteral("y+"));
    QString shown = locale.dateFormat(QLocale::ShortFormat);
    const auto found = numbers.match(shown);
    if (!found.hasMatch() || locale.zeroDigit() != QStringLiteral("0"))
        return std::nullopt;
    QString order;
    for (const int part : {1, 4, 5})
        order += found.captured(part).front();
    return DayForm{shown.replace(year, QStringLiteral("yyyy")), order, found.captured(3)};
}

/// Of a year written with two digits this century's.
int yearTyped(const QString &digits)
{
    constexpr int Century = 2000;
    return digits.size() == 2 ? Century + digits.toInt() : digits.toInt();
}

} // namespace

QString dayAsTyped(std::string_view iso, const QLocale &locale)
{
    const QDate day = QDate::fromString(said(iso), Qt::ISODate);
    const auto form = dayFormOf(locale);
    if (!day.isValid() || !form || form->sign == QStringLiteral("/"))
        return said(iso);
    return locale.toString(day, form->shown);
}

std::string dayTyped(const QString &typed, const QLocale &locale)
{
    const QString text = typed.trimmed();
    const auto form = dayFormOf(locale);
    if (!form)
        return text.toStdString();
    QString pattern = QStringLiteral("^");
    for (const QChar part : form->order) {
        pattern += pattern.size() > 1
                       ? QStringLiteral("\\s*%1\\s*").arg(QRegularExpression::escape(form->sign))
                       : QString();
        pattern += part == u'y' ? QStringLiteral("(?<y>\\d{4}|\\d{2})")
                                : QStringLiteral("(?<%1>\\d{1,2})").arg(part);
    }
    const auto found = QRegularExpression(pattern + QStringLiteral("\\.?$")).match(text);
    const QDate day(yearTyped(found.captured(QStringLiteral("y"))),
                    found.captured(QStringLiteral("M")).toInt(),
                    found.captured(QStringLiteral("d")).toInt());
    return (found.hasMatch() && day.isValid() ? day.toString(Qt::ISODate) : text).toStdString();
}

std::string dayTyped(const QVariantMap &values, const char *field)
{
    return dayTyped(values.value(QString::fromLatin1(field)).toString());
}

} // namespace flarestock
