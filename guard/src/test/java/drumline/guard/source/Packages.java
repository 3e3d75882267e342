package drumline.guard.source;

import java.util.List;

/**
 * A file's package begins with drumline and the name of its module: that is what arrows rest on.
 */
final class Packages implements SourceRule {

  @Override
  public List<String> breaches(JavaSource source) {
    String wanted = "drumline." + source.module();
    String found = source.packageName();
    return found.equals(wanted) || found.startsWith(wanted + ".")
        ? List.of()
        : List.of(source.file() + ":1: package " + found + " is not in " + wanted);
  }
}
