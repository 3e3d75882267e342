package drumline.planner.cpsat;

/**
 * How hard the solver works.
 *
 * @param workS work in the solver's own seconds, which do not depend on the machine's load
 * @param wallS clock time after which it stops in any case
 * @param workerCount threads
 * @param seed random seed
 */
public record SolverEffort(double workS, double wallS, int workerCount, int seed) {}
