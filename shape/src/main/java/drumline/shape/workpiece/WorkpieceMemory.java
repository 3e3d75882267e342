package drumline.shape.workpiece;

import drumline.shape.section.BarSection;
import drumline.shape.section.HalfSection;
import drumline.shape.workpiece.PositionState.Hold;
import drumline.shop.operation.CutRegion;
import drumline.shop.operation.CutRegion.PointZr;
import drumline.shop.operation.Operation;
import drumline.shop.operation.OperationKind;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Follows one piece through many layouts of one route: a state that depends on the same work before
 * and the same work here is not reckoned again, since what is left does not depend on the order of
 * what was taken. Safe for many threads.
 */
public final class WorkpieceMemory {
  /** Length of bar in mm that is shown behind the last cut. */
  static final double STUB_MM = 3;

  private static final int MOST_STATES = 600;

  private final Bar bar;
  private final Part part;
  private final Map<Key, PositionState> known =
      new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, PositionState> eldest) {
          return size() > MOST_STATES;
        }
      };

  /** A stretch of bar. */
  private record Front(double fromZMm, double toZMm) {}

  /** What a state depends on: operations by their names, which are unique in a route. */
  private record Key(Front front, int position, Set<String> before, List<String> here) {}

  /** Remembers nothing yet. */
  public WorkpieceMemory(Bar bar, Part part) {
    this.bar = bar;
    this.part = part;
  }

  /**
   * The workpiece from bar to piece.
   *
   * @param work work in the order of travel, of one and the same route each time
   */
  public WorkpieceStates states(List<PositionWork> work) {
    Front front = front(work);
    HalfSection start = BarSection.of(bar, front.fromZMm(), front.toZMm());
    List<PositionState> states = new ArrayList<>();
    Set<String> before = new HashSet<>();
    HalfSection now = start;
    Hold hold = Hold.IN_BAR;
    for (PositionWork position : work) {
      List<String> here = position.operations().stream().map(Operation::id).toList();
      Key key = new Key(front, position.position(), Set.copyOf(before), here);
      PositionState state = find(key);
      if (state == null) {
        state = next(now, hold, position);
        keep(key, state);
      }
      states.add(state);
      before.addAll(here);
      now = state.workpiece();
      hold = state.hold();
    }
    return new WorkpieceStates(start, states);
  }

  private @Nullable PositionState find(Key key) {
    synchronized (known) {
      return known.get(key);
    }
  }

  private void keep(Key key, PositionState state) {
    synchronized (known) {
      known.put(key, state);
    }
  }

  private PositionState next(HalfSection before, Hold held, PositionWork position) {
    HalfSection now = before;
    Hold hold = held;
    HalfSection removedHere = HalfSection.EMPTY;
    List<Removal> removals = new ArrayList<>();
    for (Operation operation : position.operations()) {
      HalfSection swept = HalfSection.ofAll(operation.removes());
      HalfSection removed = now.intersect(swept);
      removals.add(new Removal(operation.id(), swept, removed));
      removedHere = removedHere.union(removed);
      now = now.subtract(swept);
      if (operation.kind() == OperationKind.CUT_OFF && isParted(now, part)) {
        hold = Hold.PARTED;
        now = piece(now, part);
      }
    }
    return new PositionState(position.position(), now, removedHere, removals, hold);
  }

  private Front front(List<PositionWork> work) {
    double fromZMm = 0;
    double toZMm = part.lengthMm();
    for (PositionWork position : work) {
      for (Operation operation : position.operations()) {
        for (CutRegion region : operation.removes()) {
          for (PointZr point : region.outline()) {
            if (operation.kind() == OperationKind.FACE) {
              fromZMm = Math.min(fromZMm, point.zMm());
            }
            if (operation.kind() == OperationKind.CUT_OFF) {
              toZMm = Math.max(toZMm, point.zMm());
            }
          }
        }
      }
    }
    return new Front(fromZMm, toZMm + STUB_MM);
  }

  private static boolean isParted(HalfSection now, Part part) {
    return now.bodies().stream().noneMatch(body -> spans(body, part));
  }

  private static boolean spans(HalfSection body, Part part) {
    return body.fromZMm() < part.lengthMm() / 2 && body.toZMm() > part.lengthMm() + STUB_MM / 2;
  }

  private static HalfSection piece(HalfSection now, Part part) {
    HalfSection piece = HalfSection.EMPTY;
    for (HalfSection body : now.bodies()) {
      if (body.fromZMm() < part.lengthMm()) {
        piece = piece.union(body);
      }
    }
    return piece;
  }
}
