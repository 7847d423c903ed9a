// SPDX-License-Identifier: MIT

#include "model/exchange/templates/template_words.h"

#include <algorithm>

namespace flarestock {

namespace {

using Word = std::string_view;
constexpr std::array<Word, 10> TopKeys = {"id",       "title",   "system", "fluid",  "filters",
                                          "question", "station", "run",    "module", "extra"};
constexpr std::size_t HeadersFrom = 5; ///< Of those.
/// First what is plain, then how its default is worked out.
constexpr std::array<Word, 22> QuestionKeys = {
    "id",    "title",       "form",    "choices",      "dimension", "default",      "least", "most",
    "when",  "worked-out",  "feed",    "shared-by",    "delivery",  "set-pressure", "line",  "flow",
    "pumps", "pumps-apart", "lengths", "construction", "rise",      "other-loss"};
constexpr std::size_t WorkedOutFrom = 9; ///< Of those.
constexpr std::array<Word, 14> StationKeys = {
    "id",       "title", "kind", "level", "words",     "micron",  "flow",
    "pressure", "rated", "part", "when",  "bracketed", "plugged", "spare-elements"};
constexpr std::array<Word, 15> RunKeys = {"id",     "level",       "from",         "to",
                                          "length", "dash",        "construction", "tubing",
                                          "rise",   "forward",     "start-angle",  "end-angle",
                                          "bend",   "clamps-each", "when"};
constexpr std::array<Word, 4> ModuleKeys = {"id", "template", "answers", "when"};
constexpr std::array<Word, 4> ExtraKeys = {"part", "count", "why", "when"};

constexpr std::array<Word, 5> SystemWords = {"fuel", "oil", "coolant", "gearbox", "brakes"};
constexpr std::array<Word, 4> FilterWords = {"none", "around electric pump", "after pump",
                                             "oil return"};
constexpr std::array<Word, 3> LevelWords = {"suction", "pressure", "return"};
constexpr std::array<Word, 4> FormWords = {"choice", "measure", "yes/no", "dash"};
constexpr std::array<Word, 3> ByWords = {"fuel demand", "pump pressure", "line size"};
constexpr std::array<Word, 2> FeedWords = {"pump", "gravity"};
constexpr std::array<Word, 2> DeliveryWords = {"carburettor", "injection"};
constexpr std::array<Word, 5> LineWords = {"suction", "before regulator", "behind regulator",
                                           "return", "gravity"};

constexpr std::array<Word, 2> DemandKeys = {"feed", "shared-by"};
constexpr std::array<Word, 2> PressureKeys = {"delivery", "set-pressure"};
constexpr std::array<Word, 10> LineKeys = {"delivery", "set-pressure", "line",    "flow",
                                           "pumps",    "pumps-apart",  "lengths", "construction",
                                           "rise",     "other-loss"};

struct KeyWithWords {
    Paragraph paragraph;
    Word key;
    TemplateWords words;
};
constexpr std::array<KeyWithWords, 9> WithWords = {{
    {Paragraph::Top, "system", SystemWords},
    {Paragraph::Top, "filters", FilterWords},
    {Paragraph::Station, "level", LevelWords},
    {Paragraph::Run, "level", LevelWords},
    {Paragraph::Question, "form", FormWords},
    {Paragraph::Question, "worked-out", ByWords},
    {Paragraph::Question, "feed", FeedWords},
    {Paragraph::Question, "delivery", DeliveryWords},
    {Paragraph::Question, "line", LineWords},
}};

} // namespace

TemplateWords headers() noexcept
{
    return TemplateWords(TopKeys).subspan(HeadersFrom);
}

std::string_view headerOf(Paragraph paragraph) noexcept
{
    return paragraph == Paragraph::Top ? Word()
                                       : headers()[static_cast<std::size_t>(paragraph) - 1];
}

TemplateWords keysOf(Paragraph paragraph) noexcept
{
    switch (paragraph) {
    case Paragraph::Top:
        return TopKeys;
    case Paragraph::Question:
        return QuestionKeys;
    case Paragraph::Station:
        return StationKeys;
    case Paragraph::Run:
        return RunKeys;
    case Paragraph::Module:
        return ModuleKeys;
    case Paragraph::Extra:
        break;
    }
    return ExtraKeys;
}

TemplateWords wordsOf(Paragraph paragraph, std::string_view key) noexcept
{
    const auto found =
        std::find_if(WithWords.begin(), WithWords.end(), [&](const KeyWithWords &one) {
            return one.paragraph == paragraph && one.key == key;
        });
    return found == WithWords.end() ? TemplateWords() : found->words;
}

TemplateWords workedOutKeys() noexcept
{
    return TemplateWords(QuestionKeys).subspan(WorkedOutFrom);
}

TemplateWords keysWorkedOutBy(std::string_view calculation) noexcept
{
    static constexpr std::array<TemplateWords, 3> Takes = {DemandKeys, PressureKeys, LineKeys};
    const auto at = static_cast<std::size_t>(
        std::find(ByWords.begin(), ByWords.end(), calculation) - ByWords.begin());
    return at < Takes.size() ? Takes[at] : TemplateWords();
}

} // namespace flarestock
