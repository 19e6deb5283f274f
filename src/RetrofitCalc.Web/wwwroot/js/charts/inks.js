const names = ["paper", "rule", "rule-strong", "ink", "ink-soft", "now", "now-fill", "now-wash", "proposed", "proposed-fill", "proposed-wash", "unknown", ...[1, 2, 3, 4, 5, 6, 7].map((i) => `load-${i}`)];

/// The tokens as plain colours: of the reader's scheme, or of the light one for paper.
export function inks(room, light) {
  const probe = room.appendChild(document.createElement("span"));
  if (light) probe.style.colorScheme = "light";
  const found = { family: getComputedStyle(room).fontFamily };
  for (const name of names) {
    probe.style.color = `var(--${name})`;
    found[name.replace(/-./g, (c) => c[1].toUpperCase())] = getComputedStyle(probe).color;
  }
  probe.remove();
  return found;
}

/// Fill and edge for each way of inking. Hatching tells areas apart where colour cannot.
export function brush(ink) {
  const now = { edge: ink.now, fill: ink.nowFill, text: ink.now };
  const proposed = { edge: ink.proposed, fill: ink.proposedFill, text: ink.proposed };
  return {
    Now: now,
    NowHatched: { ...now, fill: hatch(ink.nowWash, ink.now) },
    Proposed: proposed,
    ProposedHatched: { ...proposed, fill: hatch(ink.proposedWash, ink.proposed) },
    NowLine: { edge: ink.now, fill: ink.now, text: ink.now },
    ProposedLine: { edge: ink.proposed, fill: ink.proposed, text: ink.proposed },
    NowCurve: { edge: ink.now, fill: ink.now, text: ink.now },
    ProposedCurve: { edge: ink.proposed, fill: ink.proposed, text: ink.proposed },
    Span: { edge: ink.proposed, fill: ink.proposed, text: ink.inkSoft },
    Ring: { edge: ink.ink, fill: ink.paper, text: ink.ink },
    HollowCircle: { edge: ink.now, fill: ink.paper, text: ink.now },
    FilledSquare: { edge: ink.now, fill: ink.nowFill, text: ink.now },
  };
}

function hatch(ground, line) {
  const tile = document.createElement("canvas");
  tile.width = tile.height = 8;
  const pen = tile.getContext("2d");
  pen.fillStyle = ground;
  pen.fillRect(0, 0, 8, 8);
  pen.strokeStyle = line;
  pen.lineWidth = 1.6;
  for (const shift of [-8, 0, 8]) {
    pen.beginPath();
    pen.moveTo(shift - 1, 9);
    pen.lineTo(shift + 9, -1);
    pen.stroke();
  }
  return pen.createPattern(tile, "repeat");
}

/// Words on the drawing; a halo of paper keeps lines from running through them.
export function write(chart, text, at, style) {
  const pen = chart.ctx;
  pen.save();
  pen.font = `${style.weight ?? 600} ${style.size}px ${style.family}`;
  pen.textAlign = style.align ?? "left";
  pen.textBaseline = style.base ?? "middle";
  if (style.halo) {
    pen.lineJoin = "round";
    pen.lineWidth = 4;
    pen.strokeStyle = style.halo;
    pen.strokeText(text, at.x, at.y);
  }
  pen.fillStyle = style.color;
  pen.fillText(text, at.x, at.y);
  pen.restore();
}

export function widthOf(text, style) {
  const pen = document.createElement("canvas").getContext("2d");
  pen.font = `600 ${style.size}px ${style.family}`;
  return pen.measureText(text).width;
}

/// On a narrow sheet the name of a row stands above what is drawn in it.
export function heads(chart, rows, style, ink) {
  rows.forEach((lines, i) => {
    const y = chart.scales.y.getPixelForValue(i) - 0.4 * rowHeight(chart, rows.length);
    const room = chart.width - chart.chartArea.left;
    write(chart, fitted(lines, room, style), { x: chart.chartArea.left, y }, { ...style, weight: 400, color: ink.ink, halo: ink.paper });
  });
}

/// A name too long for the sheet is cut, what follows it is not; the table has it whole.
function fitted([name, ...rest], room, style) {
  const whole = (text) => [text, ...rest].join(" · ");
  if (widthOf(whole(name), style) <= room) return whole(name);
  let cut = name;
  while (cut.length > 8 && widthOf(whole(`${cut}…`), style) > room) cut = cut.slice(0, -1).trimEnd();
  return whole(`${cut}…`);
}

function rowHeight(chart, rows) {
  return (chart.chartArea.bottom - chart.chartArea.top) / Math.max(rows, 1);
}
