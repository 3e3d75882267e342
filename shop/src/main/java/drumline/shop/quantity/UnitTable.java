package drumline.shop.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** All units of the data file {@code units.csv}, looked up by kind and by what people write. */
final class UnitTable {

  private static final UnitTable THE_TABLE = new UnitTable();

  private final Map<QuantityKind, Map<String, Unit>> byKind = new EnumMap<>(QuantityKind.class);
  private final Map<QuantityKind, Map<UnitSystem, Unit>> bare = new EnumMap<>(QuantityKind.class);
  private final Map<QuantityKind, Map<UnitSystem, Unit>> shown = new EnumMap<>(QuantityKind.class);

  private UnitTable() {
    for (FigureTable.Row row : FigureTable.read(UnitTable.class, "units.csv").rows()) {
      Unit unit = unit(row);
      Map<String, Unit> words = byKind.computeIfAbsent(unit.kind(), k -> new LinkedHashMap<>());
      words.put(plain(unit.symbol()), unit);
      unit.aliases().forEach(alias -> words.put(plain(alias), unit));
      mark(bare, unit, row.text("bare"));
      mark(shown, unit, row.text("show"));
    }
  }

  private static Unit unit(FigureTable.Row row) {
    QuantityKind kind = QuantityKind.valueOf(row.text("kind"));
    List<String> aliases =
        Arrays.stream(row.text("aliases").split(" ", -1)).filter(a -> !a.isEmpty()).toList();
    return new Unit(kind, row.text("symbol"), aliases, factor(row.text("factor")));
  }

  private static double factor(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) {
      return Double.parseDouble(text);
    }
    BigDecimal over = new BigDecimal(text.substring(0, slash));
    BigDecimal under = new BigDecimal(text.substring(slash + 1));
    return over.divide(under, MathContext.DECIMAL128).doubleValue();
  }

  private static void mark(
      Map<QuantityKind, Map<UnitSystem, Unit>> marks, Unit unit, String systems) {
    Map<UnitSystem, Unit> ofKind =
        marks.computeIfAbsent(unit.kind(), k -> new EnumMap<>(UnitSystem.class));
    for (UnitSystem system : UnitSystem.values()) {
      if (systems.equals("both") || systems.equals(system.name().toLowerCase(Locale.ROOT))) {
        ofKind.put(system, unit);
      }
    }
  }

  static UnitTable get() {
    return THE_TABLE;
  }

  /** The unit of this kind that is written like that. */
  Optional<Unit> find(QuantityKind kind, String written) {
    Map<String, Unit> words = byKind.getOrDefault(kind, Map.of());
    String plain = plain(written);
    Unit exact = words.get(plain);
    if (exact != null) {
      return Optional.of(exact);
    }
    String lower = plain.toLowerCase(Locale.ROOT);
    boolean oneCase = plain.equals(lower) || plain.equals(plain.toUpperCase(Locale.ROOT));
    if (!oneCase) {
      return Optional.empty();
    }
    return words.entrySet().stream()
        .filter(e -> e.getKey().toLowerCase(Locale.ROOT).equals(lower))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  /** The first other kind that knows this unit. */
  Optional<Unit> findOfAnyKind(String written) {
    return Arrays.stream(QuantityKind.values())
        .flatMap(kind -> find(kind, written).stream())
        .findFirst();
  }

  /** The unit a bare number has in this system, if the kind may go without. */
  Optional<Unit> findBare(QuantityKind kind, UnitSystem system) {
    return Optional.ofNullable(bare.getOrDefault(kind, Map.of()).get(system));
  }

  /** The unit in which this system writes the kind. */
  Unit shown(QuantityKind kind, UnitSystem system) {
    Unit unit = shown.getOrDefault(kind, Map.of()).get(system);
    if (unit == null) {
      throw new IllegalStateException("units.csv shows no " + system + " unit for " + kind);
    }
    return unit;
  }

  /** The symbols of a kind, in the order of the file. */
  List<String> symbols(QuantityKind kind) {
    List<String> symbols = new ArrayList<>();
    byKind.getOrDefault(kind, Map.of()).values().stream()
        .map(Unit::symbol)
        .distinct()
        .forEach(symbols::add);
    return symbols;
  }

  /** Every way a kind's units may be written. */
  List<String> words(QuantityKind kind) {
    List<String> words = new ArrayList<>();
    for (Unit unit : byKind.getOrDefault(kind, Map.of()).values()) {
      words.add(unit.symbol());
      words.addAll(unit.aliases());
    }
    return words.stream().distinct().toList();
  }

  /** One spelling for signs that look alike: micro signs, raised figures, dots and blanks. */
  static String plain(String written) {
    return written
        .replace('\u03bc', 'µ')
        .replace('²', '2')
        .replace('³', '3')
        .replace("⁻¹", "-1")
        .replaceAll("[\\s\\u00a0\\u202f·⋅*^]", "")
        .replaceAll("\\.$", "");
  }
}
