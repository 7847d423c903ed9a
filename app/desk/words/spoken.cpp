// SPDX-License-Identifier: MIT

#include "app/desk/words/spoken.h"

#include "app/desk/language/sentences.h"

#include <QDate>
#include <QRegularExpression>

#include <utility>

namespace flarestock {

QString said(std::string_view utf8)
{
    return QString::fromUtf8(utf8.data(), static_cast<qsizetype>(utf8.size()));
}

QString localised(const QString &text, const QLocale &locale)
{
    static const QRegularExpression point(QStringLiteral("(?<=\\d)\\.(?=\\d)"));
    QString result = text;
    return result.replace(point, locale.decimalPoint());
}

QString unlocalised(const QString &text, const QLocale &locale)
{
    const QString sign = locale.decimalPoint();
    if (sign == QStringLiteral("."))
        return text;
    const QRegularExpression between(
        QStringLiteral("(?<=\\d)%1(?=\\d)").arg(QRegularExpression::escape(sign)));
    QString result = text;
    return result.replace(between, QStringLiteral("."));
}

QString saidNumber(const Decimal &number, const QLocale &locale)
{
    const QString plain = said(number.text());
    const qsizetype sign = plain.startsWith(u'-') ? 1 : 0;
    const qsizetype point = plain.indexOf(u'.');
    QString whole = plain.mid(sign, (point < 0 ? plain.size() : point) - sign);
    for (qsizetype at = whole.size() - 3; at > 0; at -= 3)
        whole.insert(at, locale.groupSeparator());
    QString result = sign != 0 ? locale.negativeSign() : QString();
    result += whole;
    if (point >= 0)
        result += locale.decimalPoint() + plain.mid(point + 1);
    return result;
}

QString saidMoney(const Money &money, const QLocale &locale)
{
    return QString(saidNumber(money.amount, locale) + u' ' + said(money.currency.code()));
}

QString saidQuantity(const Quantity &quantity, const QLocale &locale)
{
    return localised(said(quantity.spoken()), locale);
}

QString saidDate(std::string_view iso, const QLocale &locale)
{
    const QDate date = QDate::fromString(said(iso), Qt::ISODate);
    if (!date.isValid())
        return said(iso);
    return saidDate(date, WithYear::Yes, locale);
}

QString withSaidDays(const QString &text, const QLocale &locale)
{
    static const QRegularExpression day(QStringLiteral("\\b\\d{4}-\\d\\d-\\d\\d\\b"));
    QString words;
    qsizetype from = 0;
    for (auto at = day.globalMatch(text); at.hasNext();) {
        const auto one = at.next();
        words += text.mid(from, one.capturedStart() - from) +
                 saidDate(one.captured().toStdString(), locale);
        from = one.capturedEnd();
    }
    return words + text.mid(from);
}

QString saidDate(const QDate &day, WithYear year, const QLocale &locale)
{
    const bool hasDot = locale.language() == QLocale::German; // "12. Dez"
    const QString form = hasDot ? QStringLiteral("ddd d. MMM") : QStringLiteral("ddd d MMM");
    return locale.toString(day, year == WithYear::Yes ? form + QStringLiteral(" yyyy") : form);
}

QString saidFigures(const QString &text, const QLocale &locale)
{
    return withSaidDays(localised(text, locale), locale);
}

QString saidProblem(const Problem &problem)
{
    const auto isTyped = [](const std::string &text) {
        return text.find("--") != std::string::npos ||
               text.find("flarestock ") != std::string::npos;
    };
    Problem told = problem;
    if (told.thing.rfind("--", 0) == 0)
        told.thing.erase(0, 2);
    if (!told.thing.empty() && told.line > 0) { // Said with its name, in one language.
        told.thing += ", line " + std::to_string(std::exchange(told.line, 0));
        if (told.column > 0)
            told.thing += ", column " + std::to_string(std::exchange(told.column, 0));
    }
    if (isTyped(told.remedy))
        told.remedy.clear();
    for (std::string *part : {&told.thing, &told.wrong, &told.remedy})
        *part = inWords(*part).toStdString();
    return said(told.sentence());
}

} // namespace flarestock
