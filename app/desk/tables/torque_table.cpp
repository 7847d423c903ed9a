// SPDX-License-Identifier: MIT

#include "app/desk/tables/torque_table.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"
#include "app/stockroom/tables/torque_asked.h"

namespace flarestock {

namespace {

constexpr double FootPoundNm = 0.45359237 * 9.80665 * 0.3048; // Exact.
constexpr int NutCount = 5;

QString torqueFigure(double number)
{
    return QLocale().toString(number, 'f', 1);
}

QString torqueRange(const Torque &torque, double each, const QString &unit)
{
    const QString least = torqueFigure(torque.leastNm / each);
    const QString most = torqueFigure(torque.mostNm / each);
    return (least == most ? least : QString(least + u'–' + most)) + u' ' + unit;
}

/// Whose nut the tables tell apart by what it holds.
bool isFlareNut(const Port &port)
{
    return port.family == Family::An || port.family == Family::Jic;
}

} // namespace

TorqueTable::TorqueTable(QObject *parent)
    : QObject(parent), m_torques({QStringLiteral("torque"), QStringLiteral("other"),
                                  QStringLiteral("says"), QStringLiteral("source")})
{
}

void TorqueTable::setPort(const QString &typed)
{
    if (typed == m_port)
        return;
    m_port = typed;
    say();
}

void TorqueTable::setOn(int nut)
{
    if (nut == m_on || nut < 0 || nut >= NutCount)
        return;
    m_on = nut;
    say();
}

void TorqueTable::setMetal(int metal)
{
    if (metal == m_metal || metal < 0 || metal > 1)
        return;
    m_metal = metal;
    say();
}

void TorqueTable::setUnits(Units units)
{
    m_units = units;
    say();
}

QStringList TorqueTable::nuts()
{
    QStringList all;
    for (int nut = 0; nut < NutCount; ++nut)
        all.append(tr("nut on %1").arg(inWords(text(static_cast<NutOn>(nut)))));
    return all;
}

QStringList TorqueTable::metals()
{
    return {tr("all of steel"), tr("not all of steel")};
}

QString TorqueTable::advice()
{
    return tr("Published figures, not the maker's of your part: those come first, and the rulebook "
              "of the series. Have fuel and brake work checked by someone qualified.");
}

void TorqueTable::say()
{
    m_heading.clear();
    m_differ.clear();
    m_wrong.clear();
    lookUp();
    Q_EMIT said();
    Q_EMIT changed();
}

Row TorqueTable::rowOf(const Torque &torque, std::size_t at) const
{
    const QString metric = torqueRange(torque, 1, tr("N·m"));
    const QString inch = torqueRange(torque, FootPoundNm, tr("lbf·ft"));
    QStringList says{tr("material: %1").arg(inWords(torque.metal))};
    if (torque.halved)
        says.append(tr("half of it, as it says where not all is of steel"));
    if (!torque.note.empty())
        says.append(inWords(torque.note));
    const bool inFeet = m_units == Units::Inch;
    return {QString::number(at),
            {inFeet ? inch : metric, inFeet ? metric : inch, says.join(QStringLiteral("; ")),
             inWords(torque.source)}};
}

void TorqueTable::lookUp()
{
    const std::string typed = m_port.trimmed().toStdString();
    std::vector<Row> rows;
    if (!typed.empty()) {
        const auto asked =
            torqueAsked({typed, std::string(text(static_cast<NutOn>(m_on))),
                         m_metal == 0 ? std::string("steel") : std::string("aluminium")});
        if (!asked) {
            m_wrong = saidProblem(asked.error());
        } else {
            const auto torques = torquesFor(*asked);
            for (const Torque &torque : torques)
                rows.push_back(rowOf(torque, rows.size()));
            QStringList head{saidPort(asked->port)};
            if (isFlareNut(asked->port))
                head.append(nuts().at(m_on));
            head.append(metals().at(m_metal));
            m_heading = head.join(QStringLiteral(", "));
            if (rows.empty())
                m_heading =
                    tr("%1: no table that is known here publishes a torque for it.").arg(m_heading);
            if (const auto factor = disagreement(torques))
                m_differ = tr("The sources differ by a factor of %1: keep to the part maker's "
                              "figure, or to one source, and write down which.")
                               .arg(torqueFigure(*factor));
        }
    }
    m_torques.become(std::move(rows));
}

} // namespace flarestock
