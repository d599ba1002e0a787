// The lengths of ways against a judge from outside: CGAL's continuous Dijkstra over a constrained
// triangulation of the free ground, which shares nothing with a visibility graph. CGAL is GPL: for this test
// only, never linked to the product.
#include "scenes.hpp"
#include "walk/ways.hpp"

#include <CGAL/Constrained_Delaunay_triangulation_2.h>
#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/Surface_mesh.h>
#include <CGAL/Surface_mesh_shortest_path.h>
#include <CGAL/Triangulation_face_base_with_info_2.h>
#include <QTest>
#include <deque>
#include <map>

using namespace ambit;
using airframe::Outline;
using airframe::Place;

namespace {

using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;

struct FaceInfo {
    int crossed = -1; ///< outlines between it and far away
};
using FaceBase = CGAL::Triangulation_face_base_with_info_2<FaceInfo, Kernel>;
using Faces =
    CGAL::Triangulation_data_structure_2<CGAL::Triangulation_vertex_base_2<Kernel>,
                                         CGAL::Constrained_triangulation_face_base_2<Kernel, FaceBase>>;
// Outlines may touch, and this refuses them if they cross.
using Triangles =
    CGAL::Constrained_Delaunay_triangulation_2<Kernel, Faces,
                                               CGAL::No_constraint_intersection_requiring_constructions_tag>;
using Mesh = CGAL::Surface_mesh<Kernel::Point_3>;
using Paths = CGAL::Surface_mesh_shortest_path<CGAL::Surface_mesh_shortest_path_traits<Kernel, Mesh>>;

class Judge {
public:
    Judge(const std::vector<Outline>& obstacles, const std::vector<Place>& places) {
        constexpr double far = 60;
        fence({{-far, -far}, {far, -far}, {far, far}, {-far, far}});
        for (const Outline& outline : obstacles)
            fence(outline);
        std::vector<Triangles::Vertex_handle> stands;
        stands.reserve(places.size());
        for (const Place place : places)
            stands.push_back(triangles.insert({place.x, place.y}));
        countCrossed();
        buildMesh();
        for (const auto stand : stands)
            vertices.push_back(vertexOf.at({stand->incident_faces(), stand}));
    }

    /// From the first place to each; negative: no way.
    std::vector<double> metres() {
        Paths paths(mesh);
        paths.add_source_point(vertices.front());
        std::vector<double> metres;
        for (const auto vertex : vertices)
            metres.push_back(paths.shortest_distance_to_source_points(vertex).first);
        return metres;
    }

private:
    void fence(const Outline& outline) {
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Place a = outline[i];
            const Place b = outline[(i + 1) % outline.size()];
            triangles.insert_constraint({a.x, a.y}, {b.x, b.y});
        }
    }

    void countCrossed() {
        std::deque<Triangles::Face_handle> queue{triangles.infinite_face()};
        triangles.infinite_face()->info().crossed = 0;
        while (!queue.empty()) { // first what no more outlines part from far away
            const auto face = queue.front();
            queue.pop_front();
            for (int i = 0; i < 3; ++i) {
                const auto next = face->neighbor(i);
                if (next->info().crossed >= 0) continue;
                const bool isFence = triangles.is_constrained({face, i});
                next->info().crossed = face->info().crossed + (isFence ? 1 : 0);
                isFence ? queue.push_back(next) : queue.push_front(next);
            }
        }
    }

    [[nodiscard]] static bool isFree(Triangles::Face_handle face) { return face->info().crossed % 2 == 1; }

    /// Where outlines touch, what is free on either side gets a vertex of its own: there is no way through.
    void buildMesh() {
        for (const auto vertex : triangles.finite_vertex_handles()) {
            auto face = triangles.incident_faces(vertex);
            const auto start = face;
            std::vector<Triangles::Face_handle> round;
            do
                round.push_back(face);
            while (++face != start);
            std::size_t first = 0; // behind a fence, if there is one
            const auto isBehindFence = [&](std::size_t i) {
                const auto before = round[(i + round.size() - 1) % round.size()];
                return triangles.is_constrained({round[i], round[i]->index(before)});
            };
            while (first < round.size() && !isBehindFence(first))
                ++first;
            Mesh::Vertex_index here;
            for (std::size_t i = 0; i < round.size(); ++i) {
                const std::size_t at = (first + i) % round.size();
                if (i == 0 || isBehindFence(at))
                    here = isFree(round[at]) ? mesh.add_vertex({vertex->point().x(), vertex->point().y(), 0})
                                             : Mesh::Vertex_index();
                vertexOf[{round[at], vertex}] = here;
            }
        }
        for (const auto face : triangles.finite_face_handles()) {
            if (!isFree(face)) continue;
            const auto at = [&](int i) { return vertexOf.at({face, face->vertex(i)}); };
            if (mesh.add_face(at(0), at(1), at(2)) == Mesh::null_face())
                throw std::logic_error("no manifold");
        }
    }

    Triangles triangles;
    Mesh mesh;
    std::map<std::pair<Triangles::Face_handle, Triangles::Vertex_handle>, Mesh::Vertex_index> vertexOf;
    std::vector<Mesh::Vertex_index> vertices;
};

/// Outside what is taken, and not at its very edge?
bool isOpen(const std::vector<Outline>& obstacles, Place place) {
    bool inside = false;
    for (const Outline& outline : obstacles) {
        if (metresToEdge(place, outline) < 1e-5) return false;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const Place a = outline[i];
            const Place b = outline[(i + 1) % outline.size()];
            if ((a.y > place.y) != (b.y > place.y) &&
                place.x < (b.x - a.x) * (place.y - a.y) / (b.y - a.y) + a.x)
                inside = !inside;
        }
    }
    return !inside;
}

} // namespace

class TestWaysJudge : public QObject {
    Q_OBJECT

private slots:
    void theJudgeKnowsAWay() {
        const std::vector<Outline> box{{{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}};
        const auto metres = Judge(box, {{-2, 0}, {0, 1.5}}).metres();
        QVERIFY(std::fabs(metres[1] - std::sqrt(2.0) - std::hypot(1, 0.5)) < 1e-12);
        const std::vector<Outline> touching{{{-1, -1}, {0, -1}, {0, 0}, {-1, 0}},
                                            {{0, 0}, {1, 0}, {1, 1}, {0, 1}}};
        QVERIFY(Judge(touching, {{-0.5, 0.5}, {0.5, -0.5}}).metres()[1] > 2.1);
    }

    // On whole metres nearly everything touches or lies on one line.
    void boxesThatTouch() {
        Scenes scenes(77);
        int judgedWays = 0;
        for (int scene = 0; scene < 300; ++scene) {
            std::vector<Outline> boxes;
            boxes.reserve(14);
            for (int i = 0; i < 14; ++i)
                boxes.push_back(scenes.box());
            const walk::Ground ground(boxes);
            std::vector<Place> places;
            while (places.size() < 6) {
                const Place place{std::floor(scenes.number(-8, 8)) + 0.5,
                                  std::floor(scenes.number(-8, 8)) + 0.5};
                if (isOpen(ground.obstacles(), place)) places.push_back(place);
            }
            const auto judged = Judge(ground.obstacles(), places).metres();
            const auto ours = ground.metres(places).front();
            for (std::size_t i = 1; i < places.size(); ++i) {
                QCOMPARE(std::isinf(ours[i]), judged[i] < 0);
                judgedWays += judged[i] >= 0;
                QVERIFY2(
                    judged[i] < 0 || std::fabs(ours[i] - judged[i]) < 1e-9,
                    qPrintable(QString("scene %1: %2, judged %3").arg(scene).arg(ours[i]).arg(judged[i])));
            }
        }
        QVERIFY(judgedWays > 1000);
    }

    void aThousandScenes() {
        Scenes scenes(20261125);
        int bent = 0;
        int none = 0;
        double worst = 0;
        for (int scene = 0; scene < 1000; ++scene) {
            const auto outlines = scenes.outlines();
            const walk::Ground ground(outlines, scene % 4 == 0 ? 0.25 : 0);
            std::vector<Place> places;
            while (places.size() < 4) {
                const Place place = scenes.placeBeside(outlines);
                if (isOpen(ground.obstacles(), place)) places.push_back(place);
            }
            const auto judged = Judge(ground.obstacles(), places).metres();
            const auto ours = ground.metres(places).front();
            for (std::size_t i = 1; i < places.size(); ++i) {
                const auto way = ground.way(places.front(), places[i]);
                QCOMPARE(std::isinf(ours[i]), judged[i] < 0);
                QCOMPARE(way.has_value(), judged[i] >= 0);
                none += !way;
                if (!way) continue;
                bent += way->places.size() > 2;
                worst = std::max({worst, std::fabs(ours[i] - judged[i]), std::fabs(way->metres - judged[i])});
                QVERIFY2(worst < 1e-9, qPrintable(QString("scene %1: off by %2 m").arg(scene).arg(worst)));
            }
        }
        qInfo("%d ways with bends, %d where there is none; off by %.1e m at most", bent, none, worst);
        QVERIFY(bent > 500);
        QVERIFY(none > 50);
    }
};

QTEST_APPLESS_MAIN(TestWaysJudge)
#include "tst_ways_judge.moc"
