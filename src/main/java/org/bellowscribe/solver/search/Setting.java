package org.bellowscribe.solver.search;

/**
 * What does not change during a search.
 *
 * @param problem the problem
 * @param graph its flow
 * @param heads which loop heads its events remember
 */
record Setting(Problem problem, Graph graph, Heads heads) {

    static Setting of(Problem problem) {
        Graph graph = new Graph(problem);
        return new Setting(problem, graph, new Heads(problem, graph));
    }
}
