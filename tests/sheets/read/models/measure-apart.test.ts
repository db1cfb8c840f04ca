import { describe, expect, it } from 'vitest';
import { measureApart } from '../../../../src/sheets/read/models/measure-apart.js';

const run = (code: string, seconds = 200) =>
  measureApart(Buffer.from('bytes'), '.stl', {
    seconds,
    heapMb: 48,
    script: new URL(`data:text/javascript,${encodeURIComponent(code)}`),
  });

describe('measureApart', () => {
  it('gives what the thread answers', async () => {
    const code =
      "import { parentPort, workerData } from 'node:worker_threads'; parentPort.postMessage({ answer: [Buffer.from(workerData.bytes).toString(), workerData.ending] });";
    expect(await run(code)).toEqual(['bytes', '.stl']);
  });

  it('refuses a file that takes too much time or memory', async () => {
    expect(await run('for (;;);', 0.5)).toEqual({
      fault: 'model-too-large',
      detail: 'it takes more time, where 0.5 seconds',
    });
    expect(await run('const all = []; for (;;) all.push({ at: all.length });')).toEqual({
      fault: 'model-too-large',
      detail: 'it takes more memory, where 48 MB',
    });
  });
});
