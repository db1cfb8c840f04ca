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
  const around = target?.closest('details:not([open])');
  if (!around) return;
  around.open = true;
  target.scrollIntoView();
}
addEventListener('hashchange', openTarget);
openTarget();
