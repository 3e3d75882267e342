package drumline.shape.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.shape.Prints;
import drumline.shape.proof.Finding;
import drumline.shape.proof.RemovalProof;
import drumline.shape.section.HalfSection;
import drumline.shape.section.PartSection;
import drumline.shape.workpiece.PositionState.Hold;
import drumline.shape.workpiece.PositionWork;
import drumline.shape.workpiece.Removal;
import drumline.shape.workpiece.WorkpieceStates;
import drumline.shop.operation.Operation;
import drumline.shop.part.Bar;
import drumline.shop.part.Part;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What must hold for every stepped piece; the seed is in the test's name. */
class RandomPiecesTest {

  @Retention(RetentionPolicy.RUNTIME)
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
  private @interface Seeds {}

  /** What a grid of 1 nm can move a volume of these sizes: area of the surfaces times 0.5 nm. */
  private static final double GRID_MM3 = 0.01;

  private static final Bar BAR = Prints.round(RandomPieces.BAR_MM);

  @Seeds
  void volumeIsThatOfItsCylinders(long seed) {
    Part part = new RandomPieces(seed).part();
    assertThat(PartSection.of(part, BAR).piece().volumeMm3())
        .isCloseTo(RandomPieces.volumeMm3(part), within(GRID_MM3));
  }

  @Seeds
  void barIsPieceAndChipsAndStub(long seed) {
    RandomPieces pieces = new RandomPieces(seed);
    Part part = pieces.part();
    WorkpieceStates states = follow(part, pieces.cuts(part));
    double chipsMm3 =
        states.positions().stream()
            .flatMap(state -> state.removals().stream())
            .mapToDouble(Removal::volumeMm3)
            .sum();
    double stubMm = states.bar().toZMm() - part.lengthMm() - RandomPieces.BLADE_MM;
    double stubMm3 = Math.PI * 400 * stubMm;
    assertThat(states.last().volumeMm3() + chipsMm3 + stubMm3)
        .isCloseTo(states.bar().volumeMm3(), within(GRID_MM3));
  }

  @Seeds
  void noPlaceIsRemovedTwice(long seed) {
    RandomPieces pieces = new RandomPieces(seed);
    Part part = pieces.part();
    HalfSection before = HalfSection.EMPTY;
    for (var state : follow(part, pieces.cuts(part)).positions()) {
      for (Removal removal : state.removals()) {
        assertThat(removal.removed().intersect(before).areaMm2()).isZero();
        before = before.union(removal.removed());
      }
    }
  }

  @Seeds
  void orderOfCutsBeforeTheCutOffDoesNotMatter(long seed) {
    RandomPieces pieces = new RandomPieces(seed);
    Part part = pieces.part();
    List<Operation> cuts = new ArrayList<>(pieces.cuts(part));
    HalfSection inOrder = follow(part, cuts).last();
    Operation off = cuts.stream().filter(cut -> cut.id().equals("off")).findFirst().orElseThrow();
    cuts.remove(off);
    Collections.shuffle(cuts, new Random(seed));
    cuts.add(off);
    HalfSection shuffled = follow(part, cuts).last();
    assertThat(inOrder.subtract(shuffled).areaMm2()).isZero();
    assertThat(shuffled.subtract(inOrder).areaMm2()).isZero();
  }

  @Seeds
  void allCutsMakeThePiece(long seed) {
    RandomPieces pieces = new RandomPieces(seed);
    Part part = pieces.part();
    RemovalProof proof = RemovalProof.of(BAR, part, follow(part, pieces.cuts(part)));
    assertThat(proof.findings()).isEmpty();
    assertThat(proof.holds()).isTrue();
  }

  @Seeds
  void aMissingCutIsTold(long seed) {
    RandomPieces pieces = new RandomPieces(seed);
    Part part = pieces.part();
    String missing = part.outside().get(pieces.next(part.outside().size())).id();
    List<Operation> cuts = new ArrayList<>(pieces.cuts(part));
    cuts.removeIf(cut -> cut.id().startsWith(missing));
    RemovalProof proof = RemovalProof.of(BAR, part, follow(part, cuts));
    assertThat(proof.findings()).hasSize(1);
    Finding finding = proof.findings().get(0);
    assertThat(finding.element()).isEqualTo(missing);
    assertThat(finding.words()).contains("left on, outside at " + missing);
  }

  @Seeds
  void aCutTooDeepIsTold(long seed) {
    RandomPieces pieces = new RandomPieces(seed);
    Part part = pieces.part();
    var step = part.outside().get(0);
    double rMm = step.startDiameterMm() / 2;
    List<Operation> cuts = new ArrayList<>(pieces.cuts(part));
    cuts.add(0, RandomPieces.cut("deep", 0, step.toZMm(), rMm - 0.05, 30));
    RemovalProof proof = RemovalProof.of(BAR, part, follow(part, cuts));
    assertThat(proof.findings()).hasSize(1);
    assertThat(proof.findings().get(0).kind()).isEqualTo(Finding.Kind.GOUGED);
    assertThat(proof.findings().get(0).thicknessMm()).isCloseTo(0.05, within(1e-4));
    assertThat(proof.findings().get(0).words()).contains("gouged, outside at o0");
  }

  @Seeds
  void partedOnlyAfterCutOff(long seed) {
    RandomPieces pieces = new RandomPieces(seed);
    Part part = pieces.part();
    List<Operation> cuts = pieces.cuts(part);
    List<Operation> open = cuts.stream().filter(cut -> !cut.id().equals("off")).toList();
    assertThat(follow(part, open).positions().get(0).hold()).isEqualTo(Hold.IN_BAR);
    assertThat(follow(part, cuts).positions().get(0).hold()).isEqualTo(Hold.PARTED);
    assertThat(follow(part, cuts).last().toZMm()).isEqualTo(part.lengthMm(), within(1e-6));
  }

  private static WorkpieceStates follow(Part part, List<Operation> cuts) {
    return WorkpieceStates.of(BAR, part, List.of(new PositionWork(1, cuts)));
  }
}
