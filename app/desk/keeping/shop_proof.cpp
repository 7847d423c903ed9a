// SPDX-License-Identifier: MIT

#include "app/desk/keeping/shop_proof.h"

#include "app/desk/language/sentences.h"
#include "app/desk/words/spoken.h"
#include "model/storage/server/server_address.h"
#include "model/storage/upkeep/kept_backups.h"

#include <QDateTime>

namespace flarestock {

struct ShopProof::Found {
    std::string file;
    Result<Verification> said;
    std::optional<Movement> lastGood; ///< Nothing: none, or the file does not open to tell.
    std::optional<GoodBackup> good;   ///< Looked for where the shop is not whole.
};

namespace {

/// The movement up to which the chain holds.
std::optional<Movement> lastGoodOf(const std::string &file, const Verification &said)
{
    const auto id = MovementId::parse(said.lastGood);
    const auto shop = ShopFile::open(file, OpenMode::ReadOnly);
    if (!id || !shop)
        return std::nullopt;
    return shop->movement(*id).value_or(std::nullopt);
}

ShopProof::Found proved(const std::string &file)
{
    ShopProof::Found found{file, ShopFile::verify(file), {}, {}};
    if (found.said && found.said->whole)
        return found;
    if (found.said)
        found.lastGood = lastGoodOf(file, *found.said);
    if (!isServer(file))
        found.good = newestGoodBackup(file);
    return found;
}

QString countedMovements(std::int64_t count)
{
    return count == 1 ? ShopProof::tr("1 movement")
                      : ShopProof::tr("%1 movements").arg(saidNumber(Decimal(count)));
}

/// "of Sat 28 Nov 2026, AD-66, by Kim"
QString saidLast(const Movement &movement)
{
    const QDate day = QDateTime::fromMSecsSinceEpoch(movement.at).date();
    const QString what = ShopProof::tr("%1, of %2").arg(said(movement.part), saidDate(day));
    return movement.who.empty() ? what
                                : ShopProof::tr("%1, by %2").arg(what, inWords(movement.who));
}

} // namespace

void ShopProof::setShop(const ShopOnDesk &shop, bool isOther)
{
    m_file = shop.file;
    m_canRead = static_cast<bool>(shop.read);
    if (!isOther)
        return;
    m_isDamaged = false;
    m_finding.clear();
    m_remedy.clear();
    m_backup.clear();
    m_damages.clear();
    Q_EMIT changed();
}

void ShopProof::prove()
{
    if (!m_canRead || isBusy())
        return;
    m_isDamaged = false;
    m_finding.clear();
    m_remedy.clear();
    m_backup.clear();
    m_damages.clear();
    m_errand.run([this, file = m_file]() -> Errand::Back {
        const auto found = std::make_shared<const Found>(proved(file));
        return [this, found] {
            if (found->file == m_file)
                finished(*found);
            else
                Q_EMIT changed(); // Another shop came onto the desk meanwhile.
        };
    });
    Q_EMIT changed();
}

void ShopProof::finished(const Found &found)
{
    const QString name = said(found.file).section(u'/', -1);
    m_isDamaged = !found.said || !found.said->whole;
    if (!m_isDamaged) {
        m_finding = tr("%1 is whole: %2, and every balance is what they add up to.")
                        .arg(name, countedMovements(found.said->movements));
    } else if (!found.said) {
        m_finding = saidProblem(found.said.error());
    } else {
        const QString last =
            found.lastGood ? saidLast(*found.lastGood) : said(found.said->lastGood);
        m_finding = last.isEmpty()
                        ? tr("%1 is not whole, and no movement in it is good.").arg(name)
                        : tr("%1 is not whole. The last good movement: %2.").arg(name, last);
        for (const std::string &damage : found.said->problems)
            m_damages.append(inWords(damage));
    }
    sayRemedy(found);
    Q_EMIT changed();
}

void ShopProof::sayRemedy(const Found &found)
{
    if (!m_isDamaged)
        return;
    if (isServer(found.file)) {
        m_remedy = tr("Write nothing to it. Ask whoever runs the server what was changed there, "
                      "and go on from a backup that is whole.");
    } else if (!found.good) {
        m_remedy = tr("Write nothing to it and keep it aside. None of the backups beside it is "
                      "whole: look for one kept elsewhere, and make a new shop out of that.");
    } else {
        m_backup = said(found.good->backup.path.string());
        m_remedy =
            tr("Write nothing to it and keep it aside. The newest backup that is whole has "
               "%1: %2. Make a new shop out of it.")
                .arg(countedMovements(found.good->found.movements), m_backup.section(u'/', -1));
    }
}

} // namespace flarestock
