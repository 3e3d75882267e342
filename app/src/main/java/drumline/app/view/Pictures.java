package drumline.app.view;

/** Whether an answer carries drawings. */
public enum Pictures {
  /** It does. */
  DRAWN,
  /** It does not. */
  LEFT_OUT
}
