package drumline.workbench;

import drumline.app.answer.DeskRefusal;
import drumline.app.desk.Desk;
import drumline.workbench.door.Door;
import drumline.workbench.door.PageHeaders;
import drumline.workbench.event.EventStreams;
import drumline.workbench.log.Counters;
import drumline.workbench.log.LogFile;
import drumline.workbench.log.RequestLog;
import drumline.workbench.route.Asked;
import drumline.workbench.route.InquiryRoutes;
import drumline.workbench.route.JobRoutes;
import drumline.workbench.route.LayoutRoutes;
import drumline.workbench.route.LeafRoutes;
import drumline.workbench.route.PageRoutes;
import drumline.workbench.route.Refusals;
import drumline.workbench.route.ServerRoutes;
import io.javalin.Javalin;
import io.javalin.config.JavalinConfig;
import io.javalin.json.JavalinJackson;
import io.javalin.util.JavalinBindException;
import java.net.URI;
import java.util.List;

/** The workbench: a server for one person, on the loopback address. */
public final class Workbench implements AutoCloseable {
  /** The only address that it listens on. */
  private static final String LOOPBACK = "127.0.0.1";

  private final Desk desk;
  private final EventStreams streams;
  private final Javalin server;

  private Workbench(Desk desk, EventStreams streams, Javalin server) {
    this.desk = desk;
    this.streams = streams;
    this.server = server;
  }

  /**
   * Opens the desk and starts the server.
   *
   * @throws DeskRefusal if the folder cannot be used, or the port is taken; it says why
   */
  public static Workbench start(WorkbenchSettings settings) {
    LogFile.write(settings.desk().folder());
    Desk desk = Desk.open(settings.desk());
    EventStreams streams = new EventStreams();
    Javalin server = Javalin.create(config -> configure(config, settings, desk, streams));
    try {
      server.start(LOOPBACK, settings.port());
    } catch (JavalinBindException e) {
      desk.close();
      throw DeskRefusal.of(
          DeskRefusal.Kind.REFUSED,
          "port " + settings.port() + " is taken; allowed: a free one. Maybe --port 0.");
    }
    return new Workbench(desk, streams, server);
  }

  private static void configure(
      JavalinConfig config, WorkbenchSettings settings, Desk desk, EventStreams streams) {
    config.startup.showJavalinBanner = false;
    config.startup.showOldJavalinVersionWarning = false;
    config.startup.startupWatcherEnabled = false;
    config.http.maxRequestSize = Door.MOST_BYTES;
    config.http.prefer405over404 = true;
    config.jsonMapper(new JavalinJackson(Asked.MAPPER, false));
    Counters counters = new Counters();
    config.requestLogger.http(new RequestLog(counters));
    config.routes.before(new Door());
    config.routes.after(new PageHeaders());
    new ServerRoutes(desk, settings.version(), counters).add(config.routes);
    new InquiryRoutes(desk, streams).add(config.routes);
    new LeafRoutes(desk).add(config.routes);
    new LayoutRoutes(desk).add(config.routes);
    new JobRoutes(desk, streams).add(config.routes);
    new PageRoutes().add(config.routes);
    Refusals.add(config.routes);
  }

  /** Its address. */
  public URI address() {
    return URI.create("http://" + LOOPBACK + ":" + server.port() + "/");
  }

  /** Every route as method and path, for whoever checks the contract. */
  public List<String> routes() {
    return server.unsafe.internalRouter.allHttpHandlers().stream()
        .map(parsed -> parsed.endpoint)
        .filter(endpoint -> endpoint.method.isHttpMethod())
        .map(endpoint -> endpoint.method.name() + " " + endpoint.path)
        .sorted()
        .toList();
  }

  /** Where everything is kept, for people. */
  public String place() {
    return desk.place();
  }

  /** Puts the worked examples on an empty desk and has them planned in the background. */
  public void layOutExamples() {
    desk.layOutExamples();
  }

  /** Ends the jobs, keeps what they found, and stops. */
  @Override
  public void close() {
    streams.close();
    server.stop();
    desk.close();
  }
}
