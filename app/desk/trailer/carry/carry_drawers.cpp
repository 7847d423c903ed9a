// SPDX-License-Identifier: MIT
//
// What CarryDesk has found becomes what a drawer is to hold.

#include "app/desk/trailer/carry/carry_desk.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/made_up.h"

namespace flarestock {

QStringList CarryDesk::drawers() const
{
    QStringList all;
    if (m_workshop)
        for (const Place &place : m_workshop->ledger.places())
            if (place.kind == PlaceKind::Drawer)
                all.append(said(place.id));
    return all;
}

std::optional<std::string> CarryDesk::drawerOf(std::string_view part) const
{
    for (const auto &[at, keeping] : m_workshop->notes.keepings)
        if (at.first == part && drawers().contains(said(at.second)))
            return at.second;
    return std::nullopt;
}

/// Where it is kept, or lies, or others of its kind are kept.
std::optional<std::string> CarryDesk::likelyDrawer(const Part &part) const
{
    if (auto kept = drawerOf(part.number))
        return kept;
    const Ledger &ledger = m_workshop->ledger;
    for (const auto &[key, held] : ledger.balancesOf(part.number)) {
        const Place *place = ledger.place(key.place);
        if (held.quantity > 0 && place != nullptr && place->kind == PlaceKind::Drawer)
            return key.place;
    }
    for (const auto &[at, keeping] : m_workshop->notes.keepings) {
        const Part *other = m_workshop->part(at.first);
        if (other != nullptr && other->kind == part.kind)
            return drawerOf(at.first);
    }
    return std::nullopt;
}

int CarryDesk::drawer() const
{
    const Part *part = m_workshop ? m_workshop->part(m_selected.toStdString()) : nullptr;
    const auto likely = part ? likelyDrawer(*part) : std::nullopt;
    return likely ? static_cast<int>(drawers().indexOf(said(*likely))) : -1;
}

std::vector<CarriedPart> CarryDesk::found(const std::string &drawer) const
{
    std::vector<CarriedPart> parts;
    for (const SparePart &part : m_book->parts)
        if (const auto carried = m_book->carried(part))
            parts.push_back({part.number, drawerOf(part.number).value_or(drawer), *carried});
    return parts;
}

void CarryDesk::keep(int drawer)
{
    const SparePart *part = m_book ? m_book->find(m_selected.toStdString()) : nullptr;
    const std::int64_t carried = part ? m_book->carried(*part).value_or(-1) : -1;
    const QString chosen = drawers().value(drawer);
    if (carried < 0 || chosen.isEmpty())
        return m_pen.refuse(chosen.isEmpty() ? tr("Choose the drawer that is to hold it.")
                                             : tr("Of this part nothing could be reckoned."));
    write(tr("%1 is to hold %2 of %3.").arg(chosen, QString::number(carried), m_selected),
          {{part->number, chosen.toStdString(), carried}});
}

void CarryDesk::keepAll(int drawer)
{
    const QString chosen = drawers().value(drawer);
    if (!m_book || chosen.isEmpty())
        return m_pen.refuse(tr("Choose the drawer that is to hold it."));
    const auto parts = found(chosen.toStdString());
    if (parts.empty())
        return m_pen.refuse(tr("Of no part anything could be reckoned."));
    write(tr("The drawers are to hold what was reckoned of %1 parts.").arg(parts.size()), parts);
}

void CarryDesk::write(const QString &sentence, const std::vector<CarriedPart> &parts)
{
    m_pen.act(sentence,
              [parts](const ShopFile &, const Workshop &shop, const By &by) -> Result<Action> {
                  for (const CarriedPart &part : parts)
                      if (const auto place = placeAsked(part.drawer, shop.ledger); !place)
                          return tl::unexpected(place.error());
                  return keptInDrawers(parts, by);
              });
}

} // namespace flarestock
