// SPDX-License-Identifier: MIT

#include "app/desk/papers/desk_speech.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"

#include <QCoreApplication>

namespace flarestock {

namespace {

class DeskSpeech : public Speech {
public:
    explicit DeskSpeech(Units units) : m_units(units) {}

    [[nodiscard]] std::string sentence(std::string_view english) const override
    {
        return inWords(english).toStdString();
    }
    [[nodiscard]] std::string figures(std::string_view plain) const override
    {
        return saidFigures(said(plain), m_locale).toStdString();
    }
    [[nodiscard]] std::string day(std::string_view iso) const override
    {
        return saidDate(iso, m_locale).toStdString();
    }
    [[nodiscard]] std::string number(const Decimal &number) const override
    {
        return saidNumber(number, m_locale).toStdString();
    }
    [[nodiscard]] std::string amount(const Quantity &quantity) const override
    {
        return saidAmount(quantity, m_units).toStdString();
    }

protected:
    [[nodiscard]] std::string own(const char *english) const override
    {
        return QCoreApplication::translate("flarestock", english).toStdString();
    }

private:
    Units m_units;
    QLocale m_locale;
};

} // namespace

Speaking deskSpeech(Units units)
{
    return std::make_shared<const DeskSpeech>(units);
}

} // namespace flarestock
