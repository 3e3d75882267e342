package drumline.sheets.html;

import static j2html.TagCreator.body;
import static j2html.TagCreator.each;
import static j2html.TagCreator.footer;
import static j2html.TagCreator.head;
import static j2html.TagCreator.html;
import static j2html.TagCreator.main;
import static j2html.TagCreator.meta;
import static j2html.TagCreator.p;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.style;
import static j2html.TagCreator.title;

import drumline.sheets.content.Cautions;
import drumline.sheets.content.StudyContent;
import j2html.Config;
import j2html.rendering.FlatHtml;
import j2html.tags.DomContent;
import j2html.tags.specialized.HtmlTag;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Writes a study as one self-contained page: no script, nothing from outside, light and dark on the
 * screen, A4 in print. The text is well-formed XML too.
 */
public final class StudyHtml {
  private StudyHtml() {}

  /** The page. */
  public static String render(StudyContent study) {
    HtmlTag page =
        html(
                head(
                    meta().withCharset("utf-8"),
                    meta().withName("viewport").withContent("width=device-width, initial-scale=1"),
                    title(study.head().title() + ", " + study.head().number()),
                    style(rawHtml(css(study)))),
                body(
                    HeadSection.html(study),
                    main(each(sections(study), section -> section)),
                    footer(p(Cautions.GENERAL))))
            .withLang("en");
    try {
      Config closed = Config.defaults().withEmptyTagsClosed(true);
      return "<!DOCTYPE html>\n" + page.render(FlatHtml.inMemory(closed)) + "\n";
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<DomContent> sections(StudyContent study) {
    String currency = study.money().cost().currency();
    List<DomContent> sections = new ArrayList<>();
    add(sections, study.notices(), CheckSection::notices);
    study.pictures().forEach(picture -> sections.add(PictureSection.html(picture)));
    add(sections, study.process(), ProcessSection::html);
    add(sections, study.safety(), SafetySection::html);
    add(sections, study.orders(), ProcessSection::orders);
    add(sections, study.tools(), tools -> EquipmentSection.tools(tools, currency));
    add(sections, study.equipment(), rows -> EquipmentSection.equipment(rows, currency));
    sections.add(MoneySection.html(study.money()));
    if (!study.alternatives().columns().isEmpty()) {
      sections.add(CheckSection.alternatives(study.alternatives()));
    }
    add(sections, study.audit(), CheckSection::audit);
    add(sections, study.assumptions(), CheckSection::assumptions);
    return sections;
  }

  private static <T> void add(
      List<DomContent> sections, List<T> rows, Function<List<T>, DomContent> section) {
    if (!rows.isEmpty()) {
      sections.add(section.apply(rows));
    }
  }

  private static String css(StudyContent study) {
    String foot = study.head().title() + " · " + study.head().number();
    return resource("study.css")
        .replace("FOOT_TEXT", CssString.of(Cautions.FOOT))
        .replace("FOOT_TITLE", CssString.of(foot));
  }

  private static String resource(String name) {
    try (InputStream stream = StudyHtml.class.getResourceAsStream(name)) {
      if (stream == null) {
        throw new IllegalStateException(name + " is missing beside " + StudyHtml.class);
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
