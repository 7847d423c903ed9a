// SPDX-License-Identifier: MIT

#include "model/exchange/catalogue/port_cells.h"

#include "model/exact/case_fold.h"
#include "model/exchange/catalogue/part_columns.h"

#include <algorithm>

namespace flarestock {

namespace {

/// "in: ORB -8 female [in]" cut into its three texts.
struct PortTexts {
    SheetRow::Item name;
    SheetRow::Item port;
    SheetRow::Item role; ///< Empty where none is written.
};

std::optional<PortTexts> portTexts(const SheetRow &row, const SheetRow::Item &item)
{
    const auto part = [&item](std::size_t from, std::size_t to) {
        const std::string_view text = trimmed(item.text.substr(from, to - from));
        const auto at = static_cast<std::size_t>(text.data() - item.text.data());
        return SheetRow::Item{text, item.within + (text.empty() ? from : at)};
    };
    const std::size_t colon = item.text.find(':');
    if (colon == std::string_view::npos || trimmed(item.text.substr(0, colon)).empty()) {
        row.wrong(column::Ports,
                  {"the port \"" + std::string(item.text) + "\" has no name",
                   "Write for example in: ORB -8 female [in]."},
                  item.within);
        return std::nullopt;
    }
    PortTexts texts{part(0, colon), part(colon + 1, item.text.size()), {}};
    if (const std::size_t open = item.text.find('[', colon); open != std::string_view::npos) {
        if (item.text.back() != ']') {
            row.wrong(column::Ports,
                      {"the role that begins here does not end with ]", "Write for example [in]."},
                      item.within + open);
            return std::nullopt;
        }
        texts.port = part(colon + 1, open);
        texts.role = part(open + 1, item.text.size() - 1);
    }
    return texts;
}

std::optional<PartPort> readPort(const SheetRow &row, const PortTexts &texts, PortMemory &memory)
{
    PartPort read;
    read.name = texts.name.text;
    auto known = memory.find(std::string(texts.port.text));
    if (known == memory.end()) {
        auto port = Port::parse(texts.port.text);
        if (!port) {
            row.refused(column::Ports, port.error(), texts.port.within);
            return std::nullopt;
        }
        known = memory.emplace(texts.port.text, std::move(*port)).first;
    }
    read.port = known->second;
    if (texts.role.within > 0) {
        const auto role = parsePortRole(texts.role.text);
        if (!role) {
            row.refused(column::Ports, role.error(), texts.role.within);
            return std::nullopt;
        }
        read.role = *role;
    }
    return read;
}

void wantPort(const SheetRow &row, const Part &part, std::string_view name, const Port &wanted)
{
    const PartPort *const found = part.port(name);
    if (found && found->port == wanted)
        return;
    row.wrong(column::Ports,
              {found ? "the port " + std::string(name) + " is " + found->port.text() +
                           ", which its other columns do not say"
                     : "the " + std::string(text(part.kind)) + " has no port " + std::string(name),
               "Write " + std::string(name) + ": " + wanted.text() + "."});
}

void wantPortCount(const SheetRow &row, const Part &part, std::size_t count)
{
    if (part.ports.size() != count)
        row.wrong(column::Ports, {"a " + std::string(text(part.kind)) + " has " +
                                      std::to_string(count) + (count == 1 ? " port" : " ports") +
                                      ", this has " + std::to_string(part.ports.size()),
                                  "Correct the ports."});
}

Port hosePort(const std::string &construction, int dash)
{
    Port port;
    port.family = Family::Hose;
    port.size = "-" + std::to_string(dash);
    port.construction = construction;
    return port;
}

} // namespace

std::vector<PartPort> readPorts(const SheetRow &row, PortMemory &memory)
{
    std::vector<PartPort> ports;
    for (const SheetRow::Item &item : row.items(column::Ports)) {
        const auto texts = portTexts(row, item);
        if (!texts)
            continue;
        auto port = readPort(row, *texts, memory);
        if (!port)
            continue;
        const bool isThere = std::any_of(ports.begin(), ports.end(), [&port](const auto &other) {
            return sameFolded(other.name, port->name);
        });
        if (isThere)
            row.wrong(column::Ports,
                      {"the port name \"" + port->name + "\" stands twice",
                       "Give each port a name of its own."},
                      texts->name.within);
        else
            ports.push_back(std::move(*port));
    }
    return ports;
}

void checkPorts(const SheetRow &row, const Part &part)
{
    if (const auto *const hose = part.as<HoseFacts>(); hose && hose->dash > 0) {
        wantPort(row, part, "cut", hosePort(hose->construction, hose->dash));
        wantPortCount(row, part, 1);
    } else if (const auto *const end = part.as<HoseEndFacts>();
               end && end->hoseDash > 0 && !end->constructions.empty()) {
        wantPort(row, part, "hose", hosePort(end->constructions.front(), end->hoseDash));
        wantPortCount(row, part, 2);
    } else if (const auto *const tubing = part.as<TubingFacts>();
               tubing && !tubing->tubeSize.empty()) {
        if (const auto port = Port::parse("TUBE " + tubing->tubeSize)) {
            wantPort(row, part, "cut", *port);
            wantPortCount(row, part, 1);
        } else {
            row.refused(column::Tube, port.error(), 0);
        }
    }
}

} // namespace flarestock
