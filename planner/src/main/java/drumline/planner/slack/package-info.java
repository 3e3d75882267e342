/** What to do with the time that positions have left once the cycle is fixed. */
package drumline.planner.slack;
