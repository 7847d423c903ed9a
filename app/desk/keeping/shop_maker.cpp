// SPDX-License-Identifier: MIT

#include "app/desk/keeping/shop_maker.h"

#include "app/desk/keeping/paths.h"
#include "app/desk/papers/persons_folder.h"
#include "app/desk/words/spoken.h"
#include "app/workshop/clock.h"
#include "app/workshop/whole/beginning.h"
#include "model/storage/upkeep/kept_backups.h"

#include <QDir>
#include <QFile>

namespace flarestock {

namespace {

/// Made whole and closed again, so that it is opened as any other shop file is.
Result<void> madeShop(bool ofBackup, const std::string &source, const std::string &file)
{
    if (ofBackup) {
        const auto restored = restore(source, file);
        return restored ? Result<void>() : tl::unexpected(restored.error());
    }
    const auto begun = shopBegun(source, file, nowMilliseconds());
    return begun ? Result<void>() : tl::unexpected(begun.error());
}

} // namespace

QString ShopMaker::suggested() const
{
    const QDir folder(personsFolder());
    QString file = folder.filePath(tr("shop.flarestock"));
    for (int number = 2; QFile::exists(file); ++number)
        file = folder.filePath(tr("shop-%1.flarestock").arg(number));
    return file;
}

void ShopMaker::begin(bool ofBackup, const QString &source)
{
    if (isBusy())
        return;
    m_isOfBackup = ofBackup;
    m_source = source;
    m_problem.clear();
    Q_EMIT changed();
}

QString ShopMaker::wrongIn(const QString &source, const QString &file) const
{
    if (source.isEmpty())
        return m_isOfBackup ? tr("Choose the backup first.") : tr("Choose the folder first.");
    if (file.isEmpty())
        return tr("Say which new file the shop becomes.");
    const QString wrong = notWhole(source);
    return wrong.isEmpty() ? notWhole(file) : wrong;
}

void ShopMaker::make(const QString &source, const QString &file)
{
    if (!m_open || isBusy())
        return;
    m_source = source.trimmed();
    m_file = file.trimmed();
    m_problem = wrongIn(m_source, m_file);
    if (m_problem.isEmpty())
        m_errand.run([this, open = m_open, ofBackup = m_isOfBackup, from = m_source.toStdString(),
                      to = m_file.toStdString()]() -> Errand::Back {
            const auto made = madeShop(ofBackup, from, to);
            const auto shop = std::make_shared<const Result<ShopOnDesk>>(
                made ? open(to) : Result<ShopOnDesk>(tl::unexpected(made.error())));
            return [this, shop] { finished(*shop); };
        });
    Q_EMIT changed();
}

void ShopMaker::finished(const Result<ShopOnDesk> &shop)
{
    if (!shop)
        m_problem = saidProblem(shop.error());
    Q_EMIT changed();
    if (shop)
        Q_EMIT opened(*shop, m_isOfBackup
                                 ? tr("Made out of the backup, and proved whole: %1").arg(m_file)
                                 : tr("Made out of the folder: %1").arg(m_file));
}

} // namespace flarestock
