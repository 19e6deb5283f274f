import { heads, write, widthOf } from "./inks.js";

/// Lying bars in groups; the words stand at their ends, so there is no value axis to read off.
export function bars(spec, { ink, brush, narrow, size }) {
  const above = narrow || spec.namesAbove;
  const style = { size, family: ink.family };
  const widest = Math.max(0, ...spec.series.flatMap((s) => s.points.map((p) => (p.label ? widthOf(p.label, style) : 0))));
  return {
    type: "bar",
    data: {
      labels: spec.groups,
      datasets: spec.series.map((series) => ({
        label: series.name,
        stack: series.stack,
        data: series.points.map((p) => p.x),
        backgroundColor: brush[series.ink].fill,
        borderColor: brush[series.ink].edge,
        borderWidth: 1,
        borderSkipped: false,
        barPercentage: 0.86,
        categoryPercentage: above ? 0.46 : 0.66,
      })),
    },
    options: {
      indexAxis: "y",
      layout: { padding: { right: widest + 10, } },
      plugins: { legend: { display: false } },
      scales: {
        x: { stacked: true, min: Math.min(0, spec.across.low), max: spec.across.high, grid: { display: false }, ticks: { display: false }, border: { display: false } },
        y: {
          stacked: true,
          border: { display: !above, color: ink.ruleStrong },
          grid: { display: false },
          ticks: { display: !above, crossAlign: "far", autoSkip: false, padding: 8 },
        },
      },
    },
    plugins: [
      { afterDatasetsDraw: (chart) => ends(chart, spec, { ink, brush, style }) },
      { afterDatasetsDraw: (chart) => above && heads(chart, spec.groups, style, ink) },
    ],
  };
}

function ends(chart, spec, { ink, brush, style }) {
  spec.series.forEach((series, i) => {
    chart.getDatasetMeta(i).data.forEach((bar, j) => {
      const text = series.points[j]?.label;
      if (!text) return;
      write(chart, text, { x: Math.max(bar.x, chart.scales.x.getPixelForValue(0)) + 6, y: bar.y }, { ...style, color: brush[series.ink].text });
    });
  });
}
