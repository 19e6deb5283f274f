import { scale } from "./axes.js";
import { write, widthOf } from "./inks.js";

const looks = {
  NowLine: { showLine: true, borderWidth: 2.5, pointRadius: 0 },
  ProposedLine: { showLine: true, borderWidth: 2.5, pointRadius: 3 },
  NowCurve: { showLine: true, borderWidth: 2, pointRadius: 0 },
  ProposedCurve: { showLine: true, borderWidth: 2, pointRadius: 0, borderDash: [6, 3] },
  Span: { showLine: true, borderWidth: 7, pointRadius: 0 },
  Ring: { showLine: false, pointRadius: 6.5, pointBorderWidth: 2.5 },
};

/// A line over years, the point that matters, and how far that point may lie off.
export function lines(spec, { ink, brush, narrow, size }) {
  const style = { size, family: ink.family };
  return {
    type: "scatter",
    data: {
      datasets: spec.series.map((series) => ({
        label: series.name,
        data: series.points.map((p) => ({ x: p.x, y: p.y })),
        ...looks[series.ink],
        borderColor: series.ink === "Span" ? faded(brush.Span.edge) : brush[series.ink].edge,
        borderCapStyle: "butt",
        backgroundColor: brush[series.ink].fill,
        pointBackgroundColor: brush[series.ink].fill,
        pointBorderColor: brush[series.ink].edge,
        clip: false,
      })),
    },
    options: {
      layout: { padding: { top: 18, right: 10 } },
      plugins: { legend: { display: false } },
      scales: {
        x: scale(spec.across, ink, { grid: { display: false }, border: { display: false }, ticks: narrow ? { autoSkip: true } : {} }),
        y: scale(spec.up, ink, { grid: { color: (c) => (c.tick.value === 0 ? ink.ink : ink.rule) }, border: { display: false } }),
      },
    },
    plugins: [{ afterDatasetsDraw: (chart) => labels(chart, spec, { ink, brush, style }) }],
  };
}

function faded(color) {
  return color.replace(/^rgb\((.*)\)$/, (_, parts) => `rgba(${parts}, 0.45)`);
}

/// Labels of rings stand below their point, others above; none leaves the drawing.
function labels(chart, spec, { ink, brush, style }) {
  const { size } = style;
  const { left, right } = chart.chartArea;
  spec.series.forEach((series, i) => {
    chart.getDatasetMeta(i).data.forEach((point, j) => {
      const text = series.points[j]?.label;
      if (!text) return;
      const room = widthOf(text, style);
      const x = Math.max(left, Math.min(point.x + 10, right - room));
      const y = series.ink === "Ring" ? point.y + 20 : Math.max(size / 2 + 2, point.y - 16);
      write(chart, text, { x, y }, { ...style, color: brush[series.ink].text, halo: ink.paper });
    });
  });
}
