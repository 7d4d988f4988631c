/** Notebooks as files: the Jupyter notebook format 4.5, as far as a kernel client needs it. */

import { readFile } from 'node:fs/promises';
import { EnvironmentError } from './environmentError.js';
import { inert } from './terminal.js';
import type { Message } from './wire.js';

export interface StreamOutput {
  output_type: 'stream';
  name: 'stdout' | 'stderr';
  text: string;
}

/** Something shown, in one or more media types, `text/plain` among them where the cell gave one. */
export interface DisplayOutput {
  output_type: 'display_data';
  data: Record<string, string>;
  metadata: Record<string, unknown>;
}

export interface ResultOutput extends Omit<DisplayOutput, 'output_type'> {
  output_type: 'execute_result';
  execution_count: number | null;
}

/** What a code cell showed. */
export type Output = StreamOutput | DisplayOutput | ResultOutput;

/** A cell as nbformat 4 keeps it. */
export interface Cell {
  cell_type: 'code' | 'markdown' | 'raw';
  id?: string;
  metadata: Record<string, unknown>;
  source: string | string[];
  /** code cells only */
  outputs?: Output[];
  execution_count?: number | null;
}

/** A notebook as nbformat 4 keeps it. */
export interface Notebook {
  nbformat: number;
  nbformat_minor: number;
  metadata: Record<string, unknown>;
  cells: Cell[];
}

/** A notebook whose code cells all ran, in order, without a complaint; their outputs are in it. */
export type ExecutedNotebook = Notebook;

/** The text of a cell; the format allows it as one string or as lines. */
export function sourceOf(cell: Cell): string {
  return typeof cell.source === 'string' ? cell.source : cell.source.join('');
}

/**
 * Reads a notebook file.
 * @throws EnvironmentError when the file is not JSON, or not a notebook of format 4
 */
export async function readNotebook(path: string): Promise<Notebook> {
  const text = await readFile(path, 'utf8');
  let notebook: Notebook;
  try {
    notebook = JSON.parse(text);
  } catch (cause) {
    throw new EnvironmentError('invalid-notebook', `invalid notebook ${path}: not JSON`, { cause });
  }
  if (notebook?.nbformat !== 4 || !Array.isArray(notebook.cells))
    throw new EnvironmentError(
      'invalid-notebook',
      `invalid notebook ${path}: format ${notebook?.nbformat}, only 4 is read`,
    );
  return notebook;
}

/**
 * Turns what a kernel published while a cell ran into the cell's outputs: text of one stream is joined and made inert,
 * and an update replaces what was shown under the same id.
 */
export function outputsOf(published: readonly Message[]): Output[] {
  const outputs: Output[] = [];
  const byDisplayId = new Map<string, DisplayOutput>();
  for (const { header, content } of published) {
    const last = outputs.at(-1);
    const id = (content.transient as { display_id?: string } | undefined)?.display_id;
    const shown = { data: content.data, metadata: content.metadata ?? {} } as Omit<
      DisplayOutput,
      'output_type'
    >;
    switch (header.msg_type) {
      case 'stream': {
        const { name, text: printed } = content as unknown as StreamOutput;
        const text = inert(printed);
        if (last?.output_type === 'stream' && last.name === name) last.text += text;
        else outputs.push({ output_type: 'stream', name, text });
        break;
      }
      case 'display_data': {
        const output: DisplayOutput = { output_type: 'display_data', ...shown };
        if (id) byDisplayId.set(id, output);
        outputs.push(output);
        break;
      }
      case 'update_display_data':
        Object.assign(byDisplayId.get(id ?? '') ?? {}, shown);
        break;
      case 'execute_result':
        outputs.push({
          output_type: 'execute_result',
          execution_count: (content.execution_count as number | undefined) ?? null,
          ...shown,
        });
        break;
    }
  }
  return outputs;
}
