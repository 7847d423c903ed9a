// SPDX-License-Identifier: MIT

#include "app/desk/parts/importing/answers_kept.h"

#include "app/desk/parts/importing/list_import.h"

#include <QCryptographicHash>

#include <algorithm>

namespace flarestock {

namespace {

/// The same question about the same row.
QString digestOfAsked(const AskedRow &asked)
{
    std::string all = std::to_string(asked.row.line);
    const auto add = [&all](const std::string &words) { all.append(1, '\0').append(words); };
    for (const CellFault &fault : asked.faults) {
        add(fault.heading);
        add(fault.wrong);
    }
    for (const auto &[heading, cell] : asked.meant ? asked.meant->cells : RowCells()) {
        add(heading);
        add(cell);
    }
    return digestOf(all).left(16);
}

} // namespace

QString digestOf(const std::string &text)
{
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(QByteArrayView(text.data(), static_cast<qsizetype>(text.size())));
    return QString::fromLatin1(hash.result().toHex());
}

QVariantMap keptOfList(const ListAnswers &given, const std::vector<AskedRow> &asking)
{
    if (given.isEmpty())
        return {};
    QVariantList answers;
    for (std::size_t at = 0; at < given.answers.size(); ++at)
        answers.append(QStringList{digestOfAsked(asking.at(at)),
                                   given.answers[at] ? QStringLiteral("take") : QString()});
    QVariantList lines;
    for (const std::size_t line : given.leftOut)
        lines.append(QString::number(line));
    return {{QStringLiteral("answers"), answers}, {QStringLiteral("leftOut"), lines}};
}

ListAnswers answersKept(const QVariantMap &kept, const std::vector<AskedRow> &asking)
{
    ListAnswers given;
    for (const QVariant &one : kept.value(QStringLiteral("answers")).toList()) {
        const QStringList answer = one.toStringList();
        const std::size_t at = given.answers.size();
        if (answer.size() != 2 || at >= asking.size() || answer.at(0) != digestOfAsked(asking[at]))
            return given;
        given.answers.push_back(!answer.at(1).isEmpty() && asking[at].meant.has_value());
    }
    for (const QVariant &line : kept.value(QStringLiteral("leftOut")).toList())
        given.leftOut.insert(static_cast<std::size_t>(line.toULongLong()));
    return given;
}

QString ListImport::keptName() const
{
    return QStringLiteral("import|%1|%2").arg(m_file, m_digest);
}

void ListImport::takeUpAnswers()
{
    if (!m_list)
        return;
    ListAnswers given = answersKept(m_pen.unwritten().takeUp(keptName()), m_list->asking());
    m_isOfBefore = !given.isEmpty();
    m_answers = std::move(given.answers);
    m_question = static_cast<int>(m_answers.size());
    m_changes.leaveOut(std::move(given.leftOut));
    keepAnswers();
}

/// Of questions that are asked once more nothing is kept.
void ListImport::keepAnswers()
{
    if (!m_list)
        return;
    const ListAnswers given{{m_answers.begin(), m_answers.begin() + m_question},
                            m_changes.leftOut()};
    m_pen.unwritten().keep(keptName(), tr("Import %1").arg(m_file),
                           keptOfList(given, m_list->asking()));
}

} // namespace flarestock
