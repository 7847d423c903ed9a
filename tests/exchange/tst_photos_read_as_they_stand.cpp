// SPDX-License-Identifier: MIT
//
// Photos as documents: what is written is read again, whatever the part is called; what is no photo
// is named by its place when it is taken in, and keeps nobody from his shop.

#include "model/exchange/photos/photo_toml.h"

#include <QTest>

using namespace flarestock;

class PhotosReadAsTheyStand : public QObject {
    Q_OBJECT
private Q_SLOTS:
    void isReadAsItIsWritten_data();
    void isReadAsItIsWritten();
    void onePutAwayIsNone();
    void whatIsNoPhotoIsNamed_data();
    void whatIsNoPhotoIsNamed();
};

void PhotosReadAsTheyStand::isReadAsItIsWritten_data()
{
    QTest::addColumn<QString>("part");
    QTest::addColumn<QString>("name");
    QTest::newRow("plain") << "AD-8-8"
                           << "photos/AD-8-8.toml";
    QTest::newRow("stroke, quote and blank") // RFC 3986, 2.1: the bytes of UTF-8 in hex.
        << "1/2\" T \\ µ"
        << "photos/1%2F2%22%20T%20%5C%20%C2%B5.toml";
}

void PhotosReadAsTheyStand::isReadAsItIsWritten()
{
    QFETCH(QString, part);
    QFETCH(QString, name);
    const std::string number = part.toStdString();
    QCOMPARE(QString::fromStdString(photoName(number)), name);
    const auto photos = readPhotos({{photoName(number), writePhoto(number, "/9j/4AAQ+w==")}});
    QVERIFY2(photos, photos ? "" : photos.error().sentence().c_str());
    QVERIFY(*photos == (Photos{{number, "/9j/4AAQ+w=="}}));
}

void PhotosReadAsTheyStand::onePutAwayIsNone()
{
    const auto photos = readPhotos({{"photos/A.toml", writePhoto("A", {})},
                                    {"photos/B.toml", {}},
                                    {"builds.toml", "is read by somebody else"}});
    QVERIFY(photos && photos->empty());
}

void PhotosReadAsTheyStand::whatIsNoPhotoIsNamed_data()
{
    QTest::addColumn<QString>("text");
    QTest::newRow("no part") << "jpeg = \"AAAA\"\n";
    QTest::newRow("unknown key") << "part = \"A\"\npng = \"AAAA\"\n";
    QTest::newRow("no base64") << "part = \"A\"\njpeg = \"A A\"\n";
    QTest::newRow("no TOML") << "part = A\n";
    QTest::newRow("too large") << QStringLiteral("part = \"A\"\njpeg = \"%1\"\n")
                                      .arg(QString(static_cast<int>(PhotoTextMost) + 1, u'A'));
}

void PhotosReadAsTheyStand::whatIsNoPhotoIsNamed()
{
    QFETCH(QString, text);
    const TextFiles documents{{"photos/A.toml", text.toStdString()},
                              {"photos/B.toml", writePhoto("B", "AAAA")}};
    const auto photos = readPhotos(documents);
    QVERIFY(!photos);
    QVERIFY(photos.error().thing.find("photos/A.toml") != std::string::npos);
    QCOMPARE(photoOf(documents, "A"), std::string());
    QCOMPARE(photoOf(documents, "B"), std::string("AAAA"));
    QCOMPARE(photosOutOf(documents).size(), documents.size());
}

QTEST_MAIN(PhotosReadAsTheyStand)
#include "tst_photos_read_as_they_stand.moc"
