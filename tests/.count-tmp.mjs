import { chromium } from 'playwright-core';
const f = process.argv[2];
const b = await chromium.launch({ executablePath: '/usr/bin/chromium', args: ['--no-sandbox'] });
const p = await b.newPage({ viewport: { width: 1280, height: 900 } });
await p.goto('file://' + f);
console.log(await p.evaluate(() => {
  const n = (e) => e.innerText.split(/\s+/).filter(Boolean).length;
  const rows = [...document.querySelectorAll('main > *')].map((e) => (e.id || e.tagName) + ' ' + n(e) + ' ' + Math.round(e.getBoundingClientRect().height));
  return rows.join('\n') + '\nall ' + n(document.body) + ' height ' + document.documentElement.scrollHeight;
}));
await p.pdf({ path: '/tmp/hp/a.pdf', format: 'A4' });
await b.close();
