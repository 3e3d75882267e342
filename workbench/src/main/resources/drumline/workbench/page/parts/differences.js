// Lines that differ between two texts, by their longest common lines.

/** Lines with kind added or removed, and a gap where equal lines were left out. */
export function differences(before, after) {
  const one = before.split('\n');
  const other = after.split('\n');
  let start = 0;
  while (start < one.length && start < other.length && one[start] === other[start]) start++;
  let tail = 0;
  while (tail < one.length - start && tail < other.length - start && one.at(-1 - tail) === other.at(-1 - tail)) tail++;
  return walk(one.slice(start, one.length - tail), other.slice(start, other.length - tail));
}

function walk(one, other) {
  const length = common(one, other);
  const lines = [];
  let i = 0;
  let k = 0;
  while (i < one.length || k < other.length) {
    if (i < one.length && k < other.length && one[i] === other[k]) {
      if (lines.length && lines.at(-1).kind !== 'gap') lines.push({kind: 'gap', text: ''});
      i++;
      k++;
    } else if (i < one.length && (k >= other.length || length[i + 1][k] >= length[i][k + 1])) {
      lines.push({kind: 'removed', text: one[i++]});
    } else {
      lines.push({kind: 'added', text: other[k++]});
    }
  }
  return lines;
}

function common(one, other) {
  const length = Array.from({length: one.length + 1}, () => new Uint32Array(other.length + 1));
  for (let i = one.length - 1; i >= 0; i--) {
    for (let k = other.length - 1; k >= 0; k--) {
      length[i][k] = one[i] === other[k] ? length[i + 1][k + 1] + 1 : Math.max(length[i + 1][k], length[i][k + 1]);
    }
  }
  return length;
}
