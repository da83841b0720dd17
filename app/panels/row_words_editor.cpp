#include "app/panels/row_words_editor.h"

#include "app/document/text.h"
#include "app/panels/form_dialog.h"

#include <QKeyEvent>
#include <QLabel>
#include <QPlainTextEdit>
#include <QTextBlock>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

RowWordsEditor::RowWordsEditor(const QString& label, const QString& words, QWidget* parent)
    : QFrame(parent), m_were(words), m_field(new QPlainTextEdit(words, this)), m_hint(softLabel({}, this)),
      m_wrong(new QLabel(this))
{
    setObjectName(QStringLiteral("rowWords"));
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::Base);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(8, 6, 8, 6);
    layout->setSpacing(4);
    auto* heading = new QLabel(label, this);
    heading->setObjectName(QStringLiteral("strong"));
    heading->setBuddy(m_field);
    layout->addWidget(heading);
    m_field->setAccessibleName(tr("Words of %1").arg(label));
    m_field->setTabChangesFocus(true);
    m_field->installEventFilter(this);
    layout->addWidget(m_field, 1);
    m_wrong->setObjectName(QStringLiteral("fault"));
    m_wrong->setWordWrap(true);
    m_wrong->hide();
    layout->addWidget(m_wrong);
    m_hint->setText(tr("Return changes the chart, Esc leaves it."));
    layout->addWidget(m_hint);
    m_field->selectAll();
    connect(m_field, &QPlainTextEdit::textChanged, this, [this] {
        m_wrong->hide();
        m_field->setExtraSelections({});
        Q_EMIT sizeWanted();
    });
}

QString RowWordsEditor::words() const
{
    return m_field->toPlainText();
}

QString RowWordsEditor::wrong() const
{
    return m_wrong->isVisibleTo(this) ? m_wrong->text() : QString();
}

void RowWordsEditor::sayWrong(const QString& sentence, int line, int column)
{
    m_wrong->setText(sentence);
    m_wrong->show();
    const QTextBlock block = m_field->document()->findBlockByNumber(line - 1);
    if (line > 0 && block.isValid()) {
        QTextCursor cursor(m_field->document());
        cursor.setPosition(block.position() + positionOf(block.text(), column - 1));
        m_field->setTextCursor(cursor);
        QTextEdit::ExtraSelection mark;
        mark.cursor = cursor;
        mark.cursor.movePosition(QTextCursor::EndOfWord, QTextCursor::KeepAnchor);
        if (!mark.cursor.hasSelection())
            mark.cursor.movePosition(QTextCursor::NextCharacter, QTextCursor::KeepAnchor);
        mark.format.setUnderlineStyle(QTextCharFormat::WaveUnderline);
        mark.format.setUnderlineColor(m_wrong->palette().color(QPalette::BrightText));
        m_field->setExtraSelections({mark});
    }
    Q_EMIT sizeWanted();
}

int RowWordsEditor::heightFor(int width) const
{
    const int inner = std::max(60, width - 32);
    const QRect room = m_field->fontMetrics().boundingRect(QRect(0, 0, inner, 10000), Qt::TextWordWrap,
                                                            words() + QLatin1Char(0x20));
    int height = room.height() + 24 + 2 * (m_hint->fontMetrics().height() + 8) + 12;
    if (m_wrong->isVisibleTo(this))
        height += m_wrong->heightForWidth(width - 16) + 4;
    return height;
}

bool RowWordsEditor::eventFilter(QObject* watched, QEvent* event)
{
    if (event->type() == QEvent::ShortcutOverride) { // keys of the window stay out of the field
        event->accept();
        return true;
    }
    if (event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Escape) {
            Q_EMIT left();
            return true;
        }
        if ((key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) &&
            !key->modifiers().testFlag(Qt::ShiftModifier)) {
            Q_EMIT taken();
            return true;
        }
    }
    return QFrame::eventFilter(watched, event);
}

} // namespace shawlwright::app
