package drumline.store.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import drumline.shop.quantity.Money;
import drumline.store.entry.Account;
import drumline.store.entry.AuditEntry;
import drumline.store.entry.Plan;
import drumline.store.entry.PlanEntry;
import drumline.store.entry.PlanHead;
import drumline.store.entry.Standing;
import drumline.store.measure.Measurement;
import drumline.store.measure.Runoff;
import drumline.store.measure.RunoffEntry;
import drumline.store.measure.RunoffHead;
import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans, run-offs, accounts, the audit trail. */
interface ShelfContract extends Bench {
  Currency EUR = Currency.getInstance("EUR");

  private long inquiry() {
    return store().inquiries().create("Nipple", "a", "Ana").id();
  }

  @Test
  default void aPlanComesBackToTheLastDigit() {
    long id = inquiry();
    PlanHead head =
        new PlanHead(
            id,
            1,
            "six spindles",
            -7234567890123456789L,
            0.1,
            "feasible",
            13.1,
            12.950000000000001,
            new Money(new BigDecimal("0.18400"), EUR));
    String json = "{ \"b\": 1.50,\r\n  \"a\" : 1e3, \"a\": 2 }";
    Plan plan = store().plans().add(head, json, "Study Ø\n", "Ana");
    assertThat(store().plans().findPlan(plan.id())).contains(plan);
    assertThat(plan.head()).isEqualTo(head);
    assertThat(plan.planJson()).isEqualTo(json);
    assertThat(plan.head().pieceCost().toText()).isEqualTo("0.18400 EUR");
  }

  @Test
  default void aPlanMayHaveNoLayoutAndIsListedNewestFirst() {
    long id = inquiry();
    PlanHead none = new PlanHead(id, 1, "six", 1, 20, "no layout", null, null, null);
    Plan first = store().plans().add(none, "{}", null, "Ana");
    Plan second = store().plans().add(none, "{}", null, "Ben");
    assertThat(store().plans().findPlan(first.id())).contains(first);
    assertThat(store().plans().list(id))
        .extracting(PlanEntry::id)
        .containsExactly(second.id(), first.id());
    assertThat(store().plans().list(id)).extracting(PlanEntry::head).containsOnly(none);
    assertThat(store().plans().list(id + 1)).isEmpty();
    assertThat(store().plans().findPlan(99)).isEmpty();
  }

  @Test
  default void aPlanOfNothingIsRefused() {
    long id = inquiry();
    PlanHead head = new PlanHead(id, 2, "six", 1, 20, "feasible", 1.0, 1.0, null);
    assertThatThrownBy(() -> store().plans().add(head, "{}", null, "Ana"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("there is no revision 2 of inquiry/" + id);
    PlanHead noTime = new PlanHead(id, 1, "six", 1, 20, "feasible", Double.NaN, 1.0, null);
    assertThatThrownBy(() -> store().plans().add(noTime, "{}", null, "Ana"))
        .hasMessage("cycleS is NaN; allowed: from 0");
    assertThat(store().count().planCount()).isZero();
  }

  private static Measurement reading(String characteristic, int spindle, int piece, String value) {
    return new Measurement(characteristic, spindle, piece, new BigDecimal(value), "mm");
  }

  @Test
  default void readingsKeepTheDigitsOfTheGauge() {
    long inquiry = inquiry();
    Runoff begun = store().runoffs().begin(new RunoffHead(inquiry, 1, "six", "first"), "Ana");
    long id = begun.entry().id();
    List<Measurement> two = List.of(reading("Ø12", 1, 1, "12.0030"), reading("Ø12", 2, 1, "-0.0"));
    store().runoffs().add(id, two, "Ana");
    store().runoffs().add(id, List.of(reading("Ø12", 1, 2, "12.1")), "Ben");
    Runoff runoff = store().runoffs().findRunoff(id).orElseThrow();
    assertThat(runoff.measurements())
        .extracting(one -> one.value().toPlainString())
        .containsExactly("12.0030", "0.0", "12.1");
    assertThat(store().runoffs().list(inquiry))
        .containsExactly(runoff.entry())
        .extracting(RunoffEntry::measurementCount)
        .containsExactly(3);
    store().runoffs().archive(id, "Ana", "wrong collet");
    assertThat(store().runoffs().list(inquiry))
        .extracting(RunoffEntry::standing)
        .containsExactly(Standing.ARCHIVED);
    assertThat(store().auditTrail().of("runoff/" + id).get(3).note()).isEqualTo("wrong collet");
  }

  @Test
  default void aReadingTakenTwiceRefusesAllThatCameWithIt() {
    long inquiry = inquiry();
    long id =
        store().runoffs().begin(new RunoffHead(inquiry, 1, "six", "first"), "Ana").entry().id();
    store().runoffs().add(id, List.of(reading("Ø12", 1, 1, "12.0")), "Ana");
    List<Measurement> again = List.of(reading("Ø12", 1, 2, "12.0"), reading("Ø12", 1, 1, "12.1"));
    assertThatThrownBy(() -> store().runoffs().add(id, again, "Ana"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("measured twice in runoff/" + id);
    assertThat(store().runoffs().findRunoff(id).orElseThrow().measurements()).hasSize(1);
    assertThatThrownBy(() -> store().runoffs().add(99, again, "Ana"))
        .hasMessage("there is no runoff 99");
    assertThatThrownBy(
            () -> store().runoffs().begin(new RunoffHead(inquiry, 5, "six", "first"), "Ana"))
        .hasMessage("there is no revision 5 of inquiry/" + inquiry);
  }

  @Test
  default void anAccountIsChangedButNeverRemoved() {
    store().accounts().create("Ana", "hash 1", Account.Role.KEEPER, "first start");
    assertThatThrownBy(
            () -> store().accounts().create("ANA ", "hash 2", Account.Role.READER, "Ana"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("name is ANA , which is taken");
    store().accounts().create("Ben", "hash 3", Account.Role.READER, "Ana");
    store().accounts().changePassword("ben", "hash 4", "Ben");
    store().accounts().changeRole("Ben", Account.Role.PLANNER, "Ana");
    store().accounts().changeAccess("Ben", Account.Access.DISABLED, "Ana");
    Account ben = store().accounts().findAccount("BEN").orElseThrow();
    assertThat(ben.passwordHash()).isEqualTo("hash 4");
    assertThat(ben.role()).isEqualTo(Account.Role.PLANNER);
    assertThat(ben.access()).isEqualTo(Account.Access.DISABLED);
    assertThat(store().accounts().list()).extracting(Account::name).containsExactly("Ana", "Ben");
    assertThat(store().accounts().findAccount("Cem")).isEmpty();
    assertThatThrownBy(() -> store().accounts().changeRole("Cem", Account.Role.READER, "Ana"))
        .hasMessage("there is no account Cem");
    assertThat(store().auditTrail().latest(50))
        .extracting(AuditEntry::note)
        .noneMatch(note -> note.contains("hash"));
  }

  @Test
  default void theAuditTrailSaysWhoDidWhat() {
    long id = inquiry();
    store().auditTrail().write("Ben", "logged in", "account/Ben", "");
    store().inquiries().archive(id, "Ana");
    assertThat(store().auditTrail().latest(2))
        .extracting(entry -> entry.who() + " " + entry.what() + " " + entry.subject())
        .containsExactly("Ana archived inquiry/" + id, "Ben logged in account/Ben");
    assertThatThrownBy(() -> store().auditTrail().latest(0))
        .hasMessage("lineCount is 0; allowed: from 1");
    assertThatThrownBy(() -> store().auditTrail().write("", "x", "y", ""))
        .hasMessageContaining("who is blank");
  }
}
