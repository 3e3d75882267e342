package drumline.guard.source;

import com.sun.source.tree.ClassTree;
import drumline.guard.tree.RuleTable;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Types are named by shop nouns: no name has a word that says nothing. */
final class TypeNames implements SourceRule {
  private final Set<String> banned = RuleTable.words("names.txt");
  private final List<String> terms =
      RuleTable.rows("trade-terms.txt").stream().map(row -> row.get(0)).toList();

  @Override
  public List<String> breaches(JavaSource source) {
    List<String> breaches = new ArrayList<>();
    for (ClassTree type : source.types()) {
      for (String word : words(type.getSimpleName().toString())) {
        if (banned.contains(word)) {
          breaches.add(source.breach(type, "the word " + word + " in " + type.getSimpleName()));
        }
      }
    }
    return breaches;
  }

  private String[] words(String name) {
    String rest = name;
    for (String term : terms) {
      rest = rest.replace(term, "");
    }
    return rest.split("(?=\\p{Lu})", -1);
  }
}
