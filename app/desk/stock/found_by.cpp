// SPDX-License-Identifier: MIT

#include "app/desk/stock/found_by.h"

#include "model/exact/case_fold.h"
#include "model/ports/size_table.h"

#include <algorithm>

namespace flarestock {

namespace {

const std::string Micron = "micron";

void replaceAll(std::string &text, std::string_view what, std::string_view with)
{
    for (std::size_t at = text.find(what); at != std::string::npos;
         at = text.find(what, at + with.size()))
        text.replace(at, what.size(), with);
}

bool isDigit(char letter)
{
    return letter >= '0' && letter <= '9';
}

/// "-8", "-10"
bool isDash(const std::string &word)
{
    return word.size() > 1 && word.front() == '-' &&
           std::all_of(word.begin() + 1, word.end(), isDigit);
}

bool isFigure(const std::string &word)
{
    return std::all_of(word.begin(), word.end(),
                       [](char letter) { return isDigit(letter) || letter == '.'; });
}

/// Whether the words stand there side by side, behind a blank and before no further digit.
bool standsAlone(const std::string &sought, const std::string &words)
{
    const std::string alone = " " + words;
    for (std::size_t at = sought.find(alone); at != std::string::npos;
         at = sought.find(alone, at + 1)) {
        const std::size_t end = at + alone.size();
        if (end == sought.size() || !isDigit(sought[end]))
            return true;
    }
    return false;
}

bool holds(const std::string &sought, const std::string &word)
{
    return isDash(word) ? standsAlone(sought, word) : sought.find(word) != std::string::npos;
}

/// Whether two words that were typed side by side are those of one thing: "-8 orb" is no part whose
/// boss is a -10 and whose hose is a -8, "10 micron" none of 100 µm.
bool belongTogether(const std::string &sought, const std::string &one, const std::string &other)
{
    if (isDash(one) != isDash(other)) {
        const std::string &family = isDash(one) ? other : one;
        return sought.find(" " + family + " -") == std::string::npos ||
               standsAlone(sought, family + " " + (isDash(one) ? one : other));
    }
    return !isFigure(one) || other != Micron || sought.find(Micron) == std::string::npos ||
           sought.find(" " + one + " " + Micron) != std::string::npos;
}

void addOnce(std::vector<std::string> &all, std::string one)
{
    if (std::find(all.begin(), all.end(), one) == all.end())
        all.push_back(std::move(one));
}

const MicronRating *ratingOf(const Part &part)
{
    if (const auto *filter = part.as<FilterFacts>())
        return filter->rating ? &*filter->rating : nullptr;
    if (const auto *element = part.as<ElementFacts>())
        return &element->rating;
    return nullptr;
}

} // namespace

std::string foldedWords(std::string_view text)
{
    if (text.empty())
        return {};
    std::string small = " " + folded(text);
    for (const char *spelling : {"µm", "μm", "mikron"}) // U+00B5, the micro sign; U+03BC.
        replaceAll(small, spelling, Micron);
    for (std::size_t at = small.find(Micron); at != std::string::npos;
         at = small.find(Micron, at + Micron.size())) {
        if (isDigit(small[at - 1])) // "10µm"; a blank stands before all.
            small.insert(at++, " ");
    }
    replaceAll(small, ", ", "  ");
    return small;
}

std::string soughtOf(const Part &part)
{
    std::string sought = foldedWords(part.number) + foldedWords(part.description) +
                         foldedWords(text(part.kind)) + foldedWords(part.material) +
                         foldedWords(part.seal);
    for (const PartPort &port : part.ports)
        sought += foldedWords(port.port.text());
    if (const MicronRating *rating = ratingOf(part))
        sought += foldedWords(rating->text());
    if (const auto *hose = part.as<HoseFacts>())
        sought += foldedWords(hose->construction) + " -" + std::to_string(hose->dash);
    for (const std::string &word : part.words)
        sought += foldedWords(word);
    return sought;
}

std::vector<std::string> wordsTyped(std::string_view typed)
{
    std::vector<std::string> words;
    const std::string all = foldedWords(typed);
    std::string_view rest = all;
    while (!(rest = trimmed(rest)).empty()) {
        const auto blank = std::min(rest.find(' '), rest.size());
        words.emplace_back(rest.substr(0, blank));
        rest.remove_prefix(blank);
    }
    return words;
}

bool holdsAll(const std::string &sought, const std::vector<std::string> &words)
{
    for (std::size_t at = 0; at < words.size(); ++at) {
        if (!holds(sought, words[at]) ||
            (at > 0 && !belongTogether(sought, words[at - 1], words[at])))
            return false;
    }
    return true;
}

std::vector<std::string> dashesOf(const Part &part)
{
    std::vector<std::string> dashes;
    for (const PartPort &port : part.ports) {
        if (const int size = dash(port.port); size > 0)
            addOnce(dashes, "-" + std::to_string(size));
    }
    if (const auto *hose = part.as<HoseFacts>(); hose && hose->dash > 0)
        addOnce(dashes, "-" + std::to_string(hose->dash));
    if (const auto *end = part.as<HoseEndFacts>(); end && end->hoseDash > 0)
        addOnce(dashes, "-" + std::to_string(end->hoseDash));
    return dashes;
}

std::vector<std::string> threadsOf(const Part &part)
{
    std::vector<std::string> threads;
    for (const PartPort &port : part.ports) {
        const SizeRow *size = sizeOf(port.port);
        if (size && size->thread)
            addOnce(threads, size->thread->name);
    }
    return threads;
}

std::string micronOf(const Part &part)
{
    const MicronRating *rating = ratingOf(part);
    return rating ? rating->micron.text() : std::string();
}

} // namespace flarestock
