// Lists what was saved before, by shawl and time, to open one of them as a copy.
#pragma once

#include "app/document/earlier_saves.h"
#include "app/panels/form_dialog.h"

class QComboBox;
class QListWidget;

namespace shawlwright::app {

class EarlierSavesDialog : public FormDialog {
    Q_OBJECT
public:
    // `open`: the path of the shawl that is shown first, where it has been saved.
    EarlierSavesDialog(std::vector<ShawlSaves> shawls, const QString& open, QWidget* parent);

    QString shawl() const;        // its path
    EarlierSave chosen() const;

protected:
    std::optional<QString> whatWrong() const override;

private:
    void fillSaves();

    std::vector<ShawlSaves> m_shawls;
    QComboBox* m_shawl = nullptr;
    QListWidget* m_saves = nullptr;
};

} // namespace shawlwright::app
