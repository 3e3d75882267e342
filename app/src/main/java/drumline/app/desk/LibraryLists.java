package drumline.app.desk;

import drumline.app.shelf.Shelves;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.machine.Machine;
import drumline.shop.material.Material;
import drumline.shop.tooling.ToolFamily;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/** What can be chosen from: materials, tools, machines. */
public final class LibraryLists {
  private final Shelves shelves;

  LibraryLists(Shelves shelves) {
    this.shelves = shelves;
  }

  /** A material to choose. */
  public record MaterialEntry(
      String name,
      List<String> aliases,
      String group,
      double densityKgPerDm3,
      double hardnessHb,
      double tensileMpa,
      BigDecimal pricePerKg,
      String currency,
      List<String> cautions,
      String source) {}

  /** A tool family to choose. */
  public record ToolEntry(
      String name,
      String kind,
      String toolMaterial,
      double smallestMm,
      double largestMm,
      int edgesCount,
      BigDecimal price,
      String currency,
      double changeMin,
      String source) {}

  /** A machine to choose. */
  public record MachineEntry(
      String name,
      String title,
      String kind,
      int positionCount,
      double barCapacityMm,
      double maxPieceLengthMm,
      boolean hasPickUp,
      double indexS,
      BigDecimal hourRate,
      BigDecimal price,
      String currency,
      String source) {}

  private Inquiry template() {
    return shelves.read(Template.text("metric")).opened().inquiry();
  }

  /** All materials. */
  public List<MaterialEntry> materials() {
    return shelves.materials().stream().map(LibraryLists::entry).toList();
  }

  /** All tool families. */
  public List<ToolEntry> tools() {
    return template().tools().stream().map(LibraryLists::entry).toList();
  }

  /** All machines. */
  public List<MachineEntry> machines() {
    return template().machines().stream().map(LibraryLists::entry).toList();
  }

  private static MaterialEntry entry(Material m) {
    return new MaterialEntry(
        m.name(),
        m.aliases(),
        m.group().name(),
        m.densityKgPerDm3(),
        m.hardnessHb(),
        m.tensileMpa(),
        m.pricePerKg(),
        m.currency(),
        m.cautions(),
        m.source());
  }

  private static ToolEntry entry(ToolFamily t) {
    return new ToolEntry(
        t.name(),
        words(t.kind()),
        words(t.toolMaterial()),
        t.smallestMm(),
        t.largestMm(),
        t.edgesCount(),
        t.price(),
        t.currency(),
        t.changeMin(),
        t.source());
  }

  private static MachineEntry entry(Machine m) {
    return new MachineEntry(
        m.name(),
        m.title(),
        words(m.kind()),
        m.lastPosition(),
        m.barFeed().capacityMm(),
        m.maxPieceLengthMm(),
        m.pickUp() != null,
        m.indexS(),
        m.cost().hourRate(),
        m.cost().price(),
        m.cost().currency(),
        m.source());
  }

  private static String words(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
