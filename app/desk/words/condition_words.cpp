// SPDX-License-Identifier: MIT

#include "app/desk/words/condition_words.h"

#include <QCoreApplication>

namespace flarestock {

namespace {

struct ConditionWords {
    Q_DECLARE_TR_FUNCTIONS(Condition)
};

} // namespace

QString saidCondition(PieceCondition condition)
{
    switch (condition) {
    case PieceCondition::New:
        return ConditionWords::tr("new");
    case PieceCondition::UsedAndGood:
        return ConditionWords::tr("used and good");
    case PieceCondition::ToBeChecked:
        return ConditionWords::tr("to be checked");
    case PieceCondition::NotToBeUsed:
        break;
    }
    return ConditionWords::tr("not to be used");
}

QStringList allConditions()
{
    return {saidCondition(PieceCondition::New), saidCondition(PieceCondition::UsedAndGood),
            saidCondition(PieceCondition::ToBeChecked), saidCondition(PieceCondition::NotToBeUsed)};
}

QString saidDeed(Deed deed)
{
    switch (deed) {
    case Deed::Move:
        return ConditionWords::tr("moved");
    case Deed::Receive:
        return ConditionWords::tr("received");
    case Deed::Count:
        return ConditionWords::tr("counted");
    case Deed::Scrap:
        return ConditionWords::tr("thrown away");
    case Deed::Cut:
        return ConditionWords::tr("cut");
    case Deed::Issue:
        return ConditionWords::tr("taken for a build");
    case Deed::Return:
        return ConditionWords::tr("given back by a build");
    case Deed::Lend:
        return ConditionWords::tr("lent");
    case Deed::Judge:
        return ConditionWords::tr("looked at");
    case Deed::Open:
        return ConditionWords::tr("box opened");
    case Deed::MakeUp:
        return ConditionWords::tr("hose made up");
    case Deed::Renew:
        return ConditionWords::tr("replaced");
    case Deed::Settle:
        break;
    }
    return ConditionWords::tr("worth set right");
}

} // namespace flarestock
