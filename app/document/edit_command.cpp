#include "app/document/edit_command.h"

#include "app/document/pattern_document.h"
#include "app/document/step_words.h"
#include "app/document/text.h"

namespace shawlwright::app {

EditCommand::EditCommand(PatternDocument& document, const Edit& edit, int stroke)
    : m_document(document), m_edit(edit), m_stroke(stroke)
{
    setText(stepWords(toQt(edit.name)));
}

void EditCommand::redo()
{
    m_edit = m_document.applyNow(m_edit, m_done ? Going::Again : Going::First);
    m_done = true;
}

void EditCommand::undo()
{
    m_edit = m_document.applyNow(m_edit, m_forget ? Going::First : Going::Back);
    if (m_forget)
        setObsolete(true);
}

bool EditCommand::mergeWith(const QUndoCommand* other)
{
    const auto* later = dynamic_cast<const EditCommand*>(other);
    if (!later || later->m_stroke != m_stroke)
        return false;
    // Both hold what takes them back: first the later one goes, then this one, whose older rows stay.
    m_edit = composed(later->m_edit, m_edit);
    return true;
}

} // namespace shawlwright::app
