// How time becomes height, and which words fit into a block.

/** Font of the blocks; layout.css uses the same. */
const FONT = '12px "Liberation Sans", Arial, Helvetica, "Nimbus Sans", Roboto, sans-serif';
const LINE_PX = 15;
const PADDING_PX = 8;
const MOST_UPRIGHT_LINES = 2;

let context;

/** Width of a text in a block, in px. */
export function textWidth(text) {
  context ??= document.createElement('canvas').getContext('2d');
  context.font = FONT;
  return context.measureText(text).width;
}

/**
 * How a block carries its title: 'across' or 'upright' where the whole of it fits, else 'number', or 'bare' where not
 * even a number does.
 */
export function labelKind(title, widthPx, heightPx) {
  const lines = wrapped(blockWords(title), widthPx - PADDING_PX);
  if (lines * LINE_PX <= heightPx - 1) return 'across';
  const upright = wrapped(blockWords(title), heightPx - PADDING_PX);
  if (upright <= MOST_UPRIGHT_LINES && upright * LINE_PX <= widthPx - 2) return 'upright';
  return heightPx >= LINE_PX - 2 ? 'number' : 'bare';
}

/** How many lines words take within a width; infinite where one word is too long. */
function wrapped(words, widthPx) {
  let lines = 1;
  let line = '';
  for (const word of words.split(' ')) {
    if (textWidth(word) > widthPx) return Infinity;
    const longer = line ? `${line} ${word}` : word;
    if (textWidth(longer) > widthPx) lines += 1;
    line = textWidth(longer) > widthPx ? word : longer;
  }
  return lines;
}

/** A title as it breaks in a block: a count sign and a unit stay with their figure. */
export function blockWords(title) {
  return title.replace(/× (?=\S)/g, '×\u00a0').replace(/(\d) (?=mm$|in$|×)/g, '$1\u00a0').replace(/(\d) of (\d)/, '$1\u00a0of\u00a0$2');
}

/** Steps between lines of the time axis: 1, 2 or 5 times a power of ten, at least so many px apart. */
export function tickS(pxPerS, leastPx = 34) {
  for (const step of [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100]) {
    if (step * pxPerS >= leastPx) return step;
  }
  return 200;
}

/** All lines of the axis from 0 to the end. */
export function ticks(endS, pxPerS) {
  const step = tickS(pxPerS);
  return Array.from({length: Math.floor(endS / step + 1e-9) + 1}, (_, at) => at * step);
}

/** Numbers for the blocks that cannot carry their title, in the order of travel; Map from operation to number. */
export function numbered(columns, kindOf) {
  const numbers = new Map();
  for (const column of columns) {
    const blocks = column.lanes.flatMap(lane => lane.blocks.map(block => ({lane, block})));
    blocks.sort((a, b) => a.block.startS - b.block.startS);
    for (const {lane, block} of blocks) {
      if (['number', 'bare'].includes(kindOf(block, lane, column))) numbers.set(block.operationId, numbers.size + 1);
    }
  }
  return numbers;
}
