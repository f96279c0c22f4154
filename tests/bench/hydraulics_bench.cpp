// Time and memory of the solver on two-pipe trees of 100 to 100,000 terminals, against a plain textbook
// iteration and one pass over memory, all in one run: ratios travel between machines, times do not.

#include <malloc.h>

#include <Eigen/SparseCholesky>
#include <Eigen/SparseCore>
#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <new>
#include <numeric>
#include <string>
#include <vector>

#include "core/hydraulics/network_builder.h"
#include "core/hydraulics/solve.h"
#include "tests/bench/two_pipe_tree.h"

namespace {

using namespace ww::hydraulics;

constexpr std::array kSizes{100, 1000, 10000, 100000};

/// Heap held above the start and its peak, as the allocator counts it.
std::size_t g_held = 0;
std::size_t g_peak = 0;

}  // namespace

void* operator new(std::size_t size) {
    void* place = std::malloc(size == 0 ? 1 : size);
    if (place == nullptr) {
        throw std::bad_alloc();
    }
    g_held += malloc_usable_size(place);
    g_peak = std::max(g_peak, g_held);
    return place;
}
void operator delete(void* place) noexcept {
    g_held -= place == nullptr ? 0 : malloc_usable_size(place);
    std::free(place);
}
void operator delete(void* place, std::size_t) noexcept {
    operator delete(place);
}

namespace {

/// Keeps a result from being optimised away.
volatile double g_sink = 0;
void keep(const Solution& solution) {
    g_sink = solution.flow({0}).si();
}
void keep(double number) {
    g_sink = number;
}

/// The processor's time of this thread: others on the machine do not count.
double now_s() {
    std::timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) + 1e-9 * static_cast<double>(time.tv_nsec);
}

/// Seconds of the work in the fastest of several batches. A batch lasts 2 ms or more: asking for the time
/// takes microseconds, as long as the smallest work.
template <class Work>
double fastest(Work&& work) {
    double best_s = INFINITY;
    double total_s = 0;
    int batch = 1;
    for (int i = 0; i < 400 && (i < 5 || total_s < 0.4); ++i) {
        const double start_s = now_s();
        for (int j = 0; j < batch; ++j) {
            work();
        }
        const double took_s = now_s() - start_s;
        best_s = std::min(best_s, took_s / batch);
        total_s += took_s;
        batch = took_s < 2e-3 ? 2 * batch : batch;
    }
    return best_s;
}

/// The yardstick: E. Todini and S. Pilati's global gradient iteration (1988) on heads and flows as a textbook
/// has it: the matrix built from triplets, analysed and factored afresh in every step.
class Textbook {
  public:
    explicit Textbook(const Network& network) : m_nodes(static_cast<int>(network.nodeCount())) {
        for (std::uint32_t i = 1; i < network.linkCount(); ++i) {
            const auto law = std::get<detail::SquareLaw>(network.element({i}).law());
            m_links.push_back({static_cast<int>(network.from({i}).value),
                               static_cast<int>(network.to({i}).value), law.resistance});
        }
        m_pump = network.element({0});
    }

    /// Flows of all links but the pump, which is first in `flows`; the number of steps.
    int solve(std::vector<double>& flows) const {
        flows.assign(m_links.size() + 1, 1e-4);
        for (int step = 1; step <= 50; ++step) {
            const double change = oneStep(flows);
            if (change < 1e-10) {
                return step;
            }
        }
        return 50;
    }

  private:
    struct Link {
        int from;
        int to;
        double resistance;
    };

    double oneStep(std::vector<double>& flows) const {
        std::vector<Eigen::Triplet<double>> entries;
        entries.reserve(4 * m_links.size() + 4);
        Eigen::VectorXd right = Eigen::VectorXd::Zero(m_nodes - 1);
        std::vector<double> conductances(flows.size());
        std::vector<double> sources(flows.size());
        const auto add = [&](std::size_t i, int from, int to, double drop, double slope) {
            conductances[i] = 1 / slope;
            sources[i] = flows[i] - drop / slope;
            if (from > 0) {
                entries.emplace_back(from - 1, from - 1, conductances[i]);
                right(from - 1) -= sources[i];
            }
            if (to > 0) {
                entries.emplace_back(to - 1, to - 1, conductances[i]);
                right(to - 1) += sources[i];
            }
            if (from > 0 && to > 0) {
                entries.emplace_back(from - 1, to - 1, -conductances[i]);
                entries.emplace_back(to - 1, from - 1, -conductances[i]);
            }
        };
        const auto flow = VolumeFlow::si(flows[0]);
        add(0, 0, 1, m_pump->drop(flow).si(), m_pump->slope(flow).si());
        for (std::size_t i = 0; i < m_links.size(); ++i) {
            const double size = m_links[i].resistance * std::abs(flows[i + 1]);
            add(i + 1, m_links[i].from, m_links[i].to, size * flows[i + 1], 2 * size);
        }
        Eigen::SparseMatrix<double> matrix(m_nodes - 1, m_nodes - 1);
        matrix.setFromTriplets(entries.begin(), entries.end());
        Eigen::SimplicialLDLT<Eigen::SparseMatrix<double>> factor(matrix);
        const Eigen::VectorXd heads = factor.solve(right);
        const auto head = [&](int node) { return node == 0 ? 0.0 : heads(node - 1); };
        double moved = 0;
        double sum = 0;
        for (std::size_t i = 0; i < flows.size(); ++i) {
            const int from = i == 0 ? 0 : m_links[i - 1].from;
            const int to = i == 0 ? 1 : m_links[i - 1].to;
            const double next = sources[i] + conductances[i] * (head(from) - head(to));
            moved += std::abs(next - flows[i]);
            sum += std::abs(next);
            flows[i] = next;
        }
        return moved / sum;
    }

    int m_nodes;
    std::vector<Link> m_links;
    std::optional<Element> m_pump;
};

struct Row {
    double fold_s = 0;
    double newton_s = 0;
    double power_s = 0;
    double warm_s = 0;
    double global_s = 0;
    double textbook_s = 0;
    double memoryPass_s = 0;
    double foldBytes = 0;
    double newtonBytes = 0;
    double globalBytes = 0;
    double networkBytes = 0;
    int foldSteps = 0;
    int newtonSteps = 0;
    int powerSteps = 0;
    int warmSteps = 0;
    int globalSteps = 0;
    int textbookSteps = 0;
    double apart = 0;
};

/// Peak heap of a solve beyond what stood before, the solution included.
std::size_t peakOf(const Network& network, const SolveOptions& options) {
    const std::size_t before = g_held;
    g_peak = g_held;
    const Solution solution = solve(network, options);
    keep(solution);
    return g_peak - before;
}

void measureSquare(int terminals, Row& row) {
    TwoPipeTree tree(terminals, Laws::Square);
    const Network network = tree.build();
    SolveOptions global;
    global.way = SolveWay::Global;
    const Solution folded = solve(network);
    const Solution newton = solve(network, global);
    row.foldSteps = folded.summary().iterations;
    row.globalSteps = newton.summary().iterations;
    row.fold_s = fastest([&] { keep(solve(network)); });
    row.global_s = fastest([&] { keep(solve(network, global)); });
    row.foldBytes = static_cast<double>(peakOf(network, {}));
    row.globalBytes = static_cast<double>(peakOf(network, global));
    row.networkBytes = static_cast<double>(network.memory().laws + network.memory().plan);

    const Textbook textbook(network);
    std::vector<double> flows;
    row.textbook_s = fastest([&] { row.textbookSteps = textbook.solve(flows); });
    for (std::uint32_t i = 0; i < network.linkCount(); ++i) {
        const double pump = folded.flow({0}).si();
        row.apart = std::max({row.apart, std::abs(folded.flow({i}).si() - newton.flow({i}).si()) / pump,
                              std::abs(folded.flow({i}).si() - flows[i]) / pump});
    }
    // Whole numbers: their sum is not held up by the order of rounding.
    std::vector<std::uint64_t> same(static_cast<std::size_t>(row.networkBytes + row.foldBytes) / 8, 1);
    row.memoryPass_s = fastest(
        [&] { keep(static_cast<double>(std::accumulate(same.begin(), same.end(), std::uint64_t{0}))); });
}

void measureLinkByLink(int terminals, Row& row) {
    TwoPipeTree tree(terminals, Laws::Flaps);
    const Network network = tree.build();
    const Solution first = solve(network);
    row.newtonSteps = first.summary().iterations;
    row.newton_s = fastest([&] { keep(solve(network)); });
    row.newtonBytes = static_cast<double>(peakOf(network, {}));
    const LinkChange change{tree.someCircuit(), elementOf(Laws::Flaps, 1, 9e4)};
    const Network moved = *network.with({&change, 1}).network;
    SolveOptions warm;
    warm.start = &first;
    row.warmSteps = solve(moved, warm).summary().iterations;
    row.warm_s = fastest([&] { keep(solve(moved, warm)); });
    const Network powers = TwoPipeTree(terminals, Laws::Exponent).build();
    row.powerSteps = solve(powers).summary().iterations;
    row.power_s = fastest([&] { keep(solve(powers)); });
}

/// Slope of ln(time) over ln(size) by least squares.
double growth(const std::vector<Row>& rows, double Row::*time) {
    double meanX = 0;
    double meanY = 0;
    const auto count = static_cast<double>(rows.size());
    for (std::size_t i = 0; i < rows.size(); ++i) {
        meanX += std::log(kSizes[i]) / count;
        meanY += std::log(rows[i].*time) / count;
    }
    double above = 0;
    double below = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const double x = std::log(kSizes[i]) - meanX;
        above += x * (std::log(rows[i].*time) - meanY);
        below += x * x;
    }
    return above / below;
}

void printTable(const std::vector<Row>& rows) {
    std::printf("\n%-44s", "terminals");
    for (const int size : kSizes) {
        std::printf("%12d", size);
    }
    std::printf("%10s\n", "growth");
    const auto nanoseconds = [&](const char* what, double Row::*time, int Row::*steps) {
        std::printf("%-44s", what);
        for (std::size_t i = 0; i < rows.size(); ++i) {
            std::printf("%12.1f", 1e9 * rows[i].*time / kSizes[i]);
        }
        std::printf("%10.3f", growth(rows, time));
        if (steps != nullptr) {
            std::printf("  (%d steps at the largest)", rows.back().*steps);
        }
        std::printf("\n");
    };
    const auto bytes = [&](const char* what, double Row::*size) {
        std::printf("%-44s", what);
        for (std::size_t i = 0; i < rows.size(); ++i) {
            std::printf("%12.1f", rows[i].*size / kSizes[i]);
        }
        std::printf("\n");
    };
    const auto ratio = [&](const char* what, double Row::*above, double Row::*below) {
        std::printf("%-44s", what);
        for (const Row& row : rows) {
            std::printf("%12.1f", row.*above / row.*below);
        }
        std::printf("\n");
    };
    nanoseconds("folded, square laws, ns a terminal", &Row::fold_s, &Row::foldSteps);
    nanoseconds("folded link by link (flaps), ns a terminal", &Row::newton_s, &Row::newtonSteps);
    nanoseconds("  again after one valve moved", &Row::warm_s, &Row::warmSteps);
    nanoseconds("folded link by link (exponent 1.9)", &Row::power_s, &Row::powerSteps);
    nanoseconds("global, square laws, ns a terminal", &Row::global_s, &Row::globalSteps);
    nanoseconds("textbook, square laws, ns a terminal", &Row::textbook_s, &Row::textbookSteps);
    nanoseconds("one pass over the same memory", &Row::memoryPass_s, nullptr);
    ratio("textbook over folded, square laws", &Row::textbook_s, &Row::fold_s);
    ratio("textbook over folded link by link (flaps)", &Row::textbook_s, &Row::newton_s);
    ratio("textbook over global", &Row::textbook_s, &Row::global_s);
    ratio("folded over one pass of memory", &Row::fold_s, &Row::memoryPass_s);
    bytes("network and its plan, bytes a terminal", &Row::networkBytes);
    bytes("folded beyond it, with solution, square laws", &Row::foldBytes);
    bytes("folded beyond it, with solution, link by link", &Row::newtonBytes);
    bytes("global beyond it, with solution", &Row::globalBytes);
    double apart = 0;
    for (const Row& row : rows) {
        apart = std::max(apart, row.apart);
    }
    std::printf("largest difference between the three ways: %.1e of the pump's flow\n\n", apart);
}

}  // namespace

int main() {
    std::vector<Row> rows;
    for (const int terminals : kSizes) {
        rows.emplace_back();
        measureSquare(terminals, rows.back());
        measureLinkByLink(terminals, rows.back());
    }
    printTable(rows);
    return 0;
}
