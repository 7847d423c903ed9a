// SPDX-License-Identifier: MIT
//
// Cut plans against brute force: every manner of cutting the lengths off the pieces and new coils,
// cut after cut as the saw goes, for all small tasks of a set and for larger random ones.

#include "model/parts/cutting_plan/cut_plan.h"

#include <QTest>

#include <functional>
#include <random>
#include <set>

using namespace flarestock;

namespace {

using Lengths = std::vector<std::int64_t>;

/// A piece or coil, what is left of it, and how much in how many cuts is off it.
struct Piece {
    std::int64_t had = 0;
    bool isNew = false;
    std::int64_t left = 0;
    std::int64_t off = 0;
    std::int64_t cuts = 0;
};

/// What a piece adds to a measure, by what the header says of it.
std::int64_t added(const CutTask &task, const Piece &piece, CutMeasure measure)
{
    switch (measure) {
    case CutMeasure::Coils:
        return piece.isNew ? 1 : 0;
    case CutMeasure::FromCoils: {
        const auto longest = std::max_element(task.pieces.begin(), task.pieces.end());
        return piece.had >= (task.coil ? *task.coil : *longest) ? piece.off : 0;
    }
    case CutMeasure::Waste:
        return piece.had - piece.off - (piece.left < task.leastUseful ? 0 : piece.left);
    case CutMeasure::Started:
        return 1;
    case CutMeasure::Longer: {
        std::set<std::int64_t> shorter;
        for (const std::int64_t other : task.pieces)
            if (piece.isNew || other < piece.had)
                shorter.insert(other);
        return static_cast<std::int64_t>(shorter.size()) * piece.cuts;
    }
    case CutMeasure::Short:
        break;
    }
    return 0;
}

Lengths comesTo(const CutTask &task, CutAim aim, const std::vector<Piece> &pieces,
                std::int64_t lacking)
{
    Lengths all;
    for (const CutMeasure measure : measuresOf(aim)) {
        all.push_back(measure == CutMeasure::Short ? lacking : 0);
        for (const Piece &piece : pieces)
            if (piece.cuts > 0)
                all.back() += added(task, piece, measure);
    }
    return all;
}

/// The lowest that any manner of cutting comes to.
Lengths byBruteForce(const CutTask &task, CutAim aim)
{
    std::vector<Piece> pieces;
    for (const std::int64_t length : task.pieces)
        pieces.push_back({length, false, length, 0, 0});
    if (task.coil)
        pieces.insert(pieces.end(), task.lengths.size(), {*task.coil, true, *task.coil, 0, 0});
    std::optional<Lengths> best;
    const std::function<void(std::size_t, std::int64_t)> cut = [&](std::size_t at,
                                                                   std::int64_t lacking) {
        if (at == task.lengths.size()) {
            auto sums = comesTo(task, aim, pieces, lacking);
            if (!best || sums < *best)
                best = std::move(sums);
            return;
        }
        const std::int64_t length = task.lengths[at];
        cut(at + 1, lacking + length);
        for (Piece &piece : pieces) {
            const Piece before = piece;
            if (length > piece.left)
                continue;
            piece.left = leftBehind(piece.left, length, task.kerf);
            piece.off += length;
            ++piece.cuts;
            cut(at + 1, lacking);
            piece = before;
            if (piece.isNew && piece.cuts == 0)
                break; // The next new coil is no other.
        }
    };
    cut(0, 0);
    return *best;
}

/// Whether every length is cut once or lacks, each piece is cut once, and holds its cuts.
bool isWhole(const CutTask &task, const CutPlan &plan)
{
    std::vector<int> cut(task.lengths.size(), 0);
    std::vector<int> used(task.pieces.size(), 0);
    for (const std::size_t length : plan.lacking)
        ++cut.at(length);
    for (const auto &from : plan.from) {
        if (from.piece && (++used.at(*from.piece) != 1 || task.pieces[*from.piece] != from.had))
            return false;
        if (!from.piece && task.coil != from.had)
            return false;
        std::int64_t left = from.had;
        std::int64_t off = 0;
        for (const std::size_t length : from.lengths) {
            ++cut.at(length);
            if (task.lengths[length] > left)
                return false;
            left = leftBehind(left, task.lengths[length], task.kerf);
            off += task.lengths[length];
        }
        if (from.lengths.empty() || from.rest != (left < task.leastUseful ? 0 : left) ||
            from.waste != from.had - off - from.rest)
            return false;
    }
    return std::all_of(cut.begin(), cut.end(), [](int times) { return times == 1; });
}

std::string said(const CutTask &task)
{
    std::string text = "pieces";
    for (const auto length : task.pieces)
        text += " " + std::to_string(length);
    text += ", lengths";
    for (const auto length : task.lengths)
        text += " " + std::to_string(length);
    return text + ", kerf " + std::to_string(task.kerf) + ", least " +
           std::to_string(task.leastUseful) + ", coil " + std::to_string(task.coil.value_or(0));
}

/// Whether both aims' plans are the best; says the task that is not.
bool areBest(const CutTask &task)
{
    for (const CutAim aim : {CutAim::RemnantsFirst, CutAim::LeastWaste}) {
        const CutPlan plan = planCuts(task, aim);
        if (isWhole(task, plan) && !plan.bound &&
            plan.measured(task, aim) == byBruteForce(task, aim))
            continue;
        qWarning("%s: %s", std::string(text(aim)).c_str(), said(task).c_str());
        return false;
    }
    return true;
}

/// All selections of at most `most`, with repeats, in rising order.
std::vector<Lengths> selections(const Lengths &from, std::size_t most)
{
    std::vector<Lengths> all{{}};
    for (std::size_t i = 0; i < all.size(); ++i) {
        if (all[i].size() == most)
            continue;
        for (const std::int64_t next : from)
            if (all[i].empty() || next >= all[i].back()) {
                Lengths longer = all[i];
                longer.push_back(next);
                all.push_back(std::move(longer));
            }
    }
    return all;
}

} // namespace

class CutPlanBruteForceTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void allSmallTasks();
    void randomTasks();
};

void CutPlanBruteForceTest::allSmallTasks()
{
    int tasks = 0;
    for (const Lengths &pieces : selections({3, 5, 8}, 2))
        for (const Lengths &lengths : selections({1, 2, 4, 7}, 3))
            for (const std::int64_t kerf : {0, 1})
                for (const auto &coil :
                     {std::optional<std::int64_t>(), std::optional<std::int64_t>(6)}) {
                    ++tasks;
                    QVERIFY(areBest({pieces, lengths, kerf, 2, coil}));
                }
    QCOMPARE(tasks, 10 * 35 * 4);
}

void CutPlanBruteForceTest::randomTasks()
{
    const auto given = qEnvironmentVariableIntValue("FLARESTOCK_SEED");
    const unsigned seed = given != 0 ? static_cast<unsigned>(given) : 1939u;
    qInfo("seed %u", seed);
    std::mt19937 random(seed);
    const auto pick = [&random](std::int64_t least, std::int64_t most) {
        return least +
               static_cast<std::int64_t>(random() % static_cast<unsigned>(most - least + 1));
    };
    constexpr std::int64_t Sixteenth = 12'700; // of an inch, in 125 nm
    for (int round = 0; round < 60; ++round) {
        CutTask task;
        for (auto count = pick(1, 4); count > 0; --count)
            task.pieces.push_back(pick(16, 16 * 60) * Sixteenth);
        for (auto count = pick(1, 5); count > 0; --count)
            task.lengths.push_back(pick(16, 16 * 30) * Sixteenth);
        task.kerf = pick(0, 2) * Sixteenth + pick(0, 1); // Now and then no round one.
        task.leastUseful = pick(0, 8) * 16 * Sixteenth;
        if (pick(0, 1) == 1)
            task.coil = pick(16 * 20, 16 * 48) * Sixteenth;
        QVERIFY(areBest(task));
    }
}

QTEST_APPLESS_MAIN(CutPlanBruteForceTest)
#include "tst_cut_plan_equals_brute_force.moc"
