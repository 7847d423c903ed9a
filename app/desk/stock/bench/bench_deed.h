// SPDX-License-Identifier: MIT
//
// Bench deed: what pieces become at the bench: lengths cut off a hose, a hose made up with its two
// ends, a box opened. As a form, as what the stockroom is told, and as what it would come to.

#pragma once

#include "app/desk/stock/deeds/stock_deed.h"
#include "app/stockroom/bench/cutting_off.h"
#include "app/stockroom/bench/making_up.h"
#include "app/stockroom/bench/opening_box.h"

namespace flarestock {

enum class BenchDeed : std::uint8_t {
    Cut,    ///< Lengths off a hose, tubing or wire; to a place, or for a build.
    MakeUp, ///< A hose with its two ends as one tagged piece.
    Open,   ///< What lies in a box goes to stock, with its share of the value.
};

/// Those that are for the part in hand: deedCells().
[[nodiscard]] std::vector<Row> benchRows(const DeedSubject &subject);
[[nodiscard]] std::optional<BenchDeed> benchDeedNamed(const QString &name);

/// The fields of its form, with what is most likely meant.
[[nodiscard]] std::vector<Row> benchFields(BenchDeed deed, const DeedSubject &subject);
/// The ids behind the choices of a field, in their order; empty: none of them.
[[nodiscard]] std::vector<std::string> benchChoices(const QString &field,
                                                    const DeedSubject &subject);

/// What was filled in, by the keys of the fields.
struct BenchFilled {
    BenchDeed deed;
    DeedSubject subject;
    QVariantMap values;

    [[nodiscard]] std::string typed(const char *field) const;
    [[nodiscard]] std::string figures(const char *field) const; ///< As the model reads them.
    [[nodiscard]] std::string chosen(const char *field) const;
};

/// "24 in + 2 x 2 ft 4 in" as three lengths, each as it was typed.
[[nodiscard]] std::vector<std::string> lengthsTyped(const std::string &typed);
[[nodiscard]] CuttingWords cuttingWords(const BenchFilled &filled);
[[nodiscard]] MakingWords makingWords(const BenchFilled &filled);
[[nodiscard]] OpeningWords openingWords(const BenchFilled &filled);

/// The lengths of a hose that a build still wants, longest first, as they can be typed. It is
/// worked out for that; not on the window's thread. Problem: it cannot be.
[[nodiscard]] Result<std::string> lengthsOfBuild(const Workshop &workshop, const BuildPlan &plan,
                                                 const Part &part);
/// With the build's lengths where none are written. Not on the window's thread. Problem: likewise.
[[nodiscard]] Result<CuttingWords> cuttingWordsIn(const BenchFilled &filled, const Workshop &shop);

[[nodiscard]] Pen::MadeBy madeAtBench(const BenchFilled &filled);
/// What was done, as a sentence.
[[nodiscard]] QString saidAtBench(const BenchFilled &filled, const Action &action);

/// What it would come to; nothing is written.
struct BenchOutlook {
    QStringList says;        ///< Sentences, a line each.
    std::vector<Row> pieces; ///< Of a cut: cutCells().
};
/// name cuts segments says; `segments` are the parts of the piece in the order of the saw, each of
/// kind "cut", "waste" or "rest" with its share of the longest piece.
[[nodiscard]] QStringList cutCells();
/// Not on the window's thread: a cut plan, and a build, take their time.
[[nodiscard]] BenchOutlook outlookOf(const BenchFilled &filled, const By &by);

} // namespace flarestock
