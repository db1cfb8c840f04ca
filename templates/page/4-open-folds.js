// Acts: what is folded opens for paper, and for a link that leads into it.

let closed = [];
addEventListener('beforeprint', () => {
  closed = [...document.querySelectorAll('details:not([open])')];
  for (const one of closed) one.open = true;
});
addEventListener('afterprint', () => {
  for (const one of closed) one.open = false;
});

function openTarget() {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  const folds = [];
  for (let one = target?.closest('details'); one; one = one.parentElement.closest('details')) folds.push(one);
  const closed = folds.filter((one) => !one.open);
  for (const one of closed) one.open = true;
  if (closed.length > 0) target.scrollIntoView();
}
addEventListener('hashchange', openTarget);
openTarget();
