// SPDX-License-Identifier: MIT
//
// The box is put away: what was ticked is booked in, and what that did to cost is told.

#include "app/buyer/receiving/receiving.h"
#include "app/desk/buying/box/box_page.h"
#include "app/desk/buying/box/came_told.h"
#include "app/desk/words/spoken.h"

#include <algorithm>

namespace flarestock {

ReceivingWords BoxPage::words() const
{
    ReceivingWords words;
    words.order = m_order.toStdString();
    words.document = m_document.trimmed().toStdString();
    m_ticks.tell(words);
    for (const Trouble &one : m_wrong)
        one.tell(words);
    return words;
}

/// The first piece that came and bears a mark which nobody has read comes into hand. Whether there
/// is one.
bool BoxPage::asksForMark()
{
    const std::vector<Tick> &all = m_ticks.all();
    const auto at = std::find_if(all.begin(), all.end(), [](const Tick &one) {
        return one.came > 0 && one.marks != TickMark::None && one.mark.empty();
    });
    if (at == all.end())
        return false;
    const QString part = said(at->part->number);
    setRow(static_cast<int>(at - all.begin()));
    Q_EMIT ticked(m_row);
    m_pen.refuse(
        at->marks == TickMark::Serial
            ? tr("%1 is kept by its serial: scan or type it; - where it bears none.").arg(part)
        : at->marks == TickMark::Batch
            ? tr("%1 is kept by its batch: scan or type it; - where it bears none.").arg(part)
            : tr("%1 comes in pieces: give each a name.").arg(part));
    return true;
}

void BoxPage::putAway()
{
    if (m_order.isEmpty() || m_pen.isBusy() || asksForMark())
        return;
    m_isPuttingAway = true;
    m_pen.act(
        Pen::Sentence(saidCame),
        [asked = words()](const ShopFile &, const Workshop &now, const By &by) -> Result<ToWrite> {
            const auto coming = comingAsked(asked, now.bought, now);
            if (!coming)
                return tl::unexpected(coming.error());
            auto made = received(*coming, now.bought, now, by);
            if (!made)
                return tl::unexpected(made.error());
            return ToWrite(std::move(made->action), std::move(made->looks));
        });
}

/// The journal is asked for what the pieces cost the time before away from the window.
void BoxPage::told(const std::shared_ptr<const Wrote> &wrote)
{
    m_result = saidCame(*wrote);
    showTicks();
    if (m_reading.isUnderWay())
        return;
    m_reading.run([this, wrote, history = m_history, units = m_units]() -> Errand::Back {
        const auto rows = std::make_shared<std::vector<Row>>(cameRows(*wrote, history, units));
        return [this, rows] {
            m_came.become(std::move(*rows));
            Q_EMIT changed();
        };
    });
}

} // namespace flarestock
