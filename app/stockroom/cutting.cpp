// SPDX-License-Identifier: MIT

#include "app/stockroom/cutting.h"

#include "app/stockroom/asked.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::int64_t MostKerf = 8 * UsualKerf; // 1/2 in

std::vector<Decimal> lengthsOf(const std::map<BalanceKey, std::int64_t> &pieces)
{
    std::vector<Decimal> lengths;
    lengths.reserve(pieces.size());
    for (const auto &[key, length] : pieces)
        lengths.push_back(Decimal(length));
    return lengths;
}

} // namespace

NamedPieces::NamedPieces(const std::map<BalanceKey, std::int64_t> &pieces, const CutLoss &loss)
    : m_pieces(lengthsOf(pieces), Decimal(loss.kerf))
{
    for (const auto &[key, length] : pieces)
        m_names.push_back(key);
}

std::optional<CutFrom> NamedPieces::cut(std::int64_t length)
{
    const auto piece = m_pieces.cutOff(Decimal(length));
    return piece ? std::optional(CutFrom{m_names[*piece], length}) : std::nullopt;
}

std::int64_t NamedPieces::longest() const
{
    return m_pieces.longest().toInt64().value_or(0);
}

CutLoss usualCutLoss() noexcept
{
    return {UsualKerf, 64 * UsualKerf};
}

Result<std::int64_t> kerfAsked(const std::string &typed, const Part &part)
{
    auto kerf = quantityAsked(typed, part, "--kerf");
    if (!kerf)
        return kerf;
    if (*kerf < 0)
        return problem("--kerf " + typed, "is below zero", "Write what the blade takes: 1/16 in.");
    if (*kerf > MostKerf)
        return problem("--kerf " + typed, "is more than 1/2 in, and no blade takes so much",
                       "Write what the blade takes, such as 1/16 in; a rest too short to keep is "
                       "said by --least.");
    return kerf;
}

Result<std::vector<CutFrom>> cuttingPlan(const Part &part, std::vector<std::int64_t> lengths,
                                         const std::map<BalanceKey, std::int64_t> &pieces,
                                         const CutLoss &loss)
{
    NamedPieces left(pieces, loss);
    std::sort(lengths.begin(), lengths.end(), std::greater<>());
    std::vector<CutFrom> plan;
    for (const std::int64_t length : lengths) {
        const auto cut = left.cut(length);
        if (!cut)
            return problem(part.number,
                           "has no piece of " + spoken(length, part) +
                               "; the longest that is left has " + spoken(left.longest(), part),
                           "Get more, or cut another piece first.");
        plan.push_back(*cut);
    }
    return plan;
}

std::vector<Movement> cutMovements(const std::vector<CutFrom> &cuts,
                                   std::map<BalanceKey, std::int64_t> pieces,
                                   const CutAction &action)
{
    std::vector<Movement> movements;
    std::map<BalanceKey, std::int64_t> waste;
    for (const CutFrom &cut : cuts) {
        Movement movement = movementOf(cut.piece, cut.length, action.to, action.deed);
        movement.document = action.document;
        movements.push_back(std::move(movement));
        std::int64_t &left = pieces[cut.piece];
        const std::int64_t rest = leftBehind(left, cut.length, action.loss.kerf);
        waste[cut.piece] += left - cut.length - rest;
        left = rest;
    }
    for (auto &[piece, lost] : waste) {
        const std::int64_t rest = pieces[piece];
        if (rest < action.loss.leastUseful)
            lost += rest;
        if (lost <= 0)
            continue;
        movements.push_back(movementOf(piece, lost, action.scrap, Deed::Scrap));
        movements.back().why = rest < action.loss.leastUseful && rest > 0
                                   ? "kerf, and a rest too short to use"
                                   : "kerf";
    }
    return movements;
}

} // namespace flarestock
