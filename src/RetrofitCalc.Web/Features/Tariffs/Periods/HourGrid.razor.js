// Chooses a block of months and hours by pointer or by keys and names it to the page, which paints: one drag, one call.
const steps = { ArrowLeft: [0, -1], ArrowRight: [0, 1], ArrowUp: [-1, 0], ArrowDown: [1, 0] };
const ends = { Home: { hour: 0 }, End: { hour: 23 }, PageUp: { month: 1 }, PageDown: { month: 12 } };
const within = (value, low, high) => Math.min(high, Math.max(low, value));
const ordered = (a, b) => (a < b ? [a, b] : [b, a]);

export function attach(table, page) {
  const cells = [...table.querySelectorAll("[data-month]")];
  const cellAt = (month, hour) => cells[(month - 1) * 24 + hour];
  const place = (cell) => ({ month: Number(cell.dataset.month), hour: Number(cell.dataset.hour) });
  let anchor = place(cells[0]);
  let head = anchor;
  let dragging = false;

  // On a narrow screen hours run down and months across, so the arrow keys change places with them.
  const turned = () => getComputedStyle(table).getPropertyValue("--turned").trim() === "1";
  const block = () => [...ordered(anchor.month, head.month), ...ordered(anchor.hour, head.hour)];

  function show() {
    const [month1, month2, hour1, hour2] = block();
    const many = month1 !== month2 || hour1 !== hour2 || dragging;
    for (const cell of cells) {
      const at = place(cell);
      const picked = many && at.month >= month1 && at.month <= month2 && at.hour >= hour1 && at.hour <= hour2;
      if (picked) cell.setAttribute("aria-selected", "true");
      else cell.removeAttribute("aria-selected");
    }
  }

  function moveTo(to, extend) {
    cellAt(head.month, head.hour).tabIndex = -1;
    head = to;
    if (!extend) anchor = to;
    const cell = cellAt(head.month, head.hour);
    cell.tabIndex = 0;
    cell.focus({ preventScroll: dragging });
    show();
  }

  function paint(...chosen) {
    anchor = head;
    dragging = false;
    show();
    page.invokeMethodAsync("PaintAsync", ...chosen);
  }

  const cellUnder = (event) => {
    const found = document.elementFromPoint(event.clientX, event.clientY)?.closest("[data-month]");
    return found && table.contains(found) ? found : null;
  };

  function onDown(event) {
    const cell = event.target.closest("[data-month]");
    if (event.button !== 0 || !cell) return;
    if (event.pointerType === "mouse") event.preventDefault();
    dragging = true;
    moveTo(place(cell), event.shiftKey);
  }

  function onMove(event) {
    const cell = dragging && cellUnder(event);
    if (cell && (cell.dataset.month != head.month || cell.dataset.hour != head.hour)) moveTo(place(cell), true);
  }

  function onUp() {
    if (dragging) paint(...block());
  }

  // A finger that turned out to scroll paints nothing.
  function onCancel() {
    dragging = false;
    anchor = head;
    show();
  }

  function onClick(event) {
    const { headMonth, headHour } = event.target.closest("th")?.dataset ?? {};
    if (headMonth) paint(Number(headMonth), Number(headMonth), 0, 23);
    if (headHour) paint(1, 12, Number(headHour), Number(headHour));
  }

  function onKey(event) {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.key === " " || event.key === "Enter") paint(...block());
    else if (event.key === "Escape") onCancel();
    else if (steps[event.key]) {
      const [down, right] = turned() ? [...steps[event.key]].reverse() : steps[event.key];
      moveTo({ month: within(head.month + down, 1, 12), hour: within(head.hour + right, 0, 23) }, event.shiftKey);
    } else if (ends[event.key]) moveTo({ ...head, ...ends[event.key] }, event.shiftKey);
    else return;
    event.preventDefault();
  }

  const heard = [[table, "pointerdown", onDown], [table, "click", onClick], [table, "keydown", onKey], [window, "pointermove", onMove], [window, "pointerup", onUp], [window, "pointercancel", onCancel]];
  for (const [target, name, answer] of heard) target.addEventListener(name, answer);
  table.dataset.ready = "yes";

  return {
    detach() {
      for (const [target, name, answer] of heard) target.removeEventListener(name, answer);
    },
  };
}
