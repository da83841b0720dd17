// The open pattern: the only thing that changes it, its undo stack, what follows from it, and its file.
//
// Shape:   one edit gives one changed(); a load gives a Change that says all. Views keep no copy.
// Errors:  load and save give the fault as text with place and what to do; the file and the pattern stay as
// they were.
#pragma once

#include "core/derived/derived.h"
#include "core/edits/edit.h"

#include <QByteArray>
#include <QObject>
#include <QString>
#include <QUndoStack>

#include <memory>
#include <optional>

namespace shawlwright::app {

enum class Going { First, Again, Back }; // an edit made now; one of the undo stack redone; one undone

enum class OnDisk { Same, Changed, Gone }; // the file, compared with what was last read or written here

class PatternDocument : public QObject {
    Q_OBJECT
public:
    explicit PatternDocument(QObject* parent = nullptr);
    ~PatternDocument() override;

    const Pattern& pattern() const { return m_pattern; }
    Derived& derived() { return *m_derived; }
    const Derived& derived() const { return *m_derived; }
    const Catalogue& catalogue() const { return m_derived->catalogue(); }
    QUndoStack& undoStack() { return m_undo; }

    // Does an edit as one undo step. stroke > 0: merges with the step before if that has the same number and
    // the file was not written in between. An empty edit does nothing. False, and told, where the pattern is
    // open to be read only.
    bool perform(const Edit& edit, int stroke = 0);
    bool performOrTell(const Result<Edit>& edit, int stroke = 0); // a fault goes to told(); false then
    void tell(const QString& sentence) { Q_EMIT told(sentence); }
    int newStroke();
    void takeBackStroke(int stroke); // the whole stroke, if it is the last step; it cannot be redone

    void showChoice(RunChoice choice); // version and size that views show

    // Unnamed, unmodified; shown by its title, or by `name`.
    void startNew(Pattern pattern, const QString& name = {});
    std::optional<QString> load(const QString& path); // a sentence where it failed
    // The same, without the file: to be saved under another name.
    std::optional<QString> loadCopy(const QString& path, const QString& name);
    void setReadOnly(bool readOnly) { m_readOnly = readOnly; } // until another one is loaded or it is saved
    bool readOnly() const { return m_readOnly; }
    std::optional<QString> save(const QString& path); // the same; on success the path is the document's
    QByteArray bytes() const;                         // what save() writes
    OnDisk onDisk() const;                            // Same where there is no file yet
    void keepMine(); // what is on the disk now is known, and not what is wanted: modified
    QString path() const { return m_path; }
    QString givenName() const;   // the file's name without its ending, or what it was opened as; may be empty
    QString displayName() const; // the file's name without its ending; of an unnamed one its title
    bool modified() const { return !m_undo.isClean(); }
    int changes() const { return m_changes; } // so far, of any kind: the same number, the same pattern

Q_SIGNALS:
    void changed(const shawlwright::Change& change, const shawlwright::Reworked& reworked);
    // After changed(), where the edit was undone or redone: views go to where it was. `before` takes it back, and so
    // holds what stood there.
    void revisited(const shawlwright::Change& change, const shawlwright::Edit& before, shawlwright::app::Going going);
    void aboutToPerform(int step); // of the undo stack; what goes on with the stroke of the last step gives no new one
    void replaced(); // after changed(): another pattern is open now, or the same one read anew
    void choiceChanged();
    void told(const QString& sentence); // for the status bar: why nothing was changed
    void pathChanged();
    void modifiedChanged();

private:
    friend class EditCommand;
    Edit applyNow(const Edit& edit, Going going); // the edit that takes it back; tells everybody once
    void replaceAll(Pattern pattern);

    Pattern m_pattern;
    std::unique_ptr<Derived> m_derived;
    QUndoStack m_undo;
    QString m_path;
    QString m_name;      // where there is no path
    QByteArray m_digest; // of the file as last read or written
    bool m_readOnly = false;
    int m_lastStroke = 0;
    int m_changes = 0;
};

} // namespace shawlwright::app
