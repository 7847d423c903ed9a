// SPDX-License-Identifier: MIT

#include "app/desk/parts/card/card_facts.h"

#include "app/desk/words/spoken.h"
#include "model/ports/size_table.h"

#include <QCoreApplication>

#include <cmath>

namespace flarestock {

namespace {

struct FactNames {
    Q_DECLARE_TR_FUNCTIONS(CardFacts)
};

class FactList {
public:
    explicit FactList(Units units) : m_units(units) {}

    void add(const QString &title, const QString &value)
    {
        if (!value.isEmpty())
            m_rows.push_back({QString::number(m_rows.size()),
                              {title, value, FactNames::tr("%1: %2").arg(title, value)}});
    }
    void add(const QString &title, const std::string &value) { add(title, localised(said(value))); }
    void pressure(const QString &title, const std::optional<double> &kPa)
    {
        if (kPa)
            add(title, saidPressure(*kPa, m_units));
    }
    void pressures(const QString &title, const std::optional<double> &low,
                   const std::optional<double> &high)
    {
        if (low && high)
            add(title, saidPressures(*low, *high, m_units));
        else
            pressure(title, low ? low : high);
    }
    void flow(const QString &title, const std::optional<double> &litresAnHour)
    {
        if (litresAnHour)
            add(title, saidFlow(*litresAnHour, m_units));
    }
    void bore(const std::optional<double> &mm)
    {
        if (mm)
            add(FactNames::tr("inside"), saidBore(*mm, m_units));
    }
    void yes(const QString &title, bool holds)
    {
        add(title, holds ? FactNames::tr("yes") : FactNames::tr("no"));
    }
    void degrees(const QString &title, const std::optional<double> &celsius)
    {
        if (!celsius)
            return;
        const bool isInch = m_units == Units::Inch;
        const double shown = isInch ? *celsius * 1.8 + 32 : *celsius;
        add(title, isInch ? FactNames::tr("%1 °F").arg(QLocale().toString(std::lround(shown)))
                          : FactNames::tr("%1 °C").arg(QLocale().toString(std::lround(shown))));
    }
    void number(const QString &title, const std::optional<double> &value, const QString &form)
    {
        if (value)
            add(title, form.arg(QLocale().toString(*value, 'g', 4)));
    }

    void facts(std::monostate) {}
    void facts(const HoseFacts &hose)
    {
        add(FactNames::tr("series"), hose.construction);
        bore(hose.boreMm);
        number(FactNames::tr("bends to"), inUnits(hose.bendRadiusMm), lengthForm());
        add(FactNames::tr("inside lining"), hose.liner);
        yes(FactNames::tr("conducts"), hose.conductive);
        if (hose.clamped)
            yes(FactNames::tr("under a clamp"), *hose.clamped);
    }
    void facts(const HoseEndFacts &end)
    {
        QStringList fits;
        for (const std::string &series : end.constructions)
            fits.append(said(series));
        add(FactNames::tr("for hose series"), fits.join(QStringLiteral(", ")));
        add(FactNames::tr("for hose"), QStringLiteral("-%1").arg(end.hoseDash));
        add(FactNames::tr("bend"), FactNames::tr("%1°").arg(end.angleDegrees));
        bore(end.boreMm);
        if (end.allowanceMm)
            add(FactNames::tr("takes up of the length"),
                FactNames::tr("%1 mm").arg(saidNumber(*end.allowanceMm)));
    }
    void facts(const TubingFacts &tube)
    {
        add(FactNames::tr("outside"), tube.tubeSize);
        bore(tube.boreMm);
    }
    void facts(const FilterFacts &filter)
    {
        if (filter.rating)
            add(FactNames::tr("holds back"), filter.rating->text());
        add(FactNames::tr("made of"), filter.medium);
        yes(FactNames::tr("opened in place"), filter.serviceable);
        flow(FactNames::tr("flow"), filter.flowLh);
        pressure(FactNames::tr("loses when clean"), filter.cleanLossKpa);
        pressure(FactNames::tr("bypass opens at"), filter.bypassKpa);
    }
    void facts(const ElementFacts &element)
    {
        add(FactNames::tr("holds back"), element.rating.text());
        add(FactNames::tr("made of"), element.medium);
        yes(FactNames::tr("can be washed"), element.washable);
    }
    void facts(const PumpFacts &pump)
    {
        for (const PumpFacts::Point &point : pump.curve) {
            QString at = saidPressure(point.pressureKpa, m_units);
            if (point.volts > 0)
                at = FactNames::tr("%1, %2 V").arg(at, QLocale().toString(point.volts, 'g', 4));
            add(FactNames::tr("at %1").arg(at), saidFlow(point.flowLh, m_units));
        }
        number(FactNames::tr("draws"), pump.amps, FactNames::tr("%1 A"));
        yes(FactNames::tr("electric"), pump.electric);
        yes(FactNames::tr("can be opened"), pump.serviceable);
        add(FactNames::tr("sits"), pump.position);
    }
    void facts(const RegulatorFacts &regulator)
    {
        pressures(FactNames::tr("set from, to"), regulator.lowKpa, regulator.highKpa);
        add(FactNames::tr("surplus"),
            regulator.bypass ? FactNames::tr("goes back") : FactNames::tr("is held back"));
        flow(FactNames::tr("flow"), regulator.flowLh);
        pressure(FactNames::tr("takes wide open"), regulator.wideOpenKpa);
    }
    void facts(const RingFacts &ring) { add(FactNames::tr("ring"), ring.designation); }
    void facts(const WasherFacts &washer)
    {
        add(FactNames::tr("washer"),
            washer.crush ? FactNames::tr("crush") : FactNames::tr("bonded"));
        add(FactNames::tr("goes over"), washer.thread);
    }
    void facts(const FuelUserFacts &user)
    {
        pressures(FactNames::tr("wants"), user.pressureLowKpa, user.pressureHighKpa);
        number(FactNames::tr("passes dirt up to"), user.passageMicron, FactNames::tr("%1 µm"));
    }
    void facts(const VesselFacts &vessel)
    {
        if (vessel.litres)
            add(FactNames::tr("holds"), saidVolume(*vessel.litres, m_units));
        if (vessel.sock)
            add(FactNames::tr("strainer inside"), vessel.sock->text());
        else
            yes(FactNames::tr("strainer inside"), vessel.pickupSock);
    }
    void facts(const WireFacts &wire)
    {
        if (wire.gauge)
            add(FactNames::tr("gauge"), *wire.gauge == 0
                                            ? FactNames::tr("1/0 AWG")
                                            : FactNames::tr("%1 AWG").arg(*wire.gauge));
    }
    void facts(const CurrentFacts &current)
    {
        number(FactNames::tr("rated for"), current.amps, FactNames::tr("%1 A"));
    }
    [[nodiscard]] std::vector<Row> take() { return std::move(m_rows); }

private:
    [[nodiscard]] std::optional<double> inUnits(const std::optional<double> &mm) const
    {
        return mm && m_units == Units::Inch ? std::optional(*mm / 25.4) : mm;
    }
    [[nodiscard]] QString lengthForm() const
    {
        return m_units == Units::Inch ? FactNames::tr("%1 in radius")
                                      : FactNames::tr("%1 mm radius");
    }

    Units m_units;
    std::vector<Row> m_rows;
};

} // namespace

QStringList factCells()
{
    return {QStringLiteral("title"), QStringLiteral("value"), QStringLiteral("says")};
}

std::vector<Row> factRows(const Part &part, Units units)
{
    FactList list(units);
    list.add(FactNames::tr("body"), part.material);
    list.add(FactNames::tr("seal"), part.seal);
    list.pressure(FactNames::tr("rated"), part.ratings.pressureKpa);
    list.degrees(FactNames::tr("not colder than"), part.ratings.lowC);
    list.degrees(FactNames::tr("not hotter than"), part.ratings.highC);
    std::visit([&list](const auto &facts) { list.facts(facts); }, part.facts);
    QStringList fluids;
    for (const Fluid fluid : part.suits)
        fluids.append(said(text(fluid)));
    list.add(FactNames::tr("goes with"), fluids.join(QStringLiteral(", ")));
    QStringList words;
    for (const std::string &word : part.words)
        words.append(said(word));
    list.add(FactNames::tr("further words"), words.join(QStringLiteral(", ")));
    return list.take();
}

QString portSource(const Port &port)
{
    const SizeRow *size = sizeOf(port);
    return size ? said(size->source) : QString();
}

} // namespace flarestock
