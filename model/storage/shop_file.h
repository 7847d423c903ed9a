// SPDX-License-Identifier: MIT
//
// Shop file: a shop where it is kept, one SQLite file or a database on a server: the journal, its
// hash chains, places, and the documents (catalogue CSV, templates, builds), all only added to.
//
// An action is acknowledged only after COMMIT came back. Repeating an action with the same id
// changes nothing and says so. A file that looks wrong is never written and never repaired by
// deleting.
//
//   auto shop = ShopFile::open("shop.flarestock", OpenMode::ReadWrite);
//   if (!shop)
//       return shop.error();
//   const auto done = shop->append({movement});

#pragma once

#include "model/exact/money.h"
#include "model/exchange/catalogue_csv.h"
#include "model/journal/notes/count.h"

#include <filesystem>
#include <functional>
#include <memory>

namespace flarestock {

class ShopConnection;

enum class OpenMode : std::uint8_t { ReadWrite, ReadOnly };

struct ShopSettings {
    std::string title;
    Currency currency;
    Costing costing = Costing::MovingAverage; ///< Chosen when the shop is made.
};

/// Whether stock that is promised to other builds may be taken, as it happens on a Friday night.
enum class Promised : std::uint8_t { Stays, MayGo };

/// What is written down together or not at all: records, movements, and what can only stand when
/// the pieces lie where they went.
struct Action {
    std::vector<Record> records;
    std::vector<Movement> movements;
    Promised promised = Promised::Stays;
    std::vector<Record> afterwards = {};
};

/// What a shop begins with.
struct NewShop {
    ShopSettings settings;
    std::vector<Place> places; ///< Nearest first.
    TextFiles documents;
    std::vector<Movement> opening; ///< The opening stock.
    std::vector<BoxCheck> boxChecks;
    std::string who;
    std::int64_t now = 0;             ///< Milliseconds since 1970, UTC.
    std::vector<Record> records = {}; ///< Written behind the opening stock.
};

struct Appended {
    MovementId movement;
    bool already = false; ///< This id was in the journal before; nothing has changed.
};

/// What a count has found, said only after it was written down.
struct Counted {
    Appended count;
    std::int64_t expected = 0;
    std::optional<MovementId> difference; ///< The movement that makes the journal agree.
};

/// What becomes of the newest version of a document; of nothing where there is none. It may be
/// asked several times before it counts, each time of what is the newest by then.
using DocumentChange = std::function<Result<std::string>(const std::optional<std::string> &newest)>;

/// What `verify` found. `whole` is true only where `problems` is empty.
struct Verification {
    bool whole = false;
    std::int64_t movements = 0;
    std::vector<std::string> heads;    ///< "replica:sequence:sha256", both in hex, of each replica.
    std::vector<std::string> problems; ///< At most 20 of each kind.
    std::string lastGood;              ///< Id of the last movement up to which the chain holds.
};

class ShopFile {
public:
    /// Makes a new file with all that it begins with, or none. Problem: it exists already, the
    /// folder cannot be written, the disk is full, a movement is refused.
    [[nodiscard]] static Result<ShopFile> create(const std::filesystem::path &path,
                                                 const NewShop &shop);
    /// Problem: not there, not a shop file, of a newer program, damaged, locked; the file is
    /// unchanged. What takes the longer the longer the journal is comes before the first writing:
    /// that of a file that is damaged in its middle is refused then.
    [[nodiscard]] static Result<ShopFile> open(const std::filesystem::path &path, OpenMode mode);
    /// The same checks, the whole chain, every balance against the fold, and SQLite's own check.
    /// Never writes. Problem: cannot be read as a shop file at all.
    [[nodiscard]] static Result<Verification> verify(const std::filesystem::path &path);

    ShopFile(ShopFile &&) noexcept;
    ShopFile &operator=(ShopFile &&) noexcept;
    ~ShopFile();

    [[nodiscard]] const ShopSettings &settings() const noexcept;
    [[nodiscard]] std::filesystem::path path() const;
    /// Copies the shop as it is at this moment to a file that is whole or not there, while others
    /// may write. The copy is a replica of its own from then on, so that a shop may go on from it.
    /// Problem: it exists already, cannot be written, the disk is full.
    [[nodiscard]] Result<void> backUp(const std::filesystem::path &to) const;

    /// The newest version of every document, by name.
    [[nodiscard]] Result<TextFiles> documents() const;
    /// Adds a version of a document; none where it is the newest already. Problem: read-only, disk
    /// full.
    [[nodiscard]] Result<void> putDocument(const std::string &name, const std::string &text,
                                           const std::string &who, std::int64_t now);
    /// The same of several, all or none. `basis`: what documents() gave when they were made.
    /// Problem: also that one of the shop's documents is another by now; then nothing is written.
    [[nodiscard]] Result<void> putDocuments(const TextFiles &changed, const TextFiles &basis,
                                            const std::string &who, std::int64_t now);
    /// The same of a text that is made out of the newest version, in one transaction, so that
    /// whoever else changes the document at that moment loses nothing. Problem: also the change's
    /// own; then nothing is written.
    [[nodiscard]] Result<void> changeDocument(const std::string &name, const DocumentChange &change,
                                              const std::string &who, std::int64_t now);

    [[nodiscard]] Result<std::vector<Place>> places() const; ///< Nearest first.
    /// What lies where and what builds are promised, as it stands beside the journal, which
    /// verify() proves. Of movements of before it knows only which were taken back.
    [[nodiscard]] Result<Ledger> ledger() const;
    /// Appends all of them or none, in one transaction. The value of a movement is set here by
    /// Ledger::valueOf(): only out of a supplier or the opening is it taken as given.
    /// Problem: a refusal of the ledger said as a sentence, an id that was used for something else,
    /// read-only, disk full; it names the movement, which after a failing disk may be there or not.
    [[nodiscard]] Result<std::vector<Appended>> append(const std::vector<Movement> &movements);
    /// The same for a whole action, in the order in which it stands there. Value that goes to the
    /// bench has to come off it again. Problem: also a promise of what is not free, and a movement
    /// that takes what other builds are promised, where that stays.
    [[nodiscard]] Result<std::vector<Appended>> append(const Action &action);
    /// Writes a count down, and the difference to what the journal holds at that moment; its
    /// `expected` is set here. `difference` is the id that a movement gets. Problem: as append(),
    /// or the shop has no place for differences.
    [[nodiscard]] Result<Counted> append(Count count, const MovementId &difference);
    /// Adds a place behind the others. Problem: it is there already, read-only, disk full.
    [[nodiscard]] Result<void> add(const Place &place);
    /// The movements of a part (or all, where empty), in the order of the fold.
    [[nodiscard]] Result<std::vector<Movement>> movements(std::string_view part = {}) const;

    /// The movements of a lot or a serial, under whatever name it had, likewise.
    [[nodiscard]] Result<std::vector<Movement>> movementsOfLot(std::string_view lot) const;
    /// The movements for these documents (builds, orders …), of each in the order of the fold.
    [[nodiscard]] Result<std::vector<Movement>>
    movementsOfDocuments(const std::vector<std::string> &documents) const;
    /// All movements of the action that a movement belongs to.
    [[nodiscard]] Result<std::vector<Movement>> movementsOfAction(const MovementId &id) const;
    /// All records, in the order of the fold.
    [[nodiscard]] Result<std::vector<Record>> records() const;

    /// The movement of an id; nothing where the journal does not have it.
    [[nodiscard]] Result<std::optional<Movement>> movement(const MovementId &id) const;

    /// The record of an id; nothing where the journal does not have it.
    [[nodiscard]] Result<std::optional<Record>> recordOf(const MovementId &id) const;

    /// Writes down what was seen in a box. Problem: as append().
    [[nodiscard]] Result<Appended> record(const BoxCheck &check);
    /// All of them, oldest first.
    [[nodiscard]] Result<std::vector<BoxCheck>> boxChecks() const;

private:
    friend struct Travelling; // trailer/travelling.h: copies that go along and come back.
    ShopFile(std::filesystem::path path, std::unique_ptr<ShopConnection> connection,
             ShopSettings settings);

    std::filesystem::path m_path;
    std::unique_ptr<ShopConnection> m_connection;
    ShopSettings m_settings;
};

} // namespace flarestock
