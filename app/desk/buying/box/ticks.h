// SPDX-License-Identifier: MIT
//
// Ticks: what is to be in a box that came of an order, to be ticked off piece by piece: a row for
// each line, or for each piece of it where a piece bears a mark or has a box of its own, and below
// such a piece what lies in its box. Out of what is ticked come the words by which the buyer's code
// receives it.
//
//   [x] 1  pump EP-460          serial 40718 → H5
//       [ ] 1  bracket BK-460                       not in the box: a claim
//       [x] 2  cushion band
//
// A box into which nobody has looked says nothing of what lacks: its contents count from the first
// of them that is ticked.

#pragma once

#include "app/buyer/receiving/receiving_words.h"

namespace flarestock {

enum class TickMark : std::uint8_t { None, Serial, Batch, PieceName };

struct Tick {
    const Part *part = nullptr;
    std::optional<std::size_t> inBoxOf; ///< The tick of the piece whose box it lies in.
    std::int64_t count = 0;             ///< That should be there; smallest units.
    std::int64_t came = 0;              ///< That is.
    std::int64_t boxes = 1;             ///< Of contents: in how many boxes like it.
    TickMark marks = TickMark::None;    ///< What a piece of it bears.
    std::string mark = {};              ///< As it was read; "-" where it bears none.
    std::string to = {};                ///< The place that it goes to.

    [[nodiscard]] bool isContent() const { return inBoxOf.has_value(); }
};

class Ticks {
public:
    Ticks() = default;
    /// All that is still to come of an order; nothing is ticked.
    Ticks(const BookedOrder &order, const Workshop &workshop);

    [[nodiscard]] const std::vector<Tick> &all() const { return m_ticks; }
    [[nodiscard]] Tick &at(std::size_t row) { return m_ticks.at(row); }
    /// All of it is there, or none of it.
    void toggle(std::size_t row);
    /// So much is there; not below zero. A content that is there has its piece there, too.
    void setCame(std::size_t row, std::int64_t came);
    /// One more of the first row of the part that is not complete; the last one where all are.
    /// Gives its row; nothing where the part is none of the box.
    std::optional<std::size_t> scanned(const std::string &part);
    /// So much of a part is said not to have come, smallest units: no more than the rest is there.
    void isNotThere(const Part &part, std::int64_t amount);
    /// Whose mark it is that is read with that row in hand: its own, or the piece's in whose box it
    /// lies; where that has one, the next of its part without. Nothing where none wants one.
    [[nodiscard]] std::optional<std::size_t> wantsMark(std::size_t row) const;
    /// A mark that was read is that of a row; a piece that bears its own is there.
    void setMark(std::size_t row, const std::string &mark);
    /// Whether anybody has looked into the box of a piece.
    [[nodiscard]] bool isLookedInto(std::size_t piece) const;
    /// What a box that was looked into lacks of a content; smallest units.
    [[nodiscard]] std::int64_t lacks(std::size_t content) const;
    /// Pieces and contents that are there, and that should be.
    [[nodiscard]] std::pair<int, int> ticked() const;

    /// Adds lines, marks, places and what boxes lack.
    void tell(ReceivingWords &words) const;

private:
    void addLine(const OrderLine &line, const BookedOrder &order, const Workshop &workshop);
    void addContents(std::size_t piece, const Workshop &workshop);
    void tellMark(ReceivingWords &words, const Tick &tick) const;
    void tellBox(ReceivingWords &words, std::size_t piece) const;

    std::vector<Tick> m_ticks;
};

} // namespace flarestock
