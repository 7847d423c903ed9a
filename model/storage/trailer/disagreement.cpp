// SPDX-License-Identifier: MIT

#include "model/storage/trailer/disagreement.h"

#include "model/storage/failure.h"

#include <algorithm>

namespace flarestock {

namespace {

bool isOneOf(const std::string &word, const std::vector<Choice> &choices)
{
    return std::any_of(choices.begin(), choices.end(), [&word](const Choice &choice) {
        return choice.word.ends_with(':')
                   ? word.starts_with(choice.word) && word.size() > choice.word.size()
                   : word == choice.word;
    });
}

std::string spelt(const std::vector<Choice> &choices)
{
    std::string all;
    for (const Choice &choice : choices) {
        all += (all.empty() ? "" : ", ") + choice.word;
        if (choice.word.ends_with(':'))
            all += "…";
    }
    return all;
}

} // namespace

Disagreement *Disagreements::named(const std::string &name)
{
    const auto known = std::find_if(m_all.begin(), m_all.end(),
                                    [&name](const Disagreement &one) { return one.name == name; });
    return known == m_all.end() ? nullptr : &*known;
}

std::string Disagreements::decide(Disagreement one)
{
    if (const Disagreement *known = named(one.name))
        return known->decided.empty() ? known->choices.front().word : known->decided;
    if (const auto word = m_words.find(one.name); word != m_words.end()) {
        if (!isOneOf(word->second, one.choices))
            throw StorageFailure{{one.name + "=" + word->second, "is no decision on that",
                                  "Say one of: " + spelt(one.choices) + "."}};
        one.decided = word->second;
    }
    m_all.push_back(std::move(one));
    return m_all.back().decided.empty() ? m_all.back().choices.front().word : m_all.back().decided;
}

bool Disagreements::isOpen() const noexcept
{
    return std::any_of(m_all.begin(), m_all.end(),
                       [](const Disagreement &one) { return one.decided.empty(); });
}

std::vector<std::string> Disagreements::needless() const
{
    std::vector<std::string> names;
    for (const auto &[name, word] : m_words) {
        if (std::none_of(m_all.begin(), m_all.end(),
                         [&name = name](const Disagreement &one) { return one.name == name; }))
            names.push_back(name);
    }
    return names;
}

} // namespace flarestock
