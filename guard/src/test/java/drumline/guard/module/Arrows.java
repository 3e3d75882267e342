package drumline.guard.module;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import drumline.guard.tree.RuleTable;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Which module may use which, and which libraries; as the byte code has it.
 *
 * @param root package that holds one package per module, such as {@code drumline}
 */
record Arrows(String root) {
  private static final List<List<String>> LIBRARIES = RuleTable.rows("libraries.txt");

  /** The table of arrows: module to the modules it may use. */
  static Map<String, Set<String>> allowed() {
    Map<String, Set<String>> allowed = new TreeMap<>();
    RuleTable.rows("modules.txt")
        .forEach(row -> allowed.put(row.get(0), new TreeSet<>(RuleTable.split(row.get(1)))));
    return allowed;
  }

  /** What breaks the arrows, as "class uses class"; empty if nothing does. */
  List<String> breaches(JavaClasses classes) {
    Map<String, Set<String>> allowed = allowed();
    Set<String> breaches = new TreeSet<>();
    for (JavaClass from : classes) {
      String module = module(from.getPackageName());
      if (!allowed.containsKey(module)) {
        breaches.add(from.getName() + " is in no module of modules.txt");
        continue;
      }
      for (Dependency use : from.getDirectDependenciesFromSelf()) {
        JavaClass to = use.getTargetClass().getBaseComponentType();
        if (!isAllowed(from, module, to, allowed.get(module))) {
          breaches.add(from.getName() + " uses " + to.getName());
        }
      }
    }
    return List.copyOf(breaches);
  }

  private boolean isAllowed(JavaClass from, String module, JavaClass to, Set<String> modules) {
    String target = to.getPackageName();
    if (isIn(target, root)) {
      return module(target).equals(module)
          ? !parted(from, to)
          : modules.contains(module(target)) && !isIn(target, root + ".planner.cpsat");
    }
    return LIBRARIES.stream()
        .filter(row -> isIn(target, row.get(1)))
        .allMatch(row -> isIn(from.getPackageName(), root + "." + row.get(2)));
  }

  /** The audit of a layout shares no code with the solver it audits. */
  private boolean parted(JavaClass from, JavaClass to) {
    String audit = root + ".planner.audit";
    String solver = root + ".planner.cpsat";
    return (isIn(from.getPackageName(), audit) && isIn(to.getPackageName(), solver))
        || (isIn(from.getPackageName(), solver) && isIn(to.getPackageName(), audit));
  }

  private String module(String packageName) {
    if (!packageName.startsWith(root + ".")) {
      return "";
    }
    String rest = packageName.substring(root.length() + 1);
    return rest.contains(".") ? rest.substring(0, rest.indexOf('.')) : rest;
  }

  private static boolean isIn(String packageName, String parent) {
    return packageName.equals(parent) || packageName.startsWith(parent + ".");
  }
}
