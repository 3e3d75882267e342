package drumline.app.job;

import drumline.app.ask.SearchWatch;

/** What a job does. */
public interface PlanningWork {

  /** Plans, keeps what was found, and says what came of it. */
  JobResult plan(JobWish wish, SearchWatch watch);
}
