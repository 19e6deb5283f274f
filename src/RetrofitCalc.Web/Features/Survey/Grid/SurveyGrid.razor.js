// Moves focus between cells and hands over pasted text. What a cell holds is never looked at here.
const cellOf = (element) => element instanceof HTMLElement && element.matches("[data-field]") ? element : null;
const rowOf = (cell) => cell.closest("tr[data-line]");
const lineRows = (region) => [...region.querySelectorAll("tr[data-line]:not(.detail)")];

export function start(region, grid) {
  region.addEventListener("keydown", (event) => move(event, region, grid));
  region.addEventListener("paste", (event) => paste(event, grid));
  region.addEventListener("input", (event) => { if (cellOf(event.target)) event.target.dataset.typing = ""; });
  region.addEventListener("focusout", (event) => { if (cellOf(event.target)) delete event.target.dataset.typing; });
  for (const scrolled of [region, document]) scrolled.addEventListener("scroll", () => keepTyped(region), { passive: true });
}

// A row that scrolls out of sight is taken away; leaving its cell first keeps what was typed.
function keepTyped(region) {
  const cell = cellOf(document.activeElement);
  if (!cell || !region.contains(cell) || !("typing" in cell.dataset)) return;
  const [at, frame] = [cell.getBoundingClientRect(), region.getBoundingClientRect()];
  if (at.bottom < Math.max(frame.top, 0) || at.top > Math.min(frame.bottom, innerHeight)) cell.blur();
}

function paste(event, grid) {
  const cell = cellOf(event.target);
  const text = event.clipboardData?.getData("text/plain") ?? "";
  if (!cell || !/[\t\n]/.test(text.replace(/\r?\n$/, ""))) return;
  event.preventDefault();
  const stream = DotNet.createJSStreamReference(new Blob([text]));
  grid.invokeMethodAsync("PasteAsync", rowOf(cell).dataset.line, cell.dataset.field, stream);
}

function move(event, region, grid) {
  const cell = cellOf(event.target);
  if (!cell || event.altKey || event.ctrlKey || event.metaKey || event.isComposing) return;
  const step = { ArrowUp: -1, ArrowDown: 1, Enter: event.shiftKey ? -1 : 1 }[event.key];
  if (step) moveRow(event, cell, step, region, grid);
  else if (event.key === "ArrowLeft" && atEnd(cell, "selectionStart", 0)) moveColumn(event, cell, -1);
  else if (event.key === "ArrowRight" && atEnd(cell, "selectionEnd", cell.value.length)) moveColumn(event, cell, 1);
}

// Suggestions of a list are walked through with the arrow keys while one types.
function moveRow(event, cell, step, region, grid) {
  if (rowOf(cell).classList.contains("detail")) return;
  if (cell.list && "typing" in cell.dataset && event.key !== "Enter") return;
  event.preventDefault();
  const next = neighbour(cell, step, region);
  if (next) go(next);
  else if (event.key === "Enter" && step > 0 && isLast(cell, region)) {
    cell.blur();
    grid.invokeMethodAsync("AddBelowAsync", rowOf(cell).dataset.line);
  } else scrollOn(cell, step, region);
}

function neighbour(cell, step, region) {
  const row = rowOf(cell);
  const rows = lineRows(region);
  return rows[rows.indexOf(row) + step]?.querySelector(`[data-field="${cell.dataset.field}"]`);
}

const isLast = (cell, region) => {
  const rows = lineRows(region);
  const after = rows.at(-1).closest("tbody").lastElementChild;
  return rowOf(cell) === rows.at(-1) && (after.matches("tr[data-line], tr.message, tr.group") || after.offsetHeight === 0);
};

// The row wanted is not rendered yet: scroll there, then try again.
function scrollOn(cell, step, region) {
  region.scrollBy(0, step * cell.offsetHeight * 3);
  setTimeout(() => { const next = document.activeElement === cell && neighbour(cell, step, region); if (next) go(next); }, 120);
}

const atEnd = (cell, edge, place) => cell instanceof HTMLSelectElement || cell[edge] === place;

function moveColumn(event, cell, step) {
  if (event.shiftKey) return;
  const cells = [...rowOf(cell).querySelectorAll("[data-field]")];
  const next = cells[cells.indexOf(cell) + step];
  if (!next) return;
  event.preventDefault();
  go(next);
}

function go(cell) {
  cell.focus();
  cell.select?.();
}

export function reveal(region, id, share) {
  let tries = 0;
  const look = () => {
    const cell = document.getElementById(id);
    if (cell) {
      cell.scrollIntoView({ block: "center" });
      go(cell);
    } else if (tries++ < 20) {
      if (region.scrollHeight > region.clientHeight) region.scrollTop = share * region.scrollHeight - region.clientHeight / 2;
      else window.scrollTo(0, region.getBoundingClientRect().top + window.scrollY + share * region.scrollHeight - innerHeight / 2);
      setTimeout(look, 60);
    }
  };
  look();
}

export const textOf = (element) => new Blob([element.value]);
