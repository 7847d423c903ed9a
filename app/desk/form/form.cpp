// SPDX-License-Identifier: MIT

#include "app/desk/form/form.h"

#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"

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

Row figureField(const char *key, const QString &title, const QString &value, const QString &hint)
{
    return {QString::fromLatin1(key),
            {title, QStringLiteral("figure"), QStringList(), value, hint}};
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

void Form::lookAhead(const QVariantMap &) {}

std::optional<QString> Form::whyUnclear(int row, const QVariantMap &values) const
{
    if (m_fields.cell(row, QStringLiteral("form")).toString() != QStringLiteral("figure"))
        return {};
    const QString key = m_fields.data(m_fields.index(row), Qt::UserRole).toString();
    const auto figures = figuresTyped(values.value(key).toString());
    if (figures)
        return {};
    return tr("%1: %2").arg(m_fields.cell(row, QStringLiteral("title")).toString(),
                            saidProblem(figures.error()));
}

void Form::consider(const QVariantMap &values)
{
    QVariantMap clear = values;
    for (int row = 0; row < m_fields.count(); ++row) {
        if (whyUnclear(row, values))
            clear[m_fields.data(m_fields.index(row), Qt::UserRole).toString()] = QString();
    }
    lookAhead(clear);
}

void Form::finish(const QVariantMap &values)
{
    for (int row = 0; row < m_fields.count(); ++row) {
        if (const auto why = whyUnclear(row, values))
            return m_pen.refuse(*why);
    }
    carryOut(values);
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
