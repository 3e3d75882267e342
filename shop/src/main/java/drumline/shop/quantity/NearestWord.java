package drumline.shop.quantity;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/**
 * Finds the known words that look most like one that was mistyped, for the "Maybe …" of a message.
 *
 * <p>Likeness is the number of characters to insert, delete or replace (Levenshtein distance),
 * without regard to capitals; of words that are equally near, those with the same first letter come
 * first, then the order in which they are known. Words that differ in more than half of their
 * characters are not offered.
 */
public final class NearestWord {

  private NearestWord() {}

  /**
   * The known words nearest to a given one, nearest first.
   *
   * @param found the word that stands there
   * @param known the words that would be right
   * @param atMostCount how many to offer, 1 or more
   * @throws IllegalArgumentException if atMostCount is below 1
   */
  public static List<String> among(String found, Collection<String> known, int atMostCount) {
    if (atMostCount < 1) {
      throw new IllegalArgumentException("atMostCount is " + atMostCount + "; allowed: 1 or more");
    }
    String wanted = found.toLowerCase(Locale.ROOT);
    Stream<Candidate> candidates =
        known.stream()
            .distinct()
            .map(word -> new Candidate(word, distance(wanted, word.toLowerCase(Locale.ROOT))));
    return candidates
        .filter(c -> 2 * c.steps() <= Math.max(wanted.length(), c.word().length()))
        .sorted(
            Comparator.comparingInt(Candidate::steps)
                .thenComparing(c -> !sameStart(wanted, c.word())))
        .limit(atMostCount)
        .map(Candidate::word)
        .toList();
  }

  private static boolean sameStart(String wanted, String word) {
    return !wanted.isEmpty() && word.toLowerCase(Locale.ROOT).startsWith(wanted.substring(0, 1));
  }

  private static int distance(String a, String b) {
    int[] previous = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      previous[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] current = new int[b.length() + 1];
      current[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replace = previous[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        current[j] = Math.min(replace, 1 + Math.min(previous[j], current[j - 1]));
      }
      previous = current;
    }
    return previous[b.length()];
  }

  private record Candidate(String word, int steps) {}
}
