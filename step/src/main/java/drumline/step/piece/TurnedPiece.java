package drumline.step.piece;

import drumline.step.contour.BoreSteps;
import drumline.step.contour.Recess;
import drumline.step.contour.Step;
import drumline.step.feature.FlatFinder;
import drumline.step.feature.Found;
import java.util.List;
import java.util.Optional;

/**
 * A turned piece as it was recognised; z = 0 at its front face, lengths in mm.
 *
 * @param lengthMm length over all
 * @param outside steps of the outside, front to back
 * @param bores bores from both ends
 * @param grooves grooves outside, inside and in the end faces
 * @param features holes, flats, slots, inside forms
 * @param bar polygon that may be the bar's own
 * @param notes what a person must look at, each a sentence
 */
public record TurnedPiece(
    double lengthMm,
    List<Step> outside,
    BoreSteps bores,
    List<Recess> grooves,
    List<Found> features,
    Optional<FlatFinder.BarHint> bar,
    List<String> notes) {

  /** Copies the lists. */
  public TurnedPiece {
    outside = List.copyOf(outside);
    grooves = List.copyOf(grooves);
    features = List.copyOf(features);
    notes = List.copyOf(notes);
  }

  /** The same with more notes before its own. */
  TurnedPiece withNotesBefore(List<String> more) {
    List<String> all = new java.util.ArrayList<>(more);
    all.addAll(notes);
    return new TurnedPiece(lengthMm, outside, bores, grooves, features, bar, all);
  }

  /** Notes on what was not understood or not written, apart from simplifications. */
  public List<String> openNotes() {
    return notes.stream().filter(n -> n.startsWith("NOT ") || n.startsWith("PROBABLY ")).toList();
  }
}
