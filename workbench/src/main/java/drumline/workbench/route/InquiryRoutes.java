package drumline.workbench.route;

import drumline.app.answer.DeskRefusal;
import drumline.app.answer.InquiryText;
import drumline.app.desk.Desk;
import drumline.app.desk.EditWish;
import drumline.app.desk.InquiryFolder;
import drumline.app.desk.NewInquiry;
import drumline.workbench.event.EventStreams;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The list and the text of an inquiry. */
public final class InquiryRoutes {
  private static final String INQUIRIES = "/api/v1/inquiries";
  private static final String INQUIRY = INQUIRIES + "/{id}";
  private static final int LONGEST_NAME = 200;

  private final Desk desk;
  private final EventStreams streams;

  /** The routes of a desk. */
  public InquiryRoutes(Desk desk, EventStreams streams) {
    this.desk = desk;
    this.streams = streams;
  }

  record Expecting(int expectedRevision) {}

  record NewText(int expectedRevision, String text, @Nullable String note) {}

  record Edits(int expectedRevision, @Nullable String note, List<EditWish> edits) {}

  record NewName(int expectedRevision, String name) {}

  record NewPlace(String place) {}

  /** Adds the routes. */
  public void add(RoutesConfig routes) {
    routes.get(INQUIRIES, this::list);
    routes.post(INQUIRIES, this::create);
    routes.post("/api/v1/import/step", this::importStep);
    routes.get(INQUIRY, ctx -> ctx.json(folder().read(Asked.id(ctx))));
    routes.get(INQUIRY + "/head", ctx -> ctx.json(folder().head(Asked.id(ctx))));
    routes.put(INQUIRY + "/text", this::save);
    routes.post(INQUIRY + "/edits", this::edit);
    routes.post(INQUIRY + "/undo", ctx -> ctx.json(folder().undo(Asked.id(ctx), expected(ctx))));
    routes.post(INQUIRY + "/redo", ctx -> ctx.json(folder().redo(Asked.id(ctx), expected(ctx))));
    routes.get(
        INQUIRY + "/revisions",
        ctx -> ctx.json(Map.of("revisions", folder().revisions(Asked.id(ctx)))));
    routes.get(
        INQUIRY + "/revisions/{revision}",
        ctx -> ctx.json(folder().revision(Asked.id(ctx), revision(ctx))));
    routes.post(INQUIRY + "/rename", this::rename);
    routes.post(INQUIRY + "/archive", this::archive);
    routes.get(INQUIRY + "/export", this::export);
    routes.get(INQUIRY + "/events", this::events);
  }

  private InquiryFolder folder() {
    return desk.inquiries();
  }

  private void list(Context ctx) {
    boolean archived = Asked.query(ctx, "archived", "no", "yes").equals("yes");
    ctx.json(Map.of("inquiries", folder().list(Asked.query(ctx, "find").orElse(""), archived)));
  }

  private void create(Context ctx) {
    InquiryText made = folder().create(Asked.body(ctx, NewInquiry.class));
    ctx.status(HttpStatus.CREATED).header("Location", INQUIRIES + "/" + made.id()).json(made);
  }

  private void importStep(Context ctx) {
    InquiryText made = folder().createFromStep(Asked.bytes(ctx));
    ctx.status(HttpStatus.CREATED).header("Location", INQUIRIES + "/" + made.id()).json(made);
  }

  private void save(Context ctx) {
    NewText asked = Asked.body(ctx, NewText.class);
    given("text", asked.text());
    ctx.json(
        folder().save(Asked.id(ctx), asked.expectedRevision(), asked.text(), note(asked.note())));
  }

  private void edit(Context ctx) {
    Edits asked = Asked.body(ctx, Edits.class);
    given("edits", asked.edits());
    ctx.json(
        folder()
            .editAll(Asked.id(ctx), asked.expectedRevision(), asked.edits(), note(asked.note())));
  }

  private static void given(String name, @Nullable Object value) {
    if (value == null || (value instanceof List<?> list && list.isEmpty())) {
      throw Asked.wrong(name + ": nothing, allowed: something");
    }
  }

  static String note(@Nullable String note) {
    return note == null ? "" : note;
  }

  static int expected(Context ctx) {
    return Asked.body(ctx, Expecting.class).expectedRevision();
  }

  private static int revision(Context ctx) {
    try {
      return Integer.parseInt(ctx.pathParam("revision"));
    } catch (NumberFormatException e) {
      throw DeskRefusal.of(
          DeskRefusal.Kind.MISSING, "There is no revision " + ctx.pathParam("revision") + ".");
    }
  }

  private void rename(Context ctx) {
    NewName asked = Asked.body(ctx, NewName.class);
    String name = asked.name() == null ? "" : asked.name().strip();
    if (name.isEmpty() || name.length() > LONGEST_NAME) {
      throw Asked.wrong("name: " + name.length() + " characters, allowed: 1 to " + LONGEST_NAME);
    }
    ctx.json(folder().rename(Asked.id(ctx), asked.expectedRevision(), name));
  }

  private void archive(Context ctx) {
    String place = String.valueOf(Asked.body(ctx, NewPlace.class).place());
    switch (place) {
      case "archive" -> folder().archive(Asked.id(ctx));
      case "desk" -> folder().bringBack(Asked.id(ctx));
      default -> throw Asked.wrong("place: " + place + ", allowed: archive, desk");
    }
    ctx.status(HttpStatus.NO_CONTENT);
  }

  private void export(Context ctx) {
    String text = folder().text(Asked.id(ctx));
    ctx.header(
            "Content-Disposition",
            "attachment; filename=\"" + folder().fileName(Asked.id(ctx)) + "\"")
        .contentType("application/yaml")
        .result(text);
  }

  private void events(Context ctx) {
    String id = Asked.id(ctx);
    folder().text(id);
    streams.open(
        ctx,
        stream -> {
          Runnable changes =
              desk.watch(
                  change -> {
                    if (change.id().equals(id)) {
                      stream.send("changed", change);
                    }
                  });
          Runnable jobs =
              desk.jobs()
                  .watch(
                      job -> {
                        if (job.inquiryId().equals(id)) {
                          stream.send("job", job);
                        }
                      });
          stream.onClose(
              () -> {
                changes.run();
                jobs.run();
              });
        });
  }
}
