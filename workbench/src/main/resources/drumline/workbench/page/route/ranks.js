// Places for the order graph: what comes first stands left, and lines that say nothing new are left out.

/** Orders that do not follow from others: a before b is left out where a before c before b stands. */
export function direct(orders) {
  const next = new Map();
  for (const {beforeId, afterId} of orders) {
    if (!next.has(beforeId)) next.set(beforeId, new Set());
    next.get(beforeId).add(afterId);
  }
  const reach = new Map();
  const reached = (id, seen = new Set()) => {
    if (reach.has(id)) return reach.get(id);
    if (seen.has(id)) return new Set();
    seen.add(id);
    const all = new Set();
    for (const after of next.get(id) ?? []) {
      all.add(after);
      for (const further of reached(after, seen)) all.add(further);
    }
    reach.set(id, all);
    return all;
  };
  const seenPairs = new Set();
  return orders.filter(order => {
    const pair = `${order.beforeId} ${order.afterId}`;
    if (seenPairs.has(pair)) return false;
    seenPairs.add(pair);
    return ![...(next.get(order.beforeId) ?? [])].some(other => other !== order.afterId && reached(other).has(order.afterId));
  });
}

/** Column of each operation: one more than the furthest before it. */
export function ranks(operations, orders) {
  const rank = new Map(operations.map(operation => [operation.id, 0]));
  for (let round = 0; round < operations.length; round++) {
    let isMoved = false;
    for (const {beforeId, afterId} of orders) {
      if (rank.get(afterId) < rank.get(beforeId) + 1) {
        rank.set(afterId, rank.get(beforeId) + 1);
        isMoved = true;
      }
    }
    if (!isMoved) break;
  }
  return rank;
}

/** Rows within columns, turned so that lines cross little: each near the middle of what it follows. */
export function rows(operations, orders, rank) {
  const columns = [];
  for (const operation of operations) (columns[rank.get(operation.id)] ??= []).push(operation.id);
  const row = new Map();
  columns.forEach(column => column?.forEach((id, at) => row.set(id, at)));
  for (let round = 0; round < 6; round++) {
    for (const column of round % 2 ? [...columns].reverse() : columns) {
      const wish = id => {
        const near = orders.filter(order => (round % 2 ? order.beforeId : order.afterId) === id).map(order => row.get(round % 2 ? order.afterId : order.beforeId));
        return near.length ? near.reduce((sum, at) => sum + at, 0) / near.length : row.get(id);
      };
      const wishes = new Map(column.map(id => [id, wish(id)]));
      column.sort((one, other) => wishes.get(one) - wishes.get(other));
      column.forEach((id, at) => row.set(id, at));
    }
  }
  return {row, heightCount: Math.max(...columns.map(column => column?.length ?? 0)), columnCount: columns.length};
}
