// SPDX-License-Identifier: MIT

#include "model/systems/expanding/template_size.h"

#include <algorithm>
#include <array>
#include <limits>
#include <unordered_map>

namespace flarestock {

namespace {

constexpr std::uint64_t Beyond = std::numeric_limits<std::uint64_t>::max();

std::uint64_t added(std::uint64_t a, std::uint64_t b)
{
    return a > Beyond - b ? Beyond : a + b;
}

struct TemplateSize {
    std::array<std::uint64_t, 4> counts{}; ///< As in SizeNames; Beyond: too many for 64 bits.
    std::size_t height = 1;                ///< Templates within each other, itself included.
};
constexpr std::array<std::string_view, 4> SizeNames = {"stations", "modules", "runs", "extras"};

class Counting {
public:
    explicit Counting(const TemplateBook &book) : m_book(book) {}

    Result<TemplateSize> of(const Template &form)
    {
        if (const auto known = m_known.find(&form); known != m_known.end())
            return known->second;
        const auto before = std::find(m_path.begin(), m_path.end(), &form);
        if (before != m_path.end())
            return tl::unexpected(circle(before, form));
        if (m_path.size() >= NestingMax)
            return tl::unexpected(tooDeep(form));
        m_path.push_back(&form);
        auto size = counted(form);
        m_path.pop_back();
        if (size)
            m_known.emplace(&form, *size);
        return size;
    }

private:
    Result<TemplateSize> counted(const Template &form)
    {
        TemplateSize size;
        size.counts = {form.stations.size(), form.modules.size(), form.runs.size(),
                       form.extras.size()};
        for (const Module &module : form.modules) {
            const auto inner = m_book.find(module.templateId);
            if (inner == m_book.end())
                return problem(form.id,
                               "its module " + module.id + " is of template " + module.templateId +
                                   ", which is not there",
                               "Write that template or name another.");
            const auto within = of(*inner->second);
            if (!within)
                return tl::unexpected(within.error());
            for (std::size_t i = 0; i < size.counts.size(); ++i)
                size.counts[i] = added(size.counts[i], within->counts[i]);
            size.height = std::max(size.height, within->height + 1);
        }
        if (size.height > NestingMax)
            return tl::unexpected(tooDeep(form));
        return size;
    }

    static Problem tooDeep(const Template &form)
    {
        return {form.id, "its modules are nested deeper than " + std::to_string(NestingMax),
                "Use fewer levels."};
    }

    Problem circle(std::vector<const Template *>::const_iterator first, const Template &form) const
    {
        std::string path;
        for (auto step = first; step != m_path.end(); ++step)
            path += (*step)->id + " → ";
        return {form.id, "its modules go in a circle: " + path + form.id,
                "Take one of these modules out."};
    }

    const TemplateBook &m_book;
    std::vector<const Template *> m_path;
    std::unordered_map<const Template *, TemplateSize> m_known;
};

} // namespace

Result<void> sizeAllowed(const TemplateBook &book, const Template &form)
{
    const auto size = Counting(book).of(form);
    if (!size)
        return tl::unexpected(size.error());
    for (std::size_t i = 0; i < SizeNames.size(); ++i) {
        const std::uint64_t count = size->counts[i];
        if (count <= StationsMax)
            continue;
        const std::string said = count == Beyond
                                     ? "more " + std::string(SizeNames[i]) + " than 64 bits count"
                                     : std::to_string(count) + " " + std::string(SizeNames[i]);
        return problem(form.id,
                       "with its modules it has " + said + "; at most " +
                           std::to_string(StationsMax) + " can be made",
                       "Nest fewer modules.");
    }
    return {};
}

} // namespace flarestock
