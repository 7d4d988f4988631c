/** A client of the tslab kernel: starts it, runs code in it, ends it. Node alone; no Python, no server. */

import { type ChildProcess, spawn } from 'node:child_process';
import { randomUUID } from 'node:crypto';
import { once } from 'node:events';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import type { Dealer, Subscriber } from 'zeromq';
import { address, type Connection, listens, newConnection, withConnectionFile } from './connection.js';
import { EnvironmentError } from './environmentError.js';
import { optional } from './optional.js';
import { decode, encode, type Message, newMessage } from './wire.js';

const START_S = 60;
const RESEND_S = 0.5;
const GOODBYE_S = 2;

/** How often a kernel is started at most. */
const STARTS = 4;
/** Asked while it still binds its sockets, the kernel gives up listening and says so; and where another took a port meanwhile. */
const STUMBLED = /Socket is blocked by a bind|Address already in use|EADDRINUSE/;
/** The kernel learns so long after it that a socket listens. */
const BOUND_S = 0.1;
class Stumbled extends Error {}

/** Ends the kernel when its standard input closes, so that it never outlives us, however we die. */
const WATCH_PARENT = `data:text/javascript,${encodeURIComponent(
  `const { stdin } = process; stdin.on('end', () => process.exit()).resume(); stdin.unref();`,
)}`;

/** Ends the kernel when whoever started it is gone: Jupyter gives it no input that would end, and may be killed. */
const WATCH_STARTER = `data:text/javascript,${encodeURIComponent(
  `const { ppid } = process; setInterval(() => process.ppid === ppid || process.exit(), 1000).unref();`,
)}`;

/**
 * Keeps the kernel's compiler from watching files: two changes at once in what cells import, of whatever program, are
 * more than the kernel's single timer takes, and the running cell fails. What is imported is read once.
 * @param manifest of tslab, from which its compiler is found
 */
const unwatched = (manifest: string) =>
  `data:text/javascript,${encodeURIComponent(
    `import { createRequire } from 'node:module';` +
      `const { sys } = createRequire(${JSON.stringify(manifest)})('@tslab/typescript-for-tslab');` +
      `sys.watchFile = sys.watchDirectory = () => ({ close() {} });`,
  )}`;

/** Resolves after so many seconds; holds no process open. */
const after = (seconds: number, signal?: AbortSignal) =>
  setTimeout(seconds * 1000, undefined, { ref: false, ...(signal && { signal }) });

/** A request with everything the kernel said to it. `published` goes on growing if output comes late. */
export interface Answer {
  reply?: Message;
  idle: boolean;
  published: Message[];
}

interface Waiting {
  answer: Answer;
  done: () => void;
}

/** Flags of Node and the kernel's own arguments, as a kernelspec lists them. */
export async function kernelArguments(connectionFile: string): Promise<string[]> {
  const manifest = await optional('tslab', 'run notebooks', () =>
    createRequire(import.meta.url).resolve('tslab/package.json'),
  );
  return [
    // Cells load this package, which is made of ES modules, by require: Node 20 would warn in every notebook.
    '--disable-warning=ExperimentalWarning',
    '--import',
    WATCH_STARTER,
    '--import',
    unwatched(manifest),
    join(dirname(manifest), 'bin', 'tslab'),
    'kernel',
    `--config-path=${connectionFile}`,
  ];
}

export class Kernel {
  private readonly session = randomUUID();
  private readonly waiting = new Map<string, Waiting>();
  /** What the process itself wrote to its standard error: for telling why it died, no part of any cell. */
  private noise = '';
  private fault: Error | undefined;
  private fail: (fault: Error) => void = () => {};
  private readonly failed: Promise<never>;

  private constructor(
    private readonly process: ChildProcess,
    private readonly connection: Connection,
    private readonly shell: Dealer,
    private readonly control: Dealer,
    private readonly iopub: Subscriber,
  ) {
    this.failed = new Promise((_, reject) => {
      this.fail = (fault) => {
        this.fault ??= fault;
        reject(this.fault);
      };
    });
    this.failed.catch(() => {});
    process.once('error', (cause) =>
      this.fail(new EnvironmentError('kernel-failed', `kernel did not start: ${cause.message}`)),
    );
    process.once('exit', (code, signal) =>
      this.fail(
        new EnvironmentError(
          'kernel-failed',
          `kernel ended with ${signal ?? `exit status ${code}`}\n${this.noise}`.trim(),
        ),
      ),
    );
    process.stderr?.on('data', (text) => {
      this.noise += text;
      if (STUMBLED.test(this.noise)) this.fail(new Stumbled(this.noise));
    });
    this.listen(shell);
    this.listen(iopub);
  }

  /**
   * Starts a kernel and waits until it answers on both its sockets; one that stumbles over its own start is started again.
   * @param cwd the folder from which cells resolve imports and files
   * @param env environment of the kernel's process
   * @throws EnvironmentError when tslab or zeromq is missing, the kernel dies, or does not answer within a minute
   */
  static async start(cwd: string, env: NodeJS.ProcessEnv): Promise<Kernel> {
    for (let left = STARTS - 1; ; left--)
      try {
        return await Kernel.begin(cwd, env);
      } catch (cause) {
        if (left === 0 || !(cause instanceof Stumbled)) throw cause;
      }
  }

  private static async begin(cwd: string, env: NodeJS.ProcessEnv): Promise<Kernel> {
    const zmq = await optional('zeromq', 'run notebooks', () => import('zeromq'));
    const connection = await newConnection();
    return withConnectionFile(connection, async (file) => {
      const flags = ['--import', WATCH_PARENT, ...(await kernelArguments(file))];
      const process_ = spawn(process.execPath, flags, { cwd, env, stdio: ['pipe', 'ignore', 'pipe'] });
      const kernel = new Kernel(
        process_,
        connection,
        new zmq.Dealer({ linger: 0 }),
        new zmq.Dealer({ linger: 0 }),
        new zmq.Subscriber({ linger: 0, receiveHighWaterMark: 0 }),
      );
      try {
        await Promise.race([kernel.bound(), kernel.failed]);
        kernel.shell.connect(address(connection, 'shell'));
        kernel.control.connect(address(connection, 'control'));
        kernel.iopub.connect(address(connection, 'iopub'));
        kernel.iopub.subscribe();
        await kernel.ready();
        return kernel;
      } catch (cause) {
        await kernel.kill();
        throw cause;
      }
    });
  }

  /**
   * Runs code and waits for both its reply and the kernel's being idle.
   * @param limit_s seconds after which the wait is given up; the kernel is then of no further use
   * @throws EnvironmentError when the kernel dies or the time is over
   */
  execute(code: string, limit_s: number): Promise<Answer> {
    return this.request(
      'execute_request',
      {
        code,
        silent: false,
        store_history: true,
        user_expressions: {},
        allow_stdin: false,
        stop_on_error: true,
      },
      limit_s,
    );
  }

  /** Waits until everything the kernel has published so far is here. */
  async flush(): Promise<void> {
    await this.request('kernel_info_request', {}, START_S);
  }

  /** Asks the kernel to end, and ends it if it does not within two seconds. */
  async shutdown(): Promise<void> {
    if (!this.fault) {
      const goodbye = newMessage('shutdown_request', { restart: false }, this.session);
      await this.control.send(encode(this.connection.key, goodbye));
      await Promise.race([this.failed.catch(() => {}), after(GOODBYE_S)]);
    }
    await this.kill();
  }

  /** Ends the process at once and closes the sockets. */
  async kill(): Promise<void> {
    const { process } = this;
    if (process.pid !== undefined && process.exitCode === null && process.signalCode === null) {
      const gone = once(process, 'exit');
      process.kill('SIGKILL');
      await gone;
    }
    for (const socket of [this.shell, this.control, this.iopub]) socket.close();
  }

  /** Waits until every socket that is asked listens: whoever asks before makes the kernel stumble. */
  private async bound(): Promise<void> {
    const end = Date.now() + START_S * 1000;
    for (const of of ['shell', 'iopub', 'control'] as const)
      while (!(await listens(this.connection, of)) && Date.now() < end) await after(BOUND_S);
    await after(BOUND_S);
  }

  /** A subscriber misses what was published before it was connected: ask until both sockets answer. */
  private async ready(): Promise<void> {
    const end = Date.now() + START_S * 1000;
    while (Date.now() < end) {
      const { done, answer } = await this.ask('kernel_info_request', {});
      await Promise.race([done, this.failed, after(RESEND_S)]);
      if (answer.reply && answer.idle) return;
    }
    throw new EnvironmentError(
      'kernel-failed',
      `kernel did not answer within ${START_S} s\n${this.noise}`.trim(),
    );
  }

  private async request(type: string, content: Record<string, unknown>, limit_s: number): Promise<Answer> {
    if (this.fault) throw this.fault;
    const { done, answer } = await this.ask(type, content);
    const late = new AbortController();
    try {
      const over = after(limit_s, late.signal).then(() => {
        throw new EnvironmentError('kernel-failed', `no end within the ${limit_s} s allowed`);
      });
      over.catch(() => {});
      await Promise.race([done, this.failed, over]);
      return answer;
    } finally {
      late.abort();
    }
  }

  private async ask(type: string, content: Record<string, unknown>) {
    const message = newMessage(type, content, this.session);
    const answer: Answer = { idle: false, published: [] };
    const done = new Promise<void>((resolve) => {
      this.waiting.set(message.header.msg_id, { answer, done: resolve });
    });
    await this.shell.send(encode(this.connection.key, message));
    return { done, answer };
  }

  /** Files every message under the request it answers; a bad one ends the session rather than being lost. */
  private listen(socket: Dealer | Subscriber): void {
    const read = async () => {
      for await (const frames of socket) {
        const message = decode(this.connection.key, frames);
        const waiting = this.waiting.get(message.parent_header.msg_id ?? '');
        if (!waiting) continue;
        const { answer } = waiting;
        if (socket === this.shell) answer.reply = message;
        else if (message.header.msg_type !== 'status') answer.published.push(message);
        else answer.idle = message.content.execution_state === 'idle';
        if (answer.reply && answer.idle) waiting.done();
      }
    };
    read().catch((cause) => this.fail(cause));
  }
}
