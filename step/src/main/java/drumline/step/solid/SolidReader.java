package drumline.step.solid;

import drumline.shop.problem.Problem;
import drumline.step.exchange.Entity;
import drumline.step.exchange.ExchangeFault;
import drumline.step.exchange.ExchangeFile;
import drumline.step.exchange.Instance;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds the solids of an exchange file and reads one of them. */
public final class SolidReader {
  private final ExchangeFile file;
  private final Representation representations;

  /** A reader of one file. */
  public SolidReader(ExchangeFile file) {
    this.file = file;
    this.representations = new Representation(file);
  }

  /** Numbers of the instances that are solids, or closed shells that stand for one. */
  public List<Integer> solids() {
    Set<Integer> found = new LinkedHashSet<>();
    for (String kind : List.of("MANIFOLD_SOLID_BREP", "BREP_WITH_VOIDS", "FACETED_BREP")) {
      file.all(kind).forEach(instance -> found.add(instance.id()));
    }
    if (found.isEmpty()) {
      file.all("SHELL_BASED_SURFACE_MODEL").forEach(instance -> found.add(instance.id()));
    }
    return List.copyOf(found);
  }

  /** How many times pieces are used in assemblies; 0 for a file of one piece. */
  public int occurrences() {
    return file.all("NEXT_ASSEMBLY_USAGE_OCCURRENCE").size();
  }

  /**
   * The solid of an instance.
   *
   * @throws ExchangeFault if something in it is broken, or its unit of length is not said
   */
  public Solid read(int id) {
    Instance instance = file.instance(id);
    Scale scale = representations.findScale(id).orElseThrow(() -> noUnit(instance));
    List<String> remarks = new ArrayList<>();
    FaceReader faces = new FaceReader(file, scale, remarks);
    List<Face> all = new ArrayList<>();
    for (int shell : shells(instance)) {
      shell(file.instance(shell), true, faces, all);
    }
    Optional<Entity> product =
        representations
            .findOf(id)
            .flatMap(representations::findProduct)
            .or(() -> file.all("PRODUCT").stream().map(Instance::first).findFirst());
    String name = product.map(p -> p.text(1).isBlank() ? p.text(0) : p.text(1)).orElse("");
    return new Solid(
        id,
        name.isBlank() ? instance.first().text(0) : name,
        product.map(p -> p.text(0)).orElse(""),
        all,
        scale,
        remarks);
  }

  private static List<Integer> shells(Instance instance) {
    boolean isComplex = instance.entities().size() > 1;
    List<Integer> shells = new ArrayList<>();
    for (Entity entity : instance.entities()) {
      int shift = isComplex ? 0 : 1;
      switch (entity.name()) {
        case "MANIFOLD_SOLID_BREP", "FACETED_BREP" -> shells.add(entity.ref(shift));
        case "BREP_WITH_VOIDS" -> {
          if (!isComplex) {
            shells.add(entity.ref(1));
          }
          shells.addAll(entity.refs(isComplex ? 0 : 2));
        }
        case "SHELL_BASED_SURFACE_MODEL" -> shells.addAll(entity.refs(shift));
        default -> {}
      }
    }
    return shells;
  }

  private void shell(Instance instance, boolean isOut, FaceReader faces, List<Face> all) {
    Entity first = instance.first();
    if (first.name().startsWith("ORIENTED_")) {
      int at = first.values().size() - 1;
      shell(file.at(first, at - 1), isOut == first.flag(at), faces, all);
      return;
    }
    for (int face : first.refs(1)) {
      all.add(faces.read(face, isOut));
    }
  }

  private ExchangeFault noUnit(Instance instance) {
    return new ExchangeFault(
        Problem.error(
            "step-unit",
            String.format(Locale.ROOT, "%s, line %d", file.name(), file.line(instance.id())),
            "a solid without a unit of length",
            "GLOBAL_UNIT_ASSIGNED_CONTEXT with a unit of length",
            "Maybe export the file again."));
  }
}
