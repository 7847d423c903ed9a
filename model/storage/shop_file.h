// SPDX-License-Identifier: MIT
//
// Shop file: one SQLite file that holds a shop: the append-only journal with its hash chain, the
// places, and the documents (catalogue CSV, templates, builds) as versions that are only added to.
//
// An action is acknowledged only after COMMIT came back. Repeating an action with the same id
// changes nothing and says so. A file that looks wrong is never written and never repaired by
// deleting.

#pragma once

#include "model/exact/money.h"
#include "model/exchange/catalogue_csv.h"
#include "model/journal/ledger.h"

#include <filesystem>
#include <memory>

namespace flarestock {

enum class OpenMode : std::uint8_t { ReadWrite, ReadOnly };

struct ShopSettings {
    std::string title;
    Currency currency;
};

struct Appended {
    MovementId movement;
    bool already = false; ///< This id was in the journal before; nothing has changed.
};

/// What `verify` found. `whole` is true only where `problems` is empty.
struct Verification {
    bool whole = false;
    std::int64_t movements = 0;
    std::vector<std::string> heads; ///< "replica:sequence:sha256 in hex" of each replica.
    std::vector<std::string> problems;
    std::string lastGood; ///< Id of the last movement up to which the chain holds.
};

class ShopFile {
public:
    /// Makes a new file with its first documents. Problem: it exists already, the folder cannot be
    /// written, the disk is full.
    [[nodiscard]] static Result<ShopFile> create(const std::filesystem::path &path,
                                                 const ShopSettings &settings,
                                                 const std::vector<Place> &places,
                                                 const TextFiles &documents, std::int64_t now);
    /// Problem: not there, not a shop file, of a newer program, damaged, locked; the file is
    /// unchanged.
    [[nodiscard]] static Result<ShopFile> open(const std::filesystem::path &path, OpenMode mode);
    /// The same checks, the whole chain and every balance against the fold. Problem: cannot be
    /// read.
    [[nodiscard]] static Result<Verification> verify(const std::filesystem::path &path);

    ShopFile(ShopFile &&) noexcept;
    ShopFile &operator=(ShopFile &&) noexcept;
    ~ShopFile();

    [[nodiscard]] const ShopSettings &settings() const noexcept;
    [[nodiscard]] std::filesystem::path path() const;

    /// The newest version of every document, by name.
    [[nodiscard]] Result<TextFiles> documents() const;
    /// Adds a version of a document. Problem: read-only, disk full.
    [[nodiscard]] Result<void> putDocument(const std::string &name, const std::string &text,
                                           const std::string &who, std::int64_t now);

    /// The fold of the whole journal.
    [[nodiscard]] Result<Ledger> ledger() const;
    /// Appends all of them or none, in one transaction. The value of a movement out of a stock
    /// place is set here (its `value` is ignored); out of any other place it is taken as given.
    /// Problem: a refusal of the ledger said as a sentence, an id that was used for something else,
    /// read-only, disk full.
    [[nodiscard]] Result<std::vector<Appended>> append(const std::vector<Movement> &movements);
    /// The movements of a part (or all, where empty), oldest first.
    [[nodiscard]] Result<std::vector<Movement>> movements(std::string_view part = {}) const;

private:
    struct Connection;
    explicit ShopFile(std::unique_ptr<Connection> connection);
    std::unique_ptr<Connection> m_connection;
};

} // namespace flarestock
