#include "app/panels/stitches_panel.h"

#include "app/document/text.h"
#include "app/panels/form_dialog.h"
#include "app/panels/undo_keys.h"
#include "core/wording/style.h"

#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

#include <algorithm>

namespace shawlwright::app {

namespace {

constexpr std::size_t mostRecent = 4;
constexpr int favouritePlaces = 9;

constexpr Family familyOrder[] = {Family::Basic,    Family::YarnOver, Family::Decrease, Family::Increase,
                                  Family::Slip,     Family::Nupp,     Family::Brioche,  Family::Cable,
                                  Family::ShortRow, Family::Wrap,     Family::Edge};

} // namespace

QString familyName(Family family)
{
    switch (family) {
    case Family::Basic:
        return StitchesPanel::tr("Knit and purl");
    case Family::YarnOver:
        return StitchesPanel::tr("Yarn overs");
    case Family::Increase:
        return StitchesPanel::tr("Increases");
    case Family::Decrease:
        return StitchesPanel::tr("Decreases");
    case Family::Slip:
        return StitchesPanel::tr("Slipped stitches");
    case Family::Brioche:
        return StitchesPanel::tr("Brioche");
    case Family::Nupp:
        return StitchesPanel::tr("Nupps and bobbles");
    case Family::Cable:
        return StitchesPanel::tr("Cables");
    case Family::Wrap:
        return StitchesPanel::tr("Wrapped stitches");
    case Family::ShortRow:
        return StitchesPanel::tr("Short rows");
    case Family::Edge:
        return StitchesPanel::tr("Casting on, binding off");
    }
    return {};
}

QString leanInWords(Lean lean)
{
    switch (lean) {
    case Lean::None:
        return {};
    case Lean::Right:
        return StitchesPanel::tr("leans right");
    case Lean::Left:
        return StitchesPanel::tr("leans left");
    case Lean::Centred:
        return StitchesPanel::tr("centred");
    }
    return {};
}

QString workedInWords(const Stitch& stitch)
{
    if (stitch.id == noStitch)
        return StitchesPanel::tr("no stitch here");
    QString words = StitchesPanel::tr("takes up %1, leaves %2").arg(stitch.takesUp).arg(stitch.leaves);
    if (const QString lean = leanInWords(stitch.lean); !lean.isEmpty())
        words += QStringLiteral(", ") + lean;
    return words;
}

QStringList StitchesPanel::firstFavourites()
{
    return {QStringLiteral("k"),     QStringLiteral("p"),    QStringLiteral("yo"),
            QStringLiteral("k2tog"), QStringLiteral("ssk"),  QStringLiteral("k3tog"),
            QStringLiteral("sk2p"),  QStringLiteral("s2kp"), QStringLiteral("kfb")};
}

StitchesPanel::StitchesPanel(PatternDocument& document, QWidget* parent)
    : QWidget(parent), m_document(document), m_find(new QLineEdit(this)), m_scroll(new QScrollArea(this)),
      m_grid(new StitchGrid), m_about(new QScrollArea(this)), m_name(new QLabel), m_does(softLabel({}, nullptr)),
      m_favourites(firstFavourites())
{
    setObjectName(QStringLiteral("panel"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    m_find->setObjectName(QStringLiteral("find"));
    m_find->setPlaceholderText(tr("Find: name or abbreviation"));
    m_find->setClearButtonEnabled(true);
    m_find->setAccessibleName(tr("Find a stitch by name or abbreviation"));
    m_find->installEventFilter(this);
    auto* findLine = new QHBoxLayout;
    findLine->setContentsMargins(12, 0, 12, 2);
    findLine->addWidget(m_find);
    layout->addLayout(findLine);

    m_scroll->setObjectName(QStringLiteral("panel"));
    m_scroll->setWidget(m_grid);
    m_scroll->setWidgetResizable(true);
    m_scroll->setFrameShape(QFrame::NoFrame);
    m_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_scroll->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    m_scroll->setFocusPolicy(Qt::NoFocus);
    layout->addWidget(m_scroll, 1);

    m_about->setObjectName(QStringLiteral("panel"));
    m_about->setFrameShape(QFrame::NoFrame);
    m_about->setWidgetResizable(true);
    m_about->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_about->setFocusPolicy(Qt::NoFocus);
    m_about->setWidget(new QWidget);
    auto* below = new QVBoxLayout(m_about->widget());
    below->setContentsMargins(12, 6, 12, 10);
    below->setSpacing(2);
    m_name->setObjectName(QStringLiteral("strong"));
    m_name->setWordWrap(true);
    below->addWidget(m_name);
    m_does->setTextInteractionFlags(Qt::TextSelectableByMouse);
    below->addWidget(m_does);
    auto* line = new QFrame(this);
    line->setFrameShape(QFrame::HLine);
    line->setObjectName(QStringLiteral("hairline"));
    layout->addWidget(line);
    layout->addWidget(m_about);

    connect(m_find, &QLineEdit::textChanged, this, &StitchesPanel::fill);
    connect(m_grid, &StitchGrid::chosenByUser, this, [this](StitchId stitch) {
        describe();
        Q_EMIT stitchChosen(stitch);
    });
    connect(m_grid, &StitchGrid::contextWanted, this, &StitchesPanel::contextWanted);
    connect(m_grid, &StitchGrid::revealWanted, this, [this](const QRect& tile) {
        m_scroll->ensureVisible(tile.center().x(), tile.center().y(), 0, tile.height() / 2 + 4);
    });
    fill();
    describe();
}

bool StitchesPanel::eventFilter(QObject* watched, QEvent* event)
{
    if (watched == m_find && leavesUndo(*m_find, *event))
        return true;
    if (watched == m_find && event->type() == QEvent::KeyPress) {
        const auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
            // The first one found is taken, and the keys go back to the chart.
            const auto found = groups();
            for (const StitchGroup& group : found)
                if (!group.stitches.empty()) {
                    m_grid->setChosen(group.stitches.front());
                    describe();
                    Q_EMIT stitchChosen(group.stitches.front());
                    m_find->clear();
                    Q_EMIT toChartWanted();
                    break;
                }
            return true;
        }
        if (key->key() == Qt::Key_Escape) {
            m_find->clear();
            Q_EMIT toChartWanted();
            return true;
        }
        if (key->key() == Qt::Key_Down) {
            m_grid->setFocus(Qt::TabFocusReason);
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

void StitchesPanel::fitDescription()
{
    // Where there is room for a few lines only the stitches have it; their tips say what they are.
    m_about->setVisible(height() >= 16 * fontMetrics().height());
    const QLayout* words = m_about->widget()->layout();
    constexpr int border = 2; // of the scroll area, above and below
    const int wanted = words->totalHeightForWidth(std::max(80, width() - border)) + border, most = height() * 2 / 5;
    // What has no room is scrolled to, by whole lines: none is seen in part.
    const int above = words->contentsMargins().top() + words->spacing() + border;
    const int line = std::max(1, m_does->fontMetrics().lineSpacing());
    m_about->setFixedHeight(wanted <= most ? wanted : std::max(24, above + (most - above) / line * line));
}

void StitchesPanel::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    fitDescription();
}

void StitchesPanel::changeEvent(QEvent* event)
{
    QWidget::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange)
        QMetaObject::invokeMethod(this, &StitchesPanel::fitDescription, Qt::QueuedConnection); // once its words have it too
}

void StitchesPanel::refresh()
{
    fill();
    describe();
}

void StitchesPanel::setSide(Side side)
{
    if (side == m_side)
        return;
    m_side = side;
    fill();
}

void StitchesPanel::setChosen(StitchId stitch)
{
    m_grid->setChosen(stitch);
    std::erase(m_chosenOnes, stitch);
    m_chosenOnes.push_back(stitch);
    if (m_chosenOnes.size() > mostRecent)
        m_chosenOnes.erase(m_chosenOnes.begin());
    describe();
}

StitchId StitchesPanel::chosenBefore() const
{
    const Catalogue& catalogue = m_document.catalogue();
    for (auto one = m_chosenOnes.rbegin(); one != m_chosenOnes.rend(); ++one)
        if (*one != m_grid->chosen() && catalogue.known(*one))
            return *one;
    return catalogue.require("k");
}

void StitchesPanel::usedLately(StitchId stitch)
{
    if (stitch == noStitch || m_favourites.contains(toQt(m_document.catalogue().stitch(stitch).key)))
        return;
    if (std::find(m_recent.begin(), m_recent.end(), stitch) != m_recent.end())
        return; // tiles don't jump about while they are in use
    m_recent.insert(m_recent.begin(), stitch);
    if (m_recent.size() > mostRecent)
        m_recent.pop_back();
    fill();
}

void StitchesPanel::find()
{
    m_find->setFocus(Qt::ShortcutFocusReason);
    m_find->selectAll();
}

void StitchesPanel::setFavourites(const QStringList& keys)
{
    m_favourites = keys.mid(0, favouritePlaces);
    fill();
}

void StitchesPanel::setFavourite(int place, StitchId stitch)
{
    if (place < 1 || place > favouritePlaces)
        return;
    const QString key = toQt(m_document.catalogue().stitch(stitch).key);
    while (m_favourites.size() < favouritePlaces)
        m_favourites << QString();
    const qsizetype was = m_favourites.indexOf(key);
    if (was >= 0)
        m_favourites[was] = m_favourites[place - 1]; // the two change places
    m_favourites[place - 1] = key;
    std::erase(m_recent, stitch);
    fill();
    Q_EMIT favouritesChanged();
}

std::optional<StitchId> StitchesPanel::favourite(int place) const
{
    if (place < 1 || place > m_favourites.size())
        return {};
    return m_document.catalogue().find(fromQt(m_favourites[place - 1]));
}

bool StitchesPanel::matches(const Stitch& stitch, const QString& words) const
{
    for (const std::string* text :
         {&stitch.name, &stitch.key, &stitch.onRS, &stitch.onWS, &stitch.onRSUK, &stitch.onWSUK})
        if (toQt(*text).contains(words, Qt::CaseInsensitive))
            return true;
    return false;
}

std::vector<StitchGroup> StitchesPanel::groups() const
{
    const Catalogue& catalogue = m_document.catalogue();
    std::vector<StitchGroup> groups;
    const QString words = m_find->text().trimmed();
    std::vector<const Stitch*> all;
    for (const Stitch& stitch : catalogue.builtIn())
        all.push_back(&stitch);
    std::vector<const Stitch*> own;
    for (const Stitch& stitch : catalogue.own())
        if (stitch.id != noStitch)
            own.push_back(&stitch);

    if (!words.isEmpty()) {
        // What is called exactly so first, then what begins so, then the rest.
        all.insert(all.end(), own.begin(), own.end());
        const auto rank = [&](const Stitch& stitch) {
            int best = 3;
            for (const std::string* text :
                 {&stitch.onRS, &stitch.onWS, &stitch.onRSUK, &stitch.onWSUK, &stitch.key}) {
                const QString name = toQt(*text);
                if (name.compare(words, Qt::CaseInsensitive) == 0)
                    best = std::min(best, text == &stitch.onRS ? 0 : 1);
                else if (name.startsWith(words, Qt::CaseInsensitive))
                    best = std::min(best, 2);
            }
            return best;
        };
        StitchGroup found;
        std::erase_if(all, [&](const Stitch* stitch) { return !matches(*stitch, words); });
        std::stable_sort(all.begin(), all.end(),
                         [&](const Stitch* a, const Stitch* b) { return rank(*a) < rank(*b); });
        for (const Stitch* stitch : all)
            found.stitches.push_back(stitch->id);
        found.heading = found.stitches.empty() ? tr("Nothing is called so") : tr("Found");
        if (found.stitches.empty())
            found.stitches.push_back(noStitch);
        groups.push_back(std::move(found));
        return groups;
    }

    StitchGroup favourites{{}, {}, true};
    for (int place = 1; place <= favouritePlaces; ++place)
        favourites.stitches.push_back(favourite(place).value_or(noStitch));
    favourites.stitches.push_back(noStitch);
    groups.push_back(std::move(favourites));
    StitchGroup recent{tr("Chosen lately"), {}, false};
    for (const StitchId stitch : m_recent)
        if (catalogue.known(stitch))
            recent.stitches.push_back(stitch);
    groups.push_back(std::move(recent));
    StitchGroup ownGroup{tr("Your own"), {}, false};
    for (const Stitch* stitch : own)
        ownGroup.stitches.push_back(stitch->id);
    groups.push_back(std::move(ownGroup));
    for (const Family family : familyOrder) {
        StitchGroup group{familyName(family), {}, false};
        for (const Stitch* stitch : all)
            if (stitch->family == family && stitch->id != noStitch)
                group.stitches.push_back(stitch->id);
        groups.push_back(std::move(group));
    }
    return groups;
}

void StitchesPanel::fill()
{
    m_grid->show(m_document.catalogue(), groups(), m_side, styleOf(m_document.pattern().head).words);
}

void StitchesPanel::describe()
{
    const Stitch& stitch = m_document.catalogue().stitch(m_grid->chosen());
    if (stitch.id == noStitch) {
        m_name->setText(tr("No stitch"));
        m_does->setText(tr("The fabric has no loop here; a filler that keeps the columns in line."));
        fitDescription();
        return;
    }
    const Words words = styleOf(m_document.pattern().head).words;
    QString name = toQt(stitch.name);
    if (!name.isEmpty())
        name[0] = name[0].toUpper();
    m_name->setText(name);
    const QString onRS = toQt(abbreviation(stitch, Side::RS, words));
    const QString onWS = toQt(abbreviation(stitch, Side::WS, words));
    QString does = onRS == onWS ? onRS : tr("RS %1, WS %2").arg(onRS, onWS);
    does += tr("; %1.").arg(workedInWords(stitch));
    const QString how = toQt(m_side == Side::WS && !stitch.howToWS.empty() ? stitch.howToWS : stitch.howToRS);
    if (!how.isEmpty())
        does += QLatin1Char('\n') + how;
    m_does->setText(does);
    fitDescription();
}

QString StitchesPanel::description() const
{
    return m_name->text() + QLatin1Char('\n') + m_does->text();
}

} // namespace shawlwright::app
