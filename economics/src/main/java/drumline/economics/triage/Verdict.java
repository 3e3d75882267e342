package drumline.economics.triage;

/** What a rule says, from best to worst. */
public enum Verdict {
  /** Nothing speaks against it. */
  FITS("fits"),
  /** Possible; a person must look at it. */
  LOOK_CLOSER("look closer"),
  /** Not this way. */
  DOES_NOT_FIT("does not fit");

  private final String words;

  Verdict(String words) {
    this.words = words;
  }

  /** As a reader sees it. */
  public String words() {
    return words;
  }

  /** The worse of two. */
  public Verdict worse(Verdict other) {
    return compareTo(other) >= 0 ? this : other;
  }

  /** The better of two. */
  public Verdict better(Verdict other) {
    return compareTo(other) <= 0 ? this : other;
  }
}
