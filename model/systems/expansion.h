// SPDX-License-Identifier: MIT
//
// Expansion: a build worked out. Which part stands at which station, which hose makes which run,
// how each joint is closed, and the bill of everything that takes, each line with its reasons.

#pragma once

#include "model/joints/sharing/sharing.h"
#include "model/parts/free_stock.h"
#include "model/systems/sizing/worked_answer.h"
#include "model/systems/template.h"

namespace flarestock {

struct PlacedStation {
    std::string id; ///< With the modules before it: "filters/prefilter".
    const Station *station = nullptr;
    const Part *part = nullptr;       ///< nullptr: nothing in the catalogue meets the demand.
    bool picked = false;              ///< The builder has decided on it.
    std::string why;                  ///< "100 µm before the pump; 1 on the shelf"
    const Part *better = nullptr;     ///< What the program would take now, where a pick stands.
    std::vector<const Part *> others; ///< Other parts that meet the demand, best first.
    Answers answers;                  ///< Those that hold where it stands (a module has its own).
};

struct PlacedJoint {
    std::string id;      ///< "supply.start", "supply.end", "plug:tee.gauge"
    std::string at;      ///< "pump inlet", as said: station title and port.
    std::string run;     ///< Id of its run.
    std::string station; ///< Id of its station.
    Port from; ///< The station's port. Its size is empty where there is none to name: no part
               ///< stands there, or the part has no port of that name.
    Port to;   ///< Cut hose end, tube end or the other station's port (empty size as above); of a
               ///< plugged port the plug's, or the port's own where nothing plugs it.
    std::optional<Way> way; ///< Nothing: open. A plug is its way's last piece: as many links as
                            ///< pieces.
    bool picked = false;
    bool outdone = false;       ///< Picked, and the program would now take the first of the others.
    std::vector<Way> others;    ///< Other ways, best first, the chosen one left out.
    std::optional<Fluid> fluid; ///< What its pieces have to stand.
    std::optional<int> angleDegrees; ///< Of its hose end, where one was asked for.
};

struct PlacedRun {
    std::string id;
    const Run *run = nullptr;
    std::string from; ///< Station ids.
    std::string to;
    const Part *line =
        nullptr; ///< Hose or tubing; nullptr for a direct joint or where none is found.
    bool picked = false;
    const Part *better = nullptr;
    std::vector<const Part *> others; ///< Other lines for it, best first: as the template asks,
                                      ///< then other makes of hose, then a size up or down.
    Quantity length;                  ///< In the line's unit; zero for a direct joint.
    double riseM = 0;                 ///< Its end above its beginning.
    double forwardM = 0;              ///< Its end before its beginning, towards the car's nose.
    int dash = 0;
    std::string wanted; ///< "hose -8 PTFE-S", for a finding where none is found.
    std::vector<std::string>
        joints; ///< Ids, in flow order: start and end, or the one direct joint.
};

/// What the joints come to together.
struct JointsTogether {
    WayRank rank;
    std::optional<ShareBound> bound; ///< Nothing: no choice of ways is better.
    bool isSearched = false;         ///< Not each joint had its best alone.
};

struct BillLine {
    const Part *part = nullptr;
    Quantity need;                     ///< In the part's unit; more than zero.
    std::vector<Quantity> cuts;        ///< For what is cut: the single lengths, longest first.
    std::vector<std::string> why;      ///< Each reason once, in flow order.
    std::vector<std::string> stations; ///< Ids of the stations it serves, for grouping.
    bool consumed = true;              ///< False: a tool, which comes back.

    /// So much of it for a station and, where it lies in one, a run; empty: for the whole build.
    struct Use {
        std::string station;
        std::string run;
        Decimal amount; ///< More than zero, in the part's unit, of one copy of the build.
    };
    /// In flow order, each place once. All of them together may be more than the need of what
    /// serves several places (a tool, what is used by measure).
    std::vector<Use> uses;
    void use(Use more);
};

/// How much of the line's need a stock gives (nothing: no stock of it), so that the line is short
/// of the rest: of what is cut whole cuts only; of a tool, which comes back, also what is promised
/// to another build; of what nobody counts all, unless it is out.
[[nodiscard]] Decimal allotted(const BillLine &line, const FreeStock *stock);

struct Expansion {
    std::string templateId;
    std::string title;
    std::string system;
    std::optional<Fluid> fluid;
    FilterRule filters = FilterRule::None;
    Answers answers;                     ///< Complete: every question with its answer.
    std::vector<WorkedAnswer> workedOut; ///< Of those that are asked, in order of the questions.
    std::vector<PlacedStation> stations; ///< In flow order, nested ones in place.
    std::vector<PlacedRun> runs;
    std::vector<PlacedJoint> joints;        ///< In flow order.
    std::vector<BillLine> lines;            ///< By first reason in flow order; a part stands once.
    std::optional<JointsTogether> together; ///< Where the joints were chosen together.
    std::shared_ptr<const TemplateBook> book; ///< Keeps `station` and `run` alive.
    std::vector<std::string> notes;           ///< What expand() has to say that no check can see.

    [[nodiscard]] const PlacedStation *station(std::string_view id) const noexcept;
    [[nodiscard]] const PlacedRun *run(std::string_view id) const noexcept;
    [[nodiscard]] const PlacedJoint *joint(std::string_view id) const noexcept;
};

} // namespace flarestock
