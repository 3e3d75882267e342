package drumline.workbench.route;

import drumline.app.answer.DeskRefusal;
import drumline.app.desk.Desk;
import drumline.app.job.JobAnswer;
import drumline.app.job.JobListener;
import drumline.app.job.JobProgress;
import drumline.app.job.JobWish;
import drumline.workbench.event.EventStream;
import drumline.workbench.event.EventStreams;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import io.javalin.http.HttpStatus;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Planning in the background. */
public final class JobRoutes {
  private static final String JOBS = "/api/v1/jobs";
  private static final String JOB = JOBS + "/{jobId}";
  private static final double USUAL_S = 20;
  private static final int USUAL_SEED = 1;

  private final Desk desk;
  private final EventStreams streams;

  /** The routes of a desk. */
  public JobRoutes(Desk desk, EventStreams streams) {
    this.desk = desk;
    this.streams = streams;
  }

  record Plan(@Nullable List<String> machines, @Nullable Double seconds, @Nullable Integer seed) {}

  /** Adds the routes. */
  public void add(RoutesConfig routes) {
    routes.post("/api/v1/inquiries/{id}/plan", this::plan);
    routes.get(JOBS, ctx -> ctx.json(Map.of("jobs", desk.jobs().list())));
    routes.get(JOB, ctx -> ctx.json(desk.jobs().job(ctx.pathParam("jobId"))));
    routes.post(
        JOB + "/cancel",
        ctx -> ctx.status(HttpStatus.ACCEPTED).json(desk.jobs().cancel(ctx.pathParam("jobId"))));
    routes.get(JOB + "/events", this::events);
  }

  private void plan(Context ctx) {
    Plan asked = Asked.body(ctx, Plan.class);
    JobAnswer job = desk.plan(wish(ctx, asked));
    ctx.status(HttpStatus.ACCEPTED).header("Location", JOBS + "/" + job.id()).json(job);
  }

  private static JobWish wish(Context ctx, Plan asked) {
    try {
      return new JobWish(
          Asked.id(ctx),
          asked.machines() == null ? List.of() : asked.machines(),
          asked.seconds() == null ? USUAL_S : asked.seconds(),
          asked.seed() == null ? USUAL_SEED : asked.seed());
    } catch (IllegalArgumentException e) {
      throw DeskRefusal.of(DeskRefusal.Kind.REFUSED, String.valueOf(e.getMessage()));
    }
  }

  private void events(Context ctx) {
    String id = ctx.pathParam("jobId");
    desk.jobs().job(id);
    streams.open(
        ctx,
        stream -> {
          stream.send("job", desk.jobs().job(id));
          stream.onClose(desk.jobs().listen(id, listener(stream)));
        });
  }

  private static JobListener listener(EventStream stream) {
    return new JobListener() {
      @Override
      public void progress(JobProgress progress) {
        stream.sendLatest("progress", progress.machineName(), progress);
      }

      @Override
      public void ended(JobAnswer job) {
        stream.send("end", job);
        stream.end();
      }
    };
  }
}
