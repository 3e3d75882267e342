package drumline.sheets.identity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import drumline.sheets.html.StudyHtml;
import drumline.sheets.sample.SampleStudy;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * Contrast of text at least 4.5 : 1 in light, dark and print. Source: WCAG 2.2, success criterion
 * 1.4.3, and its definition of relative luminance.
 */
class ContrastTest {
  private static final Pattern PALETTE = Pattern.compile(":root\\{([^}]*--paper[^}]*)}");
  private static final Pattern COLOUR = Pattern.compile("--([a-z-]+):#([0-9a-f]{3,6})");

  @Test
  void textCanBeRead() {
    List<Map<String, String>> palettes = palettes();
    assertThat(palettes).hasSize(3);
    for (Map<String, String> palette : palettes) {
      for (String text : List.of("ink", "soft", "accent")) {
        assertThat(contrast(palette.get(text), palette.get("paper")))
            .as("%s in %s", text, palette)
            .isGreaterThanOrEqualTo(4.5);
      }
    }
  }

  /** White on black is 21 : 1; #777 on white 4.48 : 1 (WCAG's own examples). */
  @Test
  void measuresContrastAsWcagDoes() {
    assertThat(contrast("000", "fff")).isCloseTo(21, within(0.01));
    assertThat(contrast("777", "fff")).isCloseTo(4.48, within(0.01));
  }

  private static List<Map<String, String>> palettes() {
    List<Map<String, String>> palettes = new ArrayList<>();
    Matcher palette = PALETTE.matcher(StudyHtml.render(SampleStudy.study()));
    while (palette.find()) {
      Map<String, String> colours = new HashMap<>();
      Matcher colour = COLOUR.matcher(palette.group(1));
      while (colour.find()) {
        colours.put(colour.group(1), colour.group(2));
      }
      palettes.add(colours);
    }
    return palettes;
  }

  private static double contrast(String one, String other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private static double luminance(String hex) {
    String six = hex.length() == 3 ? hex.replaceAll("(.)", "$1$1") : hex;
    return 0.2126 * linear(six, 0) + 0.7152 * linear(six, 2) + 0.0722 * linear(six, 4);
  }

  private static double linear(String hex, int from) {
    double value = Integer.parseInt(hex.substring(from, from + 2), 16) / 255.0;
    return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
  }
}
