// Bench: runs whole programs and times them. In: argument lists for node. Out: medians of milliseconds, peak megabytes.
import { spawnSync } from 'node:child_process';
import { execPath, hrtime } from 'node:process';
import { fileURLToPath } from 'node:url';

const peakPrinter = new URL('./print-peak.mjs', import.meta.url).href;
const cwd = fileURLToPath(new URL('../../', import.meta.url));

/** One run; a program that fails stops the bench, since its time means nothing. */
function run(args) {
  const started = hrtime.bigint();
  const { status, stderr } = spawnSync(execPath, args, { cwd, encoding: 'utf8', maxBuffer: 2 ** 28 });
  const ms = Number(hrtime.bigint() - started) / 1e6;
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
  return { ms, stderr };
}

export const median = (numbers) => {
  const sorted = [...numbers].sort((a, b) => a - b);
  const middle = Math.floor(sorted.length / 2);
  return sorted.length % 2 === 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
};

/**
 * Median time of each program. They take turns, so that a busy spell of the machine hits all alike; one round
 * before counting warms the disk cache.
 * @param {Record<string, readonly string[]>} programs arguments for node by name
 * @param {number} rounds
 * @returns {Record<string, number>} milliseconds by name
 */
export function medianMs(programs, rounds) {
  const times = Object.fromEntries(Object.keys(programs).map((name) => [name, []]));
  for (let round = 0; round <= rounds; round += 1) {
    for (const [name, args] of Object.entries(programs)) {
      const { ms } = run(args);
      if (round > 0) times[name].push(ms);
    }
  }
  return Object.fromEntries(Object.entries(times).map(([name, all]) => [name, median(all)]));
}

/**
 * One run of a program: its time, that of the processor, and the most memory that it held.
 * @param {readonly string[]} args arguments for node
 * @returns {{ ms: number, cpuMs: number, peakMb: number }}
 */
export function measureOnce(args) {
  const { ms, stderr } = run(['--import', peakPrinter, ...args]);
  const printed = (name) => Number(new RegExp(`^${name} (\\d+)$`, 'm').exec(stderr)?.[1]);
  return { ms, cpuMs: printed('cpu') / 1000, peakMb: printed('peak') / 1024 };
}

/** The most memory that a program held, in megabytes, from a run of its own. */
export const peakMb = (args) => measureOnce(args).peakMb;
