// Loaded before a program with --import: the process kills itself at the step of the file system that DIE_AT counts, before
// it with an even number and after it with an odd one.
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

let left = Number(process.env.DIE_AT ?? Infinity);
const die = () => process.kill(process.pid, 'SIGKILL');

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
