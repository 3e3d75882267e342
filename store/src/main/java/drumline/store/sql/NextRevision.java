package drumline.store.sql;

import drumline.store.entry.Revision;
import drumline.store.entry.RevisionEntry;
import drumline.store.entry.RevisionKind;
import java.time.Instant;

/**
 * Makes the revision that follows a head. Undo and redo copy an earlier revision, with its own ways
 * back and forth, so that both work across restarts and nothing is taken out of the history.
 *
 * @param head the present revision
 * @param who the person
 * @param when now
 */
record NextRevision(Revision head, String who, Instant when) {

  Revision saved(String text, String what) {
    return edited(RevisionKind.SAVED, head.name(), text, what);
  }

  Revision renamed(String name) {
    return edited(RevisionKind.RENAMED, name, head.text(), head.name() + " → " + name);
  }

  private Revision edited(RevisionKind kind, String name, String text, String what) {
    int number = head.revision() + 1;
    return new Revision(
        new RevisionEntry(
            head.id(), number, name, kind, who, when, what, number, head.revision(), null),
        text);
  }

  /** To the revision that the head's undo points to. */
  Revision undone(Revision target) {
    RevisionEntry to = target.entry();
    return new Revision(
        new RevisionEntry(
            head.id(),
            head.revision() + 1,
            to.name(),
            RevisionKind.UNDONE,
            who,
            when,
            "back to revision " + to.sameAs(),
            to.sameAs(),
            to.undoTo(),
            head.revision()),
        target.text());
  }

  /** To the revision that the head's redo points to. */
  Revision redone(Revision target) {
    RevisionEntry to = target.entry();
    return new Revision(
        new RevisionEntry(
            head.id(),
            head.revision() + 1,
            to.name(),
            RevisionKind.REDONE,
            who,
            when,
            "forward to revision " + to.sameAs(),
            to.sameAs(),
            to.undoTo(),
            to.redoTo()),
        target.text());
  }
}
