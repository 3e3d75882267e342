package drumline.store.files;

import static drumline.store.files.Column.decimal;
import static drumline.store.files.Column.json;
import static drumline.store.files.Column.moment;
import static drumline.store.files.Column.text;
import static drumline.store.files.Column.whole;

import drumline.store.entry.Account;
import drumline.store.entry.LibraryKind;
import drumline.store.entry.RevisionKind;
import drumline.store.entry.Standing;
import java.util.List;

/** All tables, each behind those that it refers to. */
final class TableShapes {
  private static final Column STANDING = text("standing").oneOf(Standing.values());

  static final List<TableShape> ALL =
      List.of(
          new TableShape(
              "inquiry",
              "inquiries/{id}/inquiry.json",
              List.of("id"),
              List.of(
                  whole("id"),
                  whole("head"),
                  moment("created_at_ms"),
                  whole("copied_from").orNone(),
                  STANDING,
                  whole("summary_revision").orNone(),
                  json("summary").orNone().inFile("summary.json"))),
          revisions("inquiry", "inquiries/{owner}/revisions/{revision}.json"),
          new TableShape(
              "library",
              "libraries/{id}/library.json",
              List.of("id"),
              List.of(
                  whole("id"),
                  text("kind").oneOf(LibraryKind.values()),
                  whole("head"),
                  moment("created_at_ms"),
                  whole("copied_from").orNone(),
                  STANDING)),
          revisions("library", "libraries/{owner}/revisions/{revision}.json"),
          plans(),
          new TableShape(
              "runoff",
              "runoffs/{id}/runoff.json",
              List.of("id"),
              List.of(
                  whole("id"),
                  whole("inquiry"),
                  whole("revision"),
                  text("machine"),
                  text("title"),
                  text("who"),
                  moment("at_ms"),
                  STANDING)),
          new TableShape(
              "measurement",
              "runoffs/{runoff}/measurements.jsonl",
              List.of("runoff", "line"),
              List.of(
                  whole("runoff"),
                  whole("line"),
                  text("characteristic"),
                  whole("spindle"),
                  whole("piece"),
                  text("reading"),
                  text("unit"))),
          new TableShape(
              "account",
              "accounts.jsonl",
              List.of("id"),
              List.of(
                  whole("id"),
                  text("name"),
                  text("folded_name"),
                  text("password_hash"),
                  text("role").oneOf(Account.Role.values()),
                  text("access").oneOf(Account.Access.values()),
                  moment("created_at_ms"))),
          new TableShape(
              "audit_line",
              "audit.jsonl",
              List.of("id"),
              List.of(
                  whole("id"),
                  moment("at_ms"),
                  text("who"),
                  text("what"),
                  text("subject"),
                  text("note"))));

  private TableShapes() {}

  private static TableShape revisions(String owner, String path) {
    return new TableShape(
        owner + "_revision",
        path,
        List.of("owner", "revision"),
        List.of(
            whole("owner"),
            whole("revision"),
            text("name"),
            text("kind").oneOf(RevisionKind.values()),
            text("who"),
            moment("at_ms"),
            text("what"),
            whole("same_as"),
            whole("undo_to").orNone(),
            whole("redo_to").orNone(),
            text("text").inFile(".yaml")));
  }

  private static TableShape plans() {
    return new TableShape(
        "plan",
        "plans/{id}/plan.json",
        List.of("id"),
        List.of(
            whole("id"),
            whole("inquiry"),
            whole("revision"),
            text("machine"),
            whole("seed"),
            decimal("search_s"),
            text("verdict"),
            decimal("cycle_s").orNone(),
            decimal("bound_s").orNone(),
            text("piece_cost").orNone(),
            text("currency").orNone(),
            text("who"),
            moment("at_ms"),
            text("plan_json").inFile("layout.json"),
            text("study_content").orNone().inFile("study.txt")));
  }
}
