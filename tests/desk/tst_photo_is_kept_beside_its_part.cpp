// SPDX-License-Identifier: MIT
//
// A photo of a part: put beside it at the desk, made small, shown, exported and imported, taken
// back.

#include "app/desk/stock/photo/picture_file.h"
#include "app/workshop/documents.h"
#include "stock_on_screen.h"

using namespace flarestock;

class PhotoIsKeptBesideItsPart : public QObject, protected StockOnScreen {
    Q_OBJECT
private Q_SLOTS:
    void initTestCase()
    {
        open();
        showStock();
    }
    void aLargePictureIsMadeSmall();
    void whatIsTransparentIsWhite();
    void whatIsNoPictureIsNamed();
    void aPhotoIsPutBesideAPart();
    void itIsExportedWithTheShop();
    void itIsPutAwayAndTakenBack();
    void aFileThatIsNoneIsSaid();
    void nothingIsWarnedAbout();

private:
    [[nodiscard]] QString pictureFile(const QSize &size, const char *name) const;
    [[nodiscard]] static QImage imageOf(const std::string &base64)
    {
        return QImage::fromData(QByteArray::fromBase64(QByteArray::fromStdString(base64)), "JPEG");
    }
};

/// A picture with as much in it as a camera's: every point another colour.
QString PhotoIsKeptBesideItsPart::pictureFile(const QSize &size, const char *name) const
{
    QImage image(size, QImage::Format_RGB32);
    quint32 dice = 12345;
    for (int y = 0; y < size.height(); ++y) {
        for (int x = 0; x < size.width(); ++x) {
            dice = dice * 1664525U + 1013904223U;
            image.setPixel(x, y, qRgb(static_cast<int>(dice >> 24U), x % 256, y % 256));
        }
    }
    const QString file = m_folder.filePath(QString::fromLatin1(name));
    return image.save(file) ? file : QString();
}

void PhotoIsKeptBesideItsPart::aLargePictureIsMadeSmall()
{
    const auto picture = pictureIn(pictureFile(QSize(4000, 3000), "large.png"));
    QVERIFY2(picture, picture ? "" : picture.error().sentence().c_str());
    QVERIFY(picture->size() <= PhotoTextMost);
    const QImage image = imageOf(*picture);
    QVERIFY(!image.isNull());
    QVERIFY(image.width() <= PhotoSideMost && image.width() >= 200);
    QCOMPARE(qRound(100.0 * image.width() / image.height()), 133); // 4 : 3, as it was.
    const auto small = pictureIn(pictureFile(QSize(60, 40), "small.png"));
    QCOMPARE(imageOf(small.value()).size(), QSize(60, 40)); // None is made larger.
}

void PhotoIsKeptBesideItsPart::whatIsTransparentIsWhite()
{
    QImage image(20, 20, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    const QString file = m_folder.filePath(QStringLiteral("clear.png"));
    QVERIFY(image.save(file));
    const QColor colour = imageOf(pictureIn(file).value()).pixelColor(10, 10);
    QVERIFY(colour.lightness() > 250);
}

void PhotoIsKeptBesideItsPart::whatIsNoPictureIsNamed()
{
    const auto none = pictureIn(QStringLiteral("/nowhere/photo.jpg"));
    QVERIFY(!none && none.error().sentence().find("/nowhere/photo.jpg") != std::string::npos);
}

void PhotoIsKeptBesideItsPart::aPhotoIsPutBesideAPart()
{
    take("AD-8-8");
    QVERIFY(item("partPhoto") == nullptr && item("deed-noPhoto") == nullptr);
    press("deed-photo");
    QObject *dialog = nullptr;
    for (const QQuickItem *one : allSeen(*m_window)) {
        if (dialog == nullptr)
            dialog = one->findChild<QObject *>(QStringLiteral("photoFile"));
    }
    QVERIFY(dialog != nullptr);
    QTRY_VERIFY(dialog->property("visible").toBool());
    QVERIFY(QMetaObject::invokeMethod(dialog, "reject"));
    stock().photo()->put(QUrl::fromLocalFile(pictureFile(QSize(800, 600), "part.png")));
    awaitWritten();
    QTRY_COMPARE(words("lastStep"), QStringLiteral("A photo is kept beside AD-8-8."));
    QTRY_VERIFY(item("partPhoto") != nullptr);
    constexpr int Ready = 1; // Image.Ready
    QTRY_COMPARE(item("partPhoto")->property("status").toInt(), Ready);
    QVERIFY(item("partPhoto")->property("paintedWidth").toDouble() > 100);
    picture("photo");
    m_look->setDark(true);
    picture("photo-dark-small", QSize(1024, 640));
    m_look->setDark(false);
    take("AD-6-6");
    QTRY_VERIFY(item("partPhoto") == nullptr);
}

void PhotoIsKeptBesideItsPart::itIsExportedWithTheShop()
{
    const auto file = ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly).value();
    const std::filesystem::path folder = m_folder.filePath(QStringLiteral("export")).toStdString();
    QVERIFY(writeDocuments(file.documents().value(), folder));
    const auto again = documentsIn(folder);
    QVERIFY(again.has_value());
    const auto photos = readPhotos(*again);
    QVERIFY(photos && photos->contains("AD-8-8"));
    QCOMPARE(imageOf(photos->at("AD-8-8")).size(), QSize(800, 600));
}

void PhotoIsKeptBesideItsPart::itIsPutAwayAndTakenBack()
{
    take("AD-8-8");
    press("deed-noPhoto");
    awaitWritten();
    QTRY_VERIFY(item("partPhoto") == nullptr);
    item("stockList")->forceActiveFocus(Qt::TabFocusReason);
    key(Qt::Key_Z, Qt::ControlModifier);
    awaitWritten();
    QTRY_VERIFY(item("partPhoto") != nullptr);
    key(Qt::Key_Z, Qt::ControlModifier); // The one that put it there.
    awaitWritten();
    QTRY_VERIFY2(item("partPhoto") == nullptr, qPrintable(words("lastStep")));
    QCOMPARE(photoOf(Workshop::open(m_file.toStdString()).value()->photos, "AD-8-8"),
             std::string());
}

void PhotoIsKeptBesideItsPart::aFileThatIsNoneIsSaid()
{
    stock().photo()->put(QUrl::fromLocalFile(m_file));
    awaitWritten();
    QTRY_VERIFY2(words("lastStep").contains(QStringLiteral("is no picture")),
                 qPrintable(words("lastStep")));
}

void PhotoIsKeptBesideItsPart::nothingIsWarnedAbout()
{
    QCOMPARE(m_screens->warnings(), QStringList());
}

QTEST_MAIN(PhotoIsKeptBesideItsPart)
#include "tst_photo_is_kept_beside_its_part.moc"
