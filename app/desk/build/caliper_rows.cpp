// SPDX-License-Identifier: MIT

#include "app/desk/build/caliper_rows.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "app/desk/words/standing.h"

#include <QCoreApplication>
#include <QRegularExpression>

#include <algorithm>

namespace flarestock {

namespace {

struct CaliperWords {
    Q_DECLARE_TR_FUNCTIONS(Caliper)
};

constexpr double MmPerInch = 25.4; // Exact: 1 in = 25.4 mm (NIST SP 811, appendix B).

/// "0.87", "7/8", "1 5/16"; nothing where a digit is missing.
std::optional<double> number(const QString &text)
{
    double sum = 0;
    for (const QString &word : text.simplified().split(u' ')) {
        const QStringList parts = word.split(u'/');
        bool over = true;
        bool under = true;
        const double top = parts.value(0).toDouble(&over);
        const double bottom = parts.size() > 1 ? parts.value(1).toDouble(&under) : 1;
        if (!over || !under || parts.size() > 2 || bottom <= 0)
            return {};
        sum += top / bottom;
    }
    return sum;
}

/// Puts one measure where it belongs; false where there is no place for it.
bool take(Caliper &caliper, double value, const QString &unit)
{
    if (value <= 0)
        return false;
    const bool isLength = unit == QStringLiteral("mm") || unit == QStringLiteral("in") ||
                          unit == QStringLiteral("\"");
    if (unit == QStringLiteral("tpi"))
        caliper.pitchMm = MmPerInch / value;
    else if (!isLength)
        caliper.seatDegrees = value;
    else if (caliper.diameterMm <= 0)
        caliper.diameterMm = unit == QStringLiteral("mm") ? value : value * MmPerInch;
    else if (unit == QStringLiteral("mm"))
        caliper.pitchMm = value;
    else
        return false;
    return true;
}

bool canBe(const Port &port, const Identification &said)
{
    return std::any_of(said.candidates.begin(), said.candidates.end(), [&](const Candidate &one) {
        return std::any_of(one.ports.begin(), one.ports.end(), [&](const Port &other) {
            return other.family == port.family && other.size == port.size &&
                   other.gender == port.gender;
        });
    });
}

/// The port of a part that it can be; nothing where none can.
const PartPort *portOf(const Part &part, const Identification &said)
{
    const auto found =
        std::find_if(part.ports.begin(), part.ports.end(),
                     [&said](const PartPort &port) { return canBe(port.port, said); });
    return found == part.ports.end() ? nullptr : &*found;
}

/// The first piece of the way that it can be, with its port: "AD-810 (ORB -8 male)".
QString pieceOf(const Way &way, const Identification &said)
{
    for (const Piece &piece : way.pieces) {
        if (const PartPort *port = portOf(*piece.part, said))
            return CaliperWords::tr("%1 (%2)").arg(flarestock::said(piece.part->number),
                                                   saidPort(port->port));
    }
    return {};
}

QString wanted(const PlacedJoint &joint, const Identification &said)
{
    if (joint.way) {
        if (const QString piece = pieceOf(*joint.way, said); !piece.isEmpty())
            return CaliperWords::tr("wants %1").arg(piece);
    }
    for (const Way &other : joint.others) {
        if (const QString piece = pieceOf(other, said); !piece.isEmpty())
            return CaliperWords::tr("could be made with %1").arg(piece);
    }
    return {};
}

void addJoints(std::vector<Row> &rows, std::size_t most, const Expansion &expansion,
               const Identification &said)
{
    for (const PlacedJoint &joint : expansion.joints) {
        if (rows.size() >= most)
            return;
        const QString detail = wanted(joint, said);
        const QString id = flarestock::said(joint.id);
        if (!detail.isEmpty())
            rows.push_back({QString(QStringLiteral("joint|") + id),
                            {QStringLiteral("joint"), flarestock::said(joint.at), detail, id}});
    }
}

std::vector<Port> portsOf(const Identification &said)
{
    std::vector<Port> ports;
    for (const Candidate &one : said.candidates)
        ports.insert(ports.end(), one.ports.begin(), one.ports.end());
    return ports;
}

void addFree(std::vector<Row> &rows, std::size_t most, const WorkedOut &worked,
             const Identification &said)
{
    for (const PartIndex at : worked.catalogue->withAny(portsOf(said))) {
        if (rows.size() >= most)
            return;
        const Part &part = worked.catalogue->parts()[at];
        const auto lying = worked.shelf->find(part.number);
        if (lying == worked.shelf->end() || lying->second.free.amount.sign() <= 0)
            continue;
        const FreeStock &stock = lying->second;
        const QString place =
            stock.places.empty() ? QString() : flarestock::said(stock.places.front().place);
        const QString number = flarestock::said(part.number);
        rows.push_back(
            {QString(QStringLiteral("shelf|") + number),
             {QStringLiteral("shelf"), number,
              CaliperWords::tr("%1; %2 in %3")
                  .arg(saidPort(portOf(part, said)->port), saidQuantity(stock.free), place),
              number}});
    }
}

} // namespace

/// A figure with one point is taken as it stands: no thread is thousands of anything across.
std::optional<Caliper> caliperTyped(const QString &typed)
{
    static const QRegularExpression whole(QStringLiteral("^\\s*(od|male|bore|id|female)\\b(.*)$"),
                                          QRegularExpression::CaseInsensitiveOption);
    static const QRegularExpression measure(
        QStringLiteral("(?<![0-9.,])([0-9][0-9./ ]*)\\s*(mm|in|\"|tpi|deg|°)"),
        QRegularExpression::CaseInsensitiveOption);
    const auto said = whole.match(unlocalised(typed));
    if (!said.hasMatch())
        return {};
    const QString first = said.captured(1).toCaseFolded();
    const QString rest = said.captured(2).toCaseFolded();
    Caliper caliper;
    caliper.gender = first == QStringLiteral("od") || first == QStringLiteral("male")
                         ? Gender::Male
                         : Gender::Female;
    for (auto found = measure.globalMatch(rest); found.hasNext();) {
        const auto one = found.next();
        const auto value = number(one.captured(1));
        if (!value || !take(caliper, *value, one.captured(2)))
            return {};
    }
    caliper.flatSeat = rest.contains(QStringLiteral("flat"));
    caliper.tapered = rest.contains(QStringLiteral("taper"));
    return caliper.diameterMm > 0 ? std::optional(caliper) : std::nullopt;
}

std::vector<Row> caliperRows(const WorkedOut &worked, const Caliper &caliper, int most)
{
    const Identification said = identify(caliper);
    QStringList threads;
    for (const Candidate &one : said.candidates)
        threads.append(flarestock::said(one.thread));
    const QString title =
        threads.isEmpty() ? CaliperWords::tr("no thread") : threads.join(QStringLiteral(", "));
    std::vector<Row> rows{{QStringLiteral("measure|"),
                           {QStringLiteral("measure"), title, inWords(said.why), QString()}}};
    addJoints(rows, static_cast<std::size_t>(most), *worked.expansion, said);
    addFree(rows, static_cast<std::size_t>(most), worked, said);
    return rows;
}

} // namespace flarestock
