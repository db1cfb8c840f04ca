// Bench: loaded before a program with --import; prints the most memory that its process held, in kilobytes.
import { writeSync } from 'node:fs';

process.on('exit', () => writeSync(2, `peak ${process.resourceUsage().maxRSS}\n`));
