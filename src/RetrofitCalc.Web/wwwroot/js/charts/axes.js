/// A scale whose ticks, labels and ends the page has decided.
export function scale(axis, ink, extra) {
  const names = new Map(axis.ticks.map((t) => [t.at, t.lines]));
  return {
    type: "linear",
    min: axis.low,
    max: axis.high,
    title: { display: axis.title !== "", text: axis.title, align: "end", color: ink.inkSoft },
    afterBuildTicks: (built) => {
      built.ticks = axis.ticks.map((t) => ({ value: t.at }));
    },
    ...extra,
    ticks: { color: ink.inkSoft, autoSkip: false, maxRotation: 0, callback: (value) => names.get(value) ?? "", ...extra?.ticks },
  };
}
