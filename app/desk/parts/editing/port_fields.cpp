// SPDX-License-Identifier: MIT

#include "app/desk/parts/editing/port_fields.h"

#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "model/ports/size_table.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

struct PortFieldWords {
    Q_DECLARE_TR_FUNCTIONS(PortFields)
};

QStringList roles()
{
    return {PortFieldWords::tr("either way"), PortFieldWords::tr("in"),
            PortFieldWords::tr("out"),        PortFieldWords::tr("gauge"),
            PortFieldWords::tr("return"),     PortFieldWords::tr("vent")};
}

std::string typedWords(const PortFields::Typed &typed)
{
    return unlocalised(typed.words.trimmed()).toStdString();
}

std::string textOf(const PortFields::Typed &typed)
{
    std::string text = typed.name.trimmed().toStdString() + ": " + typedWords(typed);
    if (typed.role != PortRole::Either)
        text += " [" + std::string(flarestock::text(typed.role)) + "]";
    return text;
}

/// "reads as ORB -6 female, 9/16-18; 14 cards fit it"
QString noteOf(const PortFields::Typed &typed, const PortsOfShop *shop)
{
    const auto port = PortFields::portOf(typed);
    if (!port)
        return {};
    QString reads = PortFieldWords::tr("reads as %1").arg(saidPort(*port));
    if (const SizeRow *size = sizeOf(*port); size && size->thread)
        reads = PortFieldWords::tr("%1, %2").arg(reads, said(size->thread->name));
    return shop ? PortFieldWords::tr("%1; %2").arg(reads, saidFitting(shop->fitting(*port)))
                : reads;
}

} // namespace

void PortFields::read(const std::string &cell)
{
    m_all.clear();
    for (const QString &one : said(cell).split(u';', Qt::SkipEmptyParts)) {
        Typed typed{m_next++, one.section(u':', 0, 0).trimmed(), one.section(u':', 1).trimmed(),
                    PortRole::Either};
        const auto open = typed.words.indexOf(u'[');
        if (open >= 0 && typed.words.endsWith(u']')) {
            const QString word = typed.words.mid(open + 1, typed.words.size() - open - 2);
            if (const auto role = parsePortRole(word.trimmed().toStdString())) {
                typed.role = *role;
                typed.words = typed.words.left(open).trimmed();
            }
        }
        m_all.push_back(typed);
    }
}

std::string PortFields::cell() const
{
    std::string cell;
    for (const Typed &typed : m_all)
        cell += (cell.empty() ? "" : "; ") + textOf(typed);
    return cell;
}

void PortFields::add()
{
    // What most ports are called, as long as nobody says otherwise: a, b, c …
    const QString name(QChar(u'a' + static_cast<int>(std::min<std::size_t>(m_all.size(), 25))));
    m_all.push_back({m_next++, name, {}, PortRole::Either});
}

void PortFields::drop(int key)
{
    std::erase_if(m_all, [key](const Typed &typed) { return typed.key == key; });
}

PortFields::Typed *PortFields::find(int key)
{
    const auto found = std::find_if(m_all.begin(), m_all.end(),
                                    [key](const Typed &typed) { return typed.key == key; });
    return found == m_all.end() ? nullptr : &*found;
}

std::optional<std::size_t> PortFields::at(std::size_t byte) const
{
    std::size_t end = 0;
    for (std::size_t place = 0; place < m_all.size(); ++place) {
        end += textOf(m_all[place]).size() + 2;
        if (byte < end)
            return place;
    }
    return m_all.empty() ? std::nullopt : std::optional(m_all.size() - 1);
}

std::optional<Port> PortFields::portOf(const Typed &typed)
{
    auto port = Port::parse(typedWords(typed));
    return port ? std::optional(std::move(*port)) : std::nullopt;
}

QStringList portFieldCells()
{
    return {QStringLiteral("name"),  QStringLiteral("words"),   QStringLiteral("role"),
            QStringLiteral("roles"), QStringLiteral("problem"), QStringLiteral("note")};
}

std::vector<Row> portFieldRows(const PortFields &ports, const std::map<std::size_t, QString> &wrong,
                               const PortsOfShop *shop)
{
    std::vector<Row> rows;
    for (const PortFields::Typed &typed : ports.all()) {
        const auto problem = wrong.find(rows.size());
        rows.push_back(
            {QString::number(typed.key),
             {typed.name, typed.words, static_cast<int>(typed.role), roles(),
              problem == wrong.end() ? QString() : problem->second, noteOf(typed, shop)}});
    }
    return rows;
}

} // namespace flarestock
