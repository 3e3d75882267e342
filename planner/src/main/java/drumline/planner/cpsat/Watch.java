package drumline.planner.cpsat;

import drumline.planner.model.Layout;

/** What a search tells while it runs, and how it is told to stop. */
public interface Watch {
  /** A better layout was found. */
  void layout(Layout layout);

  /** No layout can have a shorter cycle than this, in ms. */
  void bound(int lowerBoundMs);

  /** True once the search should end with what it has. */
  boolean isCancelled();

  /** A watch that looks away. */
  Watch NONE =
      new Watch() {
        @Override
        public void layout(Layout layout) {
          // nobody listens
        }

        @Override
        public void bound(int lowerBoundMs) {
          // nobody listens
        }

        @Override
        public boolean isCancelled() {
          return false;
        }
      };
}
