package drumline.intake.library;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Library files of the user's own, read after the shipped ones, in this order.
 *
 * @param materials files of materials
 * @param tools files of tools
 * @param machines files of machines
 * @param practice files of what the shop does otherwise
 */
public record LibraryPaths(
    List<Path> materials, List<Path> tools, List<Path> machines, List<Path> practice) {

  /** Copies the lists. */
  public LibraryPaths {
    materials = List.copyOf(materials);
    tools = List.copyOf(tools);
    machines = List.copyOf(machines);
    practice = List.copyOf(practice);
  }

  /** Only what ships. */
  public static LibraryPaths none() {
    return new LibraryPaths(List.of(), List.of(), List.of(), List.of());
  }

  /**
   * The files {@code materials.yaml}, {@code tools.yaml}, {@code machines.yaml} and {@code
   * practice.yaml} of a folder, as far as they are there.
   */
  public static LibraryPaths ofFolder(Path folder) {
    return new LibraryPaths(
        inFolder(folder, "materials.yaml"),
        inFolder(folder, "tools.yaml"),
        inFolder(folder, "machines.yaml"),
        inFolder(folder, "practice.yaml"));
  }

  /** These files, then others. */
  public LibraryPaths and(LibraryPaths later) {
    return new LibraryPaths(
        joined(materials, later.materials),
        joined(tools, later.tools),
        joined(machines, later.machines),
        joined(practice, later.practice));
  }

  private static List<Path> inFolder(Path folder, String name) {
    Path file = folder.resolve(name);
    return Files.isRegularFile(file) ? List.of(file) : List.of();
  }

  private static List<Path> joined(List<Path> first, List<Path> second) {
    return Stream.concat(first.stream(), second.stream()).toList();
  }
}
