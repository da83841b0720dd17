// The one undo command: an edit that turns into what takes it back each time it is applied.
//
// Shape:   merges with the step before only where both carry the same stroke number; Qt's stack itself never
// merges
//          into the step at which the file was written.
#pragma once

#include "core/edits/edit.h"

#include <QUndoCommand>

namespace shawlwright::app {

class PatternDocument;

class EditCommand : public QUndoCommand {
public:
    EditCommand(PatternDocument& document, const Edit& edit, int stroke);

    int id() const override { return m_stroke > 0 ? m_stroke : -1; }
    int stroke() const { return m_stroke; }
    void redo() override;
    void undo() override;
    bool mergeWith(const QUndoCommand* other) override;
    void forgetWhenUndone() { m_forget = true; } // a stroke taken back leaves no step to redo

private:
    PatternDocument& m_document;
    Edit m_edit; // what undo() or redo() applies next
    int m_stroke;
    bool m_done = false;
    bool m_forget = false;
};

} // namespace shawlwright::app
