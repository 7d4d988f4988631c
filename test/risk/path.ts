/** The value at a path such as `options[no-drain].full.net_head_m.p50`; in a plain array of twelve `[3]` is March. */
export function at(root: unknown, path: string): unknown {
  return path.match(/[^.[\]]+|\[[^\]]+\]/g)!.reduce<unknown>((value, key) => {
    if (value === null || value === undefined) return undefined;
    if (!key.startsWith('[')) return (value as Record<string, unknown>)[key];
    const name = key.slice(1, -1);
    const list = value as Record<string, unknown>[];
    if (list.length === 12 && typeof list[0] !== 'object') return list[Number(name) - 1];
    return (
      list.find((e) => e?.option === name || e?.code === name || String(e?.month) === name) ??
      list[Number(name) - 1]
    );
  }, root);
}
