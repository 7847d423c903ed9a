// SPDX-License-Identifier: MIT
//
// Elsewhere: preloaded into a test, it makes the program live in the locale and the time zone of
// its environment before main() begins, as far as C and C++ ask for them. A test of the model has
// no application object that would do so, and would otherwise run in the C locale wherever it is.
//
// It ends the program where the locale has no comma for the decimal point or the clock is not
// fourteen hours ahead: then the test would have tested nothing.

#include <clocale>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <locale>
#include <string>

namespace {

__attribute__((constructor)) void goElsewhere()
{
    unsetenv("LD_PRELOAD"); // Not for what the test starts.
    std::setlocale(LC_ALL, "");
    const std::time_t now = std::time(nullptr);
    const std::tm *there = std::localtime(&now);
    const bool elsewhere = std::string(std::localeconv()->decimal_point) == "," &&
                           there != nullptr && there->tm_gmtoff == 14L * 3600;
    if (!elsewhere) {
        std::fputs("elsewhere: the comma locale or the time zone is missing\n", stderr);
        std::_Exit(1);
    }
    std::locale::global(std::locale(""));
}

} // namespace
