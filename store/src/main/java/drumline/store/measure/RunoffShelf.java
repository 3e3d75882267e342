package drumline.store.measure;

import java.util.List;
import java.util.Optional;

/** The run-offs. Readings are added, never changed; a spoilt run-off is archived. */
public interface RunoffShelf {

  /**
   * Begins a record.
   *
   * @throws IllegalArgumentException if the inquiry has no such revision
   */
  Runoff begin(RunoffHead head, String who);

  /**
   * Adds readings, all or none.
   *
   * @throws IllegalArgumentException if there is no such run-off, or a reading of the same
   *     characteristic, spindle and piece is there already
   */
  Runoff add(long id, List<Measurement> measurements, String who);

  /** The run-off, or empty. */
  Optional<Runoff> findRunoff(long id);

  /** All of an inquiry, archived ones too, in the order in which they were begun. */
  List<RunoffEntry> list(long inquiryId);

  /**
   * Lays it away.
   *
   * @throws IllegalArgumentException if there is no such run-off
   */
  void archive(long id, String who, String why);
}
