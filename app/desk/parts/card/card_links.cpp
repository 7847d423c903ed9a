// SPDX-License-Identifier: MIT

#include "app/desk/parts/card/card_links.h"

#include "app/desk/words/spoken.h"

#include <QCoreApplication>

#include <algorithm>

namespace flarestock {

namespace {

struct LinkWords {
    Q_DECLARE_TR_FUNCTIONS(CardLinks)
};

class Links {
public:
    explicit Links(const LinksAsked &asked) : m_asked(asked) {}

    void counts(const QString &head, const std::vector<PartCount> &counts)
    {
        for (const PartCount &one : counts) {
            const Part *part = m_asked.shop.catalogue.find(one.part);
            add(head, said(one.part), part ? said(part->description) : QString(),
                LinkWords::tr("%1 ×").arg(saidNumber(one.count)));
        }
    }
    void parts(const QString &head, const std::vector<const Part *> &parts)
    {
        for (const Part *one : parts)
            add(head, said(one->number), said(one->description), {});
    }
    void uses()
    {
        const QString head = LinkWords::tr("where it is used");
        if (m_asked.used == nullptr)
            return add(head, LinkWords::tr("Working out builds and templates …"), {}, {});
        const auto found = m_asked.used->byPart.find(m_asked.part.number);
        if (found == m_asked.used->byPart.end())
            return add(head, LinkWords::tr("no planned build and no template takes it"), {}, {});
        for (const WhereUsed::Use &use : found->second) {
            QString detail = use.isBuild ? LinkWords::tr("build") : LinkWords::tr("template");
            if (!use.day.empty())
                detail = LinkWords::tr("build, by %1").arg(saidDate(use.day));
            add(head, said(use.title), detail, saidAmount(use.need, m_asked.units));
        }
    }
    [[nodiscard]] std::vector<Row> take() { return std::move(m_rows); }

private:
    void add(const QString &head, const QString &title, const QString &detail,
             const QString &figure)
    {
        const bool isFirst = head != m_head;
        m_head = head;
        QStringList says{title, detail, figure};
        says.removeAll(QString());
        m_rows.push_back({QString::number(m_rows.size()),
                          {isFirst ? head : QString(), title, detail, figure, false,
                           says.join(QStringLiteral(", ")), QString()}});
    }

    const LinksAsked &m_asked;
    std::vector<Row> m_rows;
    QString m_head;
};

/// The parts that another names by their numbers.
std::vector<const Part *> found(const Catalogue &catalogue, const std::vector<std::string> &numbers)
{
    std::vector<const Part *> parts;
    for (const std::string &number : numbers) {
        if (const Part *part = catalogue.find(number))
            parts.push_back(part);
    }
    return parts;
}

} // namespace

NamedBy::NamedBy(const Catalogue &catalogue) : m_catalogue(catalogue)
{
    const auto name = [&](const Part &by, As as, const std::string &number) {
        if (const Part *named = catalogue.find(number))
            m_names.emplace(catalogue.index(*named), std::pair(as, catalogue.index(by)));
    };
    for (const Part &part : catalogue.parts()) {
        for (const std::string &number : part.substitutes)
            name(part, As::Substitute, number);
        for (const PartCount &count : part.box)
            name(part, As::Box, count.part);
        if (const auto *filter = part.as<FilterFacts>(); filter && !filter->element.empty())
            name(part, As::Element, filter->element);
    }
}

std::vector<const Part *> NamedBy::those(const Part &named, As as) const
{
    std::vector<const Part *> parts;
    const auto [from, to] = m_names.equal_range(m_catalogue.index(named));
    for (auto at = from; at != to; ++at) {
        if (at->second.first == as)
            parts.push_back(&m_catalogue.parts()[at->second.second]);
    }
    std::sort(parts.begin(), parts.end()); // They stand by number in one list.
    return parts;
}

std::vector<Row> linkRows(const LinksAsked &asked)
{
    const Catalogue &catalogue = asked.shop.catalogue;
    Links links(asked);
    links.counts(LinkWords::tr("in the box besides it"), asked.part.box);
    links.counts(LinkWords::tr("fitting it uses up"), asked.part.fitting);
    if (const auto *filter = asked.part.as<FilterFacts>(); filter && !filter->element.empty())
        links.parts(LinkWords::tr("its element"), found(catalogue, {filter->element}));
    links.parts(LinkWords::tr("element of"), asked.named.those(asked.part, NamedBy::As::Element));
    links.parts(LinkWords::tr("lies in the box of"),
                asked.named.those(asked.part, NamedBy::As::Box));
    links.parts(LinkWords::tr("can be replaced by"), found(catalogue, asked.part.substitutes));
    links.parts(LinkWords::tr("can replace"),
                asked.named.those(asked.part, NamedBy::As::Substitute));
    links.uses();
    return links.take();
}

} // namespace flarestock
