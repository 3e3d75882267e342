package drumline.intake.library;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Reading;
import drumline.intake.form.UnitsField;
import drumline.intake.machine.MachineForm;
import drumline.intake.text.Node;
import drumline.intake.text.TextFile;
import drumline.intake.text.YamlText;
import drumline.shop.machine.Machine;
import drumline.shop.material.Material;
import drumline.shop.tooling.ToolFamily;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

/** The three libraries as one inquiry sees them: shipped, then the user's files, then changes. */
public final class Libraries {

  private final Reading reading;
  private final Map<LibraryKind, Library> byKind = new EnumMap<>(LibraryKind.class);

  private Libraries(Reading reading) {
    this.reading = reading;
    for (LibraryKind kind : LibraryKind.values()) {
      byKind.put(kind, new Library(kind, reading));
      addShipped(kind);
    }
  }

  /** The shipped libraries with the user's files read over them. */
  public static Libraries read(Reading reading, LibraryPaths paths) {
    Libraries libraries = new Libraries(reading);
    paths.materials().forEach(path -> libraries.addFile(LibraryKind.MATERIALS, path));
    paths.tools().forEach(path -> libraries.addFile(LibraryKind.TOOLS, path));
    paths.machines().forEach(path -> libraries.addFile(LibraryKind.MACHINES, path));
    return libraries;
  }

  private void addShipped(LibraryKind kind) {
    ShippedText.trees(kind)
        .forEach(tree -> add(kind, tree.top(), tree.label(), Library.Origin.SHIPPED));
  }

  private void addFile(LibraryKind kind, Path file) {
    TextFile.read(file, reading.problems())
        .ifPresent(text -> addText(kind, text, String.valueOf(file.getFileName())));
  }

  private void addText(LibraryKind kind, String text, String label) {
    YamlText.read(text, label, reading.problems())
        .ifPresent(top -> add(kind, top, label, Library.Origin.USER));
  }

  private void add(LibraryKind kind, Node.Keyed top, String label, Library.Origin origin) {
    Block block = Block.open(top, kind.form(), "", reading);
    UnitsField.declare(block, label);
    List<Field> items = block.require(kind.key()).map(Field::items).orElse(List.of());
    library(kind).add(items, origin);
  }

  /** Changes single figures of an entry, as an inquiry asks. */
  public void change(LibraryKind kind, Field.Named entry) {
    library(kind).change(entry);
  }

  private Library library(LibraryKind kind) {
    return Objects.requireNonNull(byKind.get(kind));
  }

  /** What the user changed in all three. */
  public List<LibraryChange> changes() {
    return byKind.values().stream().flatMap(library -> library.changes().stream()).toList();
  }

  /** The designations of each material, its own name first; nothing else of it is read. */
  public List<List<String>> designations() {
    return library(LibraryKind.MATERIALS).entries().entrySet().stream()
        .map(
            e ->
                Stream.concat(
                        Stream.of(e.getKey()),
                        e.getValue().find("aliases").stream().flatMap(Libraries::texts))
                    .toList())
        .toList();
  }

  private static Stream<String> texts(Node node) {
    return node instanceof Node.Listing list
        ? list.items().stream().flatMap(Libraries::texts)
        : node instanceof Node.Single single ? Stream.of(single.text().strip()) : Stream.empty();
  }

  /**
   * The material of this name, if the library has it. The entries that the user wrote or changed
   * are read with it, so that what is wrong in them is reported; the others are not.
   */
  public Optional<Material> readMaterial(String name) {
    Library library = library(LibraryKind.MATERIALS);
    Optional<Material> wanted = Optional.empty();
    for (String entry : library.entries().keySet()) {
      if (entry.equals(name) || library.touched().contains(entry)) {
        Node.Keyed node = Objects.requireNonNull(library.entries().get(entry));
        String path = LibraryKind.MATERIALS.key() + "." + entry;
        Material read = MaterialForm.read(Block.open(node, MaterialForm.FORM, path, reading));
        wanted = entry.equals(name) ? Optional.of(read) : wanted;
      }
    }
    return wanted;
  }

  /** All materials; for lists to choose from, since reading them all takes a moment. */
  public List<Material> materials() {
    return blocks(LibraryKind.MATERIALS, MaterialForm.FORM).map(MaterialForm::read).toList();
  }

  /** The tool families. */
  public List<ToolFamily> tools() {
    return blocks(LibraryKind.TOOLS, ToolForm.FORM).map(ToolForm::read).toList();
  }

  /** The machines. */
  public List<Machine> machines() {
    List<Machine> machines = new ArrayList<>();
    blocks(LibraryKind.MACHINES, MachineForm.FORM)
        .forEach(block -> MachineForm.read(block).ifPresent(machines::add));
    return machines;
  }

  private Stream<Block> blocks(LibraryKind kind, Form form) {
    return library(kind).entries().entrySet().stream()
        .map(e -> Block.open(e.getValue(), form, kind.key() + "." + e.getKey(), reading));
  }
}
