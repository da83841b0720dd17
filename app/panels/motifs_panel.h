// The motifs of the pattern as a tray: a picture and the name of each; the chosen one is stamped.
#pragma once

#include "app/document/pattern_document.h"
#include "app/painting/theme.h"

#include <QWidget>

#include <optional>

class QLabel;
class QListWidget;

namespace shawlwright::app {

class MotifsPanel : public QWidget {
    Q_OBJECT
public:
    explicit MotifsPanel(PatternDocument& document, QWidget* parent = nullptr);

    void refresh();
    void choose(std::size_t motif);
    std::optional<std::size_t> chosen() const; // index; none: there is none
    QListWidget* list() const { return m_list; }

Q_SIGNALS:
    void motifChosen(); // another one, or the same has changed
    void motifTaken();  // to be stamped, by a click or Return
    void contextWanted(const QPoint& globalPosition);

protected:
    void changeEvent(QEvent* event) override;

private:
    void draw();

    PatternDocument& m_document;
    QListWidget* m_list;
    QLabel* m_hint;
    std::vector<Motif> m_shown;
};

// The chart of a motif, as large as fits; of one too large to be read then the lower right corner, fading
// where it goes on. Drawn from the chart's own shapes.
QPixmap motifPicture(const Motif& motif, const Catalogue& catalogue, const Theme& theme, QSize size,
                     double ratio);

} // namespace shawlwright::app
