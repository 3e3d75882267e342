package drumline.workbench.route;

import drumline.app.answer.layout.PinAnswer;
import drumline.app.desk.Desk;
import drumline.app.layout.Move;
import drumline.app.view.Pictures;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Moving operations, stored layouts. */
public final class LayoutRoutes {
  private static final String INQUIRY = "/api/v1/inquiries/{id}";
  private static final String STORED = INQUIRY + "/layouts/{layoutId}";
  private static final int MOST = 1000;

  private final Desk desk;

  /** The routes of a desk. */
  public LayoutRoutes(Desk desk) {
    this.desk = desk;
  }

  record SavedMoves(int expectedRevision, @Nullable String note, List<Move> moves) {}

  record WhatIf(@Nullable String layoutId, List<Move> moves, @Nullable String pictures) {}

  record Pins(int expectedRevision, List<PinAnswer> pins) {}

  /** Adds the routes. */
  public void add(RoutesConfig routes) {
    routes.get(INQUIRY + "/layout", ctx -> ctx.json(desk.layouts().present(Asked.id(ctx))));
    routes.post(INQUIRY + "/layout", this::saveMoves);
    routes.post(INQUIRY + "/what-if", this::whatIf);
    routes.put(INQUIRY + "/pins", this::pin);
    routes.get(
        INQUIRY + "/operations/{operationId}",
        ctx -> ctx.json(desk.layouts().operation(Asked.id(ctx), ctx.pathParam("operationId"))));
    routes.get(
        INQUIRY + "/layouts",
        ctx -> ctx.json(Map.of("layouts", desk.layouts().entries(Asked.id(ctx)))));
    routes.get(
        STORED, ctx -> ctx.json(desk.layouts().stored(Asked.id(ctx), ctx.pathParam("layoutId"))));
    routes.post(
        STORED + "/use",
        ctx ->
            ctx.json(
                desk.layouts()
                    .use(Asked.id(ctx), ctx.pathParam("layoutId"), InquiryRoutes.expected(ctx))));
    routes.get(INQUIRY + "/compare", this::compare);
  }

  private void saveMoves(Context ctx) {
    SavedMoves asked = Asked.body(ctx, SavedMoves.class);
    ctx.json(
        desk.layouts()
            .saveMoves(
                Asked.id(ctx),
                asked.expectedRevision(),
                some("moves", asked.moves()),
                InquiryRoutes.note(asked.note())));
  }

  private void whatIf(Context ctx) {
    WhatIf asked = Asked.body(ctx, WhatIf.class);
    ctx.json(
        desk.layouts()
            .whatIf(
                Asked.id(ctx),
                asked.layoutId(),
                some("moves", asked.moves()),
                "no".equals(asked.pictures()) ? Pictures.LEFT_OUT : Pictures.DRAWN));
  }

  private void pin(Context ctx) {
    Pins asked = Asked.body(ctx, Pins.class);
    ctx.json(
        desk.layouts().pin(Asked.id(ctx), asked.expectedRevision(), some("pins", asked.pins())));
  }

  private static <T> List<T> some(String name, @Nullable List<T> list) {
    if (list == null || list.size() > MOST) {
      throw Asked.wrong(
          name + ": " + (list == null ? "nothing" : list.size()) + ", allowed: a list to " + MOST);
    }
    return list;
  }

  private void compare(Context ctx) {
    String one = Asked.query(ctx, "one").orElseThrow(() -> Asked.wrong("one: no layoutId"));
    String other = Asked.query(ctx, "other").orElseThrow(() -> Asked.wrong("other: no layoutId"));
    ctx.json(desk.comparisons().of(Asked.id(ctx), one, other));
  }
}
