/** Keeps what was typed in the browser: text at once, files beside it. */
import type { Answers } from '../answers.js';

const KEY = 'underpond-form-1';
const STORE = 'files';

/** @returns whether it is kept now */
export function keepAnswers(answers: Answers): boolean {
  try {
    localStorage.setItem(KEY, JSON.stringify(answers));
    return true;
  } catch {
    return false;
  }
}

/** What was kept; none where there is nothing, or nothing that this form wrote. */
export function keptAnswers(): Answers | undefined {
  try {
    const kept = JSON.parse(localStorage.getItem(KEY) ?? 'null') as Answers | null;
    return kept?.version === 1 && typeof kept.rows === 'object' ? kept : undefined;
  } catch {
    return undefined;
  }
}

/** Tells when another window of this form has written. */
export function whenKeptElsewhere(then: () => void): void {
  window.addEventListener('storage', ({ key }) => {
    if (key === KEY) then();
  });
}

function opened(): Promise<IDBDatabase> {
  return new Promise((resolve, reject) => {
    const request = indexedDB.open(KEY, 1);
    request.onupgradeneeded = () => request.result.createObjectStore(STORE);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new Error('blocked'));
  });
}

/**
 * Makes the kept files those given.
 * @returns whether they are kept now
 */
export async function keepFiles(files: ReadonlyMap<string, Uint8Array>): Promise<boolean> {
  try {
    const database = await opened();
    try {
      const change = database.transaction(STORE, 'readwrite');
      const store = change.objectStore(STORE);
      store.clear();
      for (const [name, bytes] of files) store.put(bytes, name);
      await new Promise<void>((resolve, reject) => {
        change.oncomplete = () => resolve();
        change.onerror = () => reject(change.error);
        change.onabort = () => reject(change.error);
      });
    } finally {
      database.close();
    }
    return true;
  } catch {
    return false;
  }
}

/** The kept files by name. */
export async function keptFiles(): Promise<Map<string, Uint8Array>> {
  try {
    const database = await opened();
    try {
      const store = database.transaction(STORE).objectStore(STORE);
      const all = <T>(request: IDBRequest<T>) =>
        new Promise<T>((resolve, reject) => {
          request.onsuccess = () => resolve(request.result);
          request.onerror = () => reject(request.error);
        });
      const [names, files] = await Promise.all([all(store.getAllKeys()), all(store.getAll())]);
      return new Map(names.map((name, at) => [String(name), files[at] as Uint8Array]));
    } finally {
      database.close();
    }
  } catch {
    return new Map();
  }
}
