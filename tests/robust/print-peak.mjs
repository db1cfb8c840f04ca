// Robust: loaded before a program with --import; prints the most memory that its process held, in kilobytes, and the seconds
// that all its threads were at work: what a busy machine lets it wait does not count. Where the system tells the memory by
// process it is asked there: what Node tells counts the memory of the process that started it, too.
import { readFileSync, writeSync } from 'node:fs';

process.on('exit', () => {
  let peak = process.resourceUsage().maxRSS;
  try {
    peak = Number(/^VmHWM:\s+(\d+) kB$/m.exec(readFileSync('/proc/self/status', 'utf8'))?.[1]) || peak;
  } catch {
    // Not Linux.
  }
  const { user, system } = process.cpuUsage();
  writeSync(2, `peak ${peak} ${(user + system) / 1e6}\n`);
});
