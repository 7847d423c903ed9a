// SPDX-License-Identifier: MIT

#include "app/desk/service/piece_card.h"

#include "app/desk/language/sentences.h"
#include "app/desk/service/service_rows.h"
#include "app/desk/service/service_words.h"
#include "app/desk/words/condition_words.h"
#include "app/desk/words/spoken.h"
#include "app/garage/cautions.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr std::size_t DoneMost = 12; ///< So much of what was done is shown, the newest.

struct CardLine {
    QString title;
    QString detail;
    QString figure;
    bool flagged = false;
    QString back = {}; ///< What can be taken back, by its movement or record.
};

class PieceCard {
public:
    explicit PieceCard(const PieceAsked &asked)
        : m_asked(asked), m_book(asked.book), m_life(asked.book.garage.life(asked.at.car)),
          m_piece(asked.book.piece(asked.at))
    {
    }
    void addDue();
    void addUse();
    void addFacts();
    void addDone();
    void addOut();
    [[nodiscard]] std::vector<Row> take() { return std::move(m_rows); }

private:
    void add(const QString &head, const CardLine &line);
    void addOneUse(const QString &title, const Use &use);

    const PieceAsked &m_asked;
    const GarageBook &m_book;
    const CarLife &m_life;
    const FittedPiece *m_piece;
    QString m_head;
    std::vector<Row> m_rows;
};

void PieceCard::add(const QString &head, const CardLine &line)
{
    QStringList says{line.title};
    for (const QString &more : {line.figure, line.detail}) {
        if (!more.isEmpty())
            says.append(more);
    }
    m_rows.push_back({QString(head + u'|' + QString::number(m_rows.size())),
                      {head == m_head ? QString() : head, line.title, line.detail, line.figure,
                       line.flagged, says.join(QStringLiteral(", ")), line.back}});
    m_head = head;
}

/// Each work that counts for it, and by what.
void PieceCard::addDue()
{
    if (!m_piece)
        return;
    const QString head = ServiceWords::tr("What is to be done");
    for (const DueLine *line : m_book.worksOf(*m_piece)) {
        const QString why = saidReasons(line->work);
        const bool isSourced = line->work.interval && !line->work.interval->source.empty();
        add(head,
            {saidStanding(*line, m_book),
             isSourced ? ServiceWords::tr("%1 (%2)").arg(why, inWords(line->work.interval->source))
                       : why,
             {},
             false});
        if (const QString takes = saidTakes(*line, m_asked.units); !takes.isEmpty()) {
            const bool lacks = std::any_of(line->parts.begin(), line->parts.end(),
                                           [](const DuePart &one) { return one.shortBy() > 0; });
            add(head, {ServiceWords::tr("it takes"), takes, {}, lacks});
        }
    }
    if (const QString by = saidProtection(*m_piece, m_book, m_asked.at.car); !by.isEmpty())
        add(head, {ServiceWords::tr("this pump"), by, {}, false});
}

void PieceCard::addOneUse(const QString &title, const Use &use)
{
    add(ServiceWords::tr("How far it ran"), {title, saidUse(use), {}, false});
}

void PieceCard::addUse()
{
    if (!m_piece)
        return;
    addOneUse(ServiceWords::tr("since it was fitted, %1").arg(saidDate(m_piece->since)),
              m_piece->sinceFitted);
    if (m_piece->worked != m_piece->since)
        addOneUse(ServiceWords::tr("since it was washed, %1").arg(saidDate(m_piece->worked)),
                  m_piece->sinceWorked);
    if (m_piece->seen != m_piece->since && m_piece->seen != m_piece->worked)
        addOneUse(ServiceWords::tr("since it was looked at, %1").arg(saidDate(m_piece->seen)),
                  m_piece->sinceSeen);
    const Use &life = m_piece->life;
    if (life.runs != m_piece->sinceFitted.runs || life.hours != m_piece->sinceFitted.hours)
        addOneUse(ServiceWords::tr("in all, wherever it was"), life);
}

void PieceCard::addFacts()
{
    if (!m_piece)
        return;
    const QString head = ServiceWords::tr("What is known of it");
    if (const QString washed = saidWash(*m_piece, m_book, m_asked.at.car); !washed.isEmpty())
        add(head, {ServiceWords::tr("washed"), {}, washed, false});
    if (!m_piece->made.empty())
        add(head, {ServiceWords::tr("made, cured or opened"), {}, saidDate(m_piece->made), false});
    if (!m_piece->useBy.empty())
        add(head, {ServiceWords::tr("may be used until"), {}, saidDate(m_piece->useBy), false});
    if (m_piece->inside)
        add(head, {ServiceWords::tr("came inside its filter"), {}, {}, false});
    if (!m_piece->note.empty())
        add(head, {ServiceWords::tr("noted last"), said(m_piece->note), {}, false});
}

void PieceCard::addDone()
{
    const QString head = ServiceWords::tr("What was done here");
    std::size_t shown = 0;
    for (auto one = m_life.done.rbegin(); one != m_life.done.rend() && shown < DoneMost; ++one) {
        if (one->position != m_asked.at.position)
            continue;
        ++shown;
        QStringList detail{saidPiece(one->piece)};
        if (!one->who.empty())
            detail.append(ServiceWords::tr("by %1").arg(said(one->who)));
        if (!one->note.empty())
            detail.append(said(one->note));
        const std::string back = one->action.empty() ? one->id.text() : one->action;
        const bool stays = back == one->action && m_book.garage.decided.contains(one->id.text());
        if (stays)
            detail.append(ServiceWords::tr("decided when a copy was brought, and stays"));
        add(head, {saidWorkDone(one->work), detail.join(QStringLiteral(", ")), saidDate(one->day),
                   one->work == Work::Damaged, stays ? QString() : said(back)});
    }
}

/// What was here before.
void PieceCard::addOut()
{
    for (const PieceOut &one : m_life.out) {
        if (one.position != m_asked.at.position)
            continue;
        const QString washed =
            one.washed == 0 ? QString() : ServiceWords::tr(", washed %1 times").arg(one.washed);
        add(ServiceWords::tr("What was here before"),
            {saidPiece(one.piece),
             QString(saidCondition(one.is) + washed + QStringLiteral(", ") + saidUse(one.life)),
             saidDate(one.day), false});
    }
}

} // namespace

std::vector<Row> pieceRows(const PieceAsked &asked)
{
    PieceCard card(asked);
    card.addDue();
    card.addUse();
    card.addFacts();
    card.addDone();
    card.addOut();
    return card.take();
}

QString saidPieceAbout(const PieceAsked &asked)
{
    const FittedPiece *piece = asked.book.piece(asked.at);
    if (const PieceOut *out = asked.book.out(asked.at))
        return ServiceWords::tr("was %1, out since %2; ran %3 in all")
            .arg(said(asked.book.saidPosition({asked.at.car, out->position})), saidDate(out->day),
                 saidUse(out->life));
    if (!piece)
        return ServiceWords::tr("nothing is there");
    const Part *part = asked.book.workshop->part(piece->piece.part);
    const QString what = part ? said(part->description) : QString();
    return what.isEmpty() ? saidPiece(*piece, *asked.book.workshop, asked.units)
                          : ServiceWords::tr("%1: %2").arg(
                                saidPiece(*piece, *asked.book.workshop, asked.units), what);
}

QStringList openingCautions()
{
    QStringList lines;
    for (const std::string_view one : OpeningCautions)
        lines.append(inWords(one));
    return lines;
}

} // namespace flarestock
