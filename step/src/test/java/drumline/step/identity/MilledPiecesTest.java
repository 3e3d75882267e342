package drumline.step.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.step.brep.MilledPieces;
import drumline.step.brep.StepText;
import drumline.step.feature.Found;
import drumline.step.inquiry.InquiryText;
import drumline.step.piece.StepImport;
import drumline.step.piece.TurnedPiece;
import java.util.List;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Flats, polygons, holes, slots and inside forms are found with their sizes, wherever they lie. */
class MilledPiecesTest {
  private static final double NEAR = 0.01;

  private static TurnedPiece read(int seed, Function<MilledPieces, byte[]> piece) {
    StepText.Style style =
        seed == 0 ? StepText.Style.plain() : StepText.Style.random(new Random(seed));
    byte[] file = piece.apply(new MilledPieces(style));
    StepImport found = StepImport.read("piece.step", file, false, 0);
    assertThat(found.problems()).isEmpty();
    TurnedPiece one = found.piece().orElseThrow();
    assertThat(one.openNotes()).as("seed %d: %s", seed, one).isEmpty();
    return one;
  }

  private static Found only(List<Found> features, String kind) {
    assertThat(features).filteredOn(f -> f.kind().equals(kind)).hasSize(1);
    return features.stream().filter(f -> f.kind().equals(kind)).findFirst().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void polygonsAreTheBarsOwnWhereNothingStandsOut(int seed) {
    int sides = seed % 2 == 0 ? 6 : 4;
    TurnedPiece piece = read(seed, m -> m.polygonBar(sides, 17));
    assertThat(piece.bar()).isPresent();
    assertThat(piece.bar().get().sides()).isEqualTo(sides);
    assertThat(piece.bar().get().across()).isCloseTo(17, within(NEAR));
    assertThat(piece.outside()).hasSize(2);
    double corner = 8.5 / Math.cos(Math.PI / sides);
    assertThat(piece.outside().get(1).r0()).isCloseTo(corner, within(NEAR));
    assertThat(piece.outside().get(0).z1()).isCloseTo(10, within(NEAR));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void socketsAreInsideForms(int seed) {
    Found socket = only(read(seed, m -> m.socket(10)).features(), "inside-form");
    assertThat(socket.values()).containsEntry("form", "hexagon").containsEntry("end", "front");
    assertThat(socket.mm("width")).isCloseTo(10, within(NEAR));
    assertThat(socket.mm("length")).isCloseTo(8, within(NEAR));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void flatsAndHolesHaveTheirSizes(int seed) {
    TurnedPiece piece = read(seed, MilledPieces::milled);
    assertThat(piece.outside()).hasSize(1);
    assertThat(piece.features()).hasSize(3);
    Found flats = only(piece.features(), "flats");
    assertThat(flats.mm("from")).isCloseTo(5, within(NEAR));
    assertThat(flats.mm("to")).isCloseTo(15, within(NEAR));
    assertThat(flats.mm("across")).isCloseTo(16, within(NEAR));
    assertThat(flats.count("count")).isEqualTo(2);
    Found cross = only(piece.features(), "cross-holes");
    assertThat(cross.mm("at")).isCloseTo(20, within(NEAR));
    assertThat(cross.mm("diameter")).isCloseTo(4, within(NEAR));
    assertThat(cross.values()).containsEntry("reach", "through");
    Found face = only(piece.features(), "face-holes");
    assertThat(face.mm("pitch-circle")).isCloseTo(12, within(NEAR));
    assertThat(face.mm("diameter")).isCloseTo(3, within(NEAR));
    assertThat(face.mm("depth")).isCloseTo(6, within(NEAR));
    assertThat(face.count("count")).isEqualTo(4);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void slotsHaveTheirSizes(int seed) {
    Found slot = only(read(seed, MilledPieces::slot).features(), "slot");
    assertThat(slot.mm("width")).isCloseTo(4, within(NEAR));
    assertThat(slot.mm("depth")).isCloseTo(2.5, within(NEAR));
    assertThat(slot.mm("length")).isCloseTo(14, within(NEAR));
    assertThat(slot.mm("at")).isCloseTo(8, within(NEAR));
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3})
  void modelledThreadsAreToldAndWhatIsUnknownIsNotDropped(int seed) {
    StepText.Style style =
        seed == 0 ? StepText.Style.plain() : StepText.Style.random(new Random(seed));
    byte[] file = new MilledPieces(style).threaded();
    StepImport found = StepImport.read("screw.step", file, false, 0);
    assertThat(found.problems()).isEmpty();
    TurnedPiece piece = found.piece().orElseThrow();
    assertThat(piece.openNotes()).hasSize(1);
    assertThat(piece.openNotes().get(0))
        .startsWith("PROBABLY A THREAD")
        .contains("near Ø10.000 mm", "add its designation");
    assertThat(piece.lengthMm()).isCloseTo(20, within(NEAR));
    assertThat(InquiryText.of(found, "screw.step")).contains("# - {id: thread");
  }
}
