// Bench: loaded before a program with --import; prints the most memory that its process held, in kilobytes, and its processor time, in
// microseconds.
import { writeSync } from 'node:fs';

process.on('exit', () => {
  const { maxRSS, userCPUTime, systemCPUTime } = process.resourceUsage();
  writeSync(2, `peak ${maxRSS}\ncpu ${userCPUTime + systemCPUTime}\n`);
});
