// Acts: tables of class `sorts` by any column: once one way, again the other way, a third time as they were.

const isWide = matchMedia('(min-width: 44rem)');

function sortRows(table, column, way) {
  const { rows } = table.tBodies[0];
  const asNumber = table.tHead.rows[table.tHead.rows.length - 1].cells[column].classList.contains('number');
  const keyed = [...rows].map((row) => {
    const cell = row.cells[column];
    return { row, text: textOf(cell), number: asNumber ? numberOf(cell) : Number.NaN };
  });
  keyed.sort((a, b) => {
    if (way === 'none') return a.row.dataset.place - b.row.dataset.place;
    const [aHas, bHas] = asNumber ? [!Number.isNaN(a.number), !Number.isNaN(b.number)] : [a.text !== '', b.text !== ''];
    if (aHas !== bHas) return aHas ? -1 : 1;
    const order = asNumber && aHas ? a.number - b.number : inPageOrder(a.text, b.text);
    return (way === 'descending' ? -order : order) || a.row.dataset.place - b.row.dataset.place;
  });
  table.tBodies[0].append(...keyed.map(({ row }) => row));
}

/** Numbers begin with the largest, names with the first. */
function nextWay(head) {
  const ways = head.classList.contains('number') ? ['descending', 'ascending'] : ['ascending', 'descending'];
  return ways[ways.indexOf(head.getAttribute('aria-sort')) + 1] ?? 'none';
}

function sortBy(table, head, way) {
  for (const other of table.tHead.querySelectorAll('[aria-sort]')) other.removeAttribute('aria-sort');
  if (way !== 'none') head.setAttribute('aria-sort', way);
  sortRows(table, head.cellIndex, way);
}

function makeSortable(table) {
  const heads = [...table.tHead.rows[table.tHead.rows.length - 1].cells].filter((head) => head.querySelector('.unseen') === null && head.textContent !== '');
  if (table.tBodies[0].rows.length < 3) return;
  [...table.tBodies[0].rows].forEach((row, place) => { row.dataset.place = place; });
  const buttons = heads.map((head) => {
    const button = make('button', head.textContent, { type: 'button', class: 'sort' });
    button.addEventListener('click', () => sortBy(table, head, nextWay(head)));
    head.replaceChildren(button);
    return button;
  });
  if (!table.classList.contains('stack')) return;
  // On a phone the heads are out of sight: a list of them stands above the table.
  const list = make('select', '');
  list.append(make('option', words.unsorted), ...heads.map((head) => make('option', head.textContent)));
  list.addEventListener('change', () => {
    const head = heads[list.selectedIndex - 1];
    if (head === undefined) sortBy(table, heads[0], 'none');
    else sortBy(table, head, head.classList.contains('number') ? 'descending' : 'ascending');
  });
  const label = make('label', `${words.sort} `, { class: 'tool sorter' });
  label.append(list);
  toolsOf(table).append(label);
  const fit = () => { for (const button of buttons) button.disabled = !isWide.matches; };
  isWide.addEventListener('change', fit);
  fit();
}

/** The line above a list or table that holds its tools. */
function toolsOf(list) {
  const place = list.closest('.scroll') ?? list;
  const before = list.matches('.body') ? list.firstElementChild : place.previousElementSibling;
  if (before?.matches('.tools')) return before;
  const tools = make('div', '', { class: 'tools' });
  if (list.matches('.body')) list.prepend(tools);
  else place.before(tools);
  return tools;
}

for (const table of document.querySelectorAll('table.sorts')) makeSortable(table);
