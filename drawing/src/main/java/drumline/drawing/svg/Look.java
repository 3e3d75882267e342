package drumline.drawing.svg;

/** Where a drawing will be seen. */
public enum Look {
  /** On a page: colours are variables that follow the reader's light or dark setting. */
  SCREEN,
  /** Inside a page that carries {@link DrawingStyle} itself. */
  INSIDE,
  /** In print: plain colours on white, for renderers that do not know variables. */
  PAPER
}
