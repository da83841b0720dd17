// The open pattern: the only thing that changes it, its undo stack, what follows from it, and its file.
//
// Shape:   one edit gives one changed(); a load gives a Change that says all. Views keep no copy.
// Errors:  load and save give the fault as text with place and what to do; the file and the pattern stay as they were.
#pragma once

#include "core/derived/derived.h"
#include "core/edits/edit.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <memory>
#include <optional>

namespace shawlwright::app {

class PatternDocument : public QObject {
    Q_OBJECT
public:
    explicit PatternDocument(QObject* parent = nullptr);

    const Pattern& pattern() const { return m_pattern; }
    Derived& derived() { return *m_derived; }
    const Derived& derived() const { return *m_derived; }
    const Catalogue& catalogue() const { return m_derived->catalogue(); }
    QUndoStack& undoStack() { return m_undo; }

    // Does an edit as one undo step. stroke > 0: merges with the step before if that has the same number and the file
    // was not written in between. An empty edit does nothing. `where`: the section to show when undone or redone.
    void perform(const Edit& edit, int stroke = 0);
    void performOrTell(const Result<Edit>& edit, int stroke = 0); // a fault goes to told()
    int newStroke();

    void showChoice(RunChoice choice); // version and size that views show

    void startNew(Pattern pattern);                       // unnamed, unmodified
    std::optional<QString> load(const QString& path);     // a sentence where it failed
    std::optional<QString> save(const QString& path);     // the same; on success the path is the document's
    QString path() const { return m_path; }
    QString displayName() const;
    bool modified() const { return !m_undo.isClean(); }

Q_SIGNALS:
    void changed(const shawlwright::Change& change, const shawlwright::Reworked& reworked);
    void choiceChanged();
    void told(const QString& sentence); // for the status bar: why nothing was changed
    void pathChanged();

private:
    friend class EditCommand;
    Edit applyNow(const Edit& edit); // the edit that takes it back; tells everybody once

    Pattern m_pattern;
    std::unique_ptr<Derived> m_derived;
    QUndoStack m_undo;
    QString m_path;
    int m_lastStroke = 0;
};

} // namespace shawlwright::app
