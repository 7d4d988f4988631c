/** The value at a place of the answer such as `options[no-drain].full.net_head_m.p50` or `design_sheet.rows[2].margin_m`. */
export function placed(root: unknown, path: string): unknown {
  const keys = path
    .replace(/\.reserve\.(.*)$/, (_, link) => `.reserve.${link.replaceAll(' ', '\u0000')}`)
    .match(/[^.[\]]+/g)!;
  return keys.reduce<unknown>((value, key) => {
    if (value === null || value === undefined) return undefined;
    if (!Array.isArray(value)) return (value as Record<string, unknown>)[key.replaceAll('\u0000', ' ')];
    return (
      value.find((each) => each?.option === key) ??
      value.find((each) => [each?.of, each?.situation, each?.month ?? []].flat().join('/') === key) ??
      value[Number(key)]
    );
  }, root);
}
