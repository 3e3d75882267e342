package drumline.store.crash;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.store.Stores;
import drumline.store.api.InquiryShelf;
import drumline.store.api.Store;
import drumline.store.api.StoreSettings;
import drumline.store.entry.RevisionEntry;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A hundred times: start, save, kill at a moment drawn by lot, look. */
class KilledProgramTest {
  private static final int LANES = 2;
  private static final int KILLS_IN_LANE = 50;
  private static final int LONGEST_LIFE_US = 60_000;
  private static final long SEED = 20260101L;
  private static final String SAVED = "saved ";

  @TempDir Path work;
  private String classPath = "";

  @Test
  void nothingSavedIsLostWhenTheProgramIsKilledAHundredTimes() throws Exception {
    classPath = ChildClassPath.in(work);
    Path archive = classArchive();
    ExecutorService lanes = Executors.newFixedThreadPool(LANES);
    int saves = 0;
    try {
      List<Callable<Integer>> tasks = new ArrayList<>();
      for (int lane = 1; lane <= LANES; lane++) {
        long seed = SEED + lane;
        tasks.add(() -> lane(archive, seed));
      }
      for (Future<Integer> lane : lanes.invokeAll(tasks)) {
        saves += lane.get();
      }
    } finally {
      lanes.shutdown();
    }
    assertThat(saves).as("revisions saved").isGreaterThan(LANES * KILLS_IN_LANE);
  }

  /** One store, one program at a time; answers how many revisions it said were saved. */
  private int lane(Path archive, long seed) throws Exception {
    Random random = new Random(seed);
    Path folder = work.resolve("data" + seed);
    int lastSaved = 1;
    int saves = 0;
    for (int kill = 1; kill <= KILLS_IN_LANE; kill++) {
      List<Integer> saved = runAndKill(archive, folder, random.nextInt(LONGEST_LIFE_US));
      saves += saved.size();
      lastSaved = saved.isEmpty() ? lastSaved : saved.get(saved.size() - 1);
      checkAfterKill("seed " + seed + ", kill " + kill, folder, lastSaved, saved);
    }
    checkWholeHistory(folder, lastSaved);
    return saves;
  }

  /** Makes each start quick; the run that makes it ends by itself. */
  private Path classArchive() throws Exception {
    Path archive = work.resolve("classes.jsa");
    Process process = start(List.of("-XX:ArchiveClassesAtExit=" + archive), work.resolve("x"), "3");
    process.getInputStream().readAllBytes();
    int code = process.waitFor();
    assertThat(code).as(Files.readString(work.resolve("errors.txt"))).isZero();
    return archive;
  }

  private Process start(List<String> options, Path folder, String... more) throws IOException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xshare:auto"));
    command.addAll(List.of("-Xlog:cds=off", "-Xlog:cds+dynamic=off"));
    command.add("-Dslf4j.internal.verbosity=ERROR");
    command.add("-Djava.io.tmpdir=" + work);
    command.addAll(options);
    command.addAll(List.of("-cp", classPath));
    command.add(SavingProgram.class.getName());
    command.add(folder.toString());
    command.addAll(List.of(more));
    return new ProcessBuilder(command)
        .redirectError(ProcessBuilder.Redirect.appendTo(work.resolve("errors.txt").toFile()))
        .start();
  }

  private List<Integer> runAndKill(Path archive, Path folder, int lifeUs) throws Exception {
    Process process = start(List.of("-XX:SharedArchiveFile=" + archive), folder);
    List<Integer> saved = new ArrayList<>();
    try (BufferedReader lines = process.inputReader(StandardCharsets.UTF_8)) {
      String first = lines.readLine();
      LockSupport.parkNanos(TimeUnit.MICROSECONDS.toNanos(lifeUs));
      process.toHandle().destroyForcibly(); // SIGKILL; what it said before can still be read
      for (String line = first; line != null && isWhole(line); line = lines.readLine()) {
        saved.add(Integer.valueOf(line.substring(SAVED.length())));
      }
    }
    assertThat(process.waitFor()).as(Files.readString(work.resolve("errors.txt"))).isEqualTo(137);
    return saved;
  }

  private static boolean isWhole(String line) {
    return line.matches(SAVED + "\\d+");
  }

  private static void checkAfterKill(String kill, Path folder, int lastSaved, List<Integer> saved)
      throws Exception {
    assertThat(integrity(folder)).as(kill).isEqualTo("ok");
    try (Store store = Stores.open(new StoreSettings.InFolder(folder))) {
      InquiryShelf shelf = store.inquiries();
      int head = shelf.head(1).revision();
      assertThat(head).as(kill).isBetween(lastSaved, lastSaved + 1);
      for (int revision : saved) {
        assertThat(shelf.revision(1, revision).text()).isEqualTo(SavingProgram.text(revision));
      }
      assertThat(shelf.head(1).text()).isEqualTo(SavingProgram.text(head));
    }
  }

  private static String integrity(Path folder) throws Exception {
    String url = "jdbc:sqlite:" + new StoreSettings.InFolder(folder).file();
    try (Connection connection = DriverManager.getConnection(url);
        Statement statement = connection.createStatement();
        ResultSet answer = statement.executeQuery("PRAGMA integrity_check")) {
      return answer.getString(1);
    }
  }

  private static void checkWholeHistory(Path folder, int lastSaved) throws Exception {
    try (Store store = Stores.open(new StoreSettings.InFolder(folder))) {
      List<RevisionEntry> history = store.inquiries().revisions(1);
      assertThat(history).hasSizeBetween(lastSaved, lastSaved + 1);
      for (RevisionEntry entry : history) {
        assertThat(store.inquiries().revision(1, entry.revision()).text())
            .isEqualTo(SavingProgram.text(entry.revision()));
      }
      assertThat(store.auditTrail().of("inquiry/1")).hasSameSizeAs(history);
    }
  }
}
