// SPDX-License-Identifier: MIT
//
// What findings say, for the tests of the rules.

#pragma once

#include "model/checks/finding.h"

#include <QByteArray>

#include <algorithm>
#include <vector>

namespace flarestock::tests {

inline std::vector<Finding> of(const std::vector<Finding> &findings, Severity severity)
{
    std::vector<Finding> some;
    std::copy_if(findings.begin(), findings.end(), std::back_inserter(some),
                 [severity](const Finding &finding) { return finding.severity == severity; });
    return some;
}

inline bool says(const std::vector<Finding> &findings, Severity severity, const std::string &words)
{
    return std::any_of(findings.begin(), findings.end(), [&](const Finding &finding) {
        return finding.severity == severity &&
               (finding.about + " " + finding.text).find(words) != std::string::npos;
    });
}

inline QByteArray listed(const std::vector<Finding> &findings)
{
    std::string all = "\n";
    for (const auto &finding : findings)
        all += std::string(text(finding.severity)) + " at " + finding.where + ": " + finding.about +
               " | " + finding.text + "\n";
    return QByteArray::fromStdString(all);
}

} // namespace flarestock::tests

#define SAYS(findings, severity, words) QVERIFY2(says(findings, severity, words), listed(findings))
