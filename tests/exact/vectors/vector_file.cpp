// SPDX-License-Identifier: MIT

#include "vector_file.h"

#include <algorithm>
#include <cctype>
#include <fstream>
#include <map>
#include <string_view>

namespace flarestock::tests {

namespace {

std::string lowerCase(std::string text)
{
    std::transform(text.begin(), text.end(), text.begin(),
                   [](unsigned char each) { return static_cast<char>(std::tolower(each)); });
    return text;
}

bool isSpace(char character)
{
    return character == ' ' || character == '\t' || character == '\r';
}

/// A word in quotes, the quote doubled inside; `at` stands on the quote and goes behind the word.
std::string quotedWord(const std::string &line, std::size_t &at)
{
    const char quote = line[at++];
    std::string word;
    for (; at < line.size(); ++at) {
        if (line[at] == quote) {
            if (at + 1 >= line.size() || line[at + 1] != quote)
                break;
            ++at;
        }
        word += line[at];
    }
    ++at;
    return word;
}

/// Words of a line up to a comment.
std::vector<std::string> wordsOf(const std::string &line)
{
    std::vector<std::string> words;
    std::size_t at = 0;
    while (at < line.size()) {
        if (isSpace(line[at])) {
            ++at;
            continue;
        }
        if (line.compare(at, 2, "--") == 0)
            break;
        if (line[at] == '\'' || line[at] == '"') {
            words.push_back(quotedWord(line, at));
            continue;
        }
        const std::size_t start = at;
        while (at < line.size() && !isSpace(line[at]))
            ++at;
        words.push_back(line.substr(start, at - start));
    }
    return words;
}

std::optional<Rounding> roundingOf(const std::string &word)
{
    static const std::map<std::string, Rounding> Modes{
        {"half_even", Rounding::HalfEven},
        {"half_up", Rounding::HalfUp},
        {"half_down", Rounding::HalfDown},
        {"down", Rounding::Down},
        {"up", Rounding::Up},
        {"floor", Rounding::Floor},
        {"ceiling", Rounding::Ceiling},
    };
    const auto found = Modes.find(word);
    return found == Modes.end() ? std::nullopt : std::optional(found->second);
}

/// What stands in force until another directive.
void obey(const std::vector<std::string> &words, Vector &inForce)
{
    const std::string directive = lowerCase(words[0]);
    const std::string value = words.size() > 1 ? lowerCase(words[1]) : std::string();
    if (directive == "precision:")
        inForce.precision = std::stoul(value);
    else if (directive == "rounding:")
        inForce.rounding = roundingOf(value);
    else if (directive == "extended:")
        inForce.extended = value == "1";
}

} // namespace

bool Vector::has(std::string_view condition) const
{
    return std::find(conditions.begin(), conditions.end(), condition) != conditions.end();
}

std::string Vector::name() const
{
    return file + " " + id;
}

std::optional<std::vector<Vector>> readVectors(const std::string &path)
{
    std::ifstream stream(path, std::ios::binary);
    if (!stream)
        return std::nullopt;
    std::vector<Vector> vectors;
    Vector inForce;
    const auto slash = path.find_last_of('/') + 1;
    inForce.file = path.substr(slash, path.find_last_of('.') - slash);
    for (std::string line; std::getline(stream, line);) {
        const auto words = wordsOf(line);
        if (words.empty())
            continue;
        if (words[0].back() == ':') {
            obey(words, inForce);
            continue;
        }
        const auto arrow = std::find(words.begin(), words.end(), "->");
        if (arrow - words.begin() < 3 || words.end() - arrow < 2)
            continue;
        Vector vector = inForce;
        vector.id = words[0];
        vector.operation = lowerCase(words[1]);
        vector.operands.assign(words.begin() + 2, arrow);
        vector.result = arrow[1];
        for (auto condition = arrow + 2; condition != words.end(); ++condition)
            vector.conditions.push_back(lowerCase(*condition));
        vectors.push_back(std::move(vector));
    }
    return vectors;
}

} // namespace flarestock::tests
