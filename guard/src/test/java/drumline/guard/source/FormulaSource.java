package drumline.guard.source;

import com.sun.source.tree.BinaryTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A formula of cutting says where it comes from: a file there that multiplies, divides or takes
 * roots, powers or angles has a comment "Source: …" with a key of SOURCES.md, or words such as
 * "geometry", "derived", "common practice", "from memory".
 */
final class FormulaSource implements SourceRule {
  private static final Set<String> NOT_A_FORMULA =
      Set.of("abs", "min", "max", "rint", "round", "floor", "ceil");
  private static final Pattern SOURCE = Pattern.compile("Source: [\\w\\[]");

  @Override
  public List<String> breaches(JavaSource source) {
    if (!source.module().equals("cutting") || !source.isMain()) {
      return List.of();
    }
    Tree formula = firstFormula(source);
    String flowing = source.text().replaceAll("\\s*\\n\\s*(\\*(?!/)|//)?\\s*", " ");
    return formula == null || SOURCE.matcher(flowing).find()
        ? List.of()
        : List.of(source.breach(formula, "a formula without \"Source: …\" in its file"));
  }

  private static Tree firstFormula(JavaSource source) {
    List<Tree> found = new ArrayList<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitBinary(BinaryTree operation, Void unused) {
        if (operation.getKind() == Tree.Kind.MULTIPLY || operation.getKind() == Tree.Kind.DIVIDE) {
          found.add(operation);
        }
        return super.visitBinary(operation, null);
      }

      @Override
      public Void visitMemberSelect(MemberSelectTree member, Void unused) {
        if (member.getExpression().toString().equals("Math")
            && !NOT_A_FORMULA.contains(member.getIdentifier().toString())) {
          found.add(member);
        }
        return super.visitMemberSelect(member, null);
      }
    }.scan(source.unit(), null);
    return found.isEmpty() ? null : found.get(0);
  }
}
