// SPDX-License-Identifier: MIT

#include "app/desk/template/template_sketches.h"

#include "app/desk/words/spoken.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

namespace flarestock {

TemplateSketches TemplateSketches::of(const QString &text)
{
    TemplateSketches sketches;
    const QJsonObject all = QJsonDocument::fromJson(text.toUtf8()).object();
    for (auto at = all.begin(); at != all.end(); ++at) {
        const QJsonArray kept = at.value().toArray();
        if (kept.size() == 3)
            sketches.m_all.emplace(at.key(), TypedTemplate{kept.at(0).toString().toStdString(),
                                                           kept.at(1).toString().toStdString(),
                                                           kept.at(2).toString().toStdString()});
    }
    return sketches;
}

QString TemplateSketches::text() const
{
    if (m_all.empty())
        return {};
    QJsonObject all;
    for (const auto &[name, typed] : m_all)
        all.insert(name, QJsonArray{said(typed.file), said(typed.begun), said(typed.text)});
    return QString::fromUtf8(QJsonDocument(all).toJson(QJsonDocument::Compact));
}

const TypedTemplate *TemplateSketches::find(const QString &name) const
{
    const auto found = m_all.find(name);
    return found == m_all.end() ? nullptr : &found->second;
}

void TemplateSketches::keep(const QString &name, const TypedTemplate &typed)
{
    m_all.insert_or_assign(name, typed);
}

QString TemplateSketches::freshName() const
{
    int number = 1;
    while (m_all.contains(QStringLiteral("new %1").arg(number)))
        ++number;
    return QStringLiteral("new %1").arg(number);
}

} // namespace flarestock
