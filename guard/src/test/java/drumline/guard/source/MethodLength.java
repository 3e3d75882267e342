package drumline.guard.source;

import com.sun.source.tree.MethodTree;
import java.util.ArrayList;
import java.util.List;

/** How long methods are, in lines; a test may be one long table of cases. */
final class MethodLength implements SourceRule {
  /** The habit is 40 lines; the rule leaves some room. */
  private static final int MOST_LINES = 60;

  @Override
  public List<String> breaches(JavaSource source) {
    List<String> breaches = new ArrayList<>();
    for (MethodTree method : methods(source)) {
      long lines = source.lineCount(method);
      if (source.isMain() && lines > MOST_LINES) {
        breaches.add(source.breach(method, method.getName() + " has " + lines + " lines"));
      }
    }
    return breaches;
  }

  /** The length of each method of a file. */
  static List<Long> lengths(JavaSource source) {
    return methods(source).stream().map(source::lineCount).toList();
  }

  private static List<MethodTree> methods(JavaSource source) {
    return source.types().stream()
        .flatMap(type -> type.getMembers().stream())
        .filter(MethodTree.class::isInstance)
        .map(MethodTree.class::cast)
        .toList();
  }
}
