package drumline.store.sql;

import drumline.shop.quantity.Money;
import drumline.store.api.PlanShelf;
import drumline.store.database.BrokenConstraint;
import drumline.store.database.Database;
import drumline.store.entry.Plan;
import drumline.store.entry.PlanEntry;
import drumline.store.entry.PlanHead;
import java.math.BigDecimal;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.StatementContext;
import org.jspecify.annotations.Nullable;

/** The plans in their table. */
public final class PlanTable implements PlanShelf {
  private static final String ENTRY =
      "id, inquiry, revision, machine, seed, search_s, verdict, cycle_s, bound_s, piece_cost,"
          + " currency, who, at_ms";

  private final Database database;
  private final Clock clock;

  /** Of a database and the time of day. */
  public PlanTable(Database database, Clock clock) {
    this.database = database;
    this.clock = clock;
  }

  @Override
  public Plan add(PlanHead head, String planJson, @Nullable String studyContent, String who) {
    notNegative("searchS", head.searchS());
    notNegative("cycleS", head.cycleS());
    notNegative("boundS", head.boundS());
    long atMs = clock.millis();
    try {
      return database.write(
          handle -> {
            long id = insert(handle, head, planJson, studyContent, who, atMs);
            String subject = "inquiry/" + head.inquiryId();
            AuditLines.write(handle, atMs, who, "planned", subject, "plan " + id);
            return new Plan(id, head, who, Instant.ofEpochMilli(atMs), planJson, studyContent);
          });
    } catch (BrokenConstraint e) {
      throw new IllegalArgumentException(
          "there is no revision " + head.revision() + " of inquiry/" + head.inquiryId(), e);
    }
  }

  private static void notNegative(String name, @Nullable Double valueS) {
    if (valueS != null && !(valueS >= 0 && valueS < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " is " + valueS + "; allowed: from 0");
    }
  }

  private static long insert(
      Handle handle,
      PlanHead head,
      String planJson,
      @Nullable String studyContent,
      String who,
      long atMs) {
    Money cost = head.pieceCost();
    return handle
        .createQuery(
            "INSERT INTO plan (inquiry, revision, machine, seed, search_s, verdict, cycle_s,"
                + " bound_s, piece_cost, currency, who, at_ms, plan_json, study_content) VALUES"
                + " (:inquiry, :revision, :machine, :seed, :searchS, :verdict, :cycleS, :boundS,"
                + " :pieceCost, :currency, :who, :atMs, :planJson, :studyContent) RETURNING id")
        .bind("inquiry", head.inquiryId())
        .bind("revision", head.revision())
        .bind("machine", Words.kept("machine", head.machine()))
        .bind("seed", head.seed())
        .bind("searchS", head.searchS())
        .bind("verdict", Words.kept("verdict", head.verdict()))
        .bind("cycleS", head.cycleS())
        .bind("boundS", head.boundS())
        .bind("pieceCost", cost == null ? null : cost.amount().toPlainString())
        .bind("currency", cost == null ? null : cost.currency().getCurrencyCode())
        .bind("who", Words.required("who", who))
        .bind("atMs", atMs)
        .bind("planJson", Words.kept("planJson", planJson))
        .bind("studyContent", studyContent == null ? null : Words.kept("study", studyContent))
        .mapTo(Long.class)
        .one();
  }

  @Override
  public Optional<Plan> findPlan(long id) {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT * FROM plan WHERE id = :id")
                .bind("id", id)
                .map(PlanTable::plan)
                .findOne());
  }

  @Override
  public List<PlanEntry> list(long inquiryId) {
    return database.read(
        handle ->
            handle
                .createQuery("SELECT " + ENTRY + " FROM plan WHERE inquiry = :id ORDER BY id DESC")
                .bind("id", inquiryId)
                .map(PlanTable::entry)
                .list());
  }

  private static Plan plan(ResultSet row, StatementContext context) throws SQLException {
    PlanEntry entry = entry(row, context);
    return new Plan(
        entry.id(),
        entry.head(),
        entry.who(),
        entry.when(),
        row.getString("plan_json"),
        row.getString("study_content"));
  }

  private static PlanEntry entry(ResultSet row, StatementContext context) throws SQLException {
    String cost = row.getString("piece_cost");
    PlanHead head =
        new PlanHead(
            row.getLong("inquiry"),
            row.getInt("revision"),
            row.getString("machine"),
            row.getLong("seed"),
            row.getDouble("search_s"),
            row.getString("verdict"),
            nullableDouble(row, "cycle_s"),
            nullableDouble(row, "bound_s"),
            cost == null
                ? null
                : new Money(new BigDecimal(cost), Currency.getInstance(row.getString("currency"))));
    return new PlanEntry(
        row.getLong("id"), head, row.getString("who"), Instant.ofEpochMilli(row.getLong("at_ms")));
  }

  private static @Nullable Double nullableDouble(ResultSet row, String column) throws SQLException {
    double number = row.getDouble(column);
    return row.wasNull() ? null : number;
  }
}
