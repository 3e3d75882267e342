package drumline.store.entry;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * One line of a history: who made which revision, when, and what it changed.
 *
 * @param id the inquiry or library
 * @param revision number in the history, from 1 without gaps
 * @param name the name as of this revision
 * @param kind how it came about
 * @param who the person
 * @param when to the millisecond
 * @param what what changed, in the person's or the page's words
 * @param sameAs the revision that first carried this text and name: itself, unless undone or redone
 * @param undoTo the revision whose text and name one step back brings, or null at the beginning
 * @param redoTo the revision whose text and name one step forward brings, or null where no undo was
 */
public record RevisionEntry(
    long id,
    int revision,
    String name,
    RevisionKind kind,
    String who,
    Instant when,
    String what,
    int sameAs,
    @Nullable Integer undoTo,
    @Nullable Integer redoTo) {}
