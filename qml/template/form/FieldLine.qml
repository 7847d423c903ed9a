// SPDX-License-Identifier: MIT
//
// One field of a paragraph. What is typed goes into the text letter by letter; while it is typed
// in, it shows what was typed and not what became of it. Down shows what could stand there.

pragma ComponentBehavior: Bound

import QtQuick
import Flarestock.Desk
import Flarestock.Screens

FocusScope {
    id: root

    required property string key
    required property string title
    required property string form // "typed" or "choice"
    required property var choices
    required property string value
    required property string hint
    required property string problem
    required property var deeds
    required property var deedWords
    required property bool offered

    readonly property bool isTyped: form === "typed"

    signal filledIn(var filled)
    signal offersAsked()
    signal varied(string deed)
    signal undone()
    signal redone()
    signal reached(Item item)

    function take(word: string) {
        written.text = word;
        root.filledIn(word);
        written.forceActiveFocus(Qt.PopupFocusReason);
    }
    function step(event: KeyEvent) {
        const back = event.matches(StandardKey.Undo); // qmllint disable unqualified
        if (!back && !event.matches(StandardKey.Redo)) // qmllint disable unqualified
            return;
        event.accepted = true;
        if (back)
            root.undone();
        else
            root.redone();
        written.text = root.value;
    }

    implicitHeight: column.height
    onValueChanged: {
        if (!written.activeFocus)
            written.text = value;
    }
    onActiveFocusChanged: {
        if (activeFocus)
            root.reached(root);
    }
    Component.onCompleted: written.text = value

    Column {
        id: column

        width: root.width
        spacing: 2

        Words {
            width: parent.width
            text: root.title
            small: true
            quiet: true
            elide: Text.ElideRight
        }
        InkField {
            id: written

            objectName: "field-" + root.key
            name: root.title
            visible: root.isTyped
            focus: root.isTyped
            width: parent.width
            rightPadding: root.offered ? 34 : 8
            placeholderText: root.hint
            Accessible.description: root.offered
                ? qsTr("%1; Down shows what could stand here").arg(root.hint) : root.hint
            onTextEdited: root.filledIn(text)
            onEditingFinished: text = root.value
            Keys.onPressed: event => root.step(event)
            Keys.onDownPressed: event => {
                event.accepted = root.offered;
                if (root.offered)
                    root.offersAsked();
            }

            DeskButton {
                visible: root.offered
                anchors.right: parent.right
                width: 34
                height: parent.height
                text: "▾"
                framed: false
                activeFocusOnTab: false // Down does the same in the field.
                focusPolicy: Qt.NoFocus
                Accessible.name: qsTr("what could stand in %1").arg(root.title)
                onClicked: root.offersAsked()
            }
        }
        ChoiceBox {
            objectName: "choice-" + root.key
            name: root.title
            visible: !root.isTyped
            focus: !root.isTyped
            width: parent.width
            model: root.choices
            currentIndex: root.isTyped ? -1 : Number(root.value)
            onActivated: at => root.filledIn(at)
            onModelChanged: currentIndex = Qt.binding(() => root.isTyped ? -1 : Number(root.value))
        }
        Words {
            objectName: "wrong-" + root.key
            width: parent.width
            visible: text !== ""
            text: root.problem
            small: true
            color: Theme.stop
            wrapMode: Text.Wrap
            Accessible.role: Accessible.AlertMessage
            Accessible.name: Gaps.fill(qsTr("%1: %2"), root.title, text)
        }
        Flow {
            width: parent.width

            Repeater {
                model: root.deeds

                DeskButton {
                    required property string modelData
                    required property int index

                    objectName: modelData + "-" + root.key
                    text: root.deedWords[index] ?? ""
                    small: true
                    framed: false
                    Accessible.description: root.title
                    onClicked: root.varied(modelData)
                }
            }
        }
    }
}
