// SPDX-License-Identifier: MIT
//
// A copy of the demo shop that a test changes by commands, and what it says then.

#pragma once

#include "tests/command/demo_copy.h"

namespace flarestock::tests {

inline QJsonArray arrayOf(const Ran &ran, const char *key)
{
    return ran.json().value(QString::fromLatin1(key)).toArray();
}

inline std::string textOf(const QJsonValue &object, const char *key)
{
    return object.toObject().value(QString::fromLatin1(key)).toString().toStdString();
}

/// The object in which a text stands under a key; an empty one where there is none.
inline QJsonObject objectWith(const QJsonArray &objects, const char *key, const std::string &text)
{
    for (const QJsonValue &one : objects) {
        if (textOf(one, key) == text)
            return one.toObject();
    }
    return {};
}

/// "196.40" as whole 10^-6, without a double.
inline std::int64_t microsOf(const std::string &amount)
{
    const auto point = std::min(amount.find('.'), amount.size());
    std::string digits = amount.substr(0, point);
    std::string behind = point < amount.size() ? amount.substr(point + 1) : "";
    behind.resize(6, '0');
    return std::stoll(digits + behind);
}

class ChangedShop {
public:
    void renew() { m_path = m_demo.copied(); }
    void takeOver(std::string path) { m_path = std::move(path); }
    [[nodiscard]] const std::string &path() const { return m_path; }

    [[nodiscard]] Ran run(Words words) const
    {
        words.insert(words.end(), {"--shop", m_path});
        return runFlarestock(words);
    }
    [[nodiscard]] Ran json(Words words) const
    {
        words.emplace_back("--json");
        return run(words);
    }
    [[nodiscard]] QJsonArray stock(Words more = {}) const
    {
        more.insert(more.begin(), "stock");
        return arrayOf(json(more), "stock");
    }
    /// "A3=4 trailer-2=1 ", of a part.
    [[nodiscard]] std::string stockOf(const std::string &part, const char *key) const
    {
        std::string said;
        for (const QJsonValue &line : stock()) {
            if (textOf(line, "part") == part)
                said += textOf(line, "place") + "=" + textOf(line, key) + " ";
        }
        return said;
    }
    [[nodiscard]] bool isWhole() const { return runFlarestock({"verify", m_path}).status == 0; }

private:
    DemoCopy m_demo;
    std::string m_path;
};

} // namespace flarestock::tests
