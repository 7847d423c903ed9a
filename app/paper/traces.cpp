// SPDX-License-Identifier: MIT

#include "app/paper/traces.h"

namespace flarestock {

QByteArray withoutTraces(QByteArray pdf, QString made)
{
    const QByteArray mark = "/CreationDate (D:";
    const QByteArray digits = made.remove(QLatin1Char('-')).toLatin1() + "000000";
    const auto date = pdf.indexOf(mark);
    if (date >= 0)
        pdf.replace(date + mark.size(), digits.size(), digits);
    return pdf;
}

} // namespace flarestock
