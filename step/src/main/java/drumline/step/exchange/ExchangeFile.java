package drumline.step.exchange;

import drumline.shop.problem.Problem;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * An exchange file whose form is sound. Instances are read when they are asked for, so that a large
 * file costs little more than its bytes.
 *
 * <p>Source: [ISO-10303-21] clear text encoding of the exchange structure, editions 1 to 3, from
 * memory.
 */
public final class ExchangeFile {
  private final Source source;
  private final List<Entity> header;
  private final InstanceIndex index;
  private final Map<Integer, Instance> read = new HashMap<>();

  ExchangeFile(Source source, List<Entity> header, InstanceIndex index) {
    this.source = source;
    this.header = List.copyOf(header);
    this.index = index;
  }

  /**
   * Reads a file's bytes.
   *
   * @param name name of the file, for messages
   * @throws ExchangeFault if its form is broken; with the line
   */
  public static ExchangeFile read(String name, byte[] bytes) {
    return new SectionReader(new Source(name, bytes)).read();
  }

  /** Name of the file. */
  public String name() {
    return source.name();
  }

  /** Entities of the header. */
  public List<Entity> header() {
    return header;
  }

  /** Names of the schemas that the file says it follows, in capitals. */
  public List<String> schemas() {
    return header.stream()
        .filter(entity -> entity.name().equals("FILE_SCHEMA"))
        .flatMap(entity -> entity.items(0).stream())
        .filter(StepValue.Text.class::isInstance)
        .map(value -> ((StepValue.Text) value).text().trim())
        .toList();
  }

  /** How many instances there are. */
  public int size() {
    return index.size();
  }

  /** The instances that are, among others, an entity of this name, in the order of the file. */
  public List<Instance> all(String name) {
    List<Instance> all = new ArrayList<>();
    for (int id : index.ids(name)) {
      all.add(instance(id));
    }
    return all;
  }

  /**
   * An instance.
   *
   * @throws ExchangeFault if there is none of this number
   */
  public Instance instance(int id) {
    Instance known = read.get(id);
    if (known != null) {
      return known;
    }
    int offset = index.offset(id);
    if (offset < 0) {
      throw new ExchangeFault(
          Problem.error(
              "step-reference",
              source.name(),
              "#" + id + ", which is referred to but not in the file",
              "a file in which every instance referred to stands",
              "Maybe the file was cut short."));
    }
    String place = source.name() + ", #" + id;
    Scanner scanner = new Scanner(source, offset);
    Instance instance = new Instance(id, place, new InstanceText(scanner).entities(place));
    read.put(id, instance);
    return instance;
  }

  /** The instance that a value of an entity refers to. */
  public Instance at(Entity entity, int index) {
    return instance(entity.ref(index));
  }

  /** Line of the file where an instance stands, from 1. */
  public int line(int id) {
    return source.line(Math.max(0, index.offset(id)));
  }
}
