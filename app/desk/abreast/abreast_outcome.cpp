// SPDX-License-Identifier: MIT

#include "app/desk/abreast/abreast_outcome.h"

#include "app/desk/abreast/abreast_words.h"
#include "app/desk/buying/buying_words.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

namespace {

constexpr int BuildsNamed = 2;
constexpr int PartsNamed = 2;

/// Whom something happens to, and to which parts.
using PartsByWhom = std::vector<std::pair<std::string, QStringList>>;

void add(PartsByWhom &all, const std::string &whom, const QString &part)
{
    auto found = std::find_if(all.begin(), all.end(),
                              [&whom](const auto &one) { return one.first == whom; });
    if (found == all.end())
        found = all.insert(all.end(), {whom, {}});
    found->second.append(part);
}

class Outcome {
public:
    explicit Outcome(const Abreast &abreast) : m_abreast(abreast)
    {
        for (const ChangedNeed &one : changesBetween(abreast.before.needs, abreast.now.needs))
            take(one);
    }

    [[nodiscard]] QString said() const
    {
        if (!m_isAnything)
            return AbreastWords::tr("Nothing changes: each build gets what it had.");
        QStringList all{saidHands(), saidOrders()};
        all.removeAll(QString());
        return all.isEmpty() ? AbreastWords::tr("No pieces change hands; what is short has to be "
                                                "ordered by other days.")
                             : all.join(u' ');
    }

private:
    [[nodiscard]] QString times(const Part &part, const Decimal &amount) const
    {
        return AbreastWords::tr("%1 × %2").arg(saidMuch(amount, part, m_abreast.units),
                                               flarestock::said(part.number));
    }

    void take(const ChangedNeed &one)
    {
        const NeedLine &line = one.after ? *one.after : *one.before;
        m_isAnything = true;
        const Decimal got = fromStockIn(one.after) - fromStockIn(one.before);
        if (isOfBuild(line) && one.after && one.before && got.sign() != 0)
            add(got.sign() < 0 ? m_loses : m_gets, line.whom,
                times(*line.part, got.sign() < 0 ? -got : got));
        const Decimal lacks = shortIn(one.after) - shortIn(one.before);
        auto [at, isNew] = m_lacks.try_emplace(line.part->number, Lack{line.part, {}, {}});
        at->second.more += lacks;
        if (!one.after || one.after->shortBy.sign() <= 0 || one.after->lastDay().empty())
            return;
        if (at->second.orderBy.empty() || one.after->lastDay() < at->second.orderBy)
            at->second.orderBy = one.after->lastDay();
    }

    [[nodiscard]] QStringList saidOf(const PartsByWhom &all, const QString &form) const
    {
        QStringList sentences;
        for (const auto &[whom, parts] : all) {
            if (sentences.size() == BuildsNamed)
                break;
            sentences.append(
                form.arg(saidWhom(whom, *m_abreast.now.workshop), saidFew(parts, PartsNamed)));
        }
        return sentences;
    }

    [[nodiscard]] QString saidHands() const
    {
        QStringList all = saidOf(m_loses, AbreastWords::tr("%1 loses %2"));
        all += saidOf(m_gets, AbreastWords::tr("%1 gets %2"));
        const auto left =
            static_cast<int>(m_loses.size() + m_gets.size()) - static_cast<int>(all.size());
        if (left > 0)
            all.append(left == 1 ? AbreastWords::tr("one more build changes")
                                 : AbreastWords::tr("%1 more builds change").arg(left));
        return all.isEmpty() ? QString()
                             : QString(all.join(QStringLiteral("; ")) + QStringLiteral("."));
    }

    [[nodiscard]] QString saidOrders() const
    {
        QStringList more;
        QStringList less;
        std::string first;
        for (const auto &[number, lack] : m_lacks) {
            if (lack.more.sign() < 0)
                less.append(times(*lack.part, -lack.more));
            if (lack.more.sign() <= 0)
                continue;
            more.append(times(*lack.part, lack.more));
            if (!lack.orderBy.empty() && (first.empty() || lack.orderBy < first))
                first = lack.orderBy;
        }
        QStringList all;
        if (!more.isEmpty())
            all.append(
                first.empty()
                    ? AbreastWords::tr("More to order: %1.").arg(saidFew(more, PartsNamed))
                    : AbreastWords::tr("More to order: %1, the first by %2.")
                          .arg(saidFew(more, PartsNamed), saidDayOf(first, m_abreast.now.today)));
        if (!less.isEmpty())
            all.append(AbreastWords::tr("Less to order: %1.").arg(saidFew(less, PartsNamed)));
        return all.join(u' ');
    }

    struct Lack {
        const Part *part = nullptr;
        Decimal more;
        std::string orderBy; ///< The first of who lacks it then.
    };

    const Abreast &m_abreast;
    bool m_isAnything = false;
    PartsByWhom m_loses;
    PartsByWhom m_gets;
    std::map<std::string, Lack> m_lacks;
};

} // namespace

QString saidOutcome(const Abreast &abreast)
{
    return Outcome(abreast).said();
}

} // namespace flarestock
