// SPDX-License-Identifier: MIT

#include "app/desk/form/form.h"

namespace flarestock {

QStringList fieldCells()
{
    return {QStringLiteral("title"), QStringLiteral("form"), QStringLiteral("choices"),
            QStringLiteral("value"), QStringLiteral("hint")};
}

Form::Form(Pen &pen, QObject *parent) : QObject(parent), m_pen(pen), m_fields(fieldCells()) {}

QString Form::fieldOf(const QString &) const
{
    return {};
}

void Form::consider(const QVariantMap &) {}

void Form::ask(std::vector<Row> fields)
{
    m_fields.become({});
    m_fields.become(std::move(fields));
}

} // namespace flarestock
