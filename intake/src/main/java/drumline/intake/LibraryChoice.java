package drumline.intake;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Words;
import drumline.shop.inquiry.Rates;
import drumline.shop.inquiry.Today;
import drumline.shop.machine.Machine;
import drumline.shop.material.Material;
import drumline.shop.tooling.ToolFamily;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * What an inquiry takes from the libraries by name.
 *
 * @param materials reads a material by its name
 * @param designations names of each material, its own first
 * @param machines the machines
 * @param tools the tool families
 */
record LibraryChoice(
    Function<String, Optional<Material>> materials,
    List<List<String>> designations,
    List<Machine> machines,
    List<ToolFamily> tools) {

  /** The material that a field asks for, by name or another designation. */
  Optional<Material> material(Field field) {
    String wanted = plain(field.text());
    Optional<String> name =
        designations.stream()
            .filter(names -> names.stream().anyMatch(n -> plain(n).equals(wanted)))
            .map(names -> names.get(0))
            .findFirst();
    Optional<Material> found = materials.apply(name.orElse(""));
    if (name.isEmpty()) {
      List<String> names = designations.stream().map(all -> all.get(0)).toList();
      List<String> all = designations.stream().flatMap(List::stream).toList();
      field.report(
          "unknown-material",
          field.node().words(),
          "a material of the library: " + String.join(", ", names),
          Words.maybe(field.text(), all));
    }
    return found;
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
  }

  /** Reports wished machines that the library does not have. */
  void checkMachines(List<Field> wished) {
    List<String> known = machines.stream().map(Machine::name).toList();
    for (Field field : wished) {
      String name = field.text();
      if (!name.isEmpty() && !known.contains(name)) {
        field.report(
            "unknown-machine",
            field.node().words(),
            "a machine of the library: " + String.join(", ", known),
            Words.maybe(name, known));
      }
    }
  }

  /** Reports currencies in use for which the rates have no exchange. */
  void checkCurrencies(Block top, Rates rates, Material material, @Nullable Today today) {
    if (rates.currency().isEmpty()) {
      return;
    }
    TreeMap<String, String> used = new TreeMap<>();
    used.put(material.currency(), "the material " + material.name());
    tools.forEach(tool -> used.putIfAbsent(tool.currency(), "the tool " + tool.name()));
    machines.forEach(m -> used.putIfAbsent(m.cost().currency(), "the machine " + m.name()));
    if (today != null) {
      used.putIfAbsent(today.currency(), "today's cost");
    }
    used.remove(rates.currency());
    used.keySet().removeAll(rates.exchange().keySet());
    used.remove("");
    used.forEach(
        (currency, user) ->
            top.require("rates")
                .ifPresent(
                    f ->
                        f.report(
                            "exchange-missing",
                            "no exchange rate for " + currency + ", used by " + user,
                            "value of 1 " + currency + " in " + rates.currency(),
                            "Maybe \"exchange: {" + currency + ": 1.00}\" with today's rate.")));
  }
}
