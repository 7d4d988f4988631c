/** Opens the list of words for whoever follows a word to it, where the browser does not do so by itself. */
export function openWords(): void {
  document.addEventListener('click', ({ target }) => {
    if (!(target instanceof Element) || !target.closest('a.word')) return;
    // Before the browser goes there.
    document.querySelector<HTMLDetailsElement>('#words')?.setAttribute('open', '');
  });
}
