// SPDX-License-Identifier: MIT
//
// Runs the General Decimal Arithmetic vectors of the Debian package libpython3.11-testsuite. They
// are read where the package puts them (or in $DECTEST_DIR); a missing file is a failure, and so is
// a sweep over fewer vectors than are known to apply.

#include "vector_check.h"

#include <cstdio>
#include <cstdlib>

using namespace flarestock::tests;

namespace {

constexpr std::size_t AppliedMin = 20'000;
constexpr std::size_t FailuresShown = 20;

// Operations with unlimited operands, then the same in the two fixed sizes.
constexpr const char *Files[] = {
    "add",        "subtract",     "multiply",    "divide",       "divideint",   "remainder",
    "quantize",   "rescale",      "rounding",    "inexact",      "compare",     "samequantum",
    "tointegral", "tointegralx",  "abs",         "minus",        "plus",        "reduce",
    "max",        "min",          "fma",         "base",         "randoms",     "randomBound32",
    "ddAdd",      "ddSubtract",   "ddMultiply",  "ddDivide",     "ddDivideInt", "ddRemainder",
    "ddQuantize", "ddCompare",    "ddBase",      "ddToIntegral", "dqAdd",       "dqSubtract",
    "dqMultiply", "dqDivide",     "dqDivideInt", "dqRemainder",  "dqQuantize",  "dqCompare",
    "dqBase",     "dqToIntegral",
};

} // namespace

int main()
{
    const char *asked = std::getenv("DECTEST_DIR");
    const std::string folder = asked ? asked : "/usr/lib/python3.11/test/decimaltestdata";
    Tally tally;
    for (const char *file : Files) {
        const auto vectors = readVectors(folder + "/" + file + ".decTest");
        if (!vectors || vectors->empty()) {
            std::printf("FAIL: no %s.decTest in %s: install libpython3.11-testsuite\n", file,
                        folder.c_str());
            return EXIT_FAILURE;
        }
        for (const Vector &vector : *vectors)
            check(vector, tally);
    }
    for (std::size_t at = 0; at < tally.failures.size() && at < FailuresShown; ++at)
        std::printf("FAIL: %s\n", tally.failures[at].c_str());
    const std::size_t applied = tally.strict + tally.value;
    std::printf("%zu vectors applied (%zu with their scale), %zu failed, %zu not for us\n", applied,
                tally.strict, tally.failures.size(), tally.skipped);
    if (applied < AppliedMin) {
        std::printf("FAIL: fewer than %zu vectors applied\n", AppliedMin);
        return EXIT_FAILURE;
    }
    return tally.failures.empty() ? EXIT_SUCCESS : EXIT_FAILURE;
}
