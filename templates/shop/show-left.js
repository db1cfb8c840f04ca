// Acts: what is still to be paid goes down as boxes are ticked. Postage counts until the last tick of a shop.

const ticks = 'bought';
const { locale, currency, digits, one, many } = document.body.dataset;
const money = new Intl.NumberFormat(locale, { style: 'currency', currency, minimumFractionDigits: digits, maximumFractionDigits: digits });
const [still, count, untick] = ['.still strong', '.still .count', '.still button'].map((which) => document.querySelector(which));

/** Called whenever a tick is set. */
function showTicks() {
  let [minor, pots] = [0, 0];
  for (const shop of document.querySelectorAll('.shop')) {
    const left = [...shop.querySelectorAll('.box input')].filter((box) => !box.checked);
    for (const box of left) {
      minor += Number(box.value);
      for (const pot of box.closest('li').querySelectorAll('.pot')) pots += Number(pot.dataset.pots);
    }
    if (left.length > 0) minor += Number(shop.dataset.postage);
    shop.classList.toggle('is-ticked', left.length === 0);
  }
  for (const box of boxes) box.closest('li').classList.toggle('is-ticked', box.checked);
  still.textContent = money.format(minor / 10 ** digits);
  count.textContent = (pots === 1 ? one : many).replace('{count}', new Intl.NumberFormat(locale).format(pots));
}

document.querySelector('.still > span').setAttribute('role', 'status');
untick.hidden = false;
untick.addEventListener('click', () => {
  setTicks([]);
  keepTicks();
});
