// Acts: ticks of the reorder list are kept in this browser, for as long as the list stays the same.

const list = document.querySelector('.shopping');
const boxes = [...document.querySelectorAll('.box input')];
const listed = boxes.map((box) => box.closest('tr').textContent).join('\n');
const key = `halfpot bought ${location.pathname}`;
const ticked = make('p', '', { class: 'ticked', role: 'status' });

/** A browser may keep nothing for files; ticks then last as long as the page. */
function readTicks() {
  try {
    const kept = JSON.parse(localStorage.getItem(key));
    return kept?.listed === listed ? kept.places : undefined;
  } catch {
    return undefined;
  }
}

function keepTicks() {
  const places = boxes.flatMap((box, place) => (box.checked ? [place] : []));
  try {
    if (places.length > 0) localStorage.setItem(key, JSON.stringify({ listed, places }));
    else localStorage.removeItem(key);
  } catch {}
}

function showTicks() {
  for (const box of boxes) box.closest('tr').classList.toggle('is-bought', box.checked);
  const bought = boxes.filter((box) => box.checked).length;
  ticked.textContent = bought > 0 ? fillIn(list.dataset.bought, bought, boxes.length) : '';
}

if (boxes.length > 0) {
  const kept = readTicks();
  if (kept !== undefined) boxes.forEach((box, place) => { box.checked = kept.includes(place); });
  for (const box of boxes) box.addEventListener('change', () => { keepTicks(); showTicks(); });
  list.prepend(ticked);
  showTicks();
}
