// Lines over a scale, in ink: which is which by the pattern of the line as well as by its words.
import uPlot from 'uplot';

const DASHES = [[], [8, 4], [2, 3], [10, 4, 2, 4], [16, 4], [5, 2, 1, 2]];

/** Resolves a token to a plain colour, also one that differs in light and dark. */
function ink(holder, token) {
  const probe = document.createElement('span');
  probe.className = 'ink-probe';
  probe.style.color = `var(${token})`;
  holder.append(probe);
  const resolved = getComputedStyle(probe).color;
  probe.remove();
  return resolved;
}

const short = value => {
  const size = Math.abs(value);
  const text = size >= 1e6 ? `${+(value / 1e6).toFixed(2)} M` : size >= 1e3 ? `${+(value / 1e3).toFixed(1)} k` : String(+value.toFixed(2));
  return text.replace('-', '\u2212');
};

/**
 * Draws lines into a holder; answers the chart, to be destroyed by the caller.
 *
 * @param series {label, values, isAccent}
 * @param marks points on the drawing: {x, y, label, isAccent}; an x without y is an upright line
 */
export function lineChart(holder, {xs, xLabel, yLabel, series, marks, heightPx}) {
  const look = {ink: ink(holder, '--ink'), soft: ink(holder, '--soft'), faint: ink(holder, '--faint'), accent: ink(holder, '--accent'), paper: ink(holder, '--paper')};
  const font = '12px "Liberation Sans", Arial, Helvetica, sans-serif';
  const axis = label => ({label, labelFont: font, font, stroke: look.soft, labelSize: 20, labelGap: 2, size: 30, gap: 4, grid: {stroke: look.faint, width: 1}, ticks: {stroke: look.faint, width: 1, size: 4}});
  return new uPlot({
    width: Math.max(320, holder.clientWidth),
    height: heightPx,
    cursor: {show: false},
    legend: {show: false},
    scales: {x: {time: false}},
    axes: [
      {...axis(xLabel), values: (chart, splits) => splits.map(short)},
      {...axis(yLabel), size: 64, values: (chart, splits) => splits.map(short)},
    ],
    series: [{}, ...series.map((line, at) => ({label: line.label, stroke: line.isAccent ? look.accent : look.ink, width: line.isWide ? 2.5 : 1.5, dash: DASHES[at % DASHES.length], points: {show: false}}))],
    hooks: {draw: [chart => drawMarks(chart, marks, look, font)]},
  }, [xs, ...series.map(line => line.values)], holder);
}

function drawMarks(chart, marks, look, font) {
  const {ctx} = chart;
  const ratio = devicePixelRatio;
  ctx.save();
  ctx.font = font.replace('12px', `${12 * ratio}px`);
  ctx.textBaseline = 'bottom';
  for (const mark of marks) {
    const x = chart.valToPos(mark.x, 'x', true);
    const tone = mark.isAccent ? look.accent : look.ink;
    ctx.strokeStyle = tone;
    ctx.lineWidth = 1.5 * ratio;
    if (mark.y === undefined) {
      ctx.setLineDash([4 * ratio, 3 * ratio]);
      ctx.beginPath();
      ctx.moveTo(x, chart.bbox.top);
      ctx.lineTo(x, chart.bbox.top + chart.bbox.height);
      ctx.stroke();
      ctx.setLineDash([]);
      label(ctx, mark.label, x, chart.bbox.top + 16 * ratio, tone, chart, ratio);
    } else {
      const y = chart.valToPos(mark.y, 'y', true);
      ctx.fillStyle = look.paper;
      ctx.beginPath();
      ctx.arc(x, y, 4 * ratio, 0, 2 * Math.PI);
      ctx.fill();
      ctx.stroke();
      label(ctx, mark.label, x - 10 * ratio, y - 7 * ratio, tone, chart, ratio);
    }
  }
  ctx.restore();
}

function label(ctx, text, x, y, tone, chart, ratio) {
  const width = ctx.measureText(text).width;
  const fits = x + width + 8 * ratio < chart.bbox.left + chart.bbox.width;
  ctx.fillStyle = tone;
  ctx.fillText(text, fits ? x + 6 * ratio : x - width - 6 * ratio, y);
}

/** The patterns of the lines, for the key below a chart. */
export const dashOf = at => DASHES[at % DASHES.length].join(' ');
