// SPDX-License-Identifier: MIT
//
// A figure is taken as the person's country writes it, on every sheet; where it can be read in two
// ways it is refused with both. Which signs a country writes is of the Unicode CLDR, by QLocale,
// and for German of DIN 1333 and DIN 5008: a comma, groups of three apart by points.

#include "app/desk/words/typed_figures.h"
#include "desk_on_demo.h"

#include <QSignalSpy>

using namespace flarestock;

class FiguresAreTypedAsHere : public QObject, protected DeskOnDemo {
    Q_OBJECT
private Q_SLOTS:
    void cleanup() { QLocale::setDefault(QLocale::c()); }
    void aFigureIsReadAsItIsWrittenHere_data();
    void aFigureIsReadAsItIsWrittenHere();
    void whatCanBeReadInTwoWaysIsRefused_data();
    void whatCanBeReadInTwoWaysIsRefused();
    void onACard();
    void ofAnOffer();
    void ofASupplier();
    void onAnOrder();
    void aLengthOfStock();
    void anAnswer();
    void aLineThatIsLookedUp();
    void aNoteStaysAsItWasWritten();

private:
    void openIn(const char *locale)
    {
        QLocale::setDefault(QLocale(QString::fromLatin1(locale)));
        renew("coupe-fuel");
        m_desk->setWho(QStringLiteral("Kim"));
    }
    void openParts(const char *locale, const char *card)
    {
        openIn(locale);
        m_desk->parts()->setLooking(true);
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->parts()->isLoading(), 60000);
        m_desk->parts()->select(QString::fromLatin1(card));
    }
    void openBuying(const char *locale)
    {
        openIn(locale);
        m_desk->buying()->setLooking(true);
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->buying()->isLoading(), 60000);
    }
    [[nodiscard]] static QString field(Rows &fields, const char *key, const char *cell)
    {
        return fields.cell(fields.rowOf(QLatin1String(key)), QLatin1String(cell)).toString();
    }
    /// Fills in some fields, leaves the others as they stand, and does it.
    void fill(Form &form, const QVariantMap &typed)
    {
        Rows &fields = *form.fields();
        QVariantMap values;
        for (int row = 0; row < fields.count(); ++row)
            values.insert(fields.cell(row, QStringLiteral("key")).toString(),
                          fields.cell(row, QStringLiteral("value")));
        values.insert(typed);
        form.finish(values);
        QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 30000);
    }
    /// All sheets of the shop, as its file has them.
    [[nodiscard]] std::string sheets() const
    {
        std::string all;
        const auto documents =
            ShopFile::open(m_file.toStdString(), OpenMode::ReadOnly)->documents().value();
        for (const auto &[name, text] : documents) {
            if (name.ends_with(".csv"))
                all += text;
        }
        return all;
    }
    [[nodiscard]] QString problem() const { return m_desk->pen()->problem(); }
    void isUnclear(const char *broken, const char *whole) const
    {
        const QString both =
            QStringLiteral("Write %1 or %2.").arg(QLatin1String(broken), QLatin1String(whole));
        QVERIFY2(problem().contains(both), qPrintable(problem()));
    }
};

void FiguresAreTypedAsHere::aFigureIsReadAsItIsWrittenHere_data()
{
    QTest::addColumn<QString>("where");
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("read");
    const auto row = [](const char *where, const char *typed, const char *read) {
        QTest::addRow("%s: %s", where, typed)
            << QString::fromLatin1(where) << QString::fromUtf8(typed) << QString::fromUtf8(read);
    };
    row("de_DE", "12,5", "12.5");
    row("de_DE", "12,500", "12.500");
    row("de_DE", "1.234,5", "1234.5");
    row("de_DE", "1.234.567", "1234567");
    row("de_DE", "1.234.567,89 EUR", "1234567.89 EUR");
    row("de_DE", "1.5", "1.5"); // As on a calculator: it can be nothing else.
    row("de_DE", "0.500", "0.500");
    row("de_DE", "1.5000", "1.5000");
    row("de_DE", "1234.567", "1234.567");
    row("de_DE", "-40,5 C", "-40.5 C");
    row("de_DE", "12,34,5", "12,34,5"); // No figure: whoever refuses it says so.
    row("de_DE", "1: 12,50; 10: 11,00", "1: 12.50; 10: 11.00");
    row("de_DE", "2x1,5 m + 3 × 0,75 m", "2x1.5 m + 3 × 0.75 m");
    row("de_DE", "AB-1.500=12,50", "AB-1.500=12.50"); // A part number.
    row("de_DE", "3 bar @ 13,5 V = 255 L/h", "3 bar @ 13.5 V = 255 L/h");
    row("de_DE", "22 1/2 in", "22 1/2 in");
    row("de_DE", "", "");
    row("de_AT", "12,5", "12.5");
    row("de_CH", "1.500", "1.500"); // There the point is the decimal sign …
    row("de_CH", "1’234.5", "1234.5");
    row("fr_FR", "12,5", "12.5");
    row("fr_FR", "1\u202f234,5", "1234.5");
    row("fr_FR", "1.500", "1.500"); // … and here no sign of groups.
    row("en_US", "12.5", "12.5");
    row("en_US", "1.500", "1.500");
    row("en_US", "1,500", "1500"); // Never one and a half.
    row("en_US", "1,234.5 psi", "1234.5 psi");
    row("en_US", "12,5", "12,5");
    row("en_US", "0,500", "0,500");
    row("en_US", "0: 12.00; 1,250: 0", "0: 12.00; 1250: 0");
    row("C", "1,500", "1500");
}

void FiguresAreTypedAsHere::aFigureIsReadAsItIsWrittenHere()
{
    QFETCH(QString, where);
    QFETCH(QString, typed);
    QFETCH(QString, read);
    const auto figures = figuresTyped(typed, QLocale(where));
    QVERIFY2(figures, figures ? "" : figures.error().sentence().c_str());
    QCOMPARE(QString::fromStdString(*figures), read);
}

void FiguresAreTypedAsHere::whatCanBeReadInTwoWaysIsRefused_data()
{
    QTest::addColumn<QString>("where");
    QTest::addColumn<QString>("typed");
    QTest::addColumn<QString>("says");
    const auto row = [](const char *where, const char *typed, const char *says) {
        QTest::addRow("%s: %s", where, typed)
            << QString::fromLatin1(where) << QString::fromUtf8(typed) << QString::fromLatin1(says);
    };
    row("de_DE", "1.500", "Write 1,5 or 1500.");
    row("de_DE", "12.345", "Write 12,345 or 12345.");
    row("de_DE", "250.000 psi", "Write 250 or 250000.");
    row("de_DE", "1.500mm", "Write 1,5 or 1500.");
    row("de_DE", "-1.500", "Write 1,5 or 1500.");
    row("de_DE", "3x1.500 mm", "Write 1,5 or 1500.");
    row("de_DE", "1: 2,50; 1.000: 2,00", "Write 1 or 1000.");
    row("de_AT", "1.500", "Write 1,5 or 1500.");
    row("es_ES", "1.500", "Write 1,5 or 1500.");
    row("id_ID", "1.500", "Write 1,5 or 1500.");
}

void FiguresAreTypedAsHere::whatCanBeReadInTwoWaysIsRefused()
{
    QFETCH(QString, where);
    QFETCH(QString, typed);
    QFETCH(QString, says);
    const auto figures = figuresTyped(typed, QLocale(where));
    QVERIFY2(!figures, figures ? figures->c_str() : "");
    QCOMPARE(QString::fromStdString(figures.error().remedy), says);
}

void FiguresAreTypedAsHere::onACard()
{
    openParts("de_DE", "PT-8");
    CardEditor &editor = *m_desk->parts()->editor();
    const std::string before = sheets();
    editor.beginChange(QStringLiteral("PT-8"));
    QTRY_VERIFY(editor.isOpen());
    QCOMPARE(field(*editor.fields(), "bore", "hint"), QStringLiteral("10,4 mm"));
    QVERIFY(!field(*editor.fields(), "bore", "value").contains(u'.'));
    editor.fill(QStringLiteral("bore"), QStringLiteral("10.450 mm"));
    QVERIFY2(field(*editor.fields(), "bore", "problem")
                 .contains(QStringLiteral("Write 10,45 or 10450.")),
             qPrintable(field(*editor.fields(), "bore", "problem")));
    QVERIFY(!editor.isWhole());
    editor.fill(QStringLiteral("bore"), QStringLiteral("10,45 mm"));
    QVERIFY2(editor.isWhole(), qPrintable(editor.standing()));
    QCOMPARE(field(*editor.fields(), "bore", "value"), QStringLiteral("10,45 mm"));
    editor.finish();
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->pen()->isBusy(), 30000);
    QCOMPARE(problem(), QString());
    const std::string after = sheets();
    QVERIFY(after.find("10.45 mm") != std::string::npos); // With a point, and nothing else.
    QVERIFY(after.find("10,45 mm") == std::string::npos);
    QVERIFY(before != after);
}

void FiguresAreTypedAsHere::ofAnOffer()
{
    openParts("de_DE", "AD-6-8");
    TradeForm &form = *m_desk->parts()->tradeForm();
    QSignalSpy opened(&form, &TradeForm::opened);
    form.beginOffer(QStringLiteral("AD-6-8"), QString());
    QTRY_COMPARE(opened.count(), 1);
    QCOMPARE(field(*form.fields(), "prices", "hint"), QStringLiteral("1: 12,50; 10: 11,00"));
    QVariantMap typed{{QStringLiteral("supplier part"), QStringLiteral("X-1")},
                      {QStringLiteral("prices"), QStringLiteral("1: 5,25; 1.000: 4,00")}};
    fill(form, typed);
    isUnclear("1", "1000");
    typed[QStringLiteral("prices")] = QStringLiteral("1: 5,25; 1000: 4,00");
    fill(form, typed);
    QCOMPARE(problem(), QString());
    const auto shop = inFile();
    const auto offers = shop->catalogue.offers(*shop->catalogue.find("AD-6-8"));
    const auto made = std::find_if(offers.begin(), offers.end(),
                                   [](const Offer &one) { return one.supplierNumber == "X-1"; });
    QVERIFY(made != offers.end());
    QCOMPARE(made->priceEach(Decimal(1)), Decimal::parse("5.25").value());
    form.beginOffer(QStringLiteral("AD-6-8"), offerKey(*made));
    QTRY_COMPARE(opened.count(), 2);
    QCOMPARE(field(*form.fields(), "prices", "value"), QStringLiteral("1: 5,25; 1000: 4,00"));
}

void FiguresAreTypedAsHere::ofASupplier()
{
    openParts("de_DE", "AD-6-8");
    TradeForm &form = *m_desk->parts()->tradeForm();
    QSignalSpy opened(&form, &TradeForm::opened);
    form.beginSupplier(QString());
    QTRY_COMPARE(opened.count(), 1);
    fill(form, {{QStringLiteral("supplier"), QStringLiteral("NFL")},
                {QStringLiteral("name"), QStringLiteral("New Forge Lines")},
                {QStringLiteral("currency"), QStringLiteral("EUR")},
                {QStringLiteral("freight"), QStringLiteral("0: 12,50; 1.250,50: 0")},
                {QStringLiteral("minimum order"), QStringLiteral("1.250,50")},
                {QStringLiteral("tax percent"), QStringLiteral("7,7")}});
    QCOMPARE(problem(), QString());
    const std::string text = sheets();
    QVERIFY2(text.find("0: 12.50; 1250.50: 0") != std::string::npos, text.c_str());
    QVERIFY2(text.find(",7.7,") != std::string::npos, text.c_str());
}

void FiguresAreTypedAsHere::onAnOrder()
{
    openBuying("de_DE");
    OrdersPage &orders = *m_desk->buying()->orders();
    const std::size_t before = inFile()->bought.orders.orders.size();
    QVERIFY(orders.begin(QStringLiteral("new")));
    QVariantMap typed{{QStringLiteral("part"), QStringLiteral("AD-4-4")},
                      {QStringLiteral("quantity"), QStringLiteral("2")},
                      {QStringLiteral("price"), QStringLiteral("1.250")},
                      {QStringLiteral("supplier"), 2}}; // Northeaves Hose & Tube
    fill(*orders.form(), typed);
    isUnclear("1,25", "1250");
    typed[QStringLiteral("price")] = QStringLiteral("1,25");
    fill(*orders.form(), typed);
    QCOMPARE(problem(), QString());
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->buying()->isLoading(), 60000);
    orders.select(orders.keyAt(0));
    const auto shop = inFile();
    QCOMPARE(shop->bought.orders.orders.size(), before + 1); // The refused one is none.
    const Order &now = shop->bought.orders.order(orders.selected().toStdString())->now();
    QCOMPARE(now.line("AD-4-4")->priceEach, Decimal::parse("1.25").value());
}

/// Hose comes in: 1.257,3 mm are 1257.3 mm, and 1.500 mm are not 1.5 mm.
void FiguresAreTypedAsHere::aLengthOfStock()
{
    openIn("de_DE");
    StockDesk &stock = *m_desk->stock();
    stock.setLooking(true);
    QTRY_VERIFY_WITH_TIMEOUT(!stock.isLoading(), 60000);
    stock.select(QStringLiteral("PT-8"));
    QVERIFY(stock.form()->begin(QStringLiteral("receive")));
    QVariantMap typed{{QStringLiteral("quantity"), QStringLiteral("1.500 mm")},
                      {QStringLiteral("cost"), QStringLiteral("1.234,50")},
                      {QStringLiteral("lot"), QStringLiteral("COIL-1.500")}};
    fill(*stock.form(), typed);
    isUnclear("1,5", "1500");
    typed[QStringLiteral("quantity")] = QStringLiteral("1.257,3 mm");
    fill(*stock.form(), typed);
    QCOMPARE(problem(), QString());
    const auto shop = inFile();
    const auto balances = shop->ledger.balances();
    const auto lying = std::find_if(balances.begin(), balances.end(), [](const auto &one) {
        return one.first.lot == "COIL-1.500"; // A name stays one.
    });
    QVERIFY(lying != balances.end());
    QCOMPARE(lying->second.quantity, Quantity::parse("1257.3 mm")->smallest().value());
}

void FiguresAreTypedAsHere::anAnswer()
{
    openIn("de_DE");
    BuildDesk &build = *m_desk->build();
    QVERIFY(!build.answer(QStringLiteral("power"), QStringLiteral("1.500 hp")));
    const auto cell = [&build](const char *name) { return field(*build.answers(), "power", name); };
    QVERIFY2(cell("problem").contains(QStringLiteral("Write 1,5 or 1500.")),
             qPrintable(cell("problem")));
    QVERIFY(build.answer(QStringLiteral("power"), QStringLiteral("450,5 hp")));
    QCOMPARE(cell("answer"), QStringLiteral("450,5 hp"));
}

void FiguresAreTypedAsHere::aLineThatIsLookedUp()
{
    QLocale::setDefault(QLocale(QStringLiteral("de_DE")));
    LineTable line;
    QVariantMap typed{{QStringLiteral("fluid"), 0},
                      {QStringLiteral("flow"), QStringLiteral("1.500 L/h")},
                      {QStringLiteral("size"), QStringLiteral("8,71 mm")},
                      {QStringLiteral("length"), QStringLiteral("5 m")}};
    line.consider(typed);
    QVERIFY2(line.wrong().contains(QStringLiteral("Write 1,5 or 1500.")), qPrintable(line.wrong()));
    QCOMPARE(line.figures()->count(), 0);
    typed[QStringLiteral("flow")] = QStringLiteral("1.500,0 L/h");
    line.consider(typed);
    QCOMPARE(line.wrong(), QString());
    QVERIFY(line.figures()->count() > 0);
}

/// Words are no figures, whatever stands in them.
void FiguresAreTypedAsHere::aNoteStaysAsItWasWritten()
{
    openBuying("de_DE");
    OrdersPage &orders = *m_desk->buying()->orders();
    QVERIFY(orders.begin(QStringLiteral("new")));
    fill(*orders.form(), {{QStringLiteral("part"), QStringLiteral("AD-4-4")},
                          {QStringLiteral("quantity"), QStringLiteral("2")},
                          {QStringLiteral("note"), QStringLiteral("as of list 1.500, 2,5 % off")},
                          {QStringLiteral("supplier"), 2}});
    QCOMPARE(problem(), QString());
    QTRY_VERIFY_WITH_TIMEOUT(!m_desk->buying()->isLoading(), 60000);
    orders.select(orders.keyAt(0));
    const auto shop = inFile();
    QCOMPARE(shop->bought.orders.order(orders.selected().toStdString())->now().note,
             std::string("as of list 1.500, 2,5 % off"));
}

QTEST_MAIN(FiguresAreTypedAsHere)
#include "tst_figures_are_typed_as_here.moc"
