// Loaded before a program with --import: the process kills itself at the step of the file system that DIE_AT counts, before
// it with an even number and after it with an odd one. With NO_LINKS the disk knows no links, as on many a memory stick.
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

let left = Number(process.env.DIE_AT ?? Infinity);
const die = () => process.kill(process.pid, 'SIGKILL');

if (process.env.NO_LINKS) {
  fs.linkSync = () => {
    throw Object.assign(new Error('no links here'), { code: 'EPERM' });
  };
}
for (const name of ['renameSync', 'linkSync', 'rmSync', 'mkdirSync', 'writeFileSync']) {
  const step = fs[name];
  fs[name] = (...args) => {
    if (left === 0) die();
    const result = step(...args);
    if (left === 1) die();
    left -= 2;
    return result;
  };
}
syncBuiltinESMExports();
