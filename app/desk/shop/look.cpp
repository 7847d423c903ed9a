// SPDX-License-Identifier: MIT

#include "app/desk/shop/look.h"

#include <cassert>

namespace flarestock {

namespace {

Look *theLook = nullptr;

} // namespace

Look::Look(QObject *parent) : QObject(parent)
{
    assert(theLook == nullptr);
    theLook = this;
}

Look::~Look()
{
    theLook = nullptr;
}

Look *Look::create(QQmlEngine *, QJSEngine *)
{
    assert(theLook != nullptr);
    QJSEngine::setObjectOwnership(theLook, QJSEngine::CppOwnership);
    return theLook;
}

void Look::setDark(bool dark)
{
    if (dark == m_dark)
        return;
    m_dark = dark;
    Q_EMIT darkChanged();
}

void Look::setInInches(bool inInches)
{
    if (inInches == m_inInches)
        return;
    m_inInches = inInches;
    Q_EMIT inInchesChanged();
}

} // namespace flarestock
