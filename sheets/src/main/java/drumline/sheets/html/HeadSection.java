package drumline.sheets.html;

import static j2html.TagCreator.dd;
import static j2html.TagCreator.div;
import static j2html.TagCreator.dl;
import static j2html.TagCreator.dt;
import static j2html.TagCreator.each;
import static j2html.TagCreator.h1;
import static j2html.TagCreator.header;
import static j2html.TagCreator.p;
import static j2html.TagCreator.span;
import static j2html.TagCreator.strong;
import static j2html.TagCreator.text;

import drumline.economics.triage.Verdict;
import drumline.sheets.content.Cautions;
import drumline.sheets.content.KeyFigure;
import drumline.sheets.content.StudyContent;
import drumline.sheets.content.StudyHead;
import drumline.sheets.content.plain.Tone;
import j2html.tags.DomContent;
import java.util.List;

/** Who asks for what, the answer, and the figures looked for first. */
final class HeadSection {
  private HeadSection() {}

  static DomContent html(StudyContent study) {
    StudyHead head = study.head();
    return header(
            p("Production study").withClass("kind"),
            h1(head.title()),
            p(
                    span(head.verdict().words())
                        .withClass(head.verdict() == Verdict.FITS ? "verdict" : "verdict marked"),
                    text(" " + head.summary()))
                .withClass("summary"),
            block(head),
            keys(study.keyFigures()),
            p(strong("Caution. "), text(Cautions.GENERAL)).withClass("caution"))
        .withClass("head");
  }

  private static DomContent block(StudyHead head) {
    return dl(
            cell("Customer", head.customer()),
            cell("Print", head.number()),
            cell("Date", head.date().toString()),
            cell("Machine", head.machine()),
            cell("Material", head.material()))
        .withClass("block");
  }

  private static DomContent cell(String name, String value) {
    return div(dt(name), dd(value));
  }

  private static DomContent keys(List<KeyFigure> figures) {
    return dl(each(figures, HeadSection::key)).withClass("keys");
  }

  private static DomContent key(KeyFigure figure) {
    return div(
            dt(figure.label()),
            dd(
                span(figure.value()).withClass("value"),
                figure.unit().isEmpty() ? text("") : span(figure.unit()).withClass("unit")),
            dd(figure.note()).withClass("note"))
        .withClass(figure.tone() == Tone.MARKED ? "key marked" : "key");
  }
}
