// Acts: ticks are kept in this browser, for as long as the list stays the same. Pages of a folder share those of one kind.

const boxes = [...document.querySelectorAll('.box input')];
const listed = boxes.map((box) => `${box.getAttribute('aria-label')} ${box.value}`).join('\n');
const key = `halfpot ${ticks} ${location.pathname.replace(/[^/]*$/, '')}`;

/** A browser may keep nothing for files; ticks then last as long as the page. */
function readTicks() {
  try {
    const kept = JSON.parse(localStorage.getItem(key));
    return kept?.listed === listed ? kept.places : [];
  } catch {
    return [];
  }
}

function keepTicks() {
  const places = boxes.flatMap((box, place) => (box.checked ? [place] : []));
  try {
    if (places.length > 0) localStorage.setItem(key, JSON.stringify({ listed, places }));
    else localStorage.removeItem(key);
  } catch {}
  showTicks();
}

function setTicks(places) {
  boxes.forEach((box, place) => { box.checked = places.includes(place); });
}

if (boxes.length > 0) {
  setTicks(readTicks());
  for (const box of boxes) box.addEventListener('change', keepTicks);
  showTicks();
}
