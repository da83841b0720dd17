#include "app/panels/word_style_dialog.h"

#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPlainTextEdit>

namespace shawlwright::app {

template <typename Choice>
void WordStyleDialog::addChoice(QFormLayout* form, const QString& label, const char* name,
                                Choice Style::*which, const QStringList& words)
{
    auto* box = new QComboBox(this);
    box->setObjectName(QString::fromLatin1(name));
    box->addItems(words);
    box->setCurrentIndex(static_cast<int>(m_style.*which));
    connect(box, &QComboBox::currentIndexChanged, this, [this, which](int index) {
        m_style.*which = static_cast<Choice>(index);
        write();
    });
    form->addRow(label, box);
}

WordStyleDialog::WordStyleDialog(const Style& style, bool severalVersions,
                                 std::function<QString(const Style&)> example, QWidget* parent)
    : FormDialog(tr("How words are written"), tr("Keep"), parent), m_style(style),
      m_write(std::move(example)), m_example(new QPlainTextEdit(this))
{
    auto* sides = new QHBoxLayout;
    sides->setSpacing(24);
    body()->addLayout(sides, 1);
    auto* left = new QVBoxLayout;
    sides->addLayout(left);
    QFormLayout* form = addForm(left);
    left->addStretch();
    addChoice(form, tr("&Abbreviations"), "words", &Style::words, {tr("US"), tr("UK")});
    addChoice(form, tr("Ca&pitals"), "capitals", &Style::capitals,
              {tr("k2, k2tog"), tr("K2, k2tog"), tr("K2, K2tog")});
    addChoice(form, tr("&Repeats, rather as"), "repeats", &Style::repeats,
              {tr("[yo, k2tog] 4 times"), tr("*yo, k2tog; rep from *")});
    addChoice(form, tr("Rep or rep&eat"), "repeatWord", &Style::repeatWord, {tr("rep"), tr("repeat")});
    addChoice(
        form, tr("How &often"), "times", &Style::times,
        {tr("4 times, nine more times"), tr("4 times, 9 more times"), tr("four times, nine more times")});
    addChoice(form, tr("Row &labels"), "labels", &Style::labels,
              {tr("Row 5 (RS):"), tr("Row 5 (RS)."), tr("R5 (RS):"), tr("5th row (RS):")});
    addChoice(form, tr("Right or wrong &side"), "sides", &Style::sides,
              {tr("at every row"), tr("where it could be doubted"), tr("only where it must be said")});
    addChoice(form, tr("Stitch &counts"), "counts", &Style::counts,
              {tr("after every row"), tr("where they change"), tr("never")});
    addChoice(form, tr("Counts look l&ike"), "countMarks", &Style::countMarks,
              {tr("(23 sts)"), tr("[23 sts]"), tr("- 23 sts"), tr("23 sts")});
    addChoice(form, tr("Rows that say the sa&me"), "gathering", &Style::gathering,
              {tr("are told once"), tr("are told row by row")});
    addChoice(form, tr("Lon&g runs"), "longRuns", &Style::longRuns,
              {tr("to a place: k to last 4 sts"), tr("counted: k83")});
    addChoice(form, tr("Mar&kers slipped"), "markers", &Style::markers,
              {tr("are said: k4, sm, k16"), tr("only where it must be said")});
    if (severalVersions)
        addChoice(form, tr("&Versions"), "versions", &Style::versions,
                  {tr("each whole after the other"), tr("side by side, section by section")});

    auto* right = new QVBoxLayout;
    right->setSpacing(6);
    sides->addLayout(right, 1);
    auto* heading = new QLabel(tr("So it reads"), this);
    heading->setObjectName(QStringLiteral("strong"));
    heading->setBuddy(m_example);
    right->addWidget(heading);
    m_example->setObjectName(QStringLiteral("example"));
    m_example->setReadOnly(true);
    m_example->setTabChangesFocus(true);
    setTabOrder(findChildren<QComboBox*>().last(), m_example); // made first, to be asked for last
    right->addWidget(m_example, 1);
    write();
    resize(860, 560);
}

void WordStyleDialog::write()
{
    m_example->setPlainText(m_write(m_style));
}

} // namespace shawlwright::app
