package drumline.app.balance;

import drumline.app.json.BalanceJson;
import drumline.app.listing.BalanceListing;
import drumline.planner.balance.BalanceProblem;
import drumline.planner.balance.BalanceResult;
import drumline.planner.balance.BalanceTask;
import drumline.planner.balance.Balancer;
import drumline.planner.balance.text.BalanceReading;
import drumline.planner.balance.text.CsvTasks;
import drumline.planner.balance.text.In2Tasks;
import drumline.shop.problem.Problem;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Plain balancing of known times, from a table or a precedence graph in a file.
 *
 * @param tasks what was read
 * @param result the sharing; empty where the file is wrong
 * @param problems what is wrong with the file
 */
public record BalanceFile(
    List<BalanceTask> tasks, Optional<BalanceResult> result, List<Problem> problems) {
  private static final long LARGEST_BYTES = 1_000_000;

  /** Copies the lists. */
  public BalanceFile {
    tasks = List.copyOf(tasks);
    problems = List.copyOf(problems);
  }

  /**
   * Reads a file and shares its tasks.
   *
   * @param file a table (CSV) or, by its ending {@code .in2}, a precedence graph
   * @param stationCount positions, 1 or more
   * @param searchS effort in seconds, above 0
   * @param stop asked now and then whether to end with the best so far
   */
  public static BalanceFile balance(
      Path file, int stationCount, double searchS, BooleanSupplier stop) {
    String name = String.valueOf(file.getFileName());
    try {
      if (Files.size(file) > LARGEST_BYTES) {
        return wrong("file-too-large", name, Files.size(file) + " bytes", "up to 1 MB");
      }
      String text = Files.readString(file, StandardCharsets.UTF_8);
      boolean graph = name.toLowerCase(Locale.ROOT).endsWith(".in2");
      BalanceReading reading = graph ? In2Tasks.read(name, text) : CsvTasks.read(name, text);
      if (!reading.isUsable()) {
        return new BalanceFile(reading.tasks(), Optional.empty(), reading.problems());
      }
      BalanceResult result =
          Balancer.balance(new BalanceProblem(reading.tasks(), stationCount), searchS, stop);
      return new BalanceFile(reading.tasks(), Optional.of(result), reading.problems());
    } catch (CharacterCodingException e) {
      return wrong("not-text", name, "bytes that are no UTF-8 text", "a text file");
    } catch (IOException e) {
      return wrong("cannot-read", name, "cannot be read", "a file that exists");
    }
  }

  /**
   * The sharing as a table.
   *
   * @throws IllegalStateException if the file is wrong
   */
  public String text(int stationCount) {
    return BalanceListing.text(stationCount, tasks, shared());
  }

  /**
   * The sharing as JSON.
   *
   * @throws IllegalStateException if the file is wrong
   */
  public String json(int stationCount) {
    return BalanceJson.text(stationCount, tasks, shared());
  }

  /** Whether the file could be read and its tasks shared. */
  public boolean isShared() {
    return result.isPresent();
  }

  private BalanceResult shared() {
    return result.orElseThrow(() -> new IllegalStateException("the file is wrong"));
  }

  private static BalanceFile wrong(String code, String where, String found, String allowed) {
    Problem problem = Problem.error(code, where, found, allowed, "");
    return new BalanceFile(List.of(), Optional.empty(), List.of(problem));
  }
}
