// SPDX-License-Identifier: MIT

#include "model/exchange/photos/photo_toml.h"

#include "model/exchange/toml/fields.h"

#include <algorithm>
#include <array>

namespace flarestock {

namespace {

constexpr std::string_view Folder = "photos/";
constexpr std::array<std::string_view, 2> Keys = {"part", "jpeg"};

/// In ASCII, whatever the locale.
bool isPlain(char letter)
{
    return (letter >= '0' && letter <= '9') || (letter >= 'A' && letter <= 'Z') ||
           (letter >= 'a' && letter <= 'z');
}

bool isBase64(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char letter) {
        return isPlain(letter) || letter == '+' || letter == '/' || letter == '=';
    });
}

struct Photo {
    std::string part;
    std::string jpeg;
};

Result<Photo> readPhoto(const std::string &name, const std::string &text)
{
    if (text.empty()) // Taken back before there was any.
        return Photo();
    const auto document = TomlDocument::read(text, name);
    if (!document)
        return tl::unexpected(document.error());
    Problems problems(1);
    const TomlFields fields({&*document, &problems}, document->root(), "photo", Keys);
    Photo photo{fields.required("part"), fields.text("jpeg")};
    if (!problems.isEmpty())
        return tl::unexpected(problems.all().front());
    if (photo.jpeg.size() > PhotoTextMost)
        return problem(name, "is larger than a photo may be", "Scale it down.");
    if (!isBase64(photo.jpeg))
        return problem(name, "is no base64", "Put the photo beside its part at the desk.");
    return photo;
}

} // namespace

std::string photoName(std::string_view part)
{
    constexpr std::string_view Digits = "0123456789ABCDEF";
    std::string name(Folder);
    for (const char letter : part) {
        if (isPlain(letter) || letter == '-' || letter == '_' || letter == '.') {
            name += letter;
            continue;
        }
        const auto byte = static_cast<unsigned char>(letter);
        name += {'%', Digits[byte / 16], Digits[byte % 16]};
    }
    return name + ".toml";
}

std::string writePhoto(std::string_view part, std::string_view jpeg)
{
    std::string quoted;
    for (const char letter : part) {
        if (letter == '"' || letter == '\\')
            quoted += '\\';
        quoted += letter;
    }
    std::string text = "part = \"" + quoted + "\"\n";
    if (!jpeg.empty())
        text += "jpeg = \"" + std::string(jpeg) + "\"\n";
    return text;
}

Result<Photos> readPhotos(const TextFiles &documents)
{
    Photos photos;
    for (const auto &[name, text] : documents) {
        if (name.rfind(Folder, 0) != 0)
            continue;
        auto photo = readPhoto(name, text);
        if (!photo)
            return tl::unexpected(photo.error());
        if (!photo->jpeg.empty())
            photos[photo->part] = std::move(photo->jpeg);
    }
    return photos;
}

std::string photoOf(const TextFiles &documents, std::string_view part)
{
    const auto found = documents.find(photoName(part));
    if (found == documents.end())
        return {};
    auto photo = readPhoto(found->first, found->second);
    return photo && photo->part == part ? std::move(photo->jpeg) : std::string();
}

TextFiles photosOutOf(TextFiles documents)
{
    std::erase_if(documents, [](const auto &one) { return one.first.rfind(Folder, 0) != 0; });
    return documents;
}

} // namespace flarestock
