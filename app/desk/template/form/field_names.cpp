// SPDX-License-Identifier: MIT
//
// What the keys of a template are called on the form, with an example of each.

#include "app/desk/template/form/template_fields.h"

#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

struct KeyWords {
    std::string_view key;
    const char *name;
    const char *hint;
};

/// By the alphabet.
constexpr std::array<KeyWords, 49> Names = {{
    {"answers", QT_TRANSLATE_NOOP("TemplateForm", "answers"), ""},
    {"bend", QT_TRANSLATE_NOOP("TemplateForm", "tightest bend, its radius"), "3 in"},
    {"bracketed", QT_TRANSLATE_NOOP("TemplateForm", "fixed to the car"), ""},
    {"choices", QT_TRANSLATE_NOOP("TemplateForm", "its choices"), "gasoline; E85"},
    {"clamps-each", QT_TRANSLATE_NOOP("TemplateForm", "a clamp in so many mm"), "400"},
    {"construction", QT_TRANSLATE_NOOP("TemplateForm", "hose series"), "PT"},
    {"count", QT_TRANSLATE_NOOP("TemplateForm", "how many"), "1"},
    {"dash", QT_TRANSLATE_NOOP("TemplateForm", "dash size"), "-8"},
    {"default", QT_TRANSLATE_NOOP("TemplateForm", "answer until another is given"), ""},
    {"delivery", QT_TRANSLATE_NOOP("TemplateForm", "delivers to"), ""},
    {"dimension", QT_TRANSLATE_NOOP("TemplateForm", "measured as"), ""},
    {"end-angle", QT_TRANSLATE_NOOP("TemplateForm", "angle of its last end"), "90"},
    {"feed", QT_TRANSLATE_NOOP("TemplateForm", "fed by"), ""},
    {"filters", QT_TRANSLATE_NOOP("TemplateForm", "filters that it needs"), ""},
    {"flow", QT_TRANSLATE_NOOP("TemplateForm", "flow at least"), "255 L/h"},
    {"fluid", QT_TRANSLATE_NOOP("TemplateForm", "fluid"), "{fluid}"},
    {"form", QT_TRANSLATE_NOOP("TemplateForm", "kind of answer"), ""},
    {"forward", QT_TRANSLATE_NOOP("TemplateForm", "its end before its beginning"), "12 in"},
    {"from", QT_TRANSLATE_NOOP("TemplateForm", "from, station.port"), "tank.out"},
    {"id", QT_TRANSLATE_NOOP("TemplateForm", "short name"), "pre-filter"},
    {"kind", QT_TRANSLATE_NOOP("TemplateForm", "kind of part"), ""},
    {"least", QT_TRANSLATE_NOOP("TemplateForm", "at least"), "2 in"},
    {"length", QT_TRANSLATE_NOOP("TemplateForm", "length"), "{supply}"},
    {"lengths", QT_TRANSLATE_NOOP("TemplateForm", "lengths of its runs"), "{supply}; 12 in"},
    {"level", QT_TRANSLATE_NOOP("TemplateForm", "level on the map"), ""},
    {"line", QT_TRANSLATE_NOOP("TemplateForm", "which line"), ""},
    {"micron", QT_TRANSLATE_NOOP("TemplateForm", "micron"), "75 to 150"},
    {"most", QT_TRANSLATE_NOOP("TemplateForm", "at most"), "40 ft"},
    {"other-loss", QT_TRANSLATE_NOOP("TemplateForm", "what else takes pressure"), "5 kPa"},
    {"part", QT_TRANSLATE_NOOP("TemplateForm", "part number"), ""},
    {"plugged", QT_TRANSLATE_NOOP("TemplateForm", "ports to close"), "gauge"},
    {"pressure", QT_TRANSLATE_NOOP("TemplateForm", "pressure"), "43.5 psi"},
    {"pumps", QT_TRANSLATE_NOOP("TemplateForm", "pumps that feed it"), "pump"},
    {"pumps-apart", QT_TRANSLATE_NOOP("TemplateForm", "each pump has its own"), ""},
    {"rated", QT_TRANSLATE_NOOP("TemplateForm", "rated at least"), "100 psi"},
    {"rise", QT_TRANSLATE_NOOP("TemplateForm", "its end above its beginning"), "-8 in"},
    {"set-pressure", QT_TRANSLATE_NOOP("TemplateForm", "set at the regulator"), "43.5 psi"},
    {"shared-by", QT_TRANSLATE_NOOP("TemplateForm", "shared by so many pumps"), "1"},
    {"spare-elements", QT_TRANSLATE_NOOP("TemplateForm", "spare elements"), "1"},
    {"start-angle", QT_TRANSLATE_NOOP("TemplateForm", "angle of its first end"), "45"},
    {"system", QT_TRANSLATE_NOOP("TemplateForm", "system"), ""},
    {"template", QT_TRANSLATE_NOOP("TemplateForm", "template inside"), ""},
    {"title", QT_TRANSLATE_NOOP("TemplateForm", "title"), ""},
    {"to", QT_TRANSLATE_NOOP("TemplateForm", "to, station.port"), "pump.in"},
    {"tubing", QT_TRANSLATE_NOOP("TemplateForm", "hard tube instead"), "3/16"},
    {"when", QT_TRANSLATE_NOOP("TemplateForm", "only when"), "fluid is methanol"},
    {"why", QT_TRANSLATE_NOOP("TemplateForm", "what for"), ""},
    {"words", QT_TRANSLATE_NOOP("TemplateForm", "words that the part says"), "bypass"},
    {"worked-out", QT_TRANSLATE_NOOP("TemplateForm", "worked out as"), ""},
}};

const KeyWords *wordsOfKey(std::string_view key)
{
    const auto found = std::find_if(Names.begin(), Names.end(),
                                    [key](const KeyWords &one) { return one.key == key; });
    return found == Names.end() ? nullptr : &*found;
}

} // namespace

QString fieldName(Paragraph kind, std::string_view key)
{
    if (kind == Paragraph::Station && key == "pressure")
        return QCoreApplication::translate("TemplateForm", "pressure set or wanted");
    const KeyWords *const words = wordsOfKey(key);
    return words == nullptr ? said(key) : QCoreApplication::translate("TemplateForm", words->name);
}

QString fieldHint(Paragraph kind, std::string_view key)
{
    if (kind == Paragraph::Top && key == "id")
        return QStringLiteral("coolant");
    const KeyWords *const words = wordsOfKey(key);
    return words == nullptr ? QString() : QString::fromLatin1(words->hint);
}

} // namespace flarestock
