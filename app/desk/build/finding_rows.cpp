// SPDX-License-Identifier: MIT

#include "app/desk/build/finding_rows.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

struct FindingWords {
    Q_DECLARE_TR_FUNCTIONS(Findings)
};

/// What the button does, in three words: "use AD-66", "let the pick go".
QString mendOf(const Finding &finding)
{
    if (finding.mend.empty())
        return {};
    const std::string &number = finding.mend.begin()->second;
    if (number.empty())
        return FindingWords::tr("let the pick go");
    if (number == "direct")
        return FindingWords::tr("join directly");
    return FindingWords::tr("use %1").arg(said(number));
}

QString saysOf(const Finding &finding)
{
    return QStringList{
        inWords(text(finding.severity)), inWords(finding.about), inWords(finding.text),
        FindingWords::tr("source: %1").arg(inWords(finding.source)), inWords(finding.remedy)}
        .join(QStringLiteral(". "));
}

} // namespace

QStringList findingCells()
{
    return {QStringLiteral("mark"), QStringLiteral("severity"), QStringLiteral("about"),
            QStringLiteral("why"),  QStringLiteral("source"),   QStringLiteral("remedy"),
            QStringLiteral("mend"), QStringLiteral("where"),    QStringLiteral("says")};
}

std::vector<Row> findingRows(const WorkedOut &worked)
{
    std::vector<Row> rows;
    QMap<QString, int> seen;
    for (const Finding &finding : *worked.findings) {
        const QString about = inWords(finding.about);
        QString key = QString(said(finding.where) + u'|' + about);
        const int again = seen[key]++;
        if (again > 0)
            key += QString::number(again);
        rows.push_back(
            {key,
             {static_cast<int>(standing(finding)), inWords(text(finding.severity)), about,
              inWords(finding.text), inWords(finding.source), inWords(finding.remedy),
              mendOf(finding), said(finding.where), saysOf(finding)}});
    }
    return rows;
}

int count(const std::vector<Finding> &findings, Severity severity)
{
    return static_cast<int>(
        std::count_if(findings.begin(), findings.end(),
                      [severity](const Finding &finding) { return finding.severity == severity; }));
}

} // namespace flarestock
