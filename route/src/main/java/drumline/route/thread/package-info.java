/** Threads on the axis. */
package drumline.route.thread;
