// SPDX-License-Identifier: MIT

#include "app/buyer/receiving/marks.h"

#include "app/stockroom/bench/lot_names.h"
#include "app/stockroom/byhand/serials.h"
#include "model/exact/case_fold.h"

#include <algorithm>
#include <map>

namespace flarestock {

namespace {

/// "EP-460=BK-460=SN31" cut at its equals signs; at most three words, the last keeps the rest.
std::vector<std::string> wordsOf(const std::string &typed)
{
    std::vector<std::string> words;
    std::size_t from = 0;
    while (words.size() < 2) {
        const auto equals = typed.find('=', from);
        if (equals == std::string::npos)
            break;
        words.push_back(typed.substr(from, equals - from));
        from = equals + 1;
    }
    words.push_back(typed.substr(from));
    return words;
}

Problem notSaid(const std::string &typed, const std::string &form)
{
    return {typed, "does not say what of", "Write it as " + form + "."};
}

/// Cuts `quantity` out of unmarked pieces of the part, from the last on; what is cut off goes
/// behind them as `made` of them says. Problem: so much of it did not come.
template <class Made>
Result<void> cutOff(std::vector<ComingPiece> &pieces, const std::string &part,
                    std::int64_t quantity, Made &&made)
{
    for (std::size_t i = pieces.size(); i > 0 && quantity > 0; --i) {
        ComingPiece &piece = pieces[i - 1];
        if (!sameFolded(piece.part->number, part) || !made(piece, false))
            continue;
        const std::int64_t cut = std::min(quantity, piece.quantity);
        quantity -= cut;
        if (cut == piece.quantity) {
            made(piece, true);
            continue;
        }
        piece.quantity -= cut;
        ComingPiece off = piece;
        off.quantity = cut;
        made(off, true);
        pieces.insert(pieces.begin() + static_cast<std::ptrdiff_t>(i), std::move(off));
    }
    if (quantity > 0)
        return problem(part, "did not come so often",
                       "Look again at what was said of its lots, damages and boxes.");
    return {};
}

Result<const Part *> partAmong(const std::vector<ComingPiece> &pieces, const std::string &typed)
{
    for (const ComingPiece &piece : pieces) {
        if (sameFolded(piece.part->number, typed))
            return piece.part;
    }
    return problem(typed, "is not among what came", "Name a part that is: --line.");
}

/// All unmarked pieces of a part.
std::int64_t unmarkedOf(const std::vector<ComingPiece> &pieces, const Part &part)
{
    std::int64_t sum = 0;
    for (const ComingPiece &piece : pieces)
        sum += piece.part == &part && piece.lot.empty() ? piece.quantity : 0;
    return sum;
}

Result<void> name(std::vector<ComingPiece> &pieces, const Part &part, const std::string &lot,
                  std::int64_t quantity)
{
    if (lot.empty())
        return tl::unexpected(notSaid(part.number, "--lot " + part.number + "=B7"));
    return cutOff(pieces, part.number, quantity, [&](ComingPiece &piece, bool now) {
        if (!now)
            return piece.lot.empty();
        piece.lot = lot;
        return true;
    });
}

Result<void> nameLots(std::vector<ComingPiece> &pieces, const ReceivingWords &asked)
{
    for (const std::string &typed : asked.serials) {
        const auto words = wordsOf(typed);
        if (words.size() != 2)
            return tl::unexpected(notSaid(typed, "--serial EP-460=SN31"));
        const auto part = partAmong(pieces, words[0]);
        if (!part)
            return tl::unexpected(part.error());
        if (auto named = name(pieces, **part, words[1], 1); !named)
            return named;
    }
    for (const bool withQuantity : {true, false}) { // Whoever says none takes what is left.
        for (const std::string &typed : asked.lots) {
            const auto words = wordsOf(typed);
            if (words.size() < 2)
                return tl::unexpected(notSaid(typed, "--lot EL-10=B7, or PT-6=COIL-17=\"20 ft\""));
            if ((words.size() == 3) != withQuantity)
                continue;
            const auto part = partAmong(pieces, words[0]);
            if (!part)
                return tl::unexpected(part.error());
            const auto quantity = withQuantity
                                      ? quantityAsked(words[2], **part, "--lot " + words[0])
                                      : Result<std::int64_t>(unmarkedOf(pieces, **part));
            if (!quantity || *quantity <= 0)
                return problem(typed, "is of nothing that came without a mark",
                               "Look again at the lots and their quantities.");
            if (auto named = name(pieces, **part, words[1], *quantity); !named)
                return named;
        }
    }
    return {};
}

Result<void> setAside(std::vector<ComingPiece> &pieces, const ReceivingWords &asked)
{
    for (const auto &[typed, quantity] : asked.damaged) {
        const auto part = partAmong(pieces, typed);
        if (!part)
            return tl::unexpected(part.error());
        const auto count = quantityAsked(quantity, **part, "--damaged " + typed);
        if (!count)
            return tl::unexpected(count.error());
        auto done = cutOff(pieces, (*part)->number, *count, [](ComingPiece &piece, bool now) {
            if (!now)
                return piece.condition == PieceCondition::New;
            piece.condition = PieceCondition::NotToBeUsed;
            return true;
        });
        if (!done)
            return done;
    }
    return {};
}

/// The one piece of a part whose box is meant, where nobody says its mark: the only one there is,
/// or the only one that lacks something already.
ComingPiece *onlyOne(std::vector<ComingPiece> &pieces, const Part &part)
{
    ComingPiece *lacks = nullptr;
    ComingPiece *any = nullptr;
    std::size_t lacking = 0;
    std::size_t all = 0;
    for (ComingPiece &piece : pieces) {
        if (piece.part != &part)
            continue;
        any = &piece;
        all += piece.quantity == 1 ? 1 : 2;
        if (!piece.missing.empty()) {
            lacks = &piece;
            ++lacking;
        }
    }
    return all == 1 ? any : lacking == 1 ? lacks : nullptr;
}

/// The piece whose box is meant; one that bears no mark is cut off and gets a name.
Result<ComingPiece *> boxOf(std::vector<ComingPiece> &pieces, const Part &part,
                            const std::string &lot, const Workshop &workshop)
{
    for (ComingPiece &piece : pieces) {
        if (!lot.empty() && piece.part == &part && piece.lot == lot)
            return &piece;
    }
    if (!lot.empty())
        return problem(part.number + " " + lot, "is not among what came", "Name the lot it bears.");
    std::set<LotKey> taken = lotNames(part.number, workshop);
    for (const ComingPiece &piece : pieces)
        taken.insert({piece.part->number, piece.lot});
    const std::string fresh = nextPieceOf(part.number, "box", taken);
    if (ComingPiece *only = onlyOne(pieces, part)) {
        if (only->lot.empty())
            only->lot = fresh;
        return only;
    }
    if (unmarkedOf(pieces, part) == 0)
        return problem(part.number, "came under several marks",
                       "Say whose box it is: --missing " + part.number + "=PART=LOT.");
    if (const auto cut = name(pieces, part, fresh, 1); !cut)
        return tl::unexpected(cut.error());
    return &*std::find_if(pieces.begin(), pieces.end(), [&](const ComingPiece &piece) {
        return piece.part == &part && piece.lot == fresh;
    });
}

/// How many of a part lie in the box of another.
std::int64_t countInBox(const Part &part, const std::string &content)
{
    for (const PartCount &one : part.box) {
        if (sameFolded(one.part, content))
            return one.count.rescaled(0, Rounding::Ceiling).toInt64().value_or(0);
    }
    return 0;
}

Result<void> lookIntoBoxes(std::vector<ComingPiece> &pieces, const ReceivingWords &asked,
                           const Workshop &workshop)
{
    for (const std::string &typed : asked.missing) {
        const auto words = wordsOf(typed);
        if (words.size() < 2)
            return tl::unexpected(notSaid(typed, "--missing EP-460=BK-460"));
        const auto part = partAmong(pieces, words[0]);
        if (!part)
            return tl::unexpected(part.error());
        const auto content = partAsked(words[1], workshop.catalogue);
        if (!content)
            return tl::unexpected(content.error());
        const auto box = boxOf(pieces, **part, words.size() == 3 ? words[2] : "", workshop);
        if (!box)
            return tl::unexpected(box.error());
        auto &missing = (*box)->missing;
        const auto before = std::count(missing.begin(), missing.end(), (*content)->number);
        if (before >= countInBox(**part, (*content)->number) * (*box)->quantity)
            return problem((*content)->number, "lies not so often in the box of " + (*part)->number,
                           "Name what the catalogue has in it.");
        missing.push_back((*content)->number);
    }
    for (const std::string &typed : asked.complete) {
        const auto part = partAmong(pieces, typed);
        if (!part)
            return tl::unexpected(part.error());
        for (ComingPiece &piece : pieces)
            piece.complete = piece.complete || (piece.part == *part && piece.missing.empty());
    }
    return {};
}

Result<void> insistOnMarks(const std::vector<ComingPiece> &pieces, const ReceivingWords &asked)
{
    for (const ComingPiece &piece : pieces) {
        const Part &part = *piece.part;
        const bool excused =
            std::any_of(asked.unmarked.begin(), asked.unmarked.end(),
                        [&](const std::string &one) { return sameFolded(one, part.number); });
        if (!piece.lot.empty() || (excused && !isLength(part.unit)))
            continue;
        const std::string &number = part.number;
        const std::string unmarked = "; or --unmarked " + number + ".";
        if (isLength(part.unit))
            return problem(number, "comes in pieces, and some have no name",
                           "Name each: --lot " + number + "=COIL-17=\"20 ft\".");
        if (isKeptBySerial(part))
            return problem(number, "is kept by its serial",
                           "Say it: --serial " + number + "=SN31" + unmarked);
        if (part.kind == Kind::Element)
            return problem(number, "is kept by its batch",
                           "Say it: --lot " + number + "=B7" + unmarked);
    }
    return {};
}

/// Neither twice on this paper nor once more than it is here.
Result<void> eachSerialOnce(const std::vector<ComingPiece> &pieces, const Workshop &workshop)
{
    std::map<std::pair<const Part *, std::string>, std::int64_t> coming;
    for (const ComingPiece &piece : pieces)
        coming[{piece.part, folded(piece.lot)}] += piece.quantity;
    for (const ComingPiece &piece : pieces) {
        const auto all = coming.at({piece.part, folded(piece.lot)});
        if (auto one = onePiece(*piece.part, piece.lot, all, workshop.ledger); !one)
            return one;
    }
    return {};
}

} // namespace

Result<void> mark(std::vector<ComingPiece> &pieces, const ReceivingWords &asked,
                  const Workshop &workshop)
{
    if (auto named = nameLots(pieces, asked); !named)
        return named;
    if (auto aside = setAside(pieces, asked); !aside)
        return aside;
    if (auto looked = lookIntoBoxes(pieces, asked, workshop); !looked)
        return looked;
    if (auto marked = insistOnMarks(pieces, asked); !marked)
        return marked;
    return eachSerialOnce(pieces, workshop);
}

} // namespace flarestock
