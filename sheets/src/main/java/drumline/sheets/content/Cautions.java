package drumline.sheets.content;

/** The caution that every sheet carries. */
public final class Cautions {
  /** For every study, in plain sentences. */
  public static final String GENERAL =
      "These are planning values. Clamping, speeds and tool clearances must be proven on the machine"
          + " by qualified people with guards closed, under the machine maker's limits, local codes"
          + " and the rules of the plant.";

  /** For the foot of every page. */
  public static final String FOOT =
      "Planning values: prove clamping, speeds and clearances on the machine before use.";

  private Cautions() {}
}
