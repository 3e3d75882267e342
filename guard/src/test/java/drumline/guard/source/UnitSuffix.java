package drumline.guard.source;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ParameterizedTypeTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import drumline.guard.tree.RuleTable;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javax.lang.model.element.Modifier;

/**
 * A number's name says its unit: components of records and parameters of public methods end in a
 * suffix of the closed list in units.txt, or stand in unitless.txt with the reason.
 */
final class UnitSuffix implements SourceRule {
  private static final Set<String> MODULES =
      Set.of("shop", "cutting", "route", "cycle", "economics");
  private static final Pattern NUMBER =
      Pattern.compile(
          "\\b(double|float|long|int|short|Double|Float|Long|Integer|Short"
              + "|OptionalDouble|OptionalLong|OptionalInt)\\b");

  private final Set<String> units = RuleTable.words("units.txt");
  private final Set<String> unitless =
      RuleTable.rows("unitless.txt").stream().map(row -> row.get(0)).collect(Collectors.toSet());

  @Override
  public List<String> breaches(JavaSource source) {
    Set<String> breaches = new LinkedHashSet<>(); // a record's parameters appear twice
    if (MODULES.contains(source.module()) && source.isMain()) {
      for (ClassTree type : source.types()) {
        for (VariableTree number : namedNumbers(type)) {
          if (!saysItsUnit(type.getSimpleName().toString(), number.getName().toString())) {
            breaches.add(
                source.breach(
                    number,
                    "the number " + number.getName() + " does not end in a unit of units.txt"));
          }
        }
      }
    }
    return List.copyOf(breaches);
  }

  private boolean saysItsUnit(String type, String name) {
    return unitless.contains(name)
        || unitless.contains(type + "." + name)
        || unitless.contains(type + ".*")
        || units.stream().anyMatch(unit -> endsIn(unit, name));
  }

  private static boolean endsIn(String unit, String name) {
    if (name.equals(unit.substring(0, 1).toLowerCase(Locale.ROOT) + unit.substring(1))) {
      return name.length() > 3; // revPerMin and ratio say enough; n, s and min could be anything
    }
    int before = name.length() - unit.length() - 1;
    return name.endsWith(unit)
        && before >= 0
        && (unit.length() > 1 || !Character.isUpperCase(name.charAt(before)));
  }

  private static List<VariableTree> namedNumbers(ClassTree type) {
    if (type.getModifiers().getFlags().contains(Modifier.PRIVATE)) {
      return List.of();
    }
    List<VariableTree> named = new ArrayList<>();
    for (Tree member : type.getMembers()) {
      if (member instanceof VariableTree field
          && type.getKind() == Tree.Kind.RECORD
          && !field.getModifiers().getFlags().contains(Modifier.STATIC)) {
        named.add(field);
      } else if (member instanceof MethodTree method && isPublic(type, method)) {
        named.addAll(method.getParameters());
      }
    }
    return named.stream().filter(variable -> isNumber(variable.getType())).toList();
  }

  private static boolean isPublic(ClassTree type, MethodTree method) {
    Set<Modifier> flags = method.getModifiers().getFlags();
    boolean inInterface = type.getKind() == Tree.Kind.INTERFACE;
    return flags.contains(Modifier.PUBLIC) || (inInterface && !flags.contains(Modifier.PRIVATE));
  }

  /** Whether a type holds numbers: itself, in an array, or as the values of a list or map. */
  private static boolean isNumber(Tree type) {
    if (type instanceof ParameterizedTypeTree generic) {
      List<? extends Tree> arguments = generic.getTypeArguments();
      return !arguments.isEmpty() && isNumber(arguments.get(arguments.size() - 1));
    }
    return NUMBER.matcher(type.toString()).find();
  }
}
