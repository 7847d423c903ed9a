// SPDX-License-Identifier: MIT
//
// Ports: the ends at which parts are joined, in the trade's words.
//
// A port is a family (what standard, and so what seat or seal), a size of that family, a gender and
// how its thread turns. Thread and seat are independent: AN -6 and ORB -6 share a thread, so they
// screw together, and leak. That is why mating() (mating.h) looks at both.
//
//   const Port pump = Port::parse("ORB -8 female").value();
//   pump.text();   // "ORB -8 female"
//
// The grammar is `FAMILY SIZE GENDER [swivel|adjustable|nut] [+ aid …]`, case and blanks forgiven;
// forms without a gender leave it out: `BARB 3/8`, `TUBE 3/8`, `HOSE <construction> -8`,
// `BANJO M12x1.5`, `WELD -8`. Sizes are those of the tables in model/ports/data.

#pragma once

#include "model/exact/problem.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace flarestock {

enum class Family : std::uint8_t {
    An,            ///< SAE AS4395 / AN 37° flare, UNJ thread.
    Jic,           ///< SAE J514 37° flare.
    Orb,           ///< SAE J1926 O-ring boss.
    Orfs,          ///< SAE J1453 O-ring face seal.
    Sae45,         ///< SAE J512 45° flare.
    InvertedFlare, ///< SAE J512 inverted flare, "INV".
    Bubble,        ///< ISO 4038 bubble flare of brakes.
    Npt,           ///< ASME B1.20.1.
    Nptf,          ///< ASME B1.20.3.
    Bspp,          ///< ISO 228-1, washer-sealed (ISO 1179).
    Bspp60,        ///< ISO 8434-6, 60° cone.
    Jis60,         ///< JIS B 8363 60° cone, metric or BSP thread as the table says.
    Jis30,         ///< JIS B 8363 30° flare.
    Bspt,          ///< ISO 7-1.
    Iso6149,       ///< ISO 6149-1 metric O-ring port.
    Metric,        ///< ISO 9974 / DIN 3852, washer-sealed.
    Din24L,        ///< ISO 8434-1 24° cone, light series.
    Din24S,        ///< ISO 8434-1 24° cone, heavy series.
    QuickConnect,  ///< SAE J2044, "QC".
    Barb,          ///< Hose barb by hose bore.
    Tube,          ///< Plain end of a hard tube by outside diameter.
    Hose,          ///< The cut end of a hose of one construction.
    Banjo,         ///< Banjo eye or bolt.
    Weld,          ///< Weld bung or weld-on end by tube size.
};
inline constexpr std::size_t FamilyCount = 24;

enum class Gender : std::uint8_t { None, Male, Female };
enum class Turning : std::uint8_t { Fixed, Swivel, Adjustable, Nut };

/// What a joint needs besides its two ports.
enum class Aid : std::uint8_t { ORing, Sealant, Washer, CrushWasher, Sleeve, Clamp };
[[nodiscard]] std::string_view text(Aid aid) noexcept; ///< "o-ring" "sealant" "washer" …
[[nodiscard]] Result<Aid> parseAid(std::string_view text);

[[nodiscard]] std::string_view text(Family family) noexcept; ///< "AN", "INV", "QC", …

struct Port {
    Family family = Family::An;
    std::string size;         ///< As the tables spell it: "-6", "3/8", "M14x1.5", "8".
    std::string construction; ///< Only for Hose: "PTFE-S", folded to upper case.
    Gender gender = Gender::None;
    Turning turning = Turning::Fixed;

    /// Problem: an unknown family, a size that its table does not have (the remedy lists near
    /// ones), a gender missing or where there is none. Aids are not part of a port: see parseEnd().
    [[nodiscard]] static Result<Port> parse(std::string_view text);
    [[nodiscard]] std::string text() const; ///< parse(text()) is the same port.

    friend bool operator==(const Port &, const Port &) = default;
    friend auto operator<=>(const Port &, const Port &) = default;
};

/// A port as `mate` takes it, with the aids written behind plus signs: "ORB -6 male + o-ring".
struct End {
    Port port;
    std::vector<Aid> aids;
};
[[nodiscard]] Result<End> parseEnd(std::string_view text);

/// The dash of a size where the family is numbered by dash or tube: -6 gives 6; otherwise 0.
[[nodiscard]] int dash(const Port &port) noexcept;

/// Every port that the tables can form, of every gender and the ways it may turn (hoses left out):
/// for sweeps, completion and identify().
[[nodiscard]] const std::vector<Port> &everyPort();

} // namespace flarestock
