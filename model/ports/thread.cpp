// SPDX-License-Identifier: MIT

#include "model/ports/thread.h"

#include <charconv>
#include <cmath>

namespace flarestock {

namespace {

constexpr double InchMm = 25.4;

std::optional<double> plainNumber(std::string_view text)
{
    double value = 0;
    const auto [end, error] =
        std::from_chars(text.data(), text.data() + text.size(), value, std::chars_format::fixed);
    if (error != std::errc{} || end != text.data() + text.size() || text.front() == '-')
        return {};
    return value;
}

std::optional<int> wholeNumber(std::string_view text)
{
    int value = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), value);
    if (error != std::errc{} || end != text.data() + text.size() || value < 0)
        return {};
    return value;
}

/// 1.0 as "1.0", 1.25 as "1.25", 2 as "2.0".
std::string pitchText(double pitchMm)
{
    const int hundredths = static_cast<int>(std::lround(pitchMm * 100));
    std::string text =
        std::to_string(hundredths / 100) + "." + static_cast<char>('0' + hundredths / 10 % 10);
    if (hundredths % 10 != 0)
        text += static_cast<char>('0' + hundredths % 10);
    return text;
}

std::string squeezed(std::string_view text)
{
    std::string result;
    for (const char letter : text) {
        if (letter != ' ')
            result += letter == 'X' ? 'x' : letter == 'm' ? 'M' : letter;
    }
    return result;
}

std::optional<Thread> metricNamed(std::string_view designation)
{
    const std::string text = squeezed(designation);
    const std::size_t cross = text.find('x');
    if (text.size() < 4 || text.front() != 'M' || cross == std::string::npos)
        return {};
    const auto major = plainNumber(std::string_view(text).substr(1, cross - 1));
    const auto pitch = plainNumber(std::string_view(text).substr(cross + 1));
    if (!major || !pitch || *major < 3 || *major > 120 || *pitch < 0.2 || *pitch > 4 ||
        *pitch * 3 > *major || std::abs(*pitch * 100 - std::round(*pitch * 100)) > 1e-9)
        return {};
    if (*major != std::round(*major))
        return {};
    std::string name = "M" + std::to_string(static_cast<int>(*major)) + "x" + pitchText(*pitch);
    return parallelThread(std::move(name), ThreadForm::Metric, *major, *pitch);
}

std::optional<Thread> unifiedNamed(std::string_view designation)
{
    const std::size_t dash = designation.rfind('-');
    if (dash == std::string_view::npos || dash == 0)
        return {};
    std::string_view diameter = designation.substr(0, dash);
    while (!diameter.empty() && diameter.back() == ' ')
        diameter.remove_suffix(1);
    const auto inches = inchesOf(diameter);
    const auto perInch = wholeNumber(designation.substr(dash + 1));
    if (!inches || !perInch || *perInch < 8 || *perInch > 40 || *inches < 0.125 || *inches > 4)
        return {};
    if (*inches * *perInch < 3)
        return {};
    return parallelThread(std::string(diameter) + "-" + std::to_string(*perInch),
                          ThreadForm::Unified, *inches * InchMm, InchMm / *perInch);
}

/// ASME B1.1: tolerance of pitch diameter of class 2A, inches. The length of engagement is the
/// diameter for the fine series, nine pitches for the constant-pitch and special ones.
double unifiedTolerance(double majorInch, double pitchInch)
{
    const int perInch = static_cast<int>(std::lround(1 / pitchInch));
    const bool constantPitch = perInch == 12 || perInch == 16 || perInch == 28;
    const bool fineOfItsSize =
        (perInch == 12 && (majorInch == 1.0 || majorInch == 1.125 || majorInch == 1.25 ||
                           majorInch == 1.375 || majorInch == 1.5)) ||
        (perInch == 16 && majorInch == 0.75);
    const double engaged = constantPitch && !fineOfItsSize ? 9 * pitchInch : majorInch;
    return 0.0015 * std::cbrt(majorInch) + 0.0015 * std::sqrt(engaged) +
           0.015 * std::cbrt(pitchInch * pitchInch);
}

ThreadLimits unifiedLimits(const Thread &thread)
{
    const double pitch = thread.pitchMm / InchMm;
    const double tolerance2A = unifiedTolerance(thread.majorMm / InchMm, pitch) * InchMm;
    const bool classThree = thread.form == ThreadForm::UnifiedJ;
    const double external = classThree ? 0.75 * tolerance2A : tolerance2A;
    const double internal = classThree ? 0.975 * tolerance2A : 1.3 * tolerance2A;
    const double allowance = classThree ? 0 : 0.3 * tolerance2A;
    const double majorTolerance = 0.06 * std::cbrt(pitch * pitch) * InchMm;
    const double minorTolerance = (0.25 * pitch - 0.4 * pitch * pitch) * InchMm;
    const double most = thread.pitchDiameterMm - allowance;
    const double majorMost = thread.majorMm - allowance;
    return {most - external,
            most,
            majorMost - majorTolerance,
            majorMost,
            thread.pitchDiameterMm,
            thread.pitchDiameterMm + internal,
            thread.femaleMinorMm(),
            thread.femaleMinorMm() + (classThree ? 0.6 : 1) * minorTolerance};
}

/// ISO 965-1, grade 6, micrometres: es of g, Td2, TD2, Td, TD1 from pitch and diameter in mm.
ThreadLimits metricLimits(const Thread &thread)
{
    const double pitch = thread.pitchMm;
    const double external = 0.001 * 90 * std::pow(pitch, 0.4) * std::pow(thread.majorMm, 0.1);
    const double allowance = 0.001 * (15 + 11 * pitch);
    const double majorTolerance =
        0.001 * (180 * std::cbrt(pitch * pitch) - 3.15 / std::sqrt(pitch));
    const double minorTolerance = 0.001 * (pitch < 1 ? 433 * pitch - 190 * std::pow(pitch, 1.22)
                                                     : 230 * std::pow(pitch, 0.7));
    const double most = thread.pitchDiameterMm - allowance;
    const double majorMost = thread.majorMm - allowance;
    return {most - external,
            most,
            majorMost - majorTolerance,
            majorMost,
            thread.pitchDiameterMm,
            thread.pitchDiameterMm + 1.32 * external,
            thread.femaleMinorMm(),
            thread.femaleMinorMm() + minorTolerance};
}

ThreadLimits pipeLimits(const Thread &thread)
{
    const double most = thread.pitchDiameterMm;
    if (thread.tapered) { // a turn either way of the gauge, along a taper of 1:16
        const double turn = thread.pitchMm / 16;
        return {
            most - turn, most + turn, thread.maleMajorMm() - turn,   thread.maleMajorMm() + turn,
            most - turn, most + turn, thread.femaleMinorMm() - turn, thread.femaleMinorMm() + turn};
    }
    const double pitch =
        thread.pitchMm; // ISO 228-1 class A by pitch: 28, 19, 14 and 11 to the inch
    const double pitchTolerance = pitch < 1     ? 0.107
                                  : pitch < 1.5 ? 0.125
                                  : pitch < 2   ? 0.142
                                                : 0.18;
    const double majorTolerance = pitch < 1 ? 0.214 : pitch < 1.5 ? 0.25 : pitch < 2 ? 0.284 : 0.36;
    const double minorTolerance = pitch < 1     ? 0.282
                                  : pitch < 1.5 ? 0.445
                                  : pitch < 2   ? 0.541
                                                : 0.64;
    return {most - pitchTolerance,
            most,
            thread.majorMm - majorTolerance,
            thread.majorMm,
            most,
            most + pitchTolerance,
            thread.femaleMinorMm(),
            thread.femaleMinorMm() + minorTolerance};
}

} // namespace

double Thread::flankAngle() const noexcept
{
    return form == ThreadForm::Whitworth ? 55 : 60;
}

double Thread::crestMm() const noexcept
{
    switch (form) {
    case ThreadForm::Whitworth:
        return 0.640327 * pitchMm; // ISO 228-1: d2 = d - 0.640327 P
    case ThreadForm::NationalPipe:
        return 0.8 * pitchMm; // B1.20.1: h = 0.8 P, half of it on each side, on diameter
    default:
        return 0.649519 * pitchMm; // B1.1 and ISO 724: d2 = d - 0.649519 P
    }
}

double Thread::borderMm() const noexcept
{
    switch (form) {
    case ThreadForm::Whitworth:
        return 0.640327 * pitchMm; // ISO 228-1: D1 = d - 1.280654 P
    case ThreadForm::NationalPipe:
        return 0.8 * pitchMm;
    case ThreadForm::UnifiedJ:
        return (0.974279 - 0.649519) * pitchMm; // AS8879: D1 = D - 0.974279 P
    default:
        return (1.082532 - 0.649519) * pitchMm; // B1.1 and ISO 724: D1 = D - 1.082532 P
    }
}

Thread parallelThread(std::string name, ThreadForm form, double majorMm, double pitchMm)
{
    Thread thread;
    thread.name = std::move(name);
    thread.form = form;
    thread.majorMm = majorMm;
    thread.pitchMm = pitchMm;
    thread.pitchDiameterMm = majorMm - thread.crestMm();
    thread.smallEndMm = thread.pitchDiameterMm;
    return thread;
}

std::optional<double> inchesOf(std::string_view text)
{
    int whole = 0;
    const std::size_t blank = text.find(' ');
    const std::size_t slash = text.find('/');
    if (slash == std::string_view::npos) {
        const auto inches = wholeNumber(text);
        return inches && *inches > 0 ? std::optional<double>(*inches) : std::nullopt;
    }
    if (blank != std::string_view::npos && blank < slash) {
        const auto front = wholeNumber(text.substr(0, blank));
        if (!front)
            return {};
        whole = *front;
    }
    const std::size_t from = blank != std::string_view::npos && blank < slash ? blank + 1 : 0;
    const auto above = wholeNumber(text.substr(from, slash - from));
    const auto below = wholeNumber(text.substr(slash + 1));
    if (!above || !below || *above == 0 || *below == 0)
        return {};
    return whole + static_cast<double>(*above) / *below;
}

std::optional<Thread> threadNamed(std::string_view designation)
{
    if (designation.empty())
        return {};
    if (designation.front() == 'M' || designation.front() == 'm')
        return metricNamed(designation);
    return unifiedNamed(designation);
}

std::optional<std::string> threadSpelt(std::string_view designation)
{
    const auto thread = threadNamed(designation);
    return thread ? std::optional(thread->name) : std::nullopt;
}

ThreadLimits limitsOf(const Thread &thread)
{
    switch (thread.form) {
    case ThreadForm::Metric:
        return metricLimits(thread);
    case ThreadForm::Whitworth:
    case ThreadForm::NationalPipe:
        return pipeLimits(thread);
    default:
        return unifiedLimits(thread);
    }
}

} // namespace flarestock
