import { scale } from "./axes.js";

const hours = 24;

/// A field for every hour of a year. Days run along and hours across; on a narrow sheet days run down.
export function yearMap(spec, { ink, narrow }) {
  const days = scale(spec.across, ink, { grid: { display: false }, border: { display: false }, reverse: narrow });
  const clock = scale(spec.up, ink, { grid: { display: false }, border: { display: false }, reverse: !narrow });
  days.ticks.align = narrow ? "center" : "start";
  return {
    type: "scatter",
    data: { datasets: [] },
    options: {
      layout: { padding: { right: 14, top: 4 } },
      plugins: { legend: { display: false } },
      scales: narrow ? { x: { ...clock, position: "top" }, y: days } : { x: days, y: clock },
    },
    plugins: [{ afterDraw: (chart) => fields(chart, spec, ink, narrow) }],
  };
}

function fields(chart, spec, ink, narrow) {
  const { x, y } = chart.scales;
  const pen = chart.ctx;
  const box = (day, hour) => {
    const [left, right] = narrow ? [hour, hour + 1] : [day, day + 1];
    const [top, bottom] = narrow ? [day, day + 1] : [hour, hour + 1];
    const [x0, x1] = [x.getPixelForValue(left), x.getPixelForValue(right)];
    const [y0, y1] = [y.getPixelForValue(top), y.getPixelForValue(bottom)];
    return [Math.min(x0, x1), Math.min(y0, y1), Math.abs(x1 - x0), Math.abs(y1 - y0)];
  };
  pen.save();
  for (let i = 0; i < spec.cells.length; i++) field(pen, spec.cells[i], box(Math.floor(i / hours), i % hours), ink);
  pen.restore();
}

/// Fields overlap by a hair, or the paper would shine through between them.
function field(pen, sign, [left, top, width, height], ink) {
  const shade = "0123456".includes(sign) ? +sign + 1 : "abcdefg".includes(sign) ? sign.charCodeAt(0) - 96 : 0;
  if (shade) {
    pen.fillStyle = ink[`load${shade}`];
    pen.fillRect(left, top, width + 0.4, height + 0.4);
  }
  if ("abcdefg".includes(sign)) stroke(pen, ink.ink, left, top + height, left + width, top);
  else if (sign === "-") stroke(pen, ink.ink, left, top + height / 2, left + width, top + height / 2);
  else if (sign === ".") dot(pen, ink.unknown, left + width / 2, top + height / 2);
}

function stroke(pen, color, x0, y0, x1, y1) {
  pen.strokeStyle = color;
  pen.lineWidth = 0.8;
  pen.beginPath();
  pen.moveTo(x0, y0);
  pen.lineTo(x1, y1);
  pen.stroke();
}

function dot(pen, color, x, y) {
  pen.fillStyle = color;
  pen.fillRect(x - 0.5, y - 0.5, 1, 1);
}
