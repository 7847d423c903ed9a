// SPDX-License-Identifier: MIT
//
// ShopOnDesk: what the desk needs of an open shop, as plain values and a few deeds. The composition
// root makes it out of a shop file; tests make it out of a few parts.

#pragma once

#include "app/desk/build/worked_out.h"
#include "model/storage/shop_file.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace flarestock {

struct Wrote;

/// An action, and what was seen in boxes, which is written down first. An action alone is one, too.
struct ToWrite {
    ToWrite() = default;
    ToWrite(Action made) : action(std::move(made)) {} // NOLINT(google-explicit-constructor)
    ToWrite(Action made, std::vector<BoxCheck> seen)
        : action(std::move(made)), looks(std::move(seen))
    {
    }
    Action action;
    std::vector<BoxCheck> looks;
};

/// Makes an action out of the newest state of the shop. Problem: it cannot be done.
using MakeAction = std::function<Result<ToWrite>(const ShopFile &file, const Workshop &workshop)>;
/// Writes that action into the shop and reads it anew; may be called from any thread. Problem: what
/// makes it, read-only, disk full, a refusal of the ledger.
using WriteShop = std::function<Result<std::shared_ptr<const Wrote>>(const MakeAction &make)>;
/// Looks something up in the file, and in the shop as it is then. Problem: what it says.
using LookUp = std::function<Result<void>(ShopFile &file, const Workshop &workshop)>;
/// The same of what was counted, and of the difference that was found.
using MakeCount = std::function<Result<Count>(const Workshop &workshop)>;
using CountShop = std::function<Result<std::shared_ptr<const Wrote>>(const MakeCount &make)>;

/// Makes changed documents (catalogue, offers …) out of the newest. Problem: it cannot be done.
using MakeTexts = std::function<Result<TextFiles>(const TextFiles &newest)>;
/// Writes those into the shop, all or none, signed so, and reads it anew; may be called from any
/// thread. Problem: what makes them, one that does not read, read-only, disk full.
using RewriteShop = std::function<Result<std::shared_ptr<const Wrote>>(const MakeTexts &make,
                                                                       const std::string &who)>;

/// A build as it is to be kept, and as it was in the shop when the change began.
struct ChangedPlan {
    BuildPlan plan;
    BuildPlan before;
};

struct ShopOnDesk {
    std::string title;
    std::string file; ///< Where the data lives.
    std::vector<BuildPlan> builds;
    struct Form {
        std::string id;
        std::string title;
    };
    std::vector<Form> templates;
    WorkOut workOut;
    /// The title of a place, for the car of a build.
    std::function<std::string(const std::string &place)> placeTitle;
    /// Keeps a changed build in the shop. Problem: in the shop it is not as it was before, because
    /// another seat has changed it meanwhile; read-only, disk full. Empty: nothing is kept.
    std::function<Result<void>(const ChangedPlan &changed)> keep;
    /// As long as what it gives is kept, the event loop calls `changed` when somebody has written
    /// into the shop, this desk too. Empty: nobody does.
    std::function<std::shared_ptr<void>(std::function<void()> changed)> watch;
    WriteShop write; ///< Empty: nothing can be written.
    CountShop count; ///< Empty: likewise.
    /// The snapshot that all of this was made from; nothing where it was made without one.
    std::shared_ptr<const Workshop> workshop = nullptr;
    /// The movements of a part, oldest first; may be called from any thread.
    std::function<Result<std::vector<Movement>>(const std::string &part)> history = {};
    /// Opens the shop to read it only; may be called from any thread. Problem: it cannot be read,
    /// or what the looking up says. Empty: it was made without a file.
    std::function<Result<void>(const LookUp &look)> read = {};
    /// Opens the shop to be written by other ways than an action; likewise.
    std::function<Result<ShopFile>()> change = {};
    /// The backups beside its file, where it can be written; each may be called from any thread.
    struct Backups {
        /// When the newest was taken, milliseconds since 1970, UTC; nothing where there is none.
        std::function<std::optional<std::int64_t>()> newest;
        /// Makes one more and proves it whole; when it was taken. Problem: it cannot be written.
        std::function<Result<std::int64_t>()> make;
    };
    Backups backups;          ///< Empty: the shop has no file to keep them by.
    RewriteShop rewrite = {}; ///< Empty: no document can be written.
    /// The newest documents; may be called from any thread.
    std::function<Result<TextFiles>()> documents = {};
    /// What the shop was written up to when it was read; empty: nobody knows.
    std::string state = {};
    std::string copy = {}; ///< What it is called where it is a copy that travels; else empty.
    std::vector<std::string> along = {}; ///< The places that went along with that.
    bool readOnly = false; ///< The file, or its folder, cannot be written by this person.
};

/// An action that stands in the shop now, and the shop with it.
struct Wrote {
    Action action;
    ShopOnDesk shop;
    std::optional<Counted> counted = std::nullopt; ///< What a count has found.
    /// Documents as they were and as they are now, by the same names. One that was not there before
    /// was nothing but its headings, or empty.
    struct Texts {
        TextFiles before;
        TextFiles now;
    };
    Texts texts = {};
};

/// Opens a shop by its file, or makes the demo shop there.
using OpenShop = std::function<Result<ShopOnDesk>(const std::string &file)>;

} // namespace flarestock
