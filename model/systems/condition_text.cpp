// SPDX-License-Identifier: MIT

#include "model/systems/condition_text.h"

#include "model/exact/case_fold.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

using Node = Condition::Node;
using NodePointer = std::shared_ptr<const Node>;

constexpr int DepthMax = 64;

struct Token {
    enum class Form : std::uint8_t { Word, Quoted, Open, Close, Comma, End };
    Form form = Form::End;
    std::string text;
    std::uint32_t column = 1;

    [[nodiscard]] bool is(std::string_view word) const
    {
        return form == Form::Word && sameFolded(text, word);
    }
    [[nodiscard]] bool isValue() const
    {
        return form == Form::Quoted || (form == Form::Word && !is("and") && !is("or"));
    }
};

tl::unexpected<Problem> conditionProblem(std::uint32_t column, std::string wrong,
                                         std::string remedy = {})
{
    Problem found{"condition", std::move(wrong), std::move(remedy)};
    found.column = column;
    return tl::unexpected(std::move(found));
}

class Tokens {
public:
    explicit Tokens(std::string_view text) : m_text(text) {}
    Result<std::vector<Token>> all();

private:
    [[nodiscard]] bool atEnd() const { return m_at == m_text.size(); }
    char next()
    {
        const char byte = m_text[m_at++];
        m_column += (static_cast<unsigned char>(byte) & 0xC0U) != 0x80U ? 1U : 0U;
        return byte;
    }
    Result<Token> quoted();
    Token word();

    std::string_view m_text;
    std::size_t m_at = 0;
    std::uint32_t m_column = 1;
};

constexpr bool isBlank(char byte)
{
    return byte == ' ' || byte == '\t' || byte == '\n' || byte == '\r';
}

Result<std::vector<Token>> Tokens::all()
{
    std::vector<Token> tokens;
    while (true) {
        while (!atEnd() && isBlank(m_text[m_at]))
            next();
        if (atEnd())
            break;
        const std::uint32_t column = m_column;
        const char first = m_text[m_at];
        if (first == '(' || first == ')' || first == ',') {
            const auto form = first == '('   ? Token::Form::Open
                              : first == ')' ? Token::Form::Close
                                             : Token::Form::Comma;
            tokens.push_back({form, std::string(1, next()), column});
        } else if (first == '\'') {
            auto token = quoted();
            if (!token)
                return tl::unexpected(std::move(token.error()));
            tokens.push_back(std::move(*token));
        } else {
            tokens.push_back(word());
        }
    }
    tokens.push_back({Token::Form::End, "", m_column});
    return tokens;
}

Result<Token> Tokens::quoted()
{
    Token token{Token::Form::Quoted, "", m_column};
    next();
    while (!atEnd()) {
        const char byte = next();
        if (byte != '\'') {
            token.text += byte;
        } else if (!atEnd() && m_text[m_at] == '\'') {
            token.text += next();
        } else {
            return token;
        }
    }
    return conditionProblem(token.column, "the quote that begins here does not end",
                            "Close it with another '.");
}

Token Tokens::word()
{
    Token token{Token::Form::Word, "", m_column};
    while (!atEnd() && !isBlank(m_text[m_at]) &&
           std::string_view("(),").find(m_text[m_at]) == std::string_view::npos)
        token.text += next();
    return token;
}

bool isQuestionId(std::string_view word)
{
    return !word.empty() && std::all_of(word.begin(), word.end(), [](char letter) {
        const char small = foldedLetter(letter);
        return (small >= 'a' && small <= 'z') || (small >= '0' && small <= '9') || small == '-';
    });
}

/// or-list of and-lists of factors, by recursive descent.
class Reading {
public:
    explicit Reading(std::vector<Token> tokens) : m_tokens(std::move(tokens)) {}

    Result<NodePointer> whole()
    {
        auto node = list(Node::Form::Or);
        if (!node || now().form == Token::Form::End)
            return node;
        if (now().form == Token::Form::Close)
            return conditionProblem(now().column, "this parenthesis closes nothing",
                                    "Remove it, or open one before.");
        return conditionProblem(now().column, "\"" + now().text + "\" does not belong here",
                                "Join comparisons by and or or.");
    }

private:
    [[nodiscard]] const Token &now() const { return m_tokens[m_at]; }
    bool take(std::string_view word)
    {
        if (!now().is(word))
            return false;
        ++m_at;
        return true;
    }
    Result<NodePointer> list(Node::Form form);
    Result<NodePointer> factor();
    Result<NodePointer> comparison();
    Result<Node::Form> comparisonForm();
    Result<Node::Value> value();

    std::vector<Token> m_tokens;
    std::size_t m_at = 0;
    int m_depth = 0;
};

Result<NodePointer> Reading::list(Node::Form form)
{
    Node node;
    node.form = form;
    do {
        auto part = form == Node::Form::Or ? list(Node::Form::And) : factor();
        if (!part)
            return part;
        node.parts.push_back(std::move(*part));
    } while (take(form == Node::Form::Or ? "or" : "and"));
    if (node.parts.size() == 1)
        return std::move(node.parts.front());
    return std::make_shared<const Node>(std::move(node));
}

Result<NodePointer> Reading::factor()
{
    const std::uint32_t column = now().column;
    if (now().form != Token::Form::Open && !now().is("not"))
        return comparison();
    if (++m_depth > DepthMax)
        return conditionProblem(column, "the condition is nested more than 64 deep",
                                "Ask less at once.");
    if (take("not")) {
        auto inner = factor();
        --m_depth;
        if (!inner)
            return inner;
        Node node;
        node.form = Node::Form::Not;
        node.parts.push_back(std::move(*inner));
        return std::make_shared<const Node>(std::move(node));
    }
    ++m_at;
    auto inner = list(Node::Form::Or);
    --m_depth;
    if (!inner)
        return inner;
    if (now().form != Token::Form::Close)
        return conditionProblem(now().column, "a parenthesis is not closed",
                                "Write ) for the ( in column " + std::to_string(column) + ".");
    ++m_at;
    return inner;
}

Result<NodePointer> Reading::comparison()
{
    const Token question = now();
    if (question.form != Token::Form::Word || !isQuestionId(question.text) || !question.isValue())
        return conditionProblem(question.column, "a question is wanted here",
                                "Write for example: fluid is E85.");
    ++m_at;
    auto form = comparisonForm();
    if (!form)
        return tl::unexpected(std::move(form.error()));
    Node node;
    node.form = *form;
    node.question = folded(question.text);
    node.column = question.column;
    do {
        auto compared = value();
        if (!compared)
            return tl::unexpected(std::move(compared.error()));
        if (node.isBySize() && !compared->measure)
            return conditionProblem(compared->column, "\"" + compared->text + "\" is no measure",
                                    "Write a number and a unit, such as 500 hp.");
        node.values.push_back(std::move(*compared));
    } while (node.form == Node::Form::OneOf && now().form == Token::Form::Comma && ++m_at > 0);
    return std::make_shared<const Node>(std::move(node));
}

Result<Node::Form> Reading::comparisonForm()
{
    const std::uint32_t column = now().column;
    if (take("is")) {
        if (take("not"))
            return Node::Form::IsNot;
        if (now().is("one") && m_tokens[m_at + 1].is("of")) {
            m_at += 2;
            return Node::Form::OneOf;
        }
        return Node::Form::Is;
    }
    if (take("above"))
        return Node::Form::Above;
    if (take("below"))
        return Node::Form::Below;
    if (take("at")) {
        if (take("least"))
            return Node::Form::AtLeast;
        if (take("most"))
            return Node::Form::AtMost;
    }
    return conditionProblem(column, "no comparison follows the question",
                            "Write is, is not, is one of, above, below, at least or at most.");
}

Result<Node::Value> Reading::value()
{
    Node::Value read;
    read.column = now().column;
    while (now().isValue()) {
        read.text += (read.text.empty() ? "" : " ") + now().text;
        ++m_at;
    }
    if (read.text.empty())
        return conditionProblem(read.column, "a value is wanted here", "Write what is compared.");
    if (auto measure = Measure::parse(read.text))
        read.measure = std::move(*measure);
    else if (auto count = Measure::parse(read.text, Dimension::Count))
        read.measure = std::move(*count);
    return read;
}

} // namespace

std::string_view comparisonWords(Condition::Node::Form form) noexcept
{
    static constexpr std::array<std::string_view, 7> Words = {
        "is", "is not", "is one of", "above", "below", "at least", "at most"};
    return Words[static_cast<std::size_t>(form)];
}

Result<std::shared_ptr<const Condition::Node>> readCondition(std::string_view text)
{
    auto tokens = Tokens(text).all();
    if (!tokens)
        return tl::unexpected(std::move(tokens.error()));
    return Reading(std::move(*tokens)).whole();
}

} // namespace flarestock
