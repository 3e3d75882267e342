package drumline.store.crash;

import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The class path of this test for a program of its own, in jars only, as class archives need it.
 */
final class ChildClassPath {
  private ChildClassPath() {}

  /** Puts folders of classes into jars in the given folder. */
  static String in(Path folder) throws IOException, URISyntaxException {
    List<String> parts = new ArrayList<>();
    for (Path part : new LinkedHashSet<>(parts())) {
      if (Files.isDirectory(part)) {
        Path jar = folder.resolve("classes" + parts.size() + ".jar");
        pack(part, jar);
        parts.add(jar.toString());
      } else if (Files.exists(part)) {
        parts.add(part.toString());
      }
    }
    return parts.stream().collect(Collectors.joining(System.getProperty("path.separator")));
  }

  private static List<Path> parts() throws URISyntaxException {
    if (ChildClassPath.class.getClassLoader() instanceof URLClassLoader loader) {
      List<Path> parts = new ArrayList<>();
      for (URL url : loader.getURLs()) {
        parts.add(Path.of(url.toURI()));
      }
      return parts;
    }
    String all =
        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
    return Arrays.stream(all.split(System.getProperty("path.separator"))).map(Path::of).toList();
  }

  private static void pack(Path classes, Path jar) throws IOException {
    List<Path> files;
    try (Stream<Path> all = Files.walk(classes)) {
      files = all.filter(file -> !file.equals(classes)).toList();
    }
    try (OutputStream out = Files.newOutputStream(jar);
        JarOutputStream entries = new JarOutputStream(out)) {
      for (Path file : files) {
        String name = classes.relativize(file).toString().replace('\\', '/');
        boolean isFolder = Files.isDirectory(file); // Flyway looks for the folder of migrations
        entries.putNextEntry(new JarEntry(isFolder ? name + "/" : name));
        if (!isFolder) {
          Files.copy(file, entries);
        }
        entries.closeEntry();
      }
    }
  }
}
