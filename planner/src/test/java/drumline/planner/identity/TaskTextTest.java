package drumline.planner.identity;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.planner.balance.BalanceTask;
import drumline.planner.balance.text.BalanceReading;
import drumline.planner.balance.text.CsvTasks;
import drumline.planner.balance.text.In2Tasks;
import drumline.shop.problem.Problem;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Tasks as text: what is right is read, what is wrong is said, nothing is thrown. */
class TaskTextTest {
  private static final List<BalanceTask> THREE =
      List.of(
          new BalanceTask("1", 4, List.of()),
          new BalanceTask("2", 6, List.of("1")),
          new BalanceTask("3", 5, List.of("1", "2")));

  @Test
  void bothFormsReadTheSame() {
    BalanceReading csv = CsvTasks.read("a.csv", "id,time,predecessors\n1,4,\n2,6,1\n3,5,1;2\n");
    BalanceReading in2 =
        In2Tasks.read("a.IN2", "3\r\n4\r\n6\r\n5\r\n1,2\r\n1,3\r\n2,3\r\n-1,-1\r\n");
    assertThat(csv.problems()).isEmpty();
    assertThat(in2.problems()).isEmpty();
    assertThat(csv.tasks()).isEqualTo(THREE);
    assertThat(in2.tasks()).isEqualTo(THREE);
  }

  @Test
  void quotesSpacesAndRemarks() {
    String text = "\uFEFF# remark\n\n\"face, rough\" , 4\n bore,6,\"\"\nfinish,5, bore  bore\n";
    BalanceReading reading = CsvTasks.read("a.csv", text);
    assertThat(reading.problems()).isEmpty();
    assertThat(reading.tasks())
        .containsExactly(
            new BalanceTask("face, rough", 4, List.of()),
            new BalanceTask("bore", 6, List.of()),
            new BalanceTask("finish", 5, List.of("bore")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "a,4;b,x           | not-a-number  | a.csv, line 2 | the time \"x\"",
        "a,4;b,1.5         | not-a-number  | a.csv, line 2 | the time \"1.5\"",
        "a,4;b,99999999999 | not-a-number  | a.csv, line 2 | the time \"99999999999\"",
        "a,-4              | negative-time | a.csv, line 1 | the time -4",
        "a,4;a,5           | id-twice      | a.csv, line 2 | the task a again",
        "a,4;,5            | missing-id    | a.csv, line 2 | a task without a name",
        "a,4,b             | unknown-id    | a.csv, line 1 | the predecessor b of a",
        "a                 | bad-line      | a.csv, line 1 | 1 fields",
        "a,1,b,c           | bad-line      | a.csv, line 1 | 4 fields",
        "a,1,b;b,1,a       | order-circle  | a.csv         | tasks that wait for one another",
        "a,1,a             | order-circle  | a.csv         | a before a",
        "#                 | no-tasks      | a.csv, line 1 | no task"
      })
  void csvProblems(String text, String code, String where, String found) {
    BalanceReading reading = CsvTasks.read("a.csv", text.replace(';', '\n'));
    assertThat(reading.isUsable()).isFalse();
    assertThat(reading.problems()).extracting(Problem::code).containsExactly(code);
    assertThat(reading.problems().get(0).where()).isEqualTo(where);
    assertThat(reading.problems().get(0).found()).contains(found);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "''                | bad-line      | a.IN2, line 1",
        "x                 | bad-line      | a.IN2, line 1",
        "3 4 5             | bad-line      | a.IN2, line 3",
        "2 4 x -1,-1       | not-a-number  | a.IN2, line 3",
        "2 4 -5 -1,-1      | negative-time | a.IN2, line 3",
        "2 4 5 1,3 -1,-1   | unknown-id    | a.IN2, line 4",
        "2 4 5 1;2 -1,-1   | bad-line      | a.IN2, line 4",
        "2 4 5 1,2         | no-end        | a.IN2, line 4",
        "2 4 5 1,2 2,1 -1,-1 | order-circle | a.IN2"
      })
  void in2Problems(String text, String code, String where) {
    BalanceReading reading = In2Tasks.read("a.IN2", text.replace(' ', '\n'));
    assertThat(reading.isUsable()).isFalse();
    assertThat(reading.problems()).extracting(Problem::code).containsExactly(code);
    assertThat(reading.problems().get(0).where()).isEqualTo(where);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void nothingIsThrownWhateverStandsThere(int seed) {
    Random random = new Random(seed);
    String letters = "012-9,;\"\n\r #ax\t\uFEFF.";
    for (int round = 0; round < 3000; round++) {
      StringBuilder text = new StringBuilder();
      for (int c = random.nextInt(30); c > 0; c--) {
        text.append(letters.charAt(random.nextInt(letters.length())));
      }
      assertThat(CsvTasks.read("a", text.toString())).as("%s", text).isNotNull();
      assertThat(In2Tasks.read("a", text.toString())).as("%s", text).isNotNull();
    }
  }
}
