// SPDX-License-Identifier: MIT

#include "app/desk/keeping/shopkeeping.h"

#include "app/desk/papers/persons_folder.h"
#include "model/storage/upkeep/kept_backups.h"

namespace flarestock {

QUrl Shopkeeping::backupsFolder() const
{
    const auto kept = keptBackups(m_shop.toStdString());
    return QUrl::fromLocalFile(
        kept.empty() ? personsFolder()
                     : QString::fromStdString(kept.front().path.parent_path().string()));
}

} // namespace flarestock
