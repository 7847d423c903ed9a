// SPDX-License-Identifier: MIT
//
// Port fields: the ports of a card while they are typed, each a name, words and what flows there;
// together they are the one cell of the catalogue: "in: ORB -8 female [in]; out: …".

#pragma once

#include "app/desk/parts/card/port_meetings.h"
#include "model/exchange/typed/typed_row.h"

namespace flarestock {

class PortFields {
public:
    struct Typed {
        int key = 0; ///< Its own for as long as the card is open.
        QString name;
        QString words; ///< "ORB -8 female"
        PortRole role = PortRole::Either;
    };

    /// Those of a cell; what cannot be told apart stays in one.
    void read(const std::string &cell);
    [[nodiscard]] std::string cell() const;
    void add();
    void drop(int key);
    [[nodiscard]] Typed *find(int key);
    [[nodiscard]] const std::vector<Typed> &all() const { return m_all; }
    /// The place of a port by a byte of cell(), for what is said to be wrong there.
    [[nodiscard]] std::optional<std::size_t> at(std::size_t byte) const;
    /// As far as it reads.
    [[nodiscard]] static std::optional<Port> portOf(const Typed &typed);

private:
    std::vector<Typed> m_all;
    int m_next = 1;
};

/// name words role roles problem note
[[nodiscard]] QStringList portFieldCells();
/// `wrong` by the place of the port; `shop`: what it meets there, nothing while that is not known.
[[nodiscard]] std::vector<Row> portFieldRows(const PortFields &ports,
                                             const std::map<std::size_t, QString> &wrong,
                                             const PortsOfShop *shop);

} // namespace flarestock
