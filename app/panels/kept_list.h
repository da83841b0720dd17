// A list model that is brought up to date by difference: what stays keeps its place, so selection and scroll
// stay too.
//
// Shape:   T is comparable by value; a subclass says what is shown of an item.
#pragma once

#include <QAbstractListModel>

#include <algorithm>
#include <vector>

namespace shawlwright::app {

template <typename T>
class KeptList : public QAbstractListModel {
public:
    using QAbstractListModel::QAbstractListModel;

    int rowCount(const QModelIndex& parent = {}) const override
    {
        return parent.isValid() ? 0 : static_cast<int>(m_items.size());
    }
    const T& item(int row) const { return m_items[static_cast<std::size_t>(row)]; }
    const std::vector<T>& items() const { return m_items; }

    void setItems(std::vector<T> fresh)
    {
        std::size_t at = 0;
        while (at < m_items.size() || at < fresh.size()) {
            if (at < m_items.size() && at < fresh.size() && m_items[at] == fresh[at]) {
                ++at;
                continue;
            }
            // How many came before the old item, or went before the new one; far ones count as changed.
            const int came =
                at < m_items.size() ? distance(fresh, at, m_items[at]) : static_cast<int>(fresh.size() - at);
            const int went =
                at < fresh.size() ? distance(m_items, at, fresh[at]) : static_cast<int>(m_items.size() - at);
            if (went > 0 && (came <= 0 || went <= came))
                take(at, went);
            else if (came > 0) {
                put(at, fresh, came);
                at += static_cast<std::size_t>(came);
            } else {
                m_items[at] = fresh[at];
                const QModelIndex index = this->index(static_cast<int>(at));
                Q_EMIT dataChanged(index, index);
                ++at;
            }
        }
    }

private:
    static constexpr std::size_t farthest = 64;

    static int distance(const std::vector<T>& in, std::size_t from, const T& wanted)
    {
        const std::size_t end = std::min(in.size(), from + farthest);
        for (std::size_t i = from; i < end; ++i)
            if (in[i] == wanted)
                return static_cast<int>(i - from);
        return 0;
    }
    void take(std::size_t at, int count)
    {
        beginRemoveRows({}, static_cast<int>(at), static_cast<int>(at) + count - 1);
        const auto first = m_items.begin() + static_cast<std::ptrdiff_t>(at);
        m_items.erase(first, first + count);
        endRemoveRows();
    }
    void put(std::size_t at, const std::vector<T>& from, int count)
    {
        beginInsertRows({}, static_cast<int>(at), static_cast<int>(at) + count - 1);
        const auto first = from.begin() + static_cast<std::ptrdiff_t>(at);
        m_items.insert(m_items.begin() + static_cast<std::ptrdiff_t>(at), first, first + count);
        endInsertRows();
    }

    std::vector<T> m_items;
};

} // namespace shawlwright::app
