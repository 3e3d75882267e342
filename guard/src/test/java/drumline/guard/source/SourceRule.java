package drumline.guard.source;

import java.util.List;

/** A house rule over one Java file. */
@FunctionalInterface
interface SourceRule {

  /** What breaks the rule, each as "file:line: what"; empty if nothing does. */
  List<String> breaches(JavaSource source);
}
