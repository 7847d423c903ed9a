// SPDX-License-Identifier: MIT

#include "app/buyer/papers/speech.h"

#include <QtGlobal>

namespace flarestock {

/// Speech::word() is given them: here the translation's program finds them.
[[maybe_unused]] static const char *const ModelWords[] = {
    QT_TRANSLATE_NOOP("flarestock", "cut"),
    QT_TRANSLATE_NOOP("flarestock", "join"),
    QT_TRANSLATE_NOOP("flarestock", "built"),
    QT_TRANSLATE_NOOP("flarestock", "test"),
    QT_TRANSLATE_NOOP("flarestock", "missing"),
    QT_TRANSLATE_NOOP("flarestock", "wrong part"),
    QT_TRANSLATE_NOOP("flarestock", "damaged"),
    QT_TRANSLATE_NOOP("flarestock", "short delivery"),
    QT_TRANSLATE_NOOP("flarestock", "raised"),
    QT_TRANSLATE_NOOP("flarestock", "promised"),
    QT_TRANSLATE_NOOP("flarestock", "piece came"),
    QT_TRANSLATE_NOOP("flarestock", "credited"),
    QT_TRANSLATE_NOOP("flarestock", "given up"),
    QT_TRANSLATE_NOOP("flarestock", "does not belong here"),
    QT_TRANSLATE_NOOP("flarestock", "more than it is to hold"),
    QT_TRANSLATE_NOOP("flarestock", "to be checked"),
    QT_TRANSLATE_NOOP("flarestock", "not to be used"),
    QT_TRANSLATE_NOOP("flarestock", "past its day"),
    QT_TRANSLATE_NOOP("flarestock", "its box is open"),
    QT_TRANSLATE_NOOP("flarestock", "fine"),
    QT_TRANSLATE_NOOP("flarestock", "soon"),
    QT_TRANSLATE_NOOP("flarestock", "before"),
    QT_TRANSLATE_NOOP("flarestock", "now"),
    QT_TRANSLATE_NOOP("flarestock", "over"),
    QT_TRANSLATE_NOOP("flarestock", "wash"),
    QT_TRANSLATE_NOOP("flarestock", "inspect"),
    QT_TRANSLATE_NOOP("flarestock", "replace"),
    QT_TRANSLATE_NOOP("flarestock", "in"),
    QT_TRANSLATE_NOOP("flarestock", "spent")};

std::string Speech::say(const char *english, std::initializer_list<std::string> places) const
{
    const std::string form = own(english);
    std::string said;
    for (std::size_t at = 0; at < form.size(); ++at) {
        const bool isPlace = form[at] == '%' && at + 1 < form.size() && form[at + 1] >= '1' &&
                             form[at + 1] < '1' + static_cast<int>(places.size());
        if (isPlace)
            said += places.begin()[form[++at] - '1'];
        else
            said += form[at];
    }
    return said;
}

std::string Speech::own(const char *english) const
{
    return english;
}

std::string Speech::sentence(std::string_view english) const
{
    return std::string(english);
}

std::string Speech::figures(std::string_view plain) const
{
    return std::string(plain);
}

std::string Speech::day(std::string_view iso) const
{
    return std::string(iso);
}

std::string Speech::number(const Decimal &number) const
{
    return number.text();
}

std::string Speech::amount(const Quantity &quantity) const
{
    return quantity.spoken();
}

const Speaking &plainSpeech()
{
    static const Speaking only = std::make_shared<const Speech>();
    return only;
}

} // namespace flarestock
