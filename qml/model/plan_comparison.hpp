// What the walk costs this way round against the order in which the airframe lists it: worked out beside the
// screen, once for each aircraft and walk.
#pragma once

#include "airframe/airframe.hpp"
#include "walk/plan.hpp"

#include <QObject>
#include <QThreadPool>
#include <QVariant>
#include <QtQml/qqmlregistration.h>
#include <map>
#include <memory>
#include <set>

namespace ambit::view {

class PlanComparison : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("App makes it")
    /// False until both plans are there, and where they can't be made.
    Q_PROPERTY(bool ready READ ready NOTIFY changed)
    /// It is being worked out.
    Q_PROPERTY(bool pending READ pending NOTIFY changed)
    /// {what ("Way walked"), planned ("112 m"), listed ("187 m")}: the way, climbs, changes of settings
    /// (where the machine has any), minutes; "…" for figures that aren't there yet.
    Q_PROPERTY(QVariantList rows READ rows NOTIFY changed)
    /// "No shorter walk exists …" or how far from it this one may be; "" where there is no proof.
    Q_PROPERTY(QString proof READ proof NOTIFY changed)
    /// All of it as sentences, for who listens.
    Q_PROPERTY(QString spoken READ spoken NOTIFY changed)
public:
    using QObject::QObject;
    ~PlanComparison() override;

    /// Shows this walk; nullptr or "": none. Returns at once; `changed` tells when there is something new.
    void show(const std::shared_ptr<const airframe::Airframe>& airframe, const std::string& walk);
    /// The same airframe in another language.
    void sayIn(const std::shared_ptr<const airframe::Airframe>& airframe);
    /// The steps of the walk shown, for whoever begins it; empty if they aren't there yet or are those of
    /// another airframe or walk.
    [[nodiscard]] std::vector<walk::Step> steps(const std::string& airframeSha256,
                                                const std::string& walk) const;

    [[nodiscard]] bool ready() const { return find() != nullptr; }
    [[nodiscard]] bool pending() const { return awaited.contains(shown); }
    [[nodiscard]] QVariantList rows() const;
    [[nodiscard]] QString proof() const;
    [[nodiscard]] QString spoken() const;

signals:
    void changed();

private:
    struct Plans {
        walk::Plan planned;
        walk::Plan listed;
    };
    using Key = std::pair<std::string, std::string>; ///< airframe's hash, walk
    [[nodiscard]] const Plans* find() const;
    void take(const Key& key, std::shared_ptr<const Plans> plans);

    std::shared_ptr<const airframe::Airframe> airframe;
    Key shown;
    std::set<Key> awaited;                             ///< being worked out
    std::map<Key, std::shared_ptr<const Plans>> known; ///< nullptr: can't be made, or not yet
    QThreadPool pool;
};

} // namespace ambit::view
