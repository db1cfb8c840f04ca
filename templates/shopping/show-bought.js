// Acts: what is ticked is marked on the list to buy, and counted above it.

const ticks = 'bought';
const list = document.querySelector('.shopping');
const ticked = make('p', '', { class: 'ticked', role: 'status' });
list.prepend(ticked);

/** Called whenever a tick is set. */
function showTicks() {
  for (const box of boxes) box.closest('tr').classList.toggle('is-bought', box.checked);
  const bought = boxes.filter((box) => box.checked).length;
  ticked.textContent = bought > 0 ? fillIn(list.dataset.bought, bought, boxes.length) : '';
}
