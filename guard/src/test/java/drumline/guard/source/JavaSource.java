package drumline.guard.source;

import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreeScanner;
import com.sun.source.util.Trees;
import drumline.guard.tree.ProjectTree;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.ToolProvider;

/**
 * One Java file as the compiler's parser reads it; nothing is compiled, so no other class is
 * needed.
 *
 * @param file path from the project's root, with slashes
 * @param text what stands in it
 * @param unit its syntax tree
 * @param positions where in the text each tree stands
 */
record JavaSource(String file, String text, CompilationUnitTree unit, SourcePositions positions) {

  /** All Java files of the project. */
  static List<JavaSource> all() {
    return ProjectTree.textFiles().stream()
        .filter(file -> file.toString().endsWith(".java"))
        .map(file -> parse(file.toString().replace('\\', '/'), ProjectTree.read(file)))
        .toList();
  }

  /** Parses a text as if it stood in the given file. */
  static JavaSource parse(String file, String text) {
    JavaFileObject object =
        new SimpleJavaFileObject(
            URI.create("string:///" + file.replace(' ', '_')), JavaFileObject.Kind.SOURCE) {
          @Override
          public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
          }
        };
    JavacTask task =
        (JavacTask)
            ToolProvider.getSystemJavaCompiler()
                .getTask(null, null, problem -> {}, List.of(), null, List.of(object));
    try {
      CompilationUnitTree unit = task.parse().iterator().next();
      return new JavaSource(file, text, unit, Trees.instance(task).getSourcePositions());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** First folder of the path: the module. */
  String module() {
    return file.substring(0, Math.max(0, file.indexOf('/')));
  }

  /** Whether the file belongs to the program rather than to its tests. */
  boolean isMain() {
    return file.contains("/src/main/");
  }

  /** The package the file says it is in; empty for none. */
  String packageName() {
    return unit.getPackageName() == null ? "" : unit.getPackageName().toString();
  }

  /** All types of the file, nested ones too, in their order. */
  List<ClassTree> types() {
    List<ClassTree> types = new ArrayList<>();
    new TreeScanner<Void, Void>() {
      @Override
      public Void visitClass(ClassTree type, Void unused) {
        if (!type.getSimpleName().isEmpty()) {
          types.add(type);
        }
        return super.visitClass(type, null);
      }
    }.scan(unit, null);
    return types;
  }

  /** A breach at a tree, as "file:line: what". */
  String breach(Tree tree, String what) {
    long line = unit.getLineMap().getLineNumber(positions.getStartPosition(unit, tree));
    return file + ":" + line + ": " + what;
  }

  /** Number of lines that a tree covers. */
  long lineCount(Tree tree) {
    return unit.getLineMap().getLineNumber(positions.getEndPosition(unit, tree))
        - unit.getLineMap().getLineNumber(positions.getStartPosition(unit, tree))
        + 1;
  }
}
