/** The connection file by which a Jupyter client tells a kernel where to listen and with what key to sign. */
import { randomBytes } from 'node:crypto';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { type AddressInfo, connect, createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const IP = '127.0.0.1';

export interface Connection {
  transport: 'tcp';
  ip: string;
  shell_port: number;
  iopub_port: number;
  stdin_port: number;
  control_port: number;
  hb_port: number;
  signature_scheme: 'hmac-sha256';
  key: string;
  kernel_name: string;
}

/** Ports that were free at once; all are held until the last is known, so that no two are the same. */
async function freePorts(count: number): Promise<number[]> {
  const servers = await Promise.all(
    Array.from(
      { length: count },
      () =>
        new Promise<Server>((resolve, reject) => {
          const server = createServer();
          server.once('error', reject).listen(0, IP, () => resolve(server));
        }),
    ),
  );
  const ports = servers.map((server) => (server.address() as AddressInfo).port);
  await Promise.all(servers.map((server) => new Promise((resolve) => server.close(resolve))));
  return ports;
}

/** Five free ports on this computer alone and a fresh key. */
export async function newConnection(): Promise<Connection> {
  const [shell_port, iopub_port, stdin_port, control_port, hb_port] = (await freePorts(5)) as [
    number,
    number,
    number,
    number,
    number,
  ];
  return {
    transport: 'tcp',
    ip: IP,
    shell_port,
    iopub_port,
    stdin_port,
    control_port,
    hb_port,
    signature_scheme: 'hmac-sha256',
    key: randomBytes(32).toString('hex'),
    kernel_name: 'tslab',
  };
}

/** The address of one of the kernel's sockets. */
export function address(connection: Connection, channel: 'shell' | 'iopub' | 'control'): string {
  return `${connection.transport}://${connection.ip}:${connection[`${channel}_port`]}`;
}

/** Whether something listens on one of the kernel's sockets by now. */
export function listens(connection: Connection, channel: 'shell' | 'iopub' | 'control'): Promise<boolean> {
  return new Promise((resolve) => {
    const socket = connect(connection[`${channel}_port`], connection.ip);
    const told = (listening: boolean) => {
      socket.destroy();
      resolve(listening);
    };
    socket.once('connect', () => told(true)).once('error', () => told(false));
  });
}

/**
 * Lays the connection file, readable by its owner alone, into a folder of its own while `use` runs.
 * @returns what `use` returns; the folder is gone by then
 */
export async function withConnectionFile<T>(
  connection: Connection,
  use: (file: string) => Promise<T>,
): Promise<T> {
  const folder = await mkdtemp(join(tmpdir(), 'underpond-'));
  try {
    const file = join(folder, 'connection.json');
    await writeFile(file, JSON.stringify(connection), { mode: 0o600 });
    return await use(file);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}
