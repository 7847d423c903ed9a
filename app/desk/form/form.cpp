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

QVariantMap Form::takenUp(const QVariantMap &values)
{
    m_name = title() + QLatin1Char('\n') + about(); // Of the same thing, as it stands now.
    m_asOpened = values;
    return m_pen.unwritten().takeUp(m_name);
}

void Form::keep(const QVariantMap &values)
{
    if (!m_name.isEmpty())
        m_pen.unwritten().keep(m_name, m_name.section(QLatin1Char('\n'), 0, 0), values, m_asOpened);
}

void Form::putAway()
{
    m_pen.unwritten().forget(m_name);
    m_name.clear();
}

void Form::ask(std::vector<Row> fields)
{
    m_fields.become({});
    m_fields.become(std::move(fields));
}

void Form::put(const QString &key, const QString &value)
{
    const auto at = fieldCells().indexOf(QStringLiteral("value"));
    std::vector<Row> fields;
    for (int row = 0; row < m_fields.count(); ++row) {
        Row field{m_fields.data(m_fields.index(row), Qt::UserRole).toString(), {}};
        for (const QString &name : fieldCells())
            field.cells.append(m_fields.cell(row, name));
        if (field.key == key)
            field.cells[at] = value;
        fields.push_back(std::move(field));
    }
    m_fields.become(std::move(fields));
}

} // namespace flarestock
