// SPDX-License-Identifier: MIT
//
// Values of a template that may depend on answers, and the conditions on which they do. Every
// question that they name exists, and every text is what its place wants, under every answer that
// can be foreseen.

#pragma once

#include "model/exchange/toml/fields.h"
#include "model/systems/template.h"

namespace flarestock {

/// What a text of a template must be.
enum class LiteralForm : std::uint8_t {
    Anything,
    PartNumber,
    Microns, ///< "75 to 150"
    Flow,
    Pressure,
    Length, ///< "5 ft 6 in"
    Rise,   ///< "-8 in": a length that may be negative or nothing.
    Dash,   ///< "-8"
    Construction,
    TubeSize, ///< "3/16"
    Degrees,  ///< An angle that hose ends have.
};

/// What is wrong with a text without braces; nothing where it is as wanted, or empty (not said).
[[nodiscard]] std::optional<TextFault> literalFault(std::string_view text, LiteralForm wanted);

/// What is wrong with an answer to a question; nothing where it is one.
[[nodiscard]] std::optional<TextFault> answerFault(const Question &question,
                                                   std::string_view answer);

class VaryingReader {
public:
    /// Conditions and braces may name these questions.
    VaryingReader(const TomlFields::Source &source, const std::vector<Question> &questions)
        : m_source(source), m_questions(questions)
    {
    }

    /// Always true where the key is not there or wrong.
    [[nodiscard]] Condition condition(const TomlFields &fields, std::string_view key) const;
    /// Not said where the key is not there or wrong.
    [[nodiscard]] Varying varying(const TomlFields &fields, std::string_view key,
                                  LiteralForm wanted) const;
    /// The same of a value that stands by itself.
    [[nodiscard]] Varying varying(const TomlValue &value, const std::string &name,
                                  LiteralForm wanted) const;

private:
    struct Text {
        const TomlValue &value;
        LiteralForm wanted;
    };
    [[nodiscard]] const Question *question(std::string_view id) const noexcept;
    void checkMention(const TomlValue &value, const Condition::Mention &mention) const;
    [[nodiscard]] std::string alternative(const Text &text) const;
    void checkAnswers(const Text &text, const Question &question) const;
    void wrongQuestion(const TomlValue &value, std::size_t character, std::string_view id) const;

    TomlFields::Source m_source;
    const std::vector<Question> &m_questions;
};

} // namespace flarestock
