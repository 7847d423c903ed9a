// SPDX-License-Identifier: MIT
//
// System template: the stations, runs and questions of one kind of fluid system, from which a build
// is expanded. Written in TOML (demo-data/templates, read by model/exchange); here it is plain
// values.
//
// Whatever may depend on an answer is a Varying: the first alternative whose condition holds
// counts, and `{question}` in its text stands for the answer.

#pragma once

#include "model/exact/decimal.h"
#include "model/fluids/demand/fuel_demand.h"
#include "model/fluids/fluid.h"
#include "model/fluids/line/line_budget.h"
#include "model/fluids/measure.h"
#include "model/parts/kind.h"
#include "model/systems/condition.h"

#include <map>
#include <memory>
#include <optional>

namespace flarestock {

struct Varying {
    struct Alternative {
        Condition when;
        std::string is;
    };
    std::vector<Alternative> alternatives; ///< Empty: not said.

    [[nodiscard]] bool isSaid() const noexcept { return !alternatives.empty(); }
    /// The text that applies, with `{question}` replaced; nothing where none applies.
    [[nodiscard]] std::optional<std::string> with(const Answers &answers) const;
};

/// How a default is worked out from the answers above it (systems/sizing), instead of being fixed.
struct WorkedDefault {
    enum class By : std::uint8_t {
        FuelDemand,   ///< power × consumption × margin, as a flow
        PumpPressure, ///< what is set at the regulator and what its line may take
        LineSize,     ///< the smallest dash size that keeps to the bounds of its line
    };
    enum class Line : std::uint8_t { Suction, BeforeRegulator, BehindRegulator, Return, Gravity };
    By by = By::FuelDemand;
    Feed feed = Feed::Pump;                      ///< Of a demand: whose margin.
    int sharedBy = 1;                            ///< Of a demand: so many pumps give it together.
    FuelSystem delivery = FuelSystem::Injection; ///< Whose budgets.
    Varying setPressure;                         ///< At the regulator; not said: nothing.
    Line line = Line::BeforeRegulator;
    Varying flow;                   ///< Of a line: what it carries at least …
    std::vector<std::string> pumps; ///< … and all that these stations' pumps give, if that is more.
    bool pumpsApart = false;        ///< Each has such a line: the one that gives most counts.
    std::vector<Varying> lengths;   ///< Of its runs, one after the other.
    Varying construction;           ///< Hose series; not said: any that suits the fluid.
    Varying rise;                   ///< Its end above its beginning.
    Varying otherLoss;              ///< What else takes of its pressure: filters, valves.
};

struct Question {
    enum class Form : std::uint8_t { Choice, Measured, YesNo };
    std::string id;    ///< Lower case, digits and hyphens.
    std::string title; ///< As asked: "supply line".
    Form form = Form::Choice;
    std::vector<std::string> choices;       ///< For Choice.
    bool isDash = false;                    ///< Its choices are dash sizes, rising: "-6", "-8".
    Dimension dimension = Dimension::Count; ///< For Measured.
    std::string standard;                   ///< The default answer; always there, always valid.
    std::optional<WorkedDefault> workedOut; ///< Then `standard` is for where that cannot be done.
    std::optional<Measure> least;           ///< For Measured: bounds, both included.
    std::optional<Measure> most;
    Condition when; ///< Asked only then; its default holds otherwise.
};

/// Which level of the line map a station or run lies on.
enum class Level : std::uint8_t { Suction, Pressure, Return };
[[nodiscard]] std::string_view text(Level level) noexcept; ///< "suction" "pressure" "return"

/// What a station asks of the part that is put there. All texts are Varying.
struct Demand {
    Kind kind = Kind::Filter;
    std::vector<std::string> words; ///< Each is said by the part ("bypass", "in-tank").
    Varying part;                   ///< The template's own choice, by part number.
    Varying micron;                 ///< "75 to 150": rating in µm, both included.
    Varying flow;                   ///< Least rated flow, "255 L/h".
    Varying pressure; ///< Regulator: set pressure lies in its range. Pump: pressure at which `flow`
                      ///< is wanted.
    Varying rated;    ///< Least working pressure, "100 psi".
};

struct Station {
    std::string id;
    std::string title;
    Level level = Level::Pressure;
    Demand demand;
    Condition when;
    bool bracketed = true; ///< Fixed to the car, so that it cannot be turned to screw a joint up.
    std::vector<std::string>
        plugged;           ///< Ports that no run uses and that are to be closed, by name.
    int spareElements = 0; ///< Spare elements to take along.
};

/// The line between two stations. Its joints are "<id>.start" and "<id>.end".
struct Run {
    struct Place {
        std::string station; ///< "filters/prefilter" for a station of a nested template.
        std::string port;    ///< Name of its part's port: "out", "return".
    };
    std::string id;
    Level level = Level::Pressure;
    Place from;
    Place to;
    Varying length;       ///< "5 ft 6 in". Not said: the two ports join directly, without a line.
    Varying dash;         ///< "-8": dash of the hose.
    Varying construction; ///< Hose series; not said: any that suits the fluid.
    Varying tubing;       ///< Hard tube of this size instead of hose: "3/16".
    Varying rise;         ///< Its end above its beginning, "-8 in" where it falls.
    Varying forward;      ///< Its end before its beginning, towards the car's nose.
    Varying startAngle;   ///< Degrees of the hose end, "90".
    Varying endAngle;
    Varying bend; ///< Radius of the tightest bend on its way, "3 in"; not said: not known.
    Condition when;
    int clampsEach = 0; ///< One clamp in so many mm of length; 0 for none.
};

/// A template inside a template: its stations are "<id>/<station>".
struct Module {
    std::string id;
    std::string templateId;
    std::map<std::string, Varying, std::less<>>
        answers; ///< For its questions; others keep defaults, but its fluid is the outer one's.
    Condition when;
};

/// Something else that the build takes: a tool, a bottle of sealant, a label.
struct Extra {
    Varying part;
    Decimal count = 1;
    std::string why;
    Condition when;
};

/// What the filters of this kind of system must be (checks/filters).
enum class FilterRule : std::uint8_t { None, AroundElectricPump, AfterPump, OilReturn };

struct Template {
    std::string id;
    std::string title;
    std::string system;         ///< "fuel", "oil", "coolant", "gearbox", "brakes".
    std::string fluidQuestion;  ///< The question that names the fluid, or empty …
    std::optional<Fluid> fluid; ///< … and then the fluid itself.
    FilterRule filters = FilterRule::None;
    std::vector<Question> questions;
    std::vector<Station> stations; ///< In flow order.
    std::vector<Run> runs;
    std::vector<Module> modules;
    std::vector<Extra> extras;

    [[nodiscard]] const Question *question(std::string_view id) const noexcept;
};

/// All templates of a shop, by id.
using TemplateBook = std::map<std::string, std::shared_ptr<const Template>, std::less<>>;

} // namespace flarestock
