const ENTITIES: Record<string, string> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * Text as it may stand in HTML, between tags or in a quoted attribute.
 * @param text - any
 * @returns text without `<`, `>`, `&` or quotes that act
 */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (character) => ENTITIES[character]!);
}

/**
 * A value as JSON that may stand inside a `<script>`, whatever text is in it.
 * @param value - anything JSON can hold
 * @returns a literal of JavaScript
 */
export function scriptJson(value: unknown): string {
  return JSON.stringify(value).replace(/[<\u2028\u2029]/g, (character) => {
    return `\\u${character.charCodeAt(0).toString(16).padStart(4, '0')}`;
  });
}
