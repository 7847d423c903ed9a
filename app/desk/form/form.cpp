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

Form::Form(Pen &pen, QObject *parent)
    : QObject(parent), m_pen(pen), m_fields(fieldCells()), m_kept(pen.unwritten(), [this] {
          return SheetNamed{title() + QLatin1Char('\n') + about(), title()};
      })
{
}

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
