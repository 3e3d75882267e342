package drumline.planner.api;

import drumline.planner.model.PlanningProblem;
import java.util.function.UnaryOperator;

/**
 * A rule that can be left out.
 *
 * @param words the rule in plain words
 * @param without the problem without it
 */
record Rule(String words, UnaryOperator<PlanningProblem> without) {}
