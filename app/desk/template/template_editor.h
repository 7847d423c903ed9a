// SPDX-License-Identifier: MIT
//
// TemplateEditor: one template while it is typed. The text is the truth: the sheet on which it
// stands (a text document, with its own history), and nothing else, is what is written down.
// Faults, form and line map are readings of it; the map is worked out away from the window. What
// cannot be read leaves the last reading where it is, and says so.
//
//   editor.begin({.file = "templates/coolant.toml", .begun = text, .text = text});
//   editor.finish();

#pragma once

#include "app/desk/map/line_map.h"
#include "app/desk/shop/pen.h"
#include "app/desk/template/drawn_template.h"
#include "app/desk/template/form/template_form.h"
#include "app/desk/template/text_read.h"

#include <QQuickTextDocument>

namespace flarestock {

/// What is typed, and what it was made from.
struct TypedTemplate {
    std::string file;  ///< Of the shop; empty: none of its documents yet.
    std::string begun; ///< As it stood in the shop.
    std::string text;
};

class TemplateEditor : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the desk")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    Q_PROPERTY(bool drawing READ isDrawing NOTIFY changed)
    Q_PROPERTY(bool changedText READ isChanged NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString standing READ standing NOTIFY changed)
    Q_PROPERTY(QString stale READ stale NOTIFY changed)
    Q_PROPERTY(QString mapStale READ mapStale NOTIFY changed)
    Q_PROPERTY(int faultLine READ faultLine NOTIFY changed)
    Q_PROPERTY(bool inInches READ inInches WRITE setInInches NOTIFY changed)
    Q_PROPERTY(QString spot READ spot NOTIFY changed)
    Q_PROPERTY(flarestock::Rows *faults READ faults CONSTANT)
    Q_PROPERTY(flarestock::Rows *stillOpen READ stillOpen CONSTANT)
    Q_PROPERTY(flarestock::LineMap *map READ map CONSTANT)
    Q_PROPERTY(flarestock::TemplateForm *form READ form CONSTANT)
    Q_PROPERTY(QQuickTextDocument *sheet READ sheet WRITE setSheet NOTIFY sheetChanged)
public:
    explicit TemplateEditor(Pen &pen, QObject *parent = nullptr);

    /// `texts`: the templates of that shop.
    void setShop(const std::shared_ptr<const Workshop> &workshop, TextFiles texts);
    void begin(const TypedTemplate &typed);
    [[nodiscard]] TypedTemplate typed() const; ///< As a file has it.

    [[nodiscard]] bool isOpen() const { return m_isOpen; }
    [[nodiscard]] bool isDrawing() const { return m_drawing.isUnderWay(); }
    /// Whether something is typed that is not in the shop.
    [[nodiscard]] bool isChanged() const;
    [[nodiscard]] QString title() const;
    /// Whether it could be written down: "as in the shop", "2 places are not right yet".
    [[nodiscard]] QString standing() const;
    /// Why the form shows an earlier state; empty where it shows this one.
    [[nodiscard]] QString stale() const;
    [[nodiscard]] QString mapStale() const; ///< The same of the map.
    [[nodiscard]] int faultLine() const;    ///< Of the first fault, from 1; 0: none.
    [[nodiscard]] bool inInches() const { return m_inInches; }
    void setInInches(bool inInches);
    [[nodiscard]] QString spot() const { return m_spot; }
    [[nodiscard]] Rows *faults() { return &m_faultRows; }
    [[nodiscard]] Rows *stillOpen() { return &m_openRows; }
    [[nodiscard]] LineMap *map() { return &m_map; }
    [[nodiscard]] TemplateForm *form() { return &m_form; }
    [[nodiscard]] QQuickTextDocument *sheet() const { return m_shown; }
    /// Where it is typed on the screen; what was typed so far goes there.
    void setSheet(QQuickTextDocument *sheet);
    [[nodiscard]] QTextDocument &document() { return *m_sheet; }
    [[nodiscard]] const TextRead &read() const { return m_read; }

    /// The line of a fault, or the table behind a spot of the map, gets the cursor.
    Q_INVOKABLE void goToFault(int row);
    Q_INVOKABLE void openSpot(const QString &spot);
    /// One step of the sheet's history, typed or done by the form.
    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    /// Writes it down; where that cannot be, says why.
    Q_INVOKABLE void finish();
    Q_INVOKABLE void close();

Q_SIGNALS:
    void changed();
    void sheetChanged();
    void opened();
    void closed();
    /// The text is another.
    void typedOn();
    /// It stands in the shop now, under this id.
    void written(const QString &id);
    /// The cursor goes there.
    void wentTo(int place);

private:
    void listen();
    void takeWritten(const Wrote &wrote);
    void readAnew(std::string text);
    void showFaults();
    void showForm();
    void apply(const TextEdit &edit, const QString &place);
    void draw();
    void take(const std::shared_ptr<const std::string> &text, const DrawnTemplate &drawn);
    void write();
    [[nodiscard]] std::string fileName() const;
    [[nodiscard]] std::vector<Problem> allFaults() const;

    Pen &m_pen;
    std::shared_ptr<const Workshop> m_workshop;
    TextFiles m_texts;
    QTextDocument m_own; ///< While no screen shows it.
    QTextDocument *m_sheet = &m_own;
    QQuickTextDocument *m_shown = nullptr;
    QMetaObject::Connection m_typing;
    bool m_isOpen = false;
    bool m_inInches = false;
    std::string m_file;
    std::string m_begun;
    TextRead m_read;                                ///< What is typed.
    TextRead m_readable;                            ///< The last that was TOML.
    std::shared_ptr<const std::string> m_drawnText; ///< What the map shows.
    std::optional<Problem> m_notDrawn;              ///< Why the map does not show what is typed.
    bool m_isBehind = false;                        ///< It is to be drawn once more.
    QString m_spot;
    LineMap m_map;
    TemplateForm m_form;
    QString m_field; ///< In which was typed last; empty: elsewhere.
    Rows m_faultRows;
    Rows m_openRows;
    Errand m_drawing; ///< Last: it waits for its worker before the rest goes.
};

} // namespace flarestock
