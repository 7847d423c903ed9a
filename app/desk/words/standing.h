// SPDX-License-Identifier: MIT
//
// Standing: how a joint stands, or how grave a finding is, as one of seven marks. Each mark is a
// shape of its own and a sentence of its own, so that neither colour nor a good eye is needed.

#pragma once

#include "model/checks/finding.h"
#include "model/systems/expansion.h"

#include <QObject>
#include <QtQml/qqmlregistration.h>

namespace flarestock {

class Standing : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("a list of names")
public:
    enum Mark {
        Made,    ///< Made for each other: a full disc with a tick.
        Needs,   ///< Holds with a ring, washer or sealant, which the bill has: a ring round a dot.
        Caution, ///< Made to fit, with something to know: a triangle.
        Trap,    ///< Screws together but leaks, jams or goes in loose: a square with a cross.
        Open,    ///< Nothing closes it, or an aid is wanting: a diamond whose halves do not meet.
        Note,    ///< Something to know: a page with lines.
        Short,   ///< Not on the shelf: a broken circle.
    };
    Q_ENUM(Mark)
};

[[nodiscard]] Standing::Mark standing(const PlacedJoint &joint);
[[nodiscard]] Standing::Mark standing(const Link &link);
[[nodiscard]] Standing::Mark standing(const Finding &finding);
/// How grave for the eye: open and trapped before caution before the rest.
[[nodiscard]] int gravity(Standing::Mark mark);

/// "made for each other", "screws together, but leaks" …; for a trap, which one it is.
[[nodiscard]] QString saidStanding(const PlacedJoint &joint);
[[nodiscard]] QString saidVerdict(Verdict verdict);
/// "ORB -8 female"; "no such port" where the expansion found none to name.
[[nodiscard]] QString saidPort(const Port &port);
/// Whether pieces of it have to be bought.
[[nodiscard]] bool lacksPieces(const PlacedJoint &joint);

} // namespace flarestock
