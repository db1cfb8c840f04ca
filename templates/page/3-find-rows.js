// Acts: long lists and tables of class `finds` show only the rows that hold what is typed. On paper all rows stand.

const fewRows = 12;

function makeFindable(list) {
  const rowsOf = () => [...(list.tBodies?.[0].rows ?? list.querySelectorAll('li.pot, .units > *, :scope > li'))];
  const texts = new Map(rowsOf().map((row) => [row, fold(row.textContent)]));
  if (texts.size <= fewRows) return;
  const field = make('input', '', { type: 'search' });
  const label = make('label', `${words.find} `, { class: 'tool' });
  label.append(field);
  const count = make('output', '', { class: 'count' });
  field.addEventListener('input', () => {
    const sought = fold(field.value).split(/\s+/).filter(Boolean);
    let shown = 0;
    for (const [row, text] of texts) {
      const isIn = sought.every((word) => text.includes(word));
      row.classList.toggle('is-out', !isIn);
      shown += isIn ? 1 : 0;
    }
    for (const group of list.querySelectorAll('details')) {
      const hasAny = group.querySelector('li:not(.is-out)') !== null;
      group.classList.toggle('is-out', !hasAny);
      if (hasAny && sought.length > 0) group.open = true;
    }
    count.textContent = sought.length > 0 ? fillIn(words.some, shown, texts.size) : '';
  });
  toolsOf(list).append(label, count);
}

for (const list of document.querySelectorAll('.finds')) makeFindable(list);
