// SPDX-License-Identifier: MIT
//
// A small shop in a temporary folder, for the tests of its file.

#pragma once

#include "model/storage/shop_file.h"

#include <QCryptographicHash>
#include <QFile>
#include <QTemporaryDir>

#include <random>

namespace flarestock::tests {

inline MovementId idNumber(std::uint32_t number)
{
    std::array<std::uint8_t, 10> random{};
    for (std::size_t i = 0; i < 4; ++i)
        random[i + 6] = static_cast<std::uint8_t>(number >> (8 * i));
    return MovementId::make(1'780'000'000'000, random);
}

inline Movement move(std::uint32_t number, std::int64_t quantity, const std::string &from,
                     const std::string &to, std::int64_t value = 0)
{
    Movement movement;
    movement.id = idNumber(number);
    movement.part = "AD-8-10";
    movement.quantity = quantity;
    movement.value = value;
    movement.from = from;
    movement.to = to;
    movement.who = "test";
    return movement;
}

inline NewShop smallShop()
{
    NewShop shop{{"Test shop", Currency::parse("USD").value()},
                 {{"A1", "bin A1", PlaceKind::Bin},
                  {"trailer-1", "drawer", PlaceKind::Drawer},
                  {"car-1", "car", PlaceKind::Car},
                  {"used-up", "used up", PlaceKind::UsedUp},
                  {"opening", "opening", PlaceKind::Opening}},
                 {{"shop.toml", "title = \"Test shop\"\n"}},
                 {},
                 {},
                 "test",
                 1'780'000'000'000};
    shop.opening = {move(1, 10, "opening", "A1", 74'500'000)};
    return shop;
}

struct Folder {
    QTemporaryDir dir;
    [[nodiscard]] std::filesystem::path file(const char *name = "shop.flarestock") const
    {
        return dir.filePath(QString::fromLatin1(name)).toStdString();
    }
};

inline QByteArray bytesOf(const std::filesystem::path &path)
{
    QFile file(QString::fromStdString(path.string()));
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray("unreadable");
}

inline void writeBytes(const std::filesystem::path &path, const QByteArray &bytes)
{
    QFile file(QString::fromStdString(path.string()));
    if (file.open(QIODevice::WriteOnly | QIODevice::Truncate))
        file.write(bytes);
}

} // namespace flarestock::tests
