package drumline.sheets.html;

import static j2html.TagCreator.div;
import static j2html.TagCreator.figcaption;
import static j2html.TagCreator.figure;
import static j2html.TagCreator.h2;
import static j2html.TagCreator.rawHtml;
import static j2html.TagCreator.section;

import drumline.sheets.content.plain.Picture;
import j2html.tags.DomContent;

/** A drawing with its heading and caption. */
final class PictureSection {
  private PictureSection() {}

  static DomContent html(Picture picture) {
    return section(h2(picture.title()), plain(picture))
        .withClass(picture.room() == Picture.Room.WHOLE_SHEET ? "picture wide" : "picture");
  }

  static DomContent plain(Picture picture) {
    return figure(div(rawHtml(picture.svg())).withClass("drawing"), figcaption(picture.caption()));
  }
}
