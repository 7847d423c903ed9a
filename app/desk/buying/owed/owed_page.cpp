// SPDX-License-Identifier: MIT

#include "app/desk/buying/owed/owed_page.h"

#include "app/desk/buying/buying_words.h"
#include "app/desk/buying/owed/owed_told.h"
#include "app/desk/papers/desk_speech.h"
#include "app/desk/words/spoken.h"
#include "app/sheet/claim_rows.h"
#include "app/sheet/paper_files.h"

#include <algorithm>
#include <array>
#include <utility>

namespace flarestock {

namespace {

struct NamedDeed {
    const char *name;
    ClaimDeed deed;
};
constexpr std::array<NamedDeed, 4> Deeds{{{"promise", ClaimDeed::Promise},
                                          {"came", ClaimDeed::Came},
                                          {"credit", ClaimDeed::Credit},
                                          {"drop", ClaimDeed::Drop}}};

QString label(ClaimDeed deed)
{
    switch (deed) {
    case ClaimDeed::Promise:
        return BuyingWords::tr("He names a day");
    case ClaimDeed::Came:
        return BuyingWords::tr("It came");
    case ClaimDeed::Credit:
        return BuyingWords::tr("He pays back");
    case ClaimDeed::Drop:
    case ClaimDeed::Raise:
        break;
    }
    return BuyingWords::tr("Drop it");
}

std::vector<Row> deedsOf(const ClaimStanding *claim)
{
    const bool isOpen = claim && !claim->now.isSettled();
    const QString why = claim == nullptr ? BuyingWords::tr("No claim is in hand.")
                        : isOpen         ? QString()
                                         : BuyingWords::tr("It is settled.");
    std::vector<Row> rows;
    rows.reserve(Deeds.size());
    for (const NamedDeed &one : Deeds)
        rows.push_back({QString::fromLatin1(one.name), {label(one.deed), isOpen, why}});
    return rows;
}

} // namespace

OwedPage::OwedPage(Pen &pen, QObject *parent)
    : QObject(parent), m_claims(claimListCells()), m_facts(claimFactCells()),
      m_deeds({QStringLiteral("label"), QStringLiteral("ready"), QStringLiteral("detail")}),
      m_form(pen)
{
}

void OwedPage::setShop(const ShopOnDesk &shop, const std::string &today)
{
    m_read = shop.read;
    m_today = today;
}

void OwedPage::show(const std::shared_ptr<const Workshop> &workshop, std::vector<Row> claims)
{
    m_workshop = workshop;
    m_all = std::move(claims);
    m_open = 0;
    if (workshop)
        for (const ClaimStanding &claim : workshop->bought.claims.claims)
            m_open += claim.now.isSettled() ? 0 : 1;
    showList();
}

void OwedPage::find(const QString &typed)
{
    if (std::exchange(m_typed, typed) != typed)
        showList();
}

void OwedPage::showList()
{
    std::vector<Row> shown;
    std::copy_if(m_all.begin(), m_all.end(), std::back_inserter(shown), [this](const Row &row) {
        return hasWords(row.cells.constLast().toString(), m_typed);
    });
    m_claims.become(std::move(shown));
    if (m_claims.rowOf(m_selected) < 0)
        m_selected = firstOpen();
    showSelected();
}

/// Of those that are shown; the first where all are settled.
QString OwedPage::firstOpen() const
{
    for (int row = 0; m_workshop && row < m_claims.count(); ++row) {
        const ClaimStanding *claim = claimOf(keyAt(row), *m_workshop);
        if (claim != nullptr && !claim->now.isSettled())
            return keyAt(row);
    }
    return keyAt(0);
}

const ClaimStanding *OwedPage::inHand() const
{
    return m_workshop ? claimOf(m_selected, *m_workshop) : nullptr;
}

void OwedPage::showSelected()
{
    const ClaimStanding *claim = inHand();
    m_facts.showOther(claim ? claimFactRows(*claim, *m_workshop, m_today) : std::vector<Row>());
    m_deeds.become(deedsOf(claim));
    Q_EMIT changed();
}

void OwedPage::select(const QString &number)
{
    if (number == m_selected || !m_workshop || claimOf(number, *m_workshop) == nullptr)
        return;
    if (m_claims.rowOf(number) < 0)
        find({});
    m_selected = number;
    showSelected();
}

QString OwedPage::heading() const
{
    const ClaimStanding *claim = inHand();
    return claim ? tr("%1, %2").arg(m_selected,
                                    saidSupplier(claim->now.supplier, m_workshop->catalogue))
                 : QString();
}

QString OwedPage::nothing() const
{
    if (!m_workshop)
        return tr("Reading what suppliers owe …");
    if (m_claims.count() > 0)
        return {};
    return m_all.empty() ? tr("Nothing is owed. What lacks in a box when it is received becomes a "
                              "claim here.")
                         : tr("No claim is like that.");
}

QString OwedPage::keyAt(int row) const
{
    return m_claims.cell(row, QStringLiteral("key")).toString();
}

bool OwedPage::begin(const QString &name)
{
    if (!m_workshop)
        return false;
    if (name == QStringLiteral("raise")) {
        m_form.begin(ClaimDeed::Raise, {m_workshop, {}});
        return true;
    }
    const int row = m_deeds.rowOf(name);
    if (row < 0 || !m_deeds.cell(row, QStringLiteral("ready")).toBool())
        return false;
    m_form.begin(Deeds.at(static_cast<std::size_t>(row)).deed, {m_workshop, m_selected});
    return true;
}

void OwedPage::writeLetter(const QString &kind, const QUrl &file)
{
    if (inHand() == nullptr || !m_read || m_writing.isUnderWay())
        return;
    PaperAsked asked;
    asked.pdf = file.toLocalFile().toStdString();
    if (kind != QStringLiteral("english"))
        asked.speech = deskSpeech(m_units);
    m_writing.run(
        [this, asked, read = m_read, number = m_selected, today = m_today]() -> Errand::Back {
            const auto done = read([&](const ShopFile &shop, const Workshop &now) -> Result<void> {
                const ClaimStanding *claim = claimOf(number, now);
                if (claim == nullptr)
                    return problem("claim " + number.toStdString(), "is not in this shop any more");
                return writePapers(asked, shop,
                                   {[&](PaperWords paper) {
                                        return claimLetter({claim}, now, today, std::move(paper));
                                    },
                                    [&] { return claimRows({claim}, now, today); }});
            });
            return [this, done, asked, number] {
                Q_EMIT told(
                    done ? tr("The letter about %1 is written to %2.").arg(number, said(asked.pdf))
                         : saidProblem(done.error()));
                Q_EMIT changed();
            };
        });
    Q_EMIT changed();
}

} // namespace flarestock
