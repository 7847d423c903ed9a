// SPDX-License-Identifier: MIT

#include "app/desk/form/form.h"

namespace flarestock {

QStringList fieldCells()
{
    return {QStringLiteral("title"), QStringLiteral("form"), QStringLiteral("choices"),
            QStringLiteral("value"), QStringLiteral("hint")};
}

Row typedField(const char *key, const QString &title, const QString &value, const QString &hint)
{
    return {QString::fromLatin1(key), {title, QStringLiteral("typed"), QStringList(), value, hint}};
}

Row choiceField(const char *key, const QString &title, const QStringList &choices, int chosen)
{
    return {QString::fromLatin1(key),
            {title, QStringLiteral("choice"), choices, QString::number(chosen), QString()}};
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
