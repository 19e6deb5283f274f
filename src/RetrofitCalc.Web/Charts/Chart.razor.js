// Draws finished lists. Every number, word and position comes from the page; colours come from the style sheet.
import "../lib/chartjs/chart.umd.min.js";
import { inks, brush } from "../js/charts/inks.js";
import { bars } from "../js/charts/bars.js";
import { lines } from "../js/charts/lines.js";
import { calendar } from "../js/charts/calendar.js";
import { yearMap } from "../js/charts/yearmap.js";

const kinds = { Bars: bars, Line: lines, Calendar: calendar, YearMap: yearMap };
const narrow = 480;
const paper = { width: 330, dots: 3, font: 11 };

export function draw(canvas, spec) {
  const dark = matchMedia("(prefers-color-scheme: dark)");
  const print = matchMedia("print");
  let printing = print.matches;
  let width = 0;
  let chart = null;

  function redraw() {
    chart?.destroy();
    const room = canvas.parentElement;
    width = printing ? paper.width : room.clientWidth;
    const ink = inks(room, printing);
    const size = printing ? paper.font : 13;
    const context = { ink, brush: brush(ink), narrow: width < narrow, size, print: printing };
    Chart.defaults.font.family = ink.family;
    Chart.defaults.font.size = size;
    Chart.defaults.color = ink.ink;
    const config = kinds[spec.kind](spec, context);
    Object.assign(config.options, { animation: false, responsive: !printing, maintainAspectRatio: false, events: [] });
    if (printing) config.options.devicePixelRatio = paper.dots;
    chart = new Chart(canvas, config);
    if (printing) chart.resize(width, room.clientHeight);
  }

  function onPrint(yes) {
    if (printing === yes) return;
    printing = yes;
    redraw();
  }
  const toPaper = () => onPrint(true);
  const toScreen = () => onPrint(false);
  const onMedia = () => onPrint(print.matches);
  // Crossing the width of a phone changes where the words stand, so the chart is drawn anew, not shrunk.
  const watch = new ResizeObserver(() => {
    const now = canvas.parentElement.clientWidth;
    if (!printing && now < narrow !== width < narrow) redraw();
  });

  redraw();
  watch.observe(canvas.parentElement);
  dark.addEventListener("change", redraw);
  print.addEventListener("change", onMedia);
  addEventListener("beforeprint", toPaper);
  addEventListener("afterprint", toScreen);

  return {
    set(next) {
      spec = next;
      redraw();
    },
    destroy() {
      watch.disconnect();
      dark.removeEventListener("change", redraw);
      print.removeEventListener("change", onMedia);
      removeEventListener("beforeprint", toPaper);
      removeEventListener("afterprint", toScreen);
      chart?.destroy();
    },
  };
}
