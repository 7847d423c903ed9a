// SPDX-License-Identifier: MIT
//
// Kept sheets: what is filled in on the sheets of a desk and not written down lies in this person's
// settings for as long. Of two desks on one shop the first keeps it: what the other's sheets hold
// is none of a desk that ended.

#pragma once

#include <QLockFile>
#include <QObject>

#include <memory>

namespace flarestock {

class Desk;

class KeptSheets : public QObject {
    Q_OBJECT
public:
    explicit KeptSheets(Desk &desk);

private:
    void begin(); ///< On the shop that is on the desk.

    Desk &m_desk;
    std::unique_ptr<QLockFile> m_lock; ///< None where another desk has it.
};

} // namespace flarestock
