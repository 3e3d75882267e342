package drumline.app.job;

/** Hears of a job; called on the job's own thread, so that it must not linger. */
public interface JobListener {

  /** Something got better. */
  void progress(JobProgress progress);

  /** Nothing more will come of it. */
  void ended(JobAnswer job);
}
