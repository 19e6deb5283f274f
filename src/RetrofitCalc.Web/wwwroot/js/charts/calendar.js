import { heads } from "./inks.js";
import { scale } from "./axes.js";

const marks = {
  HollowCircle: { pointStyle: "circle", pointRadius: 6, pointBorderWidth: 2.5 },
  FilledSquare: { pointStyle: "rect", pointRadius: 7.5, pointBorderWidth: 2 },
};

/// One band for each row of the page, a thin line for each part in it, marks where something falls due.
export function calendar(spec, { ink, brush, narrow, size }) {
  return {
    type: "scatter",
    data: {
      datasets: spec.series.map((series) => ({
        label: series.name,
        data: series.points.map((p) => ({ x: p.x, y: p.y })),
        ...marks[series.ink],
        showLine: false,
        pointBackgroundColor: brush[series.ink].fill,
        pointBorderColor: brush[series.ink].edge,
        clip: false,
      })),
    },
    options: {
      layout: { padding: { right: 10 } },
      plugins: { legend: { display: false } },
      scales: {
        x: scale(spec.across, ink, { position: "top", grid: { color: ink.rule }, border: { display: false }, ticks: { autoSkip: narrow, autoSkipPadding: 14 } }),
        y: scale(spec.up, ink, {
          reverse: true,
          grid: { display: false },
          border: { display: false },
          ticks: { display: !narrow, crossAlign: "far", color: ink.ink },
        }),
      },
    },
    plugins: [
      { beforeDatasetsDraw: (chart) => tracks(chart, spec, ink) },
      { afterDatasetsDraw: (chart) => narrow && heads(chart, spec.up.ticks.map((t) => t.lines), { size, family: ink.family }, ink) },
    ],
  };
}

function tracks(chart, spec, ink) {
  const { ctx, chartArea, scales } = chart;
  const rows = new Set(spec.series.flatMap((s) => s.points.map((p) => p.y)));
  ctx.save();
  ctx.strokeStyle = ink.ruleStrong;
  for (const row of rows) line(ctx, chartArea, scales.y.getPixelForValue(row));
  ctx.strokeStyle = ink.rule;
  for (const tick of spec.up.ticks) line(ctx, { left: 0, right: chartArea.right }, scales.y.getPixelForValue(tick.at + 0.5));
  ctx.restore();
}

function line(ctx, { left, right }, y) {
  ctx.beginPath();
  ctx.moveTo(left, y);
  ctx.lineTo(right, y);
  ctx.stroke();
}
