// SPDX-License-Identifier: MIT

#include "app/desk/words/typed_figures.h"

#include <QCoreApplication>
#include <QRegularExpression>

namespace flarestock {

namespace {

struct FigureWords {
    Q_DECLARE_TR_FUNCTIONS(TypedFigures)
};

/// How a locale writes figures. What follows letters or a part number's dash is none, but for the
/// sign of times: 2x1,5 m.
class FigureForms {
public:
    explicit FigureForms(const QLocale &locale)
        : m_decimal(locale.decimalPoint()), m_group(locale.groupSeparator())
    {
        // Austria writes 1.500 with the rest of its language, though tables have it a blank.
        if (locale.language() == QLocale::German && m_decimal == QStringLiteral(","))
            m_group = QStringLiteral(".");
        const QString decimal = QRegularExpression::escape(m_decimal);
        const QString group = QRegularExpression::escape(m_group);
        m_grouped.setPattern(
            QStringLiteral("^[1-9]\\d{0,2}(?:%1\\d{3})+(?:%2\\d+)?$").arg(group, decimal));
        m_plain.setPattern(QStringLiteral("^\\d+%1\\d+$").arg(decimal));
        const QString front = QStringLiteral("(?:(?<![\\w.,])(?<!\\w-)|(?<=\\d[x×]))");
        m_figure.setPattern(front +
                            QStringLiteral("\\d+(?:(?:%1|[.,])\\d+)+(?![.,]?\\d)").arg(group));
        m_figure.setPatternOptions(QRegularExpression::UseUnicodePropertiesOption);
    }

    [[nodiscard]] const QRegularExpression &figure() const { return m_figure; }

    /// "1.500", which has two readings where groups are told by points.
    [[nodiscard]] bool isUnclear(const QString &figure) const
    {
        static const QRegularExpression one(QStringLiteral("^[1-9]\\d{0,2}\\.\\d{3}$"));
        return m_group == QStringLiteral(".") && one.match(figure).hasMatch();
    }

    [[nodiscard]] QString plain(QString figure) const
    {
        if (m_grouped.match(figure).hasMatch())
            figure.remove(m_group);
        return m_plain.match(figure).hasMatch() ? figure.replace(m_decimal, QStringLiteral("."))
                                                : figure;
    }

    [[nodiscard]] tl::unexpected<Problem> twoReadings(const QString &figure) const
    {
        static const QRegularExpression noughts(QStringLiteral("[.]?0*$"));
        QString broken = figure;
        broken = broken.remove(noughts).replace(u'.', m_decimal);
        QString whole = figure;
        whole.remove(u'.');
        return problem(figure.toStdString(),
                       FigureWords::tr("can be read in two ways").toStdString(),
                       FigureWords::tr("Write %1 or %2.").arg(broken, whole).toStdString());
    }

private:
    QString m_decimal;
    QString m_group;
    QRegularExpression m_grouped;
    QRegularExpression m_plain;
    QRegularExpression m_figure;
};

} // namespace

Result<std::string> figuresTyped(const QString &typed, const QLocale &locale)
{
    const FigureForms forms(locale);
    QString plain;
    qsizetype from = 0;
    for (auto at = forms.figure().globalMatch(typed); at.hasNext();) {
        const auto one = at.next();
        if (forms.isUnclear(one.captured()))
            return forms.twoReadings(one.captured());
        plain += typed.mid(from, one.capturedStart() - from) + forms.plain(one.captured());
        from = one.capturedEnd();
    }
    plain += typed.mid(from);
    return plain.toStdString();
}

std::string figuresTyped(const QVariantMap &values, const char *field)
{
    const QString typed = values.value(QString::fromLatin1(field)).toString().trimmed();
    return figuresTyped(typed).value_or(typed.toStdString());
}

std::string wordsIn(const QVariantMap &values, const char *field)
{
    return values.value(QString::fromLatin1(field)).toString().trimmed().toStdString();
}

} // namespace flarestock
