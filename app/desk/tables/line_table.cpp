// SPDX-License-Identifier: MIT

#include "app/desk/tables/line_table.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/typed_figures.h"
#include "app/stockroom/tables/line_asked.h"
#include "model/fluids/line/dash_bore.h"

#include <QRegularExpression>

namespace flarestock {

namespace {

constexpr double FootM = 0.3048; // Exact.

/// "20 °C" is "20 C".
Result<std::string> figuresIn(const QVariantMap &typed, const char *field)
{
    QString words = typed.value(QLatin1String(field)).toString().trimmed();
    return figuresTyped(words.remove(u'°'));
}

std::string typedIn(const QVariantMap &typed, const char *field)
{
    return figuresIn(typed, field).value_or(std::string());
}

LineWords lineWords(const QVariantMap &typed)
{
    static const QRegularExpression dash(QStringLiteral("^-?(\\d{1,2})$"));
    LineWords words;
    const auto fluid = static_cast<std::size_t>(typed.value(QStringLiteral("fluid")).toInt());
    words.fluid = text(allFluids().at(std::min(fluid, FluidCount - 1)));
    if (const std::string warm = typedIn(typed, "temperature"); !warm.empty())
        words.temperature = warm;
    words.flow = typedIn(typed, "flow");
    words.length = typedIn(typed, "length");
    const auto size = dash.match(said(typedIn(typed, "size")));
    if (size.hasMatch())
        words.dash = size.captured(1).toInt();
    else
        words.bore = typedIn(typed, "size");
    return words;
}

QString saidVelocity(double metresASecond, Units units)
{
    return units == Units::Inch
               ? LineTable::tr("%1 ft/s").arg(QLocale().toString(metresASecond / FootM, 'f', 2))
               : LineTable::tr("%1 m/s").arg(QLocale().toString(metresASecond, 'f', 2));
}

std::vector<Row> figureRows(const LineLoss &loss, Units units)
{
    const QString flows = inWords(text(loss.regime));
    return {{QStringLiteral("drop"),
             {LineTable::tr("pressure that the line takes"),
              saidFinePressure(loss.dropPa / 1000, units)}},
            {QStringLiteral("velocity"),
             {LineTable::tr("velocity"), saidVelocity(loss.velocityMS, units)}},
            {QStringLiteral("reynolds"),
             {LineTable::tr("Reynolds number"),
              LineTable::tr("%1, %2").arg(QLocale().toString(loss.reynolds, 'f', 0), flows)}},
            {QStringLiteral("friction"),
             {LineTable::tr("Darcy friction factor"),
              QLocale().toString(loss.frictionFactor, 'f', 4)}}};
}

/// What the figures rest on that was not typed.
QStringList restsOn(const LineWords &words, const LineFlow &line, const LineLoss &loss)
{
    QStringList notes{LineTable::tr("A straight, smooth line; bends, ends and height are extra.")};
    if (loss.regime == Regime::Uncertain)
        notes.append(LineTable::tr("Between 2040 and 4000 the flow may be either; the friction is "
                                   "the larger, turbulent one."));
    if (words.dash > 0)
        notes.append(LineTable::tr("A bore of %1 mm is assumed for -%2 (%3): measure the hose and "
                                   "its ends.")
                         .arg(QLocale().toString(line.boreM * 1000, 'f', 2))
                         .arg(words.dash)
                         .arg(inWords(assumedBore(words.dash, DashNumbering::AsTube)->source)));
    const Liquid liquid = liquidAsked(words).value();
    notes.append(LineTable::tr("%1 at %2: %3 kg/m³, %4 mPa·s (%5: %6).")
                     .arg(inWords(words.fluid), localised(said(words.temperature)),
                          QLocale().toString(liquid.densityKgM3, 'f', 0),
                          QLocale().toString(liquid.viscosityPaS * 1000, 'f', 3),
                          inWords(liquid.status), inWords(liquid.source)));
    return notes;
}

} // namespace

LineTable::LineTable(QObject *parent)
    : QObject(parent), m_figures({QStringLiteral("label"), QStringLiteral("says")})
{
}

QStringList LineTable::fluids()
{
    QStringList all;
    for (const Fluid fluid : allFluids())
        all.append(inWords(text(fluid)));
    return all;
}

void LineTable::consider(const QVariantMap &typed)
{
    if (typed == m_typed)
        return;
    m_typed = typed;
    say();
}

void LineTable::setUnits(Units units)
{
    m_units = units;
    say();
}

void LineTable::say()
{
    m_notes.clear();
    m_wrong.clear();
    reckon();
    Q_EMIT said();
}

void LineTable::reckon()
{
    std::vector<Row> rows;
    for (const char *field : {"temperature", "flow", "length", "size"}) {
        if (const auto figures = figuresIn(m_typed, field); !figures)
            m_wrong = saidProblem(figures.error());
    }
    const LineWords words = lineWords(m_typed);
    const bool isTyped = m_wrong.isEmpty() && !words.flow.empty() && !words.length.empty() &&
                         (words.dash > 0 || !words.bore.empty());
    if (isTyped) {
        const auto line = lineAsked(words);
        const auto loss = line ? lineLoss(*line) : tl::unexpected(line.error());
        if (loss) {
            rows = figureRows(*loss, m_units);
            m_notes = restsOn(words, *line, *loss).join(u'\n');
        } else {
            m_wrong = saidProblem(loss.error());
        }
    }
    m_figures.become(std::move(rows));
}

} // namespace flarestock
