// Where a block can go: neighbours for the keyboard, and moves as the server takes them.

/** The column and lane in which an operation stands. */
export function placeOf(answer, operationId) {
  for (const column of answer.columns) {
    for (const lane of column.lanes) {
      const block = lane.blocks.find(one => one.operationId === operationId);
      if (block) return {column, lane, block};
    }
  }
  return null;
}

/** Operations of a column in the order of their beginning. */
export function orderOf(column) {
  return column.lanes.flatMap(lane => lane.blocks).sort((a, b) => a.orderCount - b.orderCount);
}

/** A move to the next column on either side; null at the ends. */
export function aside(answer, operationId, step) {
  const {column} = placeOf(answer, operationId);
  const next = answer.columns[answer.columns.indexOf(column) + step];
  return next && {operationId, position: next.position};
}

/** A move to the other slide of the same column; null where there is one only. */
export function acrossLanes(answer, operationId) {
  const {column, lane} = placeOf(answer, operationId);
  if (column.lanes.length < 2) return null;
  const next = column.lanes[(column.lanes.indexOf(lane) + 1) % column.lanes.length];
  return {operationId, slideId: next.slideId};
}

/** A move earlier or later within the column; null at the ends. */
export function inOrder(answer, operationId, step) {
  const {column, lane, block} = placeOf(answer, operationId);
  const order = block.orderCount + step;
  return order < 1 || order > orderOf(column).length ? null : {operationId, slideId: lane.slideId, order};
}

/** What a try has brought, in words. */
export function effect(before, after) {
  if (!before.cycle || !after.cycle) return 'no cycle';
  const change = after.cycle.cycleS - before.cycle.cycleS;
  const words = Math.abs(change) < 0.005 ? 'as before' : `${change > 0 ? '+' : '−'}${Math.abs(change).toFixed(2)} s`;
  return `cycle ${after.cycle.cycleS.toFixed(2)} s, ${words}`;
}

/** Words with the operations called by their titles instead of their short names. */
export function inTitles(answer, words) {
  const titles = new Map(answer.columns.flatMap(column => column.lanes).flatMap(lane => lane.blocks).map(block => [block.operationId, block.title]));
  return words.replace(/[a-z0-9]+(?:-[a-z0-9]+)+/gi, name => titles.get(name) ?? name);
}

/** Rules that do not hold, with every breach. */
export function broken(answer) {
  return answer.findings.filter(finding => !finding.isKept);
}

/** All breaches that a layout has and another has not. */
export function newBreaches(before, after) {
  const known = new Set(broken(before).flatMap(finding => finding.breaches.map(breach => breach.words)));
  return broken(after).flatMap(finding => finding.breaches.filter(breach => !known.has(breach.words)));
}
