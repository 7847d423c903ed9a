// SPDX-License-Identifier: MIT

#include "model/exchange/toml/document.h"

#include "model/exchange/toml/stray_character.h"

#include <algorithm>
#include <array>
#include <sstream>

// The library asserts that a key begins like one before it checks it, and a broken file ends the
// program (toml++ 3.3, parse_key; found by fuzzing). Without its assertions it comes to the check
// and says what is wrong; with NDEBUG it would take them for granted, which is worse.
#undef NDEBUG
#define TOML_ASSERT(condition) static_cast<void>(0)
#define TOML_EXCEPTIONS 0
#define TOML_ENABLE_FORMATTERS 0
#define TOML_MAX_NESTED_VALUES 32
#include <toml++/toml.h>

namespace flarestock {

namespace {

/// The library builds and frees its tree by recursion, and dotted keys nest without its own limit
/// seeing them; no file of a shop has so many in a line.
constexpr std::ptrdiff_t DotsInALineMax = 100;

/// The byte of the first line with more dots than any key of ours could have.
std::optional<std::size_t> tooManyDots(std::string_view text)
{
    std::size_t start = 0;
    while (start < text.size()) {
        const std::size_t end = std::min(text.find('\n', start), text.size());
        const std::string_view line = text.substr(start, end - start);
        const std::size_t first = line.find_first_not_of(" \t");
        const bool isComment = first == std::string_view::npos || line[first] == '#';
        if (!isComment && std::count(line.begin(), line.end(), '.') > DotsInALineMax)
            return start + first;
        start = end + 1;
    }
    return std::nullopt;
}

void place(TomlValue &value, const toml::node &node)
{
    value.line = static_cast<std::uint32_t>(node.source().begin.line);
    value.column = static_cast<std::uint32_t>(node.source().begin.column);
    value.endLine = static_cast<std::uint32_t>(node.source().end.line);
    value.endColumn = static_cast<std::uint32_t>(node.source().end.column);
}

TomlValue converted(const toml::node &node);

void convertTable(TomlValue &value, const toml::table &table)
{
    value.form = TomlValue::Form::Table;
    for (const auto &[key, child] : table) {
        TomlEntry entry{std::string(key.str()), converted(child), 0, 0};
        entry.line = static_cast<std::uint32_t>(key.source().begin.line);
        entry.column = static_cast<std::uint32_t>(key.source().begin.column);
        value.entries.push_back(std::move(entry));
    }
    std::sort(value.entries.begin(), value.entries.end(),
              [](const TomlEntry &a, const TomlEntry &b) {
                  return std::tie(a.line, a.column) < std::tie(b.line, b.column);
              });
}

template <class T>
std::string printed(const T &value)
{
    std::ostringstream out;
    out.imbue(std::locale::classic());
    out << value;
    return out.str();
}

TomlValue converted(const toml::node &node)
{
    TomlValue value;
    place(value, node);
    if (const auto *const table = node.as_table()) {
        convertTable(value, *table);
    } else if (const auto *const list = node.as_array()) {
        value.form = TomlValue::Form::List;
        for (const toml::node &item : *list)
            value.items.push_back(converted(item));
    } else if (const auto *const text = node.as_string()) {
        value.form = TomlValue::Form::Text;
        value.text = text->get();
    } else if (const auto *const whole = node.as_integer()) {
        value.form = TomlValue::Form::Whole;
        value.whole = whole->get();
    } else if (const auto *const yes = node.as_boolean()) {
        value.form = TomlValue::Form::YesNo;
        value.yes = yes->get();
    } else if (const auto *const date = node.as_date()) {
        value.form = TomlValue::Form::Date;
        value.text = printed(date->get());
    } else {
        // A float, a time, or both date and time: nothing of ours is one.
        value.form = TomlValue::Form::Fraction;
    }
    return value;
}

Problem parseProblem(const toml::parse_error &error, std::string_view whole,
                     const std::string &file)
{
    const auto begin = error.source().begin;
    const std::size_t byte = byteOf(whole, static_cast<std::uint32_t>(begin.line),
                                    static_cast<std::uint32_t>(begin.column));
    // The commonest slip, which the library says by what it met behind it.
    const auto open = firstOpenQuote(whole);
    if (open && *open <= std::min(whole.find('\n', byte), whole.size())) {
        const std::string_view rest = whole.substr(*open);
        const bool isLong = rest.starts_with("\"\"\"") || rest.starts_with("'''");
        return problemAt(whole, isLong ? *open : byte, file,
                         {isLong ? "the three quotes that begin here are not closed"
                                 : "a quote on this line is not closed",
                          "A text stands between two quotes."});
    }
    return problemAt(whole, byte, file,
                     {"this is not TOML: " + std::string(error.description()),
                      "Correct the text at this place."});
}

} // namespace

const TomlEntry *TomlValue::find(std::string_view key) const noexcept
{
    const auto found = std::find_if(entries.begin(), entries.end(),
                                    [key](const TomlEntry &entry) { return entry.key == key; });
    return found == entries.end() ? nullptr : &*found;
}

std::string_view text(TomlValue::Form form) noexcept
{
    static constexpr std::array<std::string_view, 7> Words = {
        "a text", "a whole number", "a fraction or time", "true or false", "a date",
        "a list", "a table"};
    return Words[static_cast<std::size_t>(form)];
}

Result<TomlDocument> TomlDocument::read(std::string_view whole, std::string file)
{
    TomlDocument document(whole, std::move(file));
    if (whole.size() > BytesMax)
        return problem(document.m_file,
                       "the file has " + std::to_string(whole.size()) + " bytes, more than 4 MB",
                       "Divide it, or take another file.");
    if (const auto bad = firstBadByte(whole))
        return tl::unexpected(problemAt(whole, *bad, document.m_file,
                                        {"the text is not UTF-8", "Save the file as UTF-8."}));
    if (const auto dots = tooManyDots(whole))
        return tl::unexpected(problemAt(whole, *dots, document.m_file,
                                        {"the keys of this line are nested more than 100 deep",
                                         "Write tables one below the other."}));
    if (const auto stray = firstStrayCharacter(whole))
        return tl::unexpected(
            problemAt(whole, *stray, document.m_file,
                      {"this is not TOML: there is a letter beyond ASCII outside quotes",
                       "Put the text in quotes."}));
    // Its form is judged on a stand-in: the library must see no letter beyond ASCII in a broken
    // text.
    if (const std::string standIn = asciiStandIn(whole); standIn.size() != whole.size()) {
        if (const toml::parse_result judged = toml::parse(standIn, document.m_file); !judged)
            return tl::unexpected(parseProblem(judged.error(), whole, document.m_file));
    }
    const toml::parse_result parsed = toml::parse(whole, document.m_file);
    if (!parsed)
        return tl::unexpected(parseProblem(parsed.error(), whole, document.m_file));
    convertTable(document.m_root, parsed.table());
    return document;
}

Problem TomlDocument::at(const TomlValue &value, TextFault fault) const
{
    return problemAt(m_whole, byteOf(m_whole, std::max(value.line, 1U), value.column), m_file,
                     std::move(fault));
}

Problem TomlDocument::at(const TomlEntry &entry, TextFault fault) const
{
    return problemAt(m_whole, byteOf(m_whole, std::max(entry.line, 1U), entry.column), m_file,
                     std::move(fault));
}

Problem TomlDocument::inside(const TomlValue &value, std::size_t character, TextFault fault) const
{
    std::size_t byte = byteOf(m_whole, std::max(value.line, 1U), value.column);
    const std::string_view rest = m_whole.substr(byte);
    const bool isLiteral = rest.starts_with('\'');
    const bool isLong = rest.starts_with("\"\"\"") || rest.starts_with("'''");
    byte += isLong ? 3 : 1;
    if (isLong && byte < m_whole.size() && m_whole[byte] == '\n')
        ++byte;
    for (; character > 0 && byte < m_whole.size(); --character) {
        if (!isLiteral && m_whole[byte] == '\\' && byte + 1 < m_whole.size()) {
            const char kind = m_whole[byte + 1];
            byte += kind == 'u' ? 6 : kind == 'U' ? 10 : 2;
            continue;
        }
        do
            ++byte;
        while (byte < m_whole.size() &&
               (static_cast<unsigned char>(m_whole[byte]) & 0xC0U) == 0x80U);
    }
    return problemAt(m_whole, byte, m_file, std::move(fault));
}

} // namespace flarestock
