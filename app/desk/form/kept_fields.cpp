// SPDX-License-Identifier: MIT

#include "app/desk/form/kept_fields.h"

#include <utility>

namespace flarestock {

KeptFields::KeptFields(Unwritten &unwritten, std::function<SheetNamed()> named, QObject *parent)
    : QObject(parent), m_unwritten(unwritten), m_named(std::move(named))
{
}

QVariantMap KeptFields::takenUp(const QVariantMap &values)
{
    m_sheet = m_named();
    m_asOpened = values;
    return m_unwritten.takeUp(m_sheet.name);
}

void KeptFields::keep(const QVariantMap &values)
{
    if (!m_sheet.name.isEmpty())
        m_unwritten.keep(m_sheet.name, m_sheet.title, values, m_asOpened);
}

void KeptFields::putAway()
{
    m_unwritten.forget(m_sheet.name);
    m_sheet = {};
}

} // namespace flarestock
