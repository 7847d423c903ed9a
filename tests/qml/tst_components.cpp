// SPDX-License-Identifier: MIT
//
// Runs every tst_*.qml beside it against the screens' own components and the bench shop.

#include "app/desk/launch/screens.h"
#include "app/desk/shop/desk.h"
#include "app/desk/shop/look.h"
#include "bench_shop.h"

#include <QQmlEngine>
#include <QtQuickTest>

using namespace flarestock;

class Setup : public QObject {
    Q_OBJECT
public Q_SLOTS:
    void applicationAvailable() { prepareScreens(); }
    void qmlEngineAvailable(QQmlEngine *engine)
    {
        if (!m_desk) {
            m_look = std::make_unique<Look>(nullptr);
            m_desk = std::make_unique<Desk>(nullptr);
            m_desk->show(benchShop());
        }
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
    }
    void cleanupTestCase()
    {
        m_desk.reset();
        m_look.reset();
    }

private:
    std::unique_ptr<Look> m_look;
    std::unique_ptr<Desk> m_desk;
};

QUICK_TEST_MAIN_WITH_SETUP(components, Setup)
#include "tst_components.moc"
