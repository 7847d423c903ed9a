// SPDX-License-Identifier: MIT

#include "model/systems/condition.h"

#include "model/exact/case_fold.h"
#include "model/systems/condition_text.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>

namespace flarestock {

namespace {

using Node = Condition::Node;

/// Two readings of one size may differ in the last bits: 3 bar and 300 kPa are the same.
constexpr double SameWithin = 1e-9;

/// -1, 0 or 1 as the first measure is smaller, the same or larger.
int comparedSize(double a, double b)
{
    if (std::abs(a - b) <= SameWithin * std::max(std::abs(a), std::abs(b)))
        return 0;
    return a < b ? -1 : 1;
}

bool isSame(const std::string &answer, const Node::Value &value)
{
    if (sameFolded(trimmed(answer), value.text))
        return true;
    if (!value.measure)
        return false;
    const auto measure = Measure::parse(answer, value.measure->dimension);
    return measure && comparedSize(measure->si, value.measure->si) == 0;
}

bool comparesTrue(const Node &node, const std::string &answer)
{
    const auto isAny = [&] {
        return std::any_of(node.values.begin(), node.values.end(),
                           [&](const Node::Value &value) { return isSame(answer, value); });
    };
    if (!node.isBySize())
        return isAny() != (node.form == Node::Form::IsNot);
    const Measure &limit = *node.values.front().measure;
    const auto measure = Measure::parse(answer, limit.dimension);
    if (!measure)
        return false;
    const int size = comparedSize(measure->si, limit.si);
    switch (node.form) {
    case Node::Form::Above:
        return size > 0;
    case Node::Form::Below:
        return size < 0;
    case Node::Form::AtLeast:
        return size >= 0;
    default:
        return size <= 0;
    }
}

bool nodeHolds(const Node &node, const Answers &answers)
{
    const auto partHolds = [&](const std::shared_ptr<const Node> &part) {
        return nodeHolds(*part, answers);
    };
    switch (node.form) {
    case Node::Form::Not:
        return !nodeHolds(*node.parts.front(), answers);
    case Node::Form::And:
        return std::all_of(node.parts.begin(), node.parts.end(), partHolds);
    case Node::Form::Or:
        return std::any_of(node.parts.begin(), node.parts.end(), partHolds);
    default:
        const auto answer = answers.find(node.question);
        assert(answer != answers.end());
        return comparesTrue(node, answer->second);
    }
}

/// In quotes where it would otherwise read as something else.
std::string valueText(const std::string &value)
{
    bool needsQuotes = value.find_first_of("(),'\t\n\r") != std::string::npos;
    std::string word;
    // The words of a value that the grammar would take for its own.
    for (const char letter : value + ' ') {
        if (letter != ' ') {
            word += foldedLetter(letter);
            continue;
        }
        static constexpr std::array<std::string_view, 4> Taken = {"and", "or", "not", "one"};
        needsQuotes = needsQuotes || word.empty() ||
                      std::find(Taken.begin(), Taken.end(), word) != Taken.end();
        word.clear();
    }
    if (!needsQuotes)
        return value;
    std::string quoted = "'";
    for (const char letter : value)
        quoted += letter == '\'' ? "''" : std::string(1, letter);
    return quoted + '\'';
}

std::string nodeText(const Node &node)
{
    if (node.isComparison()) {
        std::string said = node.question + ' ' + std::string(comparisonWords(node.form)) + ' ';
        for (std::size_t i = 0; i < node.values.size(); ++i)
            said += (i > 0 ? ", " : "") + valueText(node.values[i].text);
        return said;
    }
    const auto grouped = [](const Node &part) { return '(' + nodeText(part) + ')'; };
    if (node.form == Node::Form::Not)
        return "not " + (node.parts.front()->isComparison() ? nodeText(*node.parts.front())
                                                            : grouped(*node.parts.front()));
    std::string said;
    for (const auto &part : node.parts) {
        // Inside `and` an `or` needs parentheses; a list inside a list of its own form keeps them.
        const bool isLoose = part->form == Node::Form::Or || part->form == node.form;
        said += said.empty() ? "" : node.form == Node::Form::And ? " and " : " or ";
        said += isLoose ? grouped(*part) : nodeText(*part);
    }
    return said;
}

void collect(const Node &node, std::vector<Condition::Mention> &mentions)
{
    for (const auto &part : node.parts)
        collect(*part, mentions);
    if (!node.isComparison())
        return;
    auto found = std::find_if(mentions.begin(), mentions.end(), [&node](const auto &mention) {
        return mention.question == node.question;
    });
    if (found == mentions.end()) {
        Condition::Mention mention;
        mention.question = node.question;
        mention.column = node.column;
        found = mentions.insert(mentions.end(), std::move(mention));
    }
    found->measured = found->measured || node.isBySize();
    for (const Node::Value &value : node.values) {
        found->values.push_back(value.text);
        found->valueColumns.push_back(value.column);
    }
}

} // namespace

Result<Condition> Condition::parse(std::string_view text)
{
    Condition read;
    if (text.find_first_not_of(" \t\r\n") == std::string_view::npos)
        return read;
    auto root = readCondition(text);
    if (!root)
        return tl::unexpected(std::move(root.error()));
    read.m_root = std::move(*root);
    return read;
}

std::string Condition::text() const
{
    return m_root ? nodeText(*m_root) : std::string();
}

std::vector<Condition::Mention> Condition::mentions() const
{
    std::vector<Mention> all;
    if (m_root)
        collect(*m_root, all);
    return all;
}

bool Condition::holds(const Answers &answers) const
{
    return !m_root || nodeHolds(*m_root, answers);
}

} // namespace flarestock
