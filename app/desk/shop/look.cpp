// SPDX-License-Identifier: MIT

#include "app/desk/shop/look.h"

#include "app/desk/language/language.h"

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

void Look::setLanguage(const QString &language)
{
    if (language == m_language)
        return;
    if (!speak(language)) {
        speak(m_language);
        return;
    }
    m_language = language;
    Q_EMIT languageChanged();
}

} // namespace flarestock
