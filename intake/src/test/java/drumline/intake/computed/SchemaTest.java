package drumline.intake.computed;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import drumline.intake.InquiryForms;
import drumline.intake.InquiryReader;
import drumline.intake.ProjectRoot;
import drumline.intake.Schemas;
import drumline.intake.form.Form;
import drumline.intake.head.PracticeForm;
import drumline.intake.library.LibraryKind;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The JSON Schemas accept what the reader accepts and name the same keys; checked with
 * com.networknt:json-schema-validator 2.0.8.
 */
class SchemaTest {

  @ParameterizedTest
  @ValueSource(strings = {"valve-seat-body", "hex-coupling", "sleeve"})
  void acceptsExamples(String name) throws IOException {
    assertThat(faults(Schemas.Kind.INQUIRY, example(name))).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(LibraryKind.class)
  void acceptsShippedLibraries(LibraryKind kind) throws IOException {
    for (String name : kind.files()) {
      try (InputStream stream = InquiryReader.class.getResourceAsStream("library/" + name)) {
        String text = new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        assertThat(faults(Schemas.Kind.valueOf(kind.name()), text)).as(name).isEmpty();
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "units: metric| units: imperial",
        "material: X8CrNiS18-9| material: [X8CrNiS18-9]",
        "shape: round| shape: rond",
        "cycle: 96 s| cycle: 96",
        "cost: 2.95 EUR/piece| cost: 2.95",
        "{id: spigot, to: 7 mm| {id: spigot, too: 7 mm",
        "{id: spigot, to: 7 mm| {id: spigot, to: 7 mm, length: 7 mm",
        "diameter: 18 mm h8| diameter: about 18",
        "diameter: 18 mm h8| diameter: -18",
        "edge: 1 mm x 45°| edge: sharp",
        "bottom: flat| bottom: round",
        "kind: groove| kind: grove",
        "kind: runout| kind: run-out",
        "thread: M5-6H| note: M5-6H",
        "relations:| relation:"
      })
  void refusesBrokenInquiries(String right, String wrong) throws IOException {
    String text = example("valve-seat-body");
    assertThat(text).contains(right);

    assertThat(faults(Schemas.Kind.INQUIRY, text.replace(right, wrong))).isNotEmpty();
  }

  @Test
  void namesTheKeysOfTheInquiryReader() {
    assertThat(schemaKeys(Schemas.Kind.INQUIRY))
        .containsExactlyInAnyOrderElementsOf(keys(InquiryForms.all()));
  }

  @ParameterizedTest
  @EnumSource(LibraryKind.class)
  void namesTheKeysOfTheLibraryReader(LibraryKind kind) {
    assertThat(schemaKeys(Schemas.Kind.valueOf(kind.name())))
        .containsExactlyInAnyOrderElementsOf(keys(kind.forms()));
  }

  @Test
  void namesTheKeysOfThePracticeReader() {
    assertThat(schemaKeys(Schemas.Kind.PRACTICE))
        .containsExactlyInAnyOrderElementsOf(
            keys(List.of(PracticeForm.FILE, PracticeForm.RULE, PracticeForm.REACHED)));
  }

  /** Each form of the reader as "name: keys", keys sorted. */
  private static List<String> keys(List<Form> forms) {
    return forms.stream().map(f -> line(f.name(), f.keys())).toList();
  }

  private static String line(String name, List<String> keys) {
    return name.replace(' ', '-') + ": " + keys.stream().sorted().toList();
  }

  private static List<String> schemaKeys(Schemas.Kind kind) {
    JsonNode schema = read(Schemas.text(kind));
    List<String> lines = new ArrayList<>();
    lines.add(line(top(kind), names(schema.get("properties"))));
    schema
        .get("$defs")
        .properties()
        .forEach(
            def -> {
              if (def.getValue().has("properties")) {
                lines.add(line(def.getKey(), names(def.getValue().get("properties"))));
              }
            });
    return lines;
  }

  private static String top(Schemas.Kind kind) {
    return switch (kind) {
      case INQUIRY -> InquiryForms.INQUIRY.name();
      case PRACTICE -> PracticeForm.FILE.name().replace(' ', '-');
      default -> LibraryKind.valueOf(kind.name()).form().name();
    };
  }

  private static List<String> names(JsonNode object) {
    List<String> names = new ArrayList<>();
    for (Iterator<String> it = object.fieldNames(); it.hasNext(); ) {
      names.add(it.next());
    }
    return names;
  }

  private static List<Error> faults(Schemas.Kind kind, String yaml) {
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(Schemas.text(kind), InputFormat.JSON);
    return schema.validate(yaml, InputFormat.YAML);
  }

  private static JsonNode read(String json) {
    try {
      return new ObjectMapper().readTree(json);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  private static String example(String name) throws IOException {
    Path file = ProjectRoot.find().resolve("examples").resolve(name + ".yaml");
    return Files.readString(file);
  }
}
