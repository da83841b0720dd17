// Heights of the items of a list, worked out once: laying words out is most of what a list costs.
//
// Shape:   by what an item says; forgotten when the list's width or font changes.
#pragma once

#include <QFont>
#include <QHash>
#include <QString>

namespace shawlwright::app {

class KeptHeights {
public:
    template <typename WorkOut>
    int of(const QString& item, int width, const QFont& font, WorkOut workOut)
    {
        if (width != m_width || font != m_font || m_heights.size() > most) {
            m_heights.clear();
            m_width = width;
            m_font = font;
        }
        auto known = m_heights.constFind(item);
        if (known == m_heights.constEnd())
            known = m_heights.insert(item, workOut());
        return *known;
    }

private:
    static constexpr qsizetype most = 30000;

    QHash<QString, int> m_heights;
    QFont m_font;
    int m_width = -1;
};

} // namespace shawlwright::app
