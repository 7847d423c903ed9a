// SPDX-License-Identifier: MIT
//
// Paper: what stands on a paper, as words that are ready to be printed; the JSON document that
// `flarestock-paper` reads.
//
//   {"paper":"A4","title":"Order","number":"2026-0007","made":"2026-11-28","from":["…"],"to":["…"],
//    "facts":[["Date","2026-11-28"]],"columns":[{"title":"Amount","right":true,"width":12}],
//    "rows":[["12.50"]],"sums":[["Total USD","12.50"]],"note":"…","foot":"…",
//    "words":{"to":"An","note":"Bemerkung","continued":"%1, Fortsetzung","page":"Seite %1 von %2"}}
//
// "words" are those that the program itself writes; left out they are English.
//
// A cell may have a second line, behind a line end: it is printed smaller.

#pragma once

#include "model/exact/problem.h"

#include <QPageSize>
#include <QString>
#include <QStringList>
#include <QVector>

namespace flarestock {

struct PaperColumn {
    QString title;
    bool right = false; ///< Its cells end at its right edge.
    double width = 1;   ///< Its share of the whole.
};

struct Paper {
    struct Words {
        QString to = QStringLiteral("To");
        QString note = QStringLiteral("Note");
        QString continued = QStringLiteral("%1, continued");
        QString page = QStringLiteral("page %1 of %2");
    };
    using Pair = std::pair<QString, QString>;
    QPageSize size{QPageSize::A4};
    QString title;
    QString number; ///< Also as a code that scans; may be empty.
    QString made;   ///< The day that the file says it was made on: "2026-11-28".
    QStringList from;
    QStringList to;
    QVector<Pair> facts;
    QVector<PaperColumn> columns;
    QVector<QStringList> rows; ///< As many cells as there are columns.
    QVector<Pair> sums;        ///< The last is the total.
    QString note;
    QString foot;
    Words words;

    /// "Order 2026-0007"
    [[nodiscard]] QString name() const
    {
        return number.isEmpty() ? title : QString(title + QLatin1Char(' ') + number);
    }
    /// Problem: no such document.
    [[nodiscard]] static Result<Paper> read(const QByteArray &json);
};

} // namespace flarestock
