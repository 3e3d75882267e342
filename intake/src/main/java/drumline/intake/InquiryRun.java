package drumline.intake;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Reading;
import drumline.intake.form.UnitsField;
import drumline.intake.head.PracticeForm;
import drumline.intake.head.WishesForm;
import drumline.intake.library.Libraries;
import drumline.intake.library.LibraryKind;
import drumline.intake.library.LibraryPaths;
import drumline.intake.part.BarForm;
import drumline.intake.part.ElementPlaces;
import drumline.intake.part.PartForm;
import drumline.intake.text.Node;
import drumline.intake.text.TextFile;
import drumline.intake.text.YamlText;
import drumline.shop.check.PartCheck;
import drumline.shop.inquiry.Inquiry;
import drumline.shop.inquiry.Overrides;
import drumline.shop.inquiry.Wishes;
import drumline.shop.machine.Machine;
import drumline.shop.material.Material;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import drumline.shop.problem.Problem;
import drumline.shop.tooling.ToolFamily;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One reading of one inquiry. */
final class InquiryRun {

  private final String name;
  private final Path folder;
  private final LibraryPaths overrides;
  private final Reading reading = new Reading();
  private final ElementPlaces places = new ElementPlaces();

  InquiryRun(String name, Path folder, LibraryPaths overrides) {
    this.name = name;
    this.folder = folder;
    this.overrides = overrides;
  }

  ReadResult read(String text) {
    Optional<Node.Keyed> top = YamlText.read(text, name, reading.problems());
    if (top.isEmpty()) {
      return new ReadResult(Optional.empty(), reading.problems(), List.of(), places.toMap());
    }
    Block block = Block.open(top.get(), InquiryForms.INQUIRY, "", reading);
    UnitsField.declare(block, name);
    LibraryPaths paths = overrides.and(ownLibraries(block));
    Libraries libraries = Libraries.read(reading, paths);
    for (LibraryKind kind : LibraryKind.values()) {
      changes(block, kind).forEach(entry -> libraries.change(kind, entry));
    }
    Overrides practice = practice(block, paths);
    Optional<Inquiry> inquiry = inquiry(block, libraries).map(i -> i.withOverrides(practice));
    if (inquiry.isPresent() && !reading.hasErrors()) {
      checkPart(block, inquiry.get());
    }
    return new ReadResult(
        reading.hasErrors() ? Optional.empty() : inquiry,
        reading.problems(),
        libraries.changes(),
        places.toMap());
  }

  private Optional<Inquiry> inquiry(Block block, Libraries libraries) {
    List<Machine> machines = libraries.machines();
    List<ToolFamily> tools = libraries.tools();
    LibraryChoice choice =
        new LibraryChoice(libraries::readMaterial, libraries.designations(), machines, tools);
    Optional<InquiryHead> head = InquiryHead.read(block);
    Optional<Block> wished = block.block("wishes", WishesForm.FORM);
    Wishes wishes = wished.map(WishesForm::read).orElse(WishesForm.none());
    choice.checkMachines(wished.map(w -> w.items("machines")).orElse(List.of()));
    Optional<Material> material = block.require("material").flatMap(choice::material);
    Optional<Bar> bar = require(block, "bar", BarForm.FORM).map(BarForm::read);
    Bar orUnknown = bar.orElse(new Bar(Bar.Shape.ROUND, Double.NaN, 0, "h9", Double.NaN));
    Optional<Part> part =
        require(block, "part", PartForm.FORM).map(b -> PartForm.read(b, orUnknown, places));
    if (head.isEmpty() || material.isEmpty() || bar.isEmpty() || part.isEmpty()) {
      return Optional.empty();
    }
    choice.checkCurrencies(block, head.get().rates(), material.get(), head.get().today());
    return Optional.of(
        head.get()
            .inquiry(
                UnitsField.declared(block),
                part.get(),
                bar.get(),
                material.get(),
                wishes,
                tools,
                machines));
  }

  private void checkPart(Block top, Inquiry inquiry) {
    for (Problem problem : PartCheck.check(inquiry.part(), inquiry.bar())) {
      String id = problem.where();
      boolean whole = id.equals("part") || id.equals("bar");
      String where =
          whole ? top.require(id).map(Field::where).orElse(id) : places.find(id).orElse(id);
      reading.add(problem.withWhere(whole ? where : where + " (" + id + ")"));
    }
  }

  private static Optional<Block> require(Block block, String key, Form form) {
    return block.require(key).flatMap(field -> field.block(form));
  }

  private LibraryPaths ownLibraries(Block top) {
    Optional<Block> block = top.block("libraries", InquiryForms.LIBRARIES);
    return new LibraryPaths(
        paths(block, "materials"),
        paths(block, "tools"),
        paths(block, "machines"),
        paths(block, "practice"));
  }

  private List<Path> paths(Optional<Block> block, String key) {
    List<Path> paths = new ArrayList<>();
    for (Field field : block.map(b -> b.items(key)).orElse(List.of())) {
      Optional<Path> file = find(field.text());
      if (file.isPresent()) {
        paths.add(file.get());
      } else {
        field.report(
            "file-missing", field.node().words(), "a file, as seen from the inquiry's folder", "");
      }
    }
    return paths;
  }

  /**
   * What the shop's files and the inquiry's overrides say of rules and allowances, in that order.
   */
  private Overrides practice(Block top, LibraryPaths paths) {
    Overrides practice = Overrides.NONE;
    for (Path path : paths.practice()) {
      String label = String.valueOf(path.getFileName());
      Optional<Block> file =
          TextFile.read(path, reading.problems())
              .flatMap(text -> YamlText.read(text, label, reading.problems()))
              .map(keys -> Block.open(keys, PracticeForm.FILE, "", reading));
      if (file.isPresent()) {
        UnitsField.declare(file.get(), label);
        practice = practice.and(PracticeForm.read(file.get()));
      }
    }
    return top.block("overrides", InquiryForms.OVERRIDES)
        .map(PracticeForm::read)
        .map(practice::and)
        .orElse(practice);
  }

  private Optional<Path> find(String name) {
    try {
      return Optional.of(folder.resolve(name)).filter(Files::isRegularFile);
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private static List<Field.Named> changes(Block top, LibraryKind kind) {
    return top.block("overrides", InquiryForms.OVERRIDES)
        .flatMap(block -> block.find(kind.key()))
        .map(Field::named)
        .orElse(List.of());
  }
}
