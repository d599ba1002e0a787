// ambit-bench: prints the measured figures; exit 1 if a limit is missed. Run it on a quiet machine, from a
// folder on a real disk. `--plan`: the planner only; `--sop [SECONDS]`: the solver on published problems;
// `--trend`: a line through 10,000 values, and their chart;
// `--archive [RECORDS]`: an archive of an invented fleet (100,000 records if not given); `--link`: a walk
// that is followed; `--card [COUNT [FROM [WIDTH]]]`: an ID-1 card found in invented photos; `--card-weights
// [COUNT]`: what makes a card of four edges, learnt from such photos;
// `--photo`: photos taken in.
#include "bench.hpp"

#include <QGuiApplication>
#include <QTemporaryDir>
#include <cstdlib>
#include <cstring>

int main(int argc, char** argv) {
    using namespace ambit::bench;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    qputenv("QT_QUICK_CONTROLS_STYLE", "Basic");
    if (argc > 1 && std::strcmp(argv[1], "--empty-window") == 0) return emptyWindow(argc, argv);

    if (argc > 1 && std::strcmp(argv[1], "--help") == 0) {
        std::puts(
            "ambit-bench                    touch, start, record, plan, memory\n"
            "ambit-bench --plan             the planner only\n"
            "ambit-bench --sop [SECONDS]    the solver on published problems\n"
            "ambit-bench --trend            a line through 10,000 values, and their chart\n"
            "ambit-bench --archive [COUNT]  an archive of so many records of an invented fleet\n"
            "ambit-bench --link             a walk that is followed, by one and by fifty\n"
            "ambit-bench --card [COUNT [FROM [WIDTH]]]  an ID-1 card found in so many invented photos, from "
            "that seed on\n"
            "ambit-bench --card-weights [COUNT]  what core/measure/likeness weighs, learnt from so many "
            "of them (6500)\n"
            "ambit-bench --photo            photos taken in");
        return 0;
    }
    if (argc > 1 && std::strcmp(argv[1], "--plan") == 0) return plan() ? 0 : 1;
    if (argc > 1 && std::strcmp(argv[1], "--sop") == 0)
        return published(argc > 2 ? std::atof(argv[2]) : 10) ? 0 : 1;

    if (argc > 1 && std::strcmp(argv[1], "--card") == 0)
        return card(argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 1000,
                    argc > 3 ? std::strtoul(argv[3], nullptr, 10) : 0, argc > 4 ? std::atoi(argv[4]) : 4000)
                   ? 0
                   : 1;

    if (argc > 1 && std::strcmp(argv[1], "--card-weights") == 0) {
        cardWeights(argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 6500);
        return 0;
    }
    const QGuiApplication application(argc, argv);
    if (argc > 1 && std::strcmp(argv[1], "--photo") == 0) {
        photo();
        return 0;
    }
    if (argc > 1 && std::strcmp(argv[1], "--trend") == 0) return trend() ? 0 : 1;
    const QTemporaryDir work(QDir::currentPath() + QStringLiteral("/ambit-bench-XXXXXX"));
    if (!work.isValid()) {
        std::fprintf(stderr, "ambit-bench: no folder can be made here\n");
        return 1;
    }
    if (argc > 1 && std::strcmp(argv[1], "--archive") == 0)
        return archive(work.path(), argc > 2 ? std::strtoul(argv[2], nullptr, 10) : 100000) ? 0 : 1;
    if (argc > 1 && std::strcmp(argv[1], "--link") == 0) return link(work.path()) ? 0 : 1;
    const QString programs = QCoreApplication::applicationDirPath();
    bool holds = plan();
    holds = touch(work.path()) && holds;
    holds = record(work.path()) && holds;
    holds = start(programs, work.path()) && holds;
    holds = memory(programs, work.path()) && holds;
    return holds ? 0 : 1;
}
