// SPDX-License-Identifier: MIT
//
// Documents brought: what a copy has beside its journal and the shop does not: versions of
// documents, places, looks into boxes. Only added to, as everywhere.

#pragma once

#include "model/storage/trailer/disagreement.h"
#include "model/storage/trailer/own_entries.h"

namespace flarestock {

/// A version of a document as it stands.
struct DocumentVersion {
    std::int64_t sequence = 0;
    std::string name;
    std::string content;
    std::string who;
    std::int64_t at = 0;
    QByteArray seal;
};

/// What a copy has beside its journal, read at one moment.
struct BesideJournal {
    std::vector<DocumentVersion> documents;
    std::vector<Place> places;
    std::vector<BoxCheck> looks;
};
[[nodiscard]] BesideJournal besideJournal(const ShopConnection &connection);

struct DocumentsBrought {
    std::vector<std::string> documents; ///< Names of those that have a new version here.
    std::vector<std::string> places;
    std::size_t looks = 0;
    [[nodiscard]] bool isNothing() const noexcept
    {
        return documents.empty() && places.empty() && looks == 0;
    }
};

/// Writes what is new. `broughtBefore`: so many versions of the copy were brought already; 0: none
/// but those that the shop had when it was taken. Throws StorageFailure.
[[nodiscard]] DocumentsBrought bringBeside(const BesideJournal &copy, std::int64_t broughtBefore,
                                           ShopConnection &shop, Disagreements &disagreements);

} // namespace flarestock
