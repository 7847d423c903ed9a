// SPDX-License-Identifier: MIT

#include "app/desk/template/drawn_template.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/worked_build.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

/// Joints are drawn as a build would have them; one that is searched for longer may differ.
constexpr auto SearchedWithin = std::chrono::milliseconds(60);

/// What the map points into.
struct HeldDrawing {
    std::shared_ptr<const Workshop> workshop;
    std::shared_ptr<const TemplateBook> book;
    std::optional<WorkedBuild> built;
};

QString sentence(const char *words)
{
    return QCoreApplication::translate("TemplateEditor", words);
}

QString stationTitle(const Expansion &expansion, const std::string &id)
{
    const PlacedStation *const placed = expansion.station(id);
    return said(placed == nullptr ? id : placed->station->title);
}

void addStations(const Expansion &expansion, QStringList &open)
{
    for (const PlacedStation &placed : expansion.stations) {
        if (placed.part == nullptr)
            open.append(
                sentence(
                    QT_TRANSLATE_NOOP("TemplateEditor",
                                      "%1: no %2 in the catalogue has all that is asked of it."))
                    .arg(said(placed.station->title), inWords(text(placed.station->demand.kind))));
        const bool isReached =
            std::any_of(expansion.runs.begin(), expansion.runs.end(), [&](const PlacedRun &run) {
                return run.from == placed.id || run.to == placed.id;
            });
        if (!isReached)
            open.append(sentence(QT_TRANSLATE_NOOP("TemplateEditor", "%1: no line leads there."))
                            .arg(said(placed.station->title)));
    }
}

void addRuns(const Expansion &expansion, QStringList &open)
{
    for (const PlacedRun &run : expansion.runs) {
        if (run.line != nullptr || run.wanted.empty())
            continue;
        open.append(sentence(QT_TRANSLATE_NOOP("TemplateEditor",
                                               "Line, %1 to %2: the catalogue has no %3."))
                        .arg(stationTitle(expansion, run.from), stationTitle(expansion, run.to),
                             said(run.wanted)));
    }
    for (const PlacedJoint &joint : expansion.joints) {
        const bool areNamed = !joint.from.size.empty() && !joint.to.size.empty();
        if (!joint.way && areNamed)
            open.append(sentence(QT_TRANSLATE_NOOP("TemplateEditor",
                                                   "%1: nothing in the catalogue closes it."))
                            .arg(said(joint.at)));
    }
}

QStringList openIn(const Expansion &expansion)
{
    QStringList open;
    for (const std::string &note : expansion.notes)
        open.append(inWords(note));
    addStations(expansion, open);
    addRuns(expansion, open);
    return open;
}

} // namespace

DrawnTemplate drawTemplate(const std::shared_ptr<const Workshop> &workshop, const TextFiles &texts,
                           const std::string &id)
{
    DrawnTemplate drawn;
    auto book = readTemplates(texts);
    if (!book) {
        drawn.problem = book.error();
        return drawn;
    }
    const auto held = std::make_shared<HeldDrawing>(HeldDrawing{workshop, *book, std::nullopt});
    ExpandRequest request;
    request.templateId = id;
    request.book = held->book;
    request.catalogue = &workshop->catalogue;
    request.closer = workshop->closer.get();
    request.shelf = &workshop->shelf;
    request.together = true;
    request.searchWithin = SearchedWithin;
    auto built = workBuild(request, workshop->settings.currency);
    if (!built) {
        drawn.problem = built.error();
        return drawn;
    }
    held->built.emplace(std::move(*built));
    drawn.worked.alive = held;
    drawn.worked.form = held->book->at(id).get();
    drawn.worked.expansion = &held->built->expansion;
    drawn.worked.bill = &held->built->bill;
    drawn.worked.findings = &held->built->findings;
    drawn.worked.catalogue = &workshop->catalogue;
    drawn.worked.shelf = &workshop->shelf;
    drawn.worked.lying = &held->built->lying;
    drawn.worked.workshop = workshop.get();
    drawn.worked.built = &*held->built;
    drawn.open = openIn(*drawn.worked.expansion);
    return drawn;
}

} // namespace flarestock
