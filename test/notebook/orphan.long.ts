import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { expect, it, vi } from 'vitest';
import { newConnection } from '../../lib/notebook/connection.js';
import { kernelArguments } from '../../lib/notebook/kernel.js';
import { alive, passingFolder } from './notebooks.js';

it('a kernel ends when whoever started it is gone', async () => {
  const folder = passingFolder();
  const file = join(folder, 'connection.json');
  writeFileSync(file, JSON.stringify(await newConnection()));
  const flags = await kernelArguments(file);
  const starter = spawn(
    process.execPath,
    [
      '-e',
      `const { spawn } = require('node:child_process'); const { pid } = spawn(process.execPath, ${JSON.stringify(flags)}, { stdio: 'ignore', detached: true }); console.log(pid); setInterval(() => {}, 1000);`,
    ],
    { stdio: ['ignore', 'pipe', 'ignore'] },
  );
  const [line] = await once(starter.stdout, 'data');
  const kernel = Number(String(line));
  // Long enough for the watch to be set.
  await setTimeout(2000);
  expect(alive(kernel)).toBe(true);
  starter.kill('SIGKILL');
  await vi.waitUntil(() => !alive(kernel), { timeout: 20_000 });
});
