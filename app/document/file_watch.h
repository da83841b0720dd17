// Notices that the file of the open pattern is no longer what was last read or written here.
//
// Shape:   look() is called every other second. A file whose size or time is new is left until they stand
// still between two looks, as somebody may be writing it, and then compared by its content; so what this
// window saved itself, or a file only touched, tells nothing. Each new state is told once.
// Why no notification of the system: folders on other computers give none.
#pragma once

#include "app/document/pattern_document.h"

#include <QDateTime>

namespace shawlwright::app {

class FileWatch {
public:
    explicit FileWatch(const PatternDocument& document) : m_document(document) {}

    std::optional<OnDisk> look(); // Changed or Gone, where that is news

private:
    struct Outside {
        QString path;
        bool there = false;
        qint64 size = 0;
        QDateTime written;
        bool operator==(const Outside&) const = default;
    };
    const PatternDocument& m_document;
    Outside m_known; // compared or told
    Outside m_seen;  // at the last look
};

} // namespace shawlwright::app
