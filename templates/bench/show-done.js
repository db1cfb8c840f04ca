// Acts: what is painted turns grey.

const ticks = 'painted';

/** Called whenever a tick is set. */
function showTicks() {
  for (const box of boxes) box.closest('li').classList.toggle('is-ticked', box.checked);
}
