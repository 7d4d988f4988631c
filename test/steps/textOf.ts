/** The text of a page as a reader copies it: a line a block, a cell's end as `|`. */
export function textOf(html: string): string {
  return html
    .replace(/<(script|style|svg)[\s\S]*?<\/\1>/g, '')
    .replace(/<\/?t[dh][^>]*>/g, ' | ')
    .replace(/<br>/g, ' ')
    .replace(/<(p|h\d|li|tr|div|summary)\b[^>]*>/g, '\n')
    .replace(/<[^>]+>/g, '')
    .replaceAll('&#39;', "'")
    .replaceAll('&quot;', '"')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&amp;', '&')
    .replace(/[\u00a0\u2009 ]+/g, ' ');
}
