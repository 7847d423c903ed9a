// SPDX-License-Identifier: MIT

#include "app/desk/language/language.h"

#include "app/desk/language/sentences.h"

#include <QCoreApplication>
#include <QLocale>
#include <QTranslator>

namespace flarestock {

namespace {

QTranslator &translator()
{
    static QTranslator *only = new QTranslator(QCoreApplication::instance());
    return *only;
}

/// The person's own where it speaks that language; else that language as his country writes it.
QLocale localeFor(QLocale::Language language)
{
    const QLocale own = QLocale::system();
    if (own.language() == language || (language == QLocale::English && own == QLocale::c()))
        return QLocale(own.name());
    return QLocale(language, own.territory());
}

} // namespace

QString languageOfSystem()
{
    return QLocale::system().language() == QLocale::German ? QStringLiteral("de")
                                                           : QStringLiteral("en");
}

bool speak(const QString &language)
{
    QCoreApplication::removeTranslator(&translator());
    setSentences({}, {});
    if (language == QStringLiteral("en")) {
        QLocale::setDefault(localeFor(QLocale::English));
        return true;
    }
    if (language != QStringLiteral("de") ||
        !translator().load(QStringLiteral(":/flarestock/german.qm")))
        return false;
    QLocale::setDefault(localeFor(QLocale::German));
    setSentences(
        {QStringLiteral(":/flarestock/findings.tsv"), QStringLiteral(":/flarestock/reasons.tsv")},
        {QStringLiteral(":/flarestock/words.tsv")});
    return QCoreApplication::installTranslator(&translator());
}

} // namespace flarestock
