package drumline.intake.part;

import drumline.intake.form.Block;
import drumline.intake.form.Field;
import drumline.intake.form.Form;
import drumline.intake.form.Words;
import drumline.intake.text.Node;
import drumline.shop.feature.Feature;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Reads the features of a part; the word under {@code kind} decides which keys a block may have.
 */
public final class FeatureForm {

  private FeatureForm() {}

  /** Kinds of features with their forms. */
  enum Kind {
    GROOVE,
    THREAD,
    KNURL,
    CROSS_HOLES,
    FACE_HOLES,
    FLATS,
    SLOT,
    INSIDE_FORM,
    ENGRAVING,
    DEBURRING;

    Form form() {
      return switch (this) {
        case GROOVE -> TurnedFeatures.GROOVE;
        case THREAD -> TurnedFeatures.THREAD;
        case KNURL -> TurnedFeatures.KNURL;
        case CROSS_HOLES -> HoleFeatures.CROSS_HOLES;
        case FACE_HOLES -> HoleFeatures.FACE_HOLES;
        case FLATS -> MilledFeatures.FLATS;
        case SLOT -> MilledFeatures.SLOT;
        case INSIDE_FORM -> MilledFeatures.INSIDE_FORM;
        case ENGRAVING -> MilledFeatures.ENGRAVING;
        case DEBURRING -> MilledFeatures.DEBURRING;
      };
    }
  }

  /** The forms of all kinds. */
  public static List<Form> forms() {
    return Arrays.stream(Kind.values()).map(Kind::form).toList();
  }

  static List<Feature> read(List<Field> items, FeatureContext context, ElementPlaces places) {
    List<Feature> features = new ArrayList<>();
    for (Field item : items) {
      Optional<Kind> kind = kind(item);
      Optional<Block> block = kind.flatMap(k -> item.block(k.form()));
      if (block.isPresent()) {
        String id = places.id(block.get(), Words.of(kind.get()) + "-" + (features.size() + 1));
        feature(kind.get(), block.get(), id, context).ifPresent(features::add);
      }
    }
    return features;
  }

  private static Optional<Kind> kind(Field item) {
    if (!(item.node() instanceof Node.Keyed keyed)) {
      item.report("wrong-kind", item.node().words(), "a block that begins with \"kind:\"", "");
      return Optional.empty();
    }
    Optional<Node> kind = keyed.find("kind");
    if (kind.isEmpty()) {
      item.report(
          "key-missing",
          "no key \"kind\"",
          "\"kind\" with one of " + String.join(", ", Words.all(Kind.class)),
          "");
      return Optional.empty();
    }
    return new Field(kind.get(), item.path() + ".kind", item.reading()).choice(Kind.class);
  }

  private static Optional<? extends Feature> feature(
      Kind kind, Block block, String id, FeatureContext context) {
    return switch (kind) {
      case GROOVE -> Optional.of(TurnedFeatures.groove(block, id, context));
      case THREAD -> TurnedFeatures.thread(block, id);
      case KNURL -> Optional.of(TurnedFeatures.knurl(block, id));
      case CROSS_HOLES -> Optional.of(HoleFeatures.crossHoles(block, id, context));
      case FACE_HOLES -> Optional.of(HoleFeatures.faceHoles(block, id, context));
      case FLATS -> Optional.of(MilledFeatures.flats(block, id, context));
      case SLOT -> Optional.of(MilledFeatures.slot(block, id, context));
      case INSIDE_FORM -> Optional.of(MilledFeatures.insideForm(block, id, context));
      case ENGRAVING -> Optional.of(MilledFeatures.engraving(block, id));
      case DEBURRING -> Optional.of(MilledFeatures.deburring(block, id));
    };
  }
}
