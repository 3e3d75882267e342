package drumline.step.exchange;

import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.List;

/**
 * One entity of an instance with its values.
 *
 * @param place file, line and name of the instance, for messages
 * @param name entity name in capitals
 * @param values attribute values in the order of the schema; of a complex instance the entity's own
 *     ones only
 */
public record Entity(String place, String name, List<StepValue> values) {

  /** Copies the list. */
  public Entity {
    values = List.copyOf(values);
  }

  /** The value at an index from 0. */
  public StepValue value(int index) {
    if (index >= values.size()) {
      throw fault(
          "entity-values", values.size() + " values", "at least " + (index + 1) + " values");
    }
    return values.get(index);
  }

  /** A number, bare or with the name of its type. */
  public double figure(int index) {
    return figureOf(value(index), index);
  }

  /** A string; empty where it is left out. */
  public String text(int index) {
    StepValue value = value(index);
    return value instanceof StepValue.Text text ? text.text() : "";
  }

  /** The instance referred to. */
  public int ref(int index) {
    return refOf(value(index), index);
  }

  /** Whether an instance is referred to. */
  public boolean isRef(int index) {
    return index < values.size() && values.get(index) instanceof StepValue.Ref;
  }

  /** A truth value; only {@code .F.} is false. */
  public boolean flag(int index) {
    return !(value(index) instanceof StepValue.Word word && word.word().equals("F"));
  }

  /** The word between full stops; empty where there is none. */
  public String word(int index) {
    return value(index) instanceof StepValue.Word word ? word.word() : "";
  }

  /** The elements of a list. */
  public List<StepValue> items(int index) {
    return itemsOf(value(index), index);
  }

  /** The instances referred to in a list. */
  public List<Integer> refs(int index) {
    List<Integer> refs = new ArrayList<>();
    for (StepValue item : items(index)) {
      refs.add(refOf(item, index));
    }
    return refs;
  }

  /** The numbers of a list. */
  public double[] figures(int index) {
    return figuresOf(value(index), index);
  }

  /** The numbers of a list of lists. */
  public double[][] grid(int index) {
    List<StepValue> rows = items(index);
    double[][] grid = new double[rows.size()][];
    for (int i = 0; i < grid.length; i++) {
      grid[i] = figuresOf(rows.get(i), index);
    }
    return grid;
  }

  /** The instances referred to in a list of lists. */
  public List<List<Integer>> refGrid(int index) {
    List<List<Integer>> grid = new ArrayList<>();
    for (StepValue row : items(index)) {
      List<Integer> refs = new ArrayList<>();
      for (StepValue item : itemsOf(row, index)) {
        refs.add(refOf(item, index));
      }
      grid.add(refs);
    }
    return grid;
  }

  private double[] figuresOf(StepValue list, int index) {
    List<StepValue> items = itemsOf(list, index);
    double[] figures = new double[items.size()];
    for (int i = 0; i < figures.length; i++) {
      figures[i] = figureOf(items.get(i), index);
    }
    return figures;
  }

  private double figureOf(StepValue value, int index) {
    if (value instanceof StepValue.Figure figure) {
      return figure.value();
    }
    if (value instanceof StepValue.Typed typed && typed.values().size() == 1) {
      return figureOf(typed.values().get(0), index);
    }
    throw wrong(index, value, "a number");
  }

  private int refOf(StepValue value, int index) {
    if (value instanceof StepValue.Ref ref) {
      return ref.id();
    }
    throw wrong(index, value, "a reference such as #12");
  }

  private List<StepValue> itemsOf(StepValue value, int index) {
    if (value instanceof StepValue.Items items) {
      return items.values();
    }
    throw wrong(index, value, "a list in parentheses");
  }

  private ExchangeFault wrong(int index, StepValue value, String allowed) {
    String found = value.getClass().getSimpleName().toLowerCase(java.util.Locale.ROOT);
    return fault("entity-value", "value " + (index + 1) + " is of kind \"" + found + "\"", allowed);
  }

  /** A fault at this instance. */
  public ExchangeFault fault(String code, String found, String allowed) {
    return new ExchangeFault(Problem.error(code, place, name + ": " + found, allowed, ""));
  }
}
