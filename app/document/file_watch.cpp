#include "app/document/file_watch.h"

#include <QFileInfo>

namespace shawlwright::app {

std::optional<OnDisk> FileWatch::look()
{
    const QString path = m_document.path();
    if (path.isEmpty())
        return std::nullopt;
    const QFileInfo info(path);
    const Outside now{path, info.exists(), info.exists() ? info.size() : 0,
                      info.exists() ? info.lastModified() : QDateTime()};
    const bool still = now == m_seen;
    m_seen = now;
    if (now == m_known || !still)
        return std::nullopt;
    m_known = now;
    const OnDisk state = m_document.onDisk();
    return state == OnDisk::Same ? std::nullopt : std::optional(state);
}

} // namespace shawlwright::app
