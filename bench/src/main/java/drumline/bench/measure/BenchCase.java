package drumline.bench.measure;

import java.util.List;

/** Something that is measured. */
public interface BenchCase {
  /** Name that it is asked for by. */
  String name();

  /**
   * Measures.
   *
   * @param sample how much of it
   */
  List<Measured> run(Sample sample);
}
