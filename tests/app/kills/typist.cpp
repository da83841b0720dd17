#include "tests/app/kills/typist.h"

#include <QApplication>
#include <QGenericPlugin>
#include <QTest>
#include <QTimer>
#include <QWidget>

#include <cstdio>
#include <fcntl.h>
#include <random>
#include <time.h>
#include <unistd.h>

namespace {

constexpr int columns = 40;
constexpr int millisecondsBetweenEdits = 25;

long numberOf(const char* name)
{
    return qEnvironmentVariableIntValue(name);
}

class Typist : public QObject {
public:
    Typist()
        : m_log(::open(qgetenv("TYPIST_LOG").constData(), O_WRONLY | O_CREAT | O_APPEND, 0600)),
          m_seed(static_cast<std::uint32_t>(numberOf("TYPIST_SEED"))), m_random(m_seed)
    {
        m_timer.setInterval(millisecondsBetweenEdits);
        connect(&m_timer, &QTimer::timeout, this, &Typist::type);
        m_timer.start();
    }

private:
    void note(char what)
    {
        timespec now{};
        ::clock_gettime(CLOCK_MONOTONIC, &now);
        char line[64];
        const int length = std::snprintf(line, sizeof line, "%c %d %lld\n", what, m_edits,
                                         static_cast<long long>(now.tv_sec) * 1000000000LL + now.tv_nsec);
        if (::write(m_log, line, static_cast<std::size_t>(length)) != length)
            std::abort();
    }

    void press(Qt::Key key, Qt::KeyboardModifiers with = {})
    {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : QApplication::activeWindow(), key, with);
    }

    void type()
    {
        if (!QApplication::focusWidget() || QApplication::activeModalWidget())
            return; // not up yet
        m_timer.stop(); // a key that takes long must not be typed into
        note('e');
        press(purls(m_seed, m_edits) ? Qt::Key_2 : Qt::Key_1);
        press(Qt::Key_Space);
        ++m_edits;
        if (m_edits % columns == 0)
            press(Qt::Key_Up);
        note('E');
        const long oneIn = numberOf("TYPIST_SAVE");
        const bool last = m_edits == numberOf("TYPIST_EDITS");
        if (last || (oneIn > 0 && m_random() % static_cast<unsigned>(oneIn) == 0)) {
            note('s');
            press(Qt::Key_S, Qt::ControlModifier);
            note('S');
        }
        if (last)
            press(Qt::Key_Q, Qt::ControlModifier);
        else
            m_timer.start();
    }

    int m_log;
    std::uint32_t m_seed;
    std::mt19937 m_random;
    int m_edits = 0;
    QTimer m_timer;
};

} // namespace

class TypistPlugin : public QGenericPlugin {
    Q_OBJECT
    Q_PLUGIN_METADATA(IID QGenericPluginFactoryInterface_iid FILE "typist.json")
public:
    QObject* create(const QString&, const QString&) override { return new Typist; }
};

#include "typist.moc"
