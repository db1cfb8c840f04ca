// What the thread of the reader does not survive is one problem, and the program goes on. The threads here are not the
// reader's own, which is not known to run into a bound.
import { describe, expect, it } from 'vitest';
import { readWorkbookApart } from '../../../src/sheets/read/read-workbook-apart.js';

const run = (code: string, seconds = 20) =>
  readWorkbookApart(
    Buffer.from('bytes'),
    { file: 'army.xlsx' },
    {
      seconds,
      heapMb: 48,
      script: new URL(`data:text/javascript,${encodeURIComponent(code)}`),
    },
  );

const post = "import { parentPort, workerData } from 'node:worker_threads';";

describe('readWorkbookApart', () => {
  it('gives what the thread answers', async () => {
    const code = `${post} parentPort.postMessage({ answer: { problems: [Buffer.from(workerData.bytes).toString(), workerData.file] } });`;
    expect(await run(code)).toEqual({ problems: ['bytes', 'army.xlsx'] });
  });

  it('hands large bytes over and copies small ones', async () => {
    const code = `${post} parentPort.postMessage({ answer: { length: workerData.bytes.length } });`;
    const bounds = {
      seconds: 20,
      heapMb: 48,
      script: new URL(`data:text/javascript,${encodeURIComponent(code)}`),
    };
    const large = Buffer.allocUnsafeSlow(2 ** 20);
    expect(await readWorkbookApart(large, { file: 'a' }, bounds)).toEqual({ length: 2 ** 20 });
    expect(large.length).toBe(0);
  });

  it.each([
    ['objects', 'const all = []; for (;;) all.push({ at: all.length });'],
    ['numbers', 'const all = []; for (;;) all.push(new Array(10_000).fill(all.length + 0.5));'],
    ['texts', "const all = []; for (;;) all.push('x'.repeat(1000) + all.length);"],
  ])('refuses a workbook that takes too much memory for %s', async (_, code) => {
    expect(await run(code)).toMatchObject({
      grids: [],
      problems: [
        { code: 'too-large-file', file: 'army.xlsx', found: 'it takes more memory', expected: '48 MB' },
      ],
    });
  });

  it.each([
    ['in a loop', 'for (;;);'],
    ['in a search', "/^(a+)+$/.test('a'.repeat(50) + 'b');"],
    ['waiting', 'setInterval(() => {}, 1000);'],
  ])('refuses a workbook that takes too long %s', async (_, code) => {
    expect(await run(code, 0.5)).toMatchObject({
      grids: [],
      problems: [{ code: 'too-large-file', found: 'it takes more time', expected: '0.5 seconds' }],
    });
  });

  it('passes on what nobody expected', async () => {
    await expect(run(`${post} parentPort.postMessage({ failure: new Error('odd') });`)).rejects.toThrow(
      'odd',
    );
    await expect(run("throw new Error('odd too');")).rejects.toThrow('odd too');
    await expect(run('')).rejects.toThrow('the reader ended before it had an answer');
  });
});
