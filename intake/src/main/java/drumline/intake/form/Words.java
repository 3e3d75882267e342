package drumline.intake.form;

import drumline.shop.quantity.NearestWord;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The words that a file uses for the constants of an enum: lower case, joined by hyphens. */
public final class Words {

  private Words() {}

  /** Word for a constant, e.g. {@code face-grooving}. */
  public static String of(Enum<?> constant) {
    return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** All words of an enum, in its order. */
  public static <E extends Enum<E>> List<String> all(Class<E> kind) {
    return Arrays.stream(kind.getEnumConstants()).map(Words::of).toList();
  }

  /** The constant for a word; capitals, blanks and underscores do not matter. */
  public static <E extends Enum<E>> Optional<E> find(Class<E> kind, String text) {
    String word = text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    return Arrays.stream(kind.getEnumConstants()).filter(e -> of(e).equals(word)).findFirst();
  }

  /** A sentence that offers the nearest of some words, or nothing where none is near. */
  public static String maybe(String found, List<String> known) {
    List<String> nearest = NearestWord.among(found, known, 1);
    return nearest.isEmpty() ? "" : "Maybe \"" + nearest.get(0) + "\".";
  }
}
