// SPDX-License-Identifier: MIT

#include "app/desk/template/typed_text.h"

#include "app/desk/words/spoken.h"

#include <QTextBlock>

#include <algorithm>
#include <string_view>
#include <vector>

namespace flarestock {

namespace {

constexpr std::string_view Mark = "\xEF\xBB\xBF";

/// Each with its end.
std::vector<std::string_view> linesOf(std::string_view text)
{
    std::vector<std::string_view> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size() - 1) + 1;
        lines.push_back(text.substr(0, end));
        text.remove_prefix(end);
    }
    return lines;
}

std::string_view withoutEnd(std::string_view line)
{
    if (line.ends_with('\n'))
        line.remove_suffix(1);
    if (line.ends_with('\r'))
        line.remove_suffix(1);
    return line;
}

bool isSame(std::string_view a, std::string_view b)
{
    return withoutEnd(a) == withoutEnd(b) && a.ends_with('\n') == b.ends_with('\n');
}

} // namespace

std::string textOn(const QTextDocument &sheet)
{
    return sheet.toRawText().replace(QChar::ParagraphSeparator, QLatin1Char('\n')).toStdString();
}

std::string asInFile(const std::string &typed, const std::string &from)
{
    const bool isMarked = from.starts_with(Mark);
    const auto old = linesOf(std::string_view(from).substr(isMarked ? Mark.size() : 0));
    const auto now = linesOf(typed);
    const auto most = std::min(old.size(), now.size());
    std::size_t head = 0;
    while (head < most && isSame(old[head], now[head]))
        ++head;
    std::size_t tail = 0;
    while (tail < most - head && isSame(old[old.size() - 1 - tail], now[now.size() - 1 - tail]))
        ++tail;
    const auto returns = std::count_if(
        old.begin(), old.end(), [](std::string_view line) { return line.ends_with("\r\n"); });
    const bool isDos = returns > 0 && static_cast<std::size_t>(returns) * 2 >= old.size();
    std::string text(isMarked ? Mark : std::string_view());
    for (std::size_t at = 0; at < now.size(); ++at) {
        const bool isNew = at >= head && at + tail < now.size();
        if (!isNew)
            text += at < head ? old[at] : old[old.size() - (now.size() - at)];
        else if (isDos && now[at].ends_with('\n') && !now[at].ends_with("\r\n"))
            text.append(withoutEnd(now[at])).append("\r\n");
        else
            text += now[at];
    }
    return text;
}

int placeOnSheet(const std::string &text, std::size_t byte)
{
    return static_cast<int>(said(std::string_view(text).substr(0, byte)).size());
}

int placeOnSheet(const QTextDocument &sheet, std::uint32_t line, std::uint32_t column)
{
    const QTextBlock block = sheet.findBlockByNumber(static_cast<int>(line == 0 ? 0 : line - 1));
    if (!block.isValid())
        return sheet.characterCount() - 1;
    const auto letters = block.text().toUcs4();
    const auto before =
        std::min(static_cast<qsizetype>(column == 0 ? 0 : column - 1), letters.size());
    return block.position() +
           static_cast<int>(
               QString::fromUcs4(reinterpret_cast<const char32_t *>(letters.data()), before)
                   .size());
}

} // namespace flarestock
