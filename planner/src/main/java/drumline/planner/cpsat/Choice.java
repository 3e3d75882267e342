package drumline.planner.cpsat;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import drumline.planner.model.PairRule;
import drumline.planner.model.Precedence;
import drumline.planner.tables.ProblemTables;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Where each task stands and in which mode, with every rule that needs no clock. */
final class Choice {
  final ProblemTables tables;
  final CpModel model;

  /** By task and slide; null where the task cannot be. */
  final @Nullable Literal[][] onSlide;

  /** By task and stage; null where the task cannot be. */
  final @Nullable Literal[][] inStage;

  /** By task and mode; null where the task cannot be done so. */
  final @Nullable Literal[][] inMode;

  Choice(ProblemTables tables, CpModel model) {
    this.tables = tables;
    this.model = model;
    int n = tables.taskCount;
    onSlide = new Literal[n][tables.slideCount()];
    inStage = new Literal[n][tables.stageCount];
    inMode = new Literal[n][];
    for (int i = 0; i < n; i++) {
      addSlides(i);
      addModes(i);
    }
    addSeats();
    for (ProblemTables.Arc arc : tables.arcs) {
      addOrder(arc);
    }
    addPairs();
    if (tables.isCommonSpeed()) {
      CommonSpeed.add(this);
    }
  }

  private void addSlides(int task) {
    List<Literal> all = new ArrayList<>();
    for (int k = 0; k < tables.stageCount; k++) {
      List<Literal> here = new ArrayList<>();
      for (int s : tables.slidesOf[task]) {
        if (tables.stageOfSlide[s] == k && tables.windows[task].holds(k)) {
          BoolVar literal = model.newBoolVar("y" + task + "_" + s);
          onSlide[task][s] = literal;
          here.add(literal);
        }
      }
      inStage[task][k] = stageLiteral(task, k, here);
      all.addAll(here);
    }
    model.addExactlyOne(all.toArray(new Literal[0]));
  }

  private @Nullable Literal stageLiteral(int task, int stage, List<Literal> slides) {
    if (slides.size() <= 1) {
      return slides.isEmpty() ? null : slides.get(0);
    }
    BoolVar literal = model.newBoolVar("x" + task + "_" + stage);
    model.addEquality(LinearExpr.sum(slides.toArray(new Literal[0])), literal);
    return literal;
  }

  private void addModes(int task) {
    int modeCount = tables.problem.tasks().get(task).modes().size();
    inMode[task] = new Literal[modeCount];
    List<Literal> all = new ArrayList<>();
    for (int m : tables.modesOf[task]) {
      BoolVar literal = model.newBoolVar("z" + task + "_" + m);
      inMode[task][m] = literal;
      all.add(literal);
      for (int s : tables.slidesOf[task]) {
        Literal slide = onSlide[task][s];
        if (slide != null && !tables.allowed[task][s][m]) {
          model.addBoolOr(new Literal[] {slide.not(), literal.not()});
        }
      }
    }
    model.addExactlyOne(all.toArray(new Literal[0]));
  }

  private void addSeats() {
    for (int s = 0; s < tables.slideCount(); s++) {
      List<Literal> here = onSlide(s);
      if (here.size() > tables.seatCount(s)) {
        model.addLessOrEqual(LinearExpr.sum(here.toArray(new Literal[0])), tables.seatCount(s));
      }
    }
  }

  private List<Literal> onSlide(int slide) {
    List<Literal> here = new ArrayList<>();
    for (Literal[] task : onSlide) {
      Literal literal = task[slide];
      if (literal != null) {
        here.add(literal);
      }
    }
    return here;
  }

  private void addOrder(ProblemTables.Arc arc) {
    int gap = arc.sharing() == Precedence.Sharing.LATER_POSITION ? 1 : 0;
    for (int k = 0; k < tables.stageCount; k++) {
      LinearExprBuilder after = upTo(arc.after(), k);
      LinearExprBuilder before = upTo(arc.before(), k - gap);
      model.addGreaterOrEqual(before, after);
    }
    if (arc.sharing() == Precedence.Sharing.SAME_SLIDE) {
      addSameSlide(arc);
    }
  }

  private void addSameSlide(ProblemTables.Arc arc) {
    for (int s : tables.slidesOf[arc.before()]) {
      for (int t : tables.slidesOf[arc.after()]) {
        Literal before = onSlide[arc.before()][s];
        Literal after = onSlide[arc.after()][t];
        if (s != t
            && tables.stageOfSlide[s] == tables.stageOfSlide[t]
            && before != null
            && after != null) {
          model.addBoolOr(new Literal[] {before.not(), after.not()});
        }
      }
    }
  }

  private LinearExprBuilder upTo(int task, int lastStage) {
    LinearExprBuilder sum = LinearExpr.newBuilder();
    for (int k = 0; k <= lastStage; k++) {
      Literal literal = inStage[task][k];
      if (literal != null) {
        sum.add(literal);
      }
    }
    return sum;
  }

  private void addPairs() {
    for (int[] pair : tables.pairs(PairRule.Kind.MUST_SHARE)) {
      for (int k = 0; k < tables.stageCount; k++) {
        Literal first = inStage[pair[0]][k];
        Literal second = inStage[pair[1]][k];
        model.addEquality(
            first == null ? LinearExpr.constant(0) : first,
            second == null ? LinearExpr.constant(0) : second);
      }
    }
    for (int[] pair : tables.pairs(PairRule.Kind.MUST_NOT_SHARE)) {
      for (int k = 0; k < tables.stageCount; k++) {
        Literal first = inStage[pair[0]][k];
        Literal second = inStage[pair[1]][k];
        if (first != null && second != null) {
          model.addBoolOr(new Literal[] {first.not(), second.not()});
        }
      }
    }
  }

  /** Literals under which a task stands in the drum; all of them if it can stand nowhere else. */
  List<Literal> inDrum(int task) {
    List<Literal> drum = new ArrayList<>();
    for (int k = 0; k < tables.drumCount; k++) {
      Literal literal = inStage[task][k];
      if (literal != null) {
        drum.add(literal);
      }
    }
    return drum;
  }
}
