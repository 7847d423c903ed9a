// SPDX-License-Identifier: MIT

#include "model/systems/slots.h"

#include <algorithm>

namespace flarestock {

namespace {

template <class Things>
auto thingNamed(const Things &things, std::string_view id)
{
    const auto found = std::find_if(things.begin(), things.end(),
                                    [&](const auto &thing) { return thing.id == id; });
    return found == things.end() ? nullptr : &*found;
}

SlotForm runSlot(const Template &form, std::string_view name)
{
    if (thingNamed(form.runs, name))
        return SlotForm::Run;
    for (const std::string_view end : {".start", ".end"})
        if (name.ends_with(end) && thingNamed(form.runs, name.substr(0, name.size() - end.size())))
            return SlotForm::Joint;
    return SlotForm::Unknown;
}

SlotForm plugSlot(const Template &form, std::string_view name)
{
    const auto point = name.find('.');
    if (point == std::string_view::npos)
        return SlotForm::Unknown;
    const Station *station = thingNamed(form.stations, name.substr(0, point));
    const std::string_view port = name.substr(point + 1);
    const bool plugged = station && std::find(station->plugged.begin(), station->plugged.end(),
                                              port) != station->plugged.end();
    return plugged ? SlotForm::Joint : SlotForm::Unknown;
}

} // namespace

SlotForm slotForm(const TemplateBook &book, const Template &form, std::string_view slot)
{
    const bool plug = slot.starts_with("plug:");
    std::string_view rest = plug ? slot.substr(5) : slot;
    const Template *within = &form;
    for (auto step = rest.find('/'); step != std::string_view::npos; step = rest.find('/')) {
        const Module *module = thingNamed(within->modules, rest.substr(0, step));
        const auto inner = module ? book.find(module->templateId) : book.end();
        if (inner == book.end())
            return SlotForm::Unknown;
        within = inner->second.get();
        rest.remove_prefix(step + 1);
    }
    if (plug)
        return plugSlot(*within, rest);
    return thingNamed(within->stations, rest) ? SlotForm::Station : runSlot(*within, rest);
}

} // namespace flarestock
