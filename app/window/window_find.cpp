// Finding a place in the shawl.
#include "app/document/text.h"
#include "app/panels/find_bar.h"
#include "app/window/main_window.h"

#include <QLineEdit>

#include <algorithm>

namespace shawlwright::app {

namespace {

// Where a hit lies in knitting order.
std::tuple<int, int, int> orderOf(const Pattern& pattern, SectionId section, int row, int column)
{
    const int at = sectionIndex(pattern, section);
    const bool rs = at < 0 || row < 0 || row >= static_cast<int>(pattern.sections[static_cast<std::size_t>(at)].rows.size()) ||
                    pattern.sections[static_cast<std::size_t>(at)].rows[static_cast<std::size_t>(row)]->side == Side::RS;
    return {at, row, rs ? column : -column};
}

} // namespace

void MainWindow::connectFinding()
{
    on(ActionId::FindPlace, [this] { m_find->open(); });
    connect(m_find, &FindBar::typed, this, [this] {
        findPlaces();
        goToPlace(m_foundAt);
    });
    connect(m_find, &FindBar::nextWanted, this, [this] { stepToPlace(1); });
    connect(m_find, &FindBar::previousWanted, this, [this] { stepToPlace(-1); });
    connect(m_find, &FindBar::left, this, [this] {
        m_find->hide();
        m_canvas->light(std::nullopt);
        m_canvas->setFocus();
    });
    connect(&m_document, &PatternDocument::changed, this, [this] { m_foundStale = true; });
}

// The first place that is shown is the one at the cursor or next after it.
void MainWindow::findPlaces()
{
    m_foundStale = false;
    m_found = searched(m_document.pattern(), m_document.derived(), fromQt(m_find->field().text()));
    const Pattern& pattern = m_document.pattern();
    const At cursor = m_canvas->cursor();
    const auto here = orderOf(pattern, m_canvas->section(), cursor.row, cursor.column);
    const auto next = std::find_if(m_found.begin(), m_found.end(), [&](const SearchHit& hit) {
        return orderOf(pattern, hit.section, hit.row, hit.column ? hit.column : cursor.column) >= here;
    });
    m_foundAt = m_found.empty() ? -1 : next == m_found.end() ? 0 : static_cast<int>(next - m_found.begin());
    m_find->setPlace(m_foundAt + 1, static_cast<int>(m_found.size()));
}

void MainWindow::stepToPlace(int by)
{
    if (m_foundStale)
        findPlaces();
    else if (!m_found.empty()) {
        const int count = static_cast<int>(m_found.size());
        m_foundAt = (m_foundAt + by + count) % count;
    }
    goToPlace(m_foundAt);
}

void MainWindow::goToPlace(int at)
{
    m_find->setPlace(at + 1, static_cast<int>(m_found.size()));
    if (at < 0 || at >= static_cast<int>(m_found.size()))
        return;
    const SearchHit& hit = m_found[static_cast<std::size_t>(at)];
    showSection(hit.section);
    if (hit.row >= 0) {
        const At cell{hit.row, hit.column ? hit.column : m_canvas->cursor().column};
        m_canvas->setCursor(cell);
        m_canvas->showCell(cell.row, cell.column);
        const int last = shownSection() ? shownSection()->frame.columns : cell.column;
        m_canvas->light(Area{hit.row, hit.row, hit.column ? hit.column : 1, hit.column ? hit.column : last});
    }
    later();
}

} // namespace shawlwright::app
