// SPDX-License-Identifier: MIT

#include "app/desk/caliper/what_is_this.h"

#include "app/desk/build/caliper_rows.h"
#include "app/desk/language/sentences.h"
#include "app/desk/stock/sieve.h"
#include "app/desk/words/spoken.h"
#include "model/ports/size_table.h"

#include <cmath>

namespace flarestock {

namespace {

constexpr double MmPerInch = 25.4; // Exact: 1 in = 25.4 mm (NIST SP 811, appendix B).
constexpr int PortsSaid = 4;

QString saidPitch(const Thread &thread)
{
    // Only metric threads are named by their pitch in millimetres.
    if (thread.form == ThreadForm::Metric)
        return WhatIsThis::tr("%1 mm").arg(QLocale().toString(thread.pitchMm));
    return WhatIsThis::tr("%1 per inch")
        .arg(QLocale().toString(std::round(MmPerInch / thread.pitchMm * 2) / 2));
}

QString typedPitch(const Thread &thread)
{
    if (thread.form == ThreadForm::Metric)
        return QString(QLocale().toString(thread.pitchMm) + QStringLiteral(" mm"));
    return QString(QLocale().toString(std::round(MmPerInch / thread.pitchMm * 2) / 2) +
                   QStringLiteral(" tpi"));
}

const Thread *threadOf(const Candidate &candidate)
{
    const SizeRow *size = candidate.ports.empty() ? nullptr : sizeOf(candidate.ports.front());
    return size && size->thread ? &*size->thread : nullptr;
}

/// A family and a size, whatever its gender: "AN -10, ORB -10".
QString portsSaid(const Candidate &candidate)
{
    QStringList ports;
    for (const Port &port : candidate.ports) {
        const QString one = QString(said(text(port.family)) + u' ' + said(port.size));
        if (!ports.contains(one))
            ports.append(one);
    }
    if (ports.size() <= PortsSaid)
        return ports.join(QStringLiteral(", "));
    return WhatIsThis::tr("%1 and %2 more")
        .arg(QStringList(ports.mid(0, PortsSaid)).join(QStringLiteral(", ")),
             QString::number(ports.size() - PortsSaid));
}

QString deviationSaid(double mm)
{
    const QString size = QLocale().toString(std::abs(mm), 'f', 2);
    if (std::abs(mm) < 0.005)
        return WhatIsThis::tr("as it should be");
    return mm < 0 ? WhatIsThis::tr("%1 mm under").arg(size)
                  : WhatIsThis::tr("%1 mm over").arg(size);
}

} // namespace

WhatIsThis::WhatIsThis(QObject *parent)
    : QObject(parent),
      m_candidates({QStringLiteral("thread"), QStringLiteral("ports"), QStringLiteral("deviation"),
                    QStringLiteral("here"), QStringLiteral("says")}),
      m_answers({QStringLiteral("label"), QStringLiteral("value")})
{
}

void WhatIsThis::setBook(const std::shared_ptr<const StockBook> &book)
{
    m_book = book;
    showRows();
}

void WhatIsThis::setMale(bool male)
{
    m_male = male;
    identifyAnew();
}

void WhatIsThis::setDiameter(const QString &typed)
{
    m_diameter = typed; // As it is being written, a blank at its end too.
    identifyAnew();
}

void WhatIsThis::setPitch(const QString &typed)
{
    m_pitch = typed;
    identifyAnew();
}

void WhatIsThis::setSeat(const QString &seat)
{
    m_seat = seat;
    identifyAnew();
}

void WhatIsThis::begin()
{
    m_diameter.clear();
    m_pitch.clear();
    m_seat.clear();
    identifyAnew();
}

/// The fields as the line that one can also type into the find field.
void WhatIsThis::identifyAnew()
{
    static const QString digitsOnly = QStringLiteral("0123456789.,/ ");
    const auto withUnit = [](const QString &typed, const QString &unit) {
        for (const QChar letter : typed) {
            if (!digitsOnly.contains(letter))
                return typed;
        }
        return QString(typed + u' ' + unit);
    };
    m_caliper = {};
    m_said = {};
    m_problem.clear();
    if (!m_diameter.trimmed().isEmpty()) {
        QStringList line{m_male ? QStringLiteral("od") : QStringLiteral("bore"),
                         withUnit(m_diameter.trimmed(), QStringLiteral("mm"))};
        if (!m_pitch.trimmed().isEmpty())
            line.append(withUnit(m_pitch.trimmed(), QStringLiteral("mm")));
        if (!m_seat.isEmpty())
            line.append(withUnit(m_seat, QStringLiteral("deg")));
        if (const auto caliper = caliperTyped(line.join(u' '))) {
            m_caliper = *caliper;
            m_said = identify(m_caliper);
        } else {
            m_problem = tr("That is no measure. Write a diameter like 22.1 mm or 0.87 in, a pitch "
                           "like 14 tpi or 1.5 mm.");
        }
    }
    showRows();
}

bool WhatIsThis::read(const QString &typed)
{
    const auto caliper = caliperTyped(typed);
    if (!caliper)
        return false;
    m_male = caliper->gender == Gender::Male;
    m_diameter = tr("%1 mm").arg(QLocale().toString(caliper->diameterMm, 'g', 6));
    m_pitch = caliper->pitchMm ? tr("%1 mm").arg(QLocale().toString(*caliper->pitchMm, 'g', 6))
                               : QString();
    m_seat = caliper->flatSeat      ? QStringLiteral("flat")
             : caliper->tapered     ? QStringLiteral("tapered")
             : caliper->seatDegrees ? QString::number(*caliper->seatDegrees)
                                    : QString();
    m_caliper = *caliper;
    m_said = identify(m_caliper);
    m_problem.clear();
    showRows();
    return true;
}

std::vector<Port> WhatIsThis::portsOf(int candidate) const
{
    std::vector<Port> ports;
    for (std::size_t at = 0; at < m_said.candidates.size(); ++at) {
        if (candidate < 0 || at == static_cast<std::size_t>(candidate))
            ports.insert(ports.end(), m_said.candidates[at].ports.begin(),
                         m_said.candidates[at].ports.end());
    }
    return ports;
}

QString WhatIsThis::onShelf(const Candidate &candidate) const
{
    if (!m_book)
        return {};
    Narrowing narrowing;
    narrowing.ports = candidate.ports;
    const auto parts = sifted(*m_book, narrowing).size();
    return parts == 0   ? tr("none in stock")
           : parts == 1 ? tr("1 part in stock")
                        : tr("%1 parts in stock").arg(parts);
}

void WhatIsThis::showRows()
{
    std::vector<Row> candidates;
    std::vector<Row> answers;
    const bool asksPitch = m_said.ask == Ask::Pitch;
    for (const Candidate &one : m_said.candidates) {
        const QString thread = said(one.thread);
        const QString ports = portsSaid(one);
        const QString deviation = deviationSaid(one.deviationMm);
        const QString here = onShelf(one);
        candidates.push_back({QString::number(candidates.size()),
                              {thread, ports, deviation, here,
                               tr("%1: %2, %3, %4").arg(thread, ports, deviation, here)}});
        const Thread *known = threadOf(one);
        if (!asksPitch || known == nullptr)
            continue;
        const QString value = typedPitch(*known);
        const bool isThere = std::any_of(answers.begin(), answers.end(),
                                         [&](const Row &row) { return row.key == value; });
        if (!isThere)
            answers.push_back({value, {saidPitch(*known), value}});
    }
    if (m_said.ask == Ask::Seat) {
        for (const auto &[label, value] :
             {std::pair(tr("cone 37°"), "37"), std::pair(tr("cone 45°"), "45"),
              std::pair(tr("cone 30°"), "30"), std::pair(tr("cone 12°"), "12"),
              std::pair(tr("flat, or a groove"), "flat"), std::pair(tr("tapered"), "tapered")})
            answers.push_back({QString::fromLatin1(value), {label, QString::fromLatin1(value)}});
    }
    m_candidates.become(std::move(candidates));
    m_answers.become(std::move(answers));
    Q_EMIT changed();
}

QString WhatIsThis::ask() const
{
    return !isMeasured() || m_said.ask == Ask::None ? QString() : said(text(m_said.ask));
}

QString WhatIsThis::why() const
{
    return isMeasured() ? localised(inWords(m_said.why)) : QString();
}

QString WhatIsThis::reading() const
{
    return isMeasured() ? tr("%1 mm").arg(QLocale().toString(m_caliper.diameterMm, 'f', 2))
                        : tr("– mm");
}

} // namespace flarestock
