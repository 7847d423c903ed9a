// SPDX-License-Identifier: MIT
//
// Desk: the shop that is open and the build on the desk; the one object from which all screens
// start. There is one in a program; main() makes it and hands it to QML.

#pragma once

#include "app/desk/abreast/abreast_desk.h"
#include "app/desk/build/build_desk.h"
#include "app/desk/buying/buying_desk.h"
#include "app/desk/coming/desk_deeds.h"
#include "app/desk/coming/shop_opening.h"
#include "app/desk/find/find_anywhere.h"
#include "app/desk/handing/handing_out.h"
#include "app/desk/keeping/shopkeeping.h"
#include "app/desk/papers/build_papers.h"
#include "app/desk/parts/parts_desk.h"
#include "app/desk/planning/plan_form.h"
#include "app/desk/plot/build_pictures.h"
#include "app/desk/service/service_desk.h"
#include "app/desk/shop/backing_up.h"
#include "app/desk/shop/kept_plan.h"
#include "app/desk/shop/shop_on_desk.h"
#include "app/desk/stock/stock_desk.h"
#include "app/desk/template/template_desk.h"
#include "app/desk/trailer/trailer_desk.h"

#include <QUrl>

class QQmlEngine;
class QJSEngine;

namespace flarestock {

class Desk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(bool hasShop READ hasShop NOTIFY shopChanged)
    Q_PROPERTY(QString shopTitle READ shopTitle NOTIFY shopChanged)
    Q_PROPERTY(QString shopFile READ shopFile NOTIFY shopChanged)
    Q_PROPERTY(QString kept READ kept NOTIFY keptChanged)
    Q_PROPERTY(bool isOwing READ isOwing NOTIFY keptChanged)
    Q_PROPERTY(QString problem READ problem NOTIFY problemChanged)
    Q_PROPERTY(QString opening READ opening NOTIFY openingChanged)
    Q_PROPERTY(QString who READ who WRITE setWho NOTIFY whoChanged)
    Q_PROPERTY(bool takesScans READ takesScans WRITE setTakesScans NOTIFY takesScansChanged)
    Q_PROPERTY(bool canTakeBack READ canTakeBack NOTIFY stepsChanged)
    Q_PROPERTY(flarestock::Rows *builds READ builds CONSTANT)
    Q_PROPERTY(flarestock::BuildDesk *build READ build CONSTANT)
    Q_PROPERTY(flarestock::BuildPictures *pictures READ pictures CONSTANT)
    Q_PROPERTY(flarestock::HandingOut *handing READ handing CONSTANT)
    Q_PROPERTY(flarestock::BuildPapers *papers READ papers CONSTANT)
    Q_PROPERTY(flarestock::PlanForm *planning READ planning CONSTANT)
    Q_PROPERTY(flarestock::AbreastDesk *abreast READ abreast CONSTANT)
    Q_PROPERTY(flarestock::StockDesk *stock READ stock CONSTANT)
    Q_PROPERTY(flarestock::FindAnywhere *anywhere READ anywhere CONSTANT)
    Q_PROPERTY(flarestock::BuyingDesk *buying READ buying CONSTANT)
    Q_PROPERTY(flarestock::TrailerDesk *trailer READ trailer CONSTANT)
    Q_PROPERTY(flarestock::ServiceDesk *service READ service CONSTANT)
    Q_PROPERTY(flarestock::PartsDesk *parts READ parts CONSTANT)
    Q_PROPERTY(flarestock::TemplateDesk *templates READ templates CONSTANT)
    Q_PROPERTY(flarestock::Pen *pen READ pen CONSTANT)
    Q_PROPERTY(flarestock::BackingUp *backups READ backups CONSTANT)
    Q_PROPERTY(flarestock::Shopkeeping *keeping READ keeping CONSTANT)
    Q_PROPERTY(flarestock::AtServer *server READ server CONSTANT)
public:
    /// Not default-constructible: QML would otherwise make a second, empty desk of its own.
    explicit Desk(QObject *parent);
    ~Desk() override;
    /// The desk that exists (asserted: main() or the test has made it).
    static Desk *create(QQmlEngine *engine, QJSEngine *);
    void setDeeds(DeskDeeds deeds);
    /// Puts a shop on the desk, with its first build. Problem: none of it can be worked out.
    void show(ShopOnDesk shop);
    [[nodiscard]] bool hasShop() const { return m_hasShop; }
    [[nodiscard]] QString shopTitle() const;
    [[nodiscard]] QString shopFile() const;
    [[nodiscard]] QString shopPath() const; ///< With its folder.
    /// Whether what the screen shows is in the file: "kept, 14:02".
    [[nodiscard]] QString kept() const { return m_kept.said; }
    [[nodiscard]] bool isOwing() const; ///< A change was not kept, and is tried again.
    /// What the outside world refused last, as a sentence; empty where nothing.
    [[nodiscard]] QString problem() const { return m_problem; }
    /// The name of the file that is being opened; empty where none is.
    [[nodiscard]] QString opening() const { return m_coming.file().section(u'/', -1); }
    [[nodiscard]] Rows *builds() { return &m_builds; }
    [[nodiscard]] BuildDesk *build() { return &m_build; }
    [[nodiscard]] BuildPictures *pictures() { return &m_pictures; }
    [[nodiscard]] HandingOut *handing() { return &m_handing; }
    [[nodiscard]] BuildPapers *papers() { return &m_papers; }
    [[nodiscard]] PlanForm *planning() { return &m_planning; }
    [[nodiscard]] AbreastDesk *abreast() { return &m_abreast; }
    [[nodiscard]] StockDesk *stock() { return &m_stock; }
    [[nodiscard]] BuyingDesk *buying() { return &m_buying; }
    [[nodiscard]] TrailerDesk *trailer() { return &m_trailer; }
    [[nodiscard]] PartsDesk *parts() { return &m_parts; }
    [[nodiscard]] TemplateDesk *templates() { return &m_templates; }
    [[nodiscard]] FindAnywhere *anywhere() { return &m_anywhere; }
    [[nodiscard]] bool isLoading() const; ///< An area that shows is still being read.
    [[nodiscard]] ServiceDesk *service() { return &m_service; }
    [[nodiscard]] Pen *pen() { return &m_pen; }
    [[nodiscard]] BackingUp *backups() { return &m_backups; }
    [[nodiscard]] Shopkeeping *keeping() { return &m_keeping; }
    [[nodiscard]] AtServer *server() { return &m_server; }
    /// Whose name stands below what is done here; empty where nobody has said.
    [[nodiscard]] QString who() const { return m_who; }
    void setWho(const QString &who);
    /// Whether a scanned code is told also where words are written; else it is typed there.
    [[nodiscard]] bool takesScans() const { return m_takesScans; }
    void setTakesScans(bool takes);
    /// Whether there is a step, of the plan or in the shop, that can be taken back.
    [[nodiscard]] bool canTakeBack() const;
    Q_INVOKABLE void takeBack(); ///< The last one, whichever it was.

    /// A planned build by its id, or a template by "template|id". Whether it is on its way.
    Q_INVOKABLE bool openBuild(const QString &key, const QString &sentence = {}); ///< Said then.
    Q_INVOKABLE void openShop(const QUrl &file);
    /// Makes the demo shop in the person's documents and opens it.
    Q_INVOKABLE void makeDemo();
    /// Away from the window; then that build of it, or the first where none is named.
    void openAside(const OpenShop &deed, const QString &file, const QString &build = {});
    void sayAgain();                        ///< In another language.
    bool openShopFile(const QString &file); ///< At once: the window waits for it.
    bool makeDemoIn(const QString &file);
    Q_INVOKABLE void keepNow(); ///< What waits to be kept.

Q_SIGNALS:
    void shopChanged();
    void keptChanged();
    void problemChanged();
    void openingChanged();
    void whoChanged();
    void stepsChanged();
    void takesScansChanged();
    void scanned(const QString &code);

private:
    enum class Step : std::uint8_t { Plan, Shop };
    void listen();
    void become(ShopOnDesk shop); ///< The same shop, as it is now.
    /// Tells every area which shop is on the desk now; `isOther`: another than before.
    void tellAreas(bool isOther);
    void takeIn(const Wrote &wrote, const QString &sentence, bool isBack);
    void watch();
    [[nodiscard]] bool isWriting() const;
    void readAgain();
    void takeRead(Result<ShopOnDesk> read);
    void takeInOthers(ShopOnDesk shop);
    void workAnew(const QString &sentence, bool isBack);
    /// What to open instead of the build on the desk; empty: the shop has it as it is there.
    [[nodiscard]] QString otherThanOnDesk();
    void keepLater();
    void keepAside();
    void keepChanged(const ChangedPlan &changed);
    void keepOwed();
    void takeUpOwed();
    void sayKept();
    [[nodiscard]] ChangedPlan takeToKeep();
    void takeKept(const ChangedPlan &changed, const Result<void> &kept);
    [[nodiscard]] bool isBeingWritten();
    void showOpened(const ShopOnDesk &shop, const QString &says);
    [[nodiscard]] bool openWith(const OpenShop &deed, const QString &file);
    void refuse(const Problem &problem);
    void say(const QString &kept);

    DeskDeeds m_deeds;
    ShopOnDesk m_shop;
    bool m_hasShop = false;
    QString m_problem;
    KeptPlan m_kept;
    Rows m_builds;
    BuildDesk m_build;
    BuildPictures m_pictures{m_build};
    Pen m_pen;
    HandingOut m_handing{m_pen};
    BuildPapers m_papers{m_pen, m_build};
    PlanForm m_planning{m_pen, m_build};
    AbreastDesk m_abreast{m_pen};
    StockDesk m_stock{m_pen};
    FindAnywhere m_anywhere;
    BuyingDesk m_buying{m_pen};
    TrailerDesk m_trailer{m_pen};
    ServiceDesk m_service{m_pen};
    PartsDesk m_parts{m_pen};
    TemplateDesk m_templates{m_pen};
    BackingUp m_backups;
    Shopkeeping m_keeping{m_pen};
    AtServer m_server;
    ShopOpening m_coming;
    QString m_who;
    bool m_takesScans = false;
    QTimer m_readSoon;
    Errand m_reading;                 ///< What others wrote.
    int m_written = 0;                ///< How often something was written from here.
    std::shared_ptr<void> m_watching; ///< For who writes.
    std::vector<Step> m_order;        ///< Which kind of step came when, the last one at the end.
};

} // namespace flarestock
