// Loaded before a program with --import: the process kills itself at the step of the file system that DIE_AT counts, before
// it with an even number and after it with an odd one. With NO_LINKS the disk knows no links, as on many a memory stick.
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';

let left = Number(process.env.DIE_AT ?? Infinity);
const die = () => {
  process.kill(process.pid, 'SIGKILL');
};

if (process.env.NO_LINKS) {
  fs.linkSync = () => {
    throw Object.assign(new Error('no links here'), { code: 'EPERM' });
  };
}
/** A step of the file system, before or after which the process may end. */
const mayDie =
  (step) =>
  (...args) => {
    if (left === 0) die();
    const result = step(...args);
    const isDone = left === 1;
    left -= 2;
    if (!isDone) return result;
    if (result instanceof Promise) return result.then(die);
    return die();
  };

for (const name of ['renameSync', 'linkSync', 'rmSync', 'mkdirSync', 'writeFileSync'])
  fs[name] = mayDie(fs[name]);
for (const name of ['link', 'rm']) fs.promises[name] = mayDie(fs.promises[name]);
const { open } = fs.promises;
fs.promises.open = mayDie(async (...args) => {
  const file = await open(...args);
  for (const name of ['write', 'writeFile', 'sync', 'truncate']) file[name] = mayDie(file[name].bind(file));
  return file;
});
syncBuiltinESMExports();
